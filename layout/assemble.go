package layout

import (
	"fmt"
	"strconv"
)

// BoardCut is the cut tree of one board, before anything in it has a name.
type BoardCut struct {
	Board string // its mark
	Root  *Node
}

// Assemble makes a whole plan out of cut trees: boards in the order of the
// stock, pieces and offcuts named, what is missing, the account and the totals.
// Offcut leaves are those whose Offcut is not empty; their marks are given
// here. The trees become the plan's own.
func Assemble(p *Problem, cuts []BoardCut) *Plan { return AssembleWith(p, nil, nil, cuts) }

// AssembleWith makes a whole plan out of cut trees as Assemble does, and of others
// whose pieces and offcuts have names already, which they keep. done is the record of
// what has happened before, or nil.
func AssembleWith(p *Problem, done *Record, named, cuts []BoardCut) *Plan {
	plan := &Plan{Revision: 1, Problem: *p, Record: done}
	add := func(b *Board, root *Node) {
		plan.Boards = append(plan.Boards, BoardPlan{
			Board: b.Mark, Cost: b.Cost, Root: root,
			Account: NewAccount(p.Shop, b, p.Bill, root),
		})
	}
	for i := range p.Stock {
		b := &p.Stock[i]
		for _, c := range named {
			if c.Board == b.Mark {
				add(b, c.Root)
			}
		}
		for _, c := range cuts {
			if c.Board == b.Mark {
				nameLeaves(p, b.Mark, c.Root)
				add(b, c.Root)
			}
		}
	}
	plan.Missing = plan.missing()
	plan.Totals = totals(p, plan.Boards)
	return plan
}

// nameLeaves gives every part leaf an id and every offcut a mark: M4-2c is the
// third piece of the second blank of M4, M4-K1 the first offcut to keep.
func nameLeaves(p *Problem, mark string, root *Node) {
	kept, blank := 0, 0
	for _, child := range root.Children {
		pieces := 0
		for _, leaf := range child.Leaves() {
			switch {
			case leaf.Part != "":
				if pieces == 0 {
					blank++
				}
				leaf.ID = pieceID(p, fmt.Sprintf("%s-%d", mark, blank), &pieces)
				pieces++
			case leaf.Offcut != "":
				kept++
				leaf.Offcut = offcutMark(p, mark, &kept)
			}
		}
	}
}

// pieceID is the next id of a blank that is not the mark of a board.
func pieceID(p *Problem, blank string, n *int) string {
	for p.Board(blank+letters(*n)) != nil {
		*n++
	}
	return blank + letters(*n)
}

// letters counts a, b, … z, aa, ab, …
func letters(n int) string {
	s := string(rune('a' + n%26))
	if n < 26 {
		return s
	}
	return letters(n/26-1) + s
}

// offcutMark is a mark that no board of the stock bears.
func offcutMark(p *Problem, board string, n *int) string {
	for {
		mark := board + "-K" + strconv.Itoa(*n)
		if p.Board(mark) == nil {
			return mark
		}
		*n++
	}
}

// missing is what of the bill is not made. The bill of a plan with a record leaves out
// the pieces that are cut from boards which the plan no longer holds; strips of
// glue-ups it does not, for they need the others of their copy.
func (plan *Plan) missing() []Missing {
	p, boards := &plan.Problem, plan.Boards
	made, strips := countPieces(boards), plan.Strips()
	var missing []Missing
	for i := range p.Bill {
		part := &p.Bill[i]
		if n := part.Quantity - made[part.Name]; n > 0 && part.Set == "" {
			missing = append(missing, Missing{Part: part.Name, Quantity: n, Why: p.whyMissing(part, n, boards)})
		}
	}
	for _, set := range p.Sets() {
		if n := set.Slices - p.slicesMade(set, strips); n > 0 {
			missing = append(missing, Missing{Part: set.Name, Quantity: n, Why: p.whyNoSlices(set, n, boards)})
		}
	}
	return missing
}

// countPieces counts what boards give by the names of the bill.
func countPieces(boards []BoardPlan) map[string]int {
	made := map[string]int{}
	for _, b := range boards {
		for _, leaf := range b.Root.Leaves() {
			if leaf.Part != "" {
				made[leaf.Part] += leaf.Pieces()
			}
		}
	}
	return made
}

// totals are the cost and the yield of what is cut.
func totals(p *Problem, boards []BoardPlan) Totals {
	var t Totals
	var sum Account
	for _, bp := range boards {
		b := p.Board(bp.Board)
		t.Cost += bp.Cost
		bp.Root.LeavesByBlank(func(blank, leaf *Node) {
			if leaf.Offcut != "" {
				t.Cost -= p.Shop.OffcutWorth(b, b.CleanOffcutIn(blank.Length(), leaf.Rect))
			}
		})
		sum = sum.Plus(bp.Account)
	}
	if rough := sum.Sum() - sum.Offcuts; len(boards) > 0 && rough > 0 {
		yield := sum.Parts / rough
		t.Yield = &yield
	}
	return t
}
