package risk

import (
	"cmp"
	"maps"
	"slices"

	"sawbill/layout"
	"sawbill/layout/record"
	"sawbill/solver/internal/column"
)

// job is what all draws share.
type job struct {
	plan *layout.Plan
	// p is what is planned again: a row for each part, for each length of the strips of
	// a glue-up, and for slices that the plan leaves missing. It holds no boards.
	p       *layout.Problem
	rows    map[rowName]int
	names   []string // of the bill as it was asked, by row
	price   []column.Value
	volume  []float64 // of a piece, mm³
	matched []bool    // by row: pieces of it must come from one board
	groups  [][]int   // the rows of each match word
	short   []int     // by row, what the plan leaves missing; less than 0: what it makes beyond
	roots   []*root   // of the planned boards, then of the free ones
	planned []planned
	turn    []int // the places of the planned boards, in the order in which they are cut
	free    []piled
}

// rowName is a row of the bill, of a set with the slices of a strip.
type rowName struct {
	part   string
	slices int
}

// planned is a board that the plan cuts. One that is being cut keeps its cuts, and so
// does one of matched pieces.
type planned struct {
	wood *wood
	cut  *cut
	kept bool
	open bool // being cut
}

// newJob makes a plan ready. What hides in the wood is said by rates.
func newJob(plan *layout.Plan, rates *layout.Shop) *job {
	j := &job{plan: plan, rows: map[rowName]int{}}
	shop := *plan.Problem.Shop
	j.p = &layout.Problem{Shop: &shop, Yard: true}
	j.setRows()
	j.setPrices()
	j.setMatches()
	stock, origins := record.After(plan)
	for _, b := range inOrder(plan) {
		j.addPlanned(b, stock, origins, rates)
	}
	for i := range plan.Problem.Stock {
		b := &plan.Problem.Stock[i]
		if b.Source != layout.Rack || plan.Board(b.Mark) != nil {
			continue
		}
		j.free = append(j.free, piled{j.woodOf(b), len(j.roots)})
		j.roots = append(j.roots, newRoot(rates, b))
	}
	return j
}

// inOrder is the boards of a plan, those first that are being cut.
func inOrder(plan *layout.Plan) []layout.BoardPlan {
	boards := slices.Clone(plan.Boards)
	slices.SortStableFunc(boards, func(a, b layout.BoardPlan) int {
		return cmp.Compare(btoi(plan.Record.IsStarted(b.Board)), btoi(plan.Record.IsStarted(a.Board)))
	})
	return boards
}

func btoi(b bool) int {
	if b {
		return 1
	}
	return 0
}

// setRows lists what is wanted. What the plan makes of it is taken off as its boards
// are added.
func (j *job) setRows() {
	bill := &j.plan.Problem
	for i := range bill.Bill {
		if part := bill.Bill[i]; part.Set == "" {
			j.addRow(rowName{part.Name, 0}, part, part.Name)
		}
	}
	for _, b := range j.plan.Boards {
		for _, leaf := range b.Root.Leaves() {
			if leaf.Slices > 0 {
				j.addStrip(bill.Part(leaf.Part), leaf)
			}
		}
	}
	for _, set := range bill.Sets() {
		for _, m := range j.plan.Missing {
			if m.Part == set.Name {
				slices := bill.Bill[set.Rows[0]]
				slices.Name, slices.Species, slices.Quantity = set.Name, nil, m.Quantity // no board gives it
				j.addRow(rowName{set.Name, -1}, slices, set.Name)
			}
		}
	}
	for i := range j.p.Bill {
		j.short = append(j.short, j.p.Bill[i].Quantity)
	}
}

// addStrip wants the strips of a leaf: what the plan makes of a glue-up is wanted.
func (j *job) addStrip(row *layout.Part, leaf *layout.Node) {
	at := rowName{row.Name, leaf.Slices}
	if _, known := j.rows[at]; !known {
		strip := j.p.Shop.Strip(row, leaf.Slices)
		strip.Quantity = 0
		j.rows[rowName{strip.Name, 0}] = len(j.p.Bill)
		j.addRow(at, strip, row.Name)
	}
	j.p.Bill[j.rows[at]].Quantity += leaf.Pieces()
}

func (j *job) addRow(at rowName, part layout.Part, name string) {
	j.rows[at] = len(j.p.Bill)
	j.p.Bill = append(j.p.Bill, part)
	j.names = append(j.names, name)
}

// costOf is what a board costs where all wood costs the same: its area decides what is
// an offcut worth keeping.
func costOf(b *layout.Board) layout.Money {
	return layout.Money(square(b.Length, b.Width+b.TipWidth)) / 2
}

// markup is how much more a part is worth than its wood: no offcut is kept where a part
// could be cut. A better rank is worth rankFactor times as much, up to mostRanks times.
const (
	markup     = 2
	rankFactor = 3
	mostRanks  = 6
)

// setPrices gives the parts values by the wood that they take, and more by their rank.
func (j *job) setPrices() {
	ranks := map[int]bool{}
	for i := range j.p.Bill {
		ranks[j.p.Bill[i].Rank()] = true
	}
	worst := slices.Sorted(maps.Keys(ranks))
	slices.Reverse(worst)
	for i := range j.p.Bill {
		part := &j.p.Bill[i]
		s := j.p.Shop
		wood := square(part.CutLength(s)+s.CrosscutKerf, part.CutWidth(s)+s.RipKerf)
		v := markup*column.FromMoney(layout.Money(wood)) + 1
		for range min(slices.Index(worst, part.Rank()), mostRanks) {
			v *= rankFactor
		}
		j.price = append(j.price, v)
		j.volume = append(j.volume, part.Volume().MM3())
	}
}

func (j *job) setMatches() {
	by := map[string]int{}
	j.matched = make([]bool, len(j.p.Bill))
	for i := range j.p.Bill {
		word := j.p.Bill[i].Match
		if word == "" {
			continue
		}
		j.matched[i] = true
		if _, known := by[word]; !known {
			by[word] = len(j.groups)
			j.groups = append(j.groups, nil)
		}
		j.groups[by[word]] = append(j.groups[by[word]], i)
	}
}

// woodOf is a whole board of the stock.
func (j *job) woodOf(b *layout.Board) *wood {
	row := *b
	row.Cost = costOf(b)
	return j.newWood(row)
}

// addPlanned adds a board of the plan with its cuts, and what is kept of it.
func (j *job) addPlanned(b layout.BoardPlan, stock []layout.Board, origins []layout.Origin, rates *layout.Shop) {
	board := j.plan.Problem.Board(b.Board)
	w, root := j.woodOf(board), newRoot(rates, board)
	c := j.cutOf(w, b.Root)
	for _, o := range origins {
		if o.Of == b.Board && j.plan.Problem.Board(o.Board) == nil {
			c.keep(j, w, stock, o)
		}
	}
	open := j.plan.Record.IsStarted(b.Board)
	p := planned{wood: w, cut: c, open: open, kept: open}
	for _, piece := range c.pieces {
		j.short[piece.row] -= piece.n
		p.kept = p.kept || j.matched[piece.row]
		if j.plan.Record.IsCut(piece.id) {
			root.sound = append(root.sound, piece.touch)
		}
	}
	j.turn = append(j.turn, len(j.planned))
	j.planned, j.roots = append(j.planned, p), append(j.roots, root)
}
