package risk

import (
	"encoding/binary"
	"slices"
	"sync"

	"sawbill/layout"
	"sawbill/layout/record"
	"sawbill/solver/internal/column"
)

// wood is a board or an offcut that may be cut. It is the same in all draws: what is
// hidden in it is not known to whoever plans.
type wood struct {
	board layout.Board // in its own frame; marked as the board that it comes from
	// corner is where its frame begins in that of the board that it comes from, and
	// slack how much nearer to the reference edge a defect may lie there that reaches
	// into a place of it: crooked wood is not where it was measured, see model section 6.
	corner layout.Rect
	slack  layout.Length
	area   float64 // mm²
	most   []int   // by row, more pieces than it can hold, 0 where it can give none

	ready func() *column.Board
	mu    sync.Mutex
	cuts  map[string]*cut // by what is wanted
}

// swift is a configuration that finds a cut in about a thousandth of a second: a draw
// asks for many.
func swift() column.Config {
	return column.Config{MostX: 800, MostY: 300, MostStarts: 3, MostHeights: 12}
}

// urgency is how much more an urgent part is worth.
const urgency = 100

// mostCuts is how many cuts of one piece of wood are remembered.
const mostCuts = 5000

// cut is one way to cut a piece of wood.
type cut struct {
	root   *layout.Node
	counts []int // by row
	pieces []piece
	left   []*wood // what is worth keeping
	saws   int     // pieces that come off the saw
}

// piece is a leaf of the bill. touch is where a hidden defect spoils it, in the frame of
// the board of the stock.
type piece struct {
	row, n int
	touch  layout.Rect
	id     string // where the plan gives it one
}

func (j *job) newWood(b layout.Board) *wood {
	w := &wood{board: b, cuts: map[string]*cut{}, most: make([]int, len(j.p.Bill))}
	w.area = square(b.Length, b.Width+b.TipWidth) / 2
	for i := range j.p.Bill {
		part := &j.p.Bill[i]
		if j.p.Allows(part, &w.board) && j.p.CouldHold(part, &w.board) {
			w.most[i] = 1 + int(w.area*float64(layersAtMost(part, &b))/square(part.Length, min(part.Width, part.Thickness)))
		}
	}
	w.ready = sync.OnceValue(func() *column.Board { return column.New(j.p, &w.board, swift()) })
	return w
}

// layersAtMost is more pieces than can be resawn from one.
func layersAtMost(part *layout.Part, b *layout.Board) layout.Length {
	if !part.Resaw {
		return 1
	}
	return 1 + b.Thickness/min(part.Thickness, part.Width)
}

func square(l, w layout.Length) float64 { return float64(l) * float64(w) / 1e12 }

// cutFor is a good way to cut the wood for no more than limits, or nil where it can give
// nothing of that. What is urgent is worth any amount of the rest.
func (w *wood) cutFor(j *job, bench *column.Bench, limits, urgent []int) *cut {
	asked, price := make([]int, len(limits)), slices.Clone(j.price)
	var key []byte
	for i, n := range limits {
		asked[i] = max(0, min(n, w.most[i]))
		first := uint64(0)
		if urgent != nil && urgent[i] > 0 && asked[i] > 0 {
			first, price[i] = 1, price[i]*urgency
		}
		key = binary.AppendUvarint(key, 2*uint64(asked[i])+first)
	}
	if !wants(asked) {
		return nil
	}
	w.mu.Lock()
	c, known := w.cuts[string(key)]
	w.mu.Unlock()
	if known {
		return c
	}
	found := bench.Within(w.ready(), price, asked, 2)
	if found.Root != nil && wants(found.Counts) {
		c = j.newCut(w, found.Root, found.Counts)
	}
	w.mu.Lock()
	defer w.mu.Unlock()
	if other, known := w.cuts[string(key)]; known {
		return other
	}
	if len(w.cuts) < mostCuts {
		w.cuts[string(key)] = c
	}
	return c
}

// newCut takes a tree of cuts of a piece of wood as the record would.
func (j *job) newCut(w *wood, root *layout.Node, counts []int) *cut {
	p := &layout.Problem{Shop: j.p.Shop, Stock: []layout.Board{w.board}, Yard: true}
	for i, n := range counts {
		if n > 0 {
			part := j.p.Bill[i]
			part.Quantity = n
			p.Bill = append(p.Bill, part)
		}
	}
	plan := layout.Assemble(p, []layout.BoardCut{{Board: w.board.Mark, Root: root}})
	c := j.cutOf(w, root)
	stock, origins := record.After(plan)
	for _, o := range origins {
		c.keep(j, w, stock, o)
	}
	return c
}

// cutOf is a tree of cuts without what is kept.
func (j *job) cutOf(w *wood, root *layout.Node) *cut {
	c := &cut{root: root, counts: make([]int, len(j.p.Bill)), saws: -1}
	root.Walk(func(*layout.Node) { c.saws++ })
	root.LeavesByBlank(func(blank, leaf *layout.Node) {
		if leaf.Part == "" {
			return
		}
		row := j.rows[rowName{leaf.Part, leaf.Slices}]
		c.counts[row] += leaf.Pieces()
		at := leaf.Rect
		at.Y2 += leaf.Lean
		at.Y1 -= w.board.Shift(blank.Length()) + w.slack
		c.pieces = append(c.pieces, piece{row, leaf.Pieces(), w.onRoot(at), leaf.PieceIDs()[0]})
	})
	return c
}

// onRoot is a place of the wood in the frame of the board that it comes from.
func (w *wood) onRoot(r layout.Rect) layout.Rect {
	dx, dy := w.corner.X1, w.corner.Y1
	return layout.Rect{X1: r.X1 + dx, X2: r.X2 + dx, Y1: r.Y1 + dy, Y2: r.Y2 + dy}
}

// keep adds wood that the record puts into the stock when the cut is made.
func (c *cut) keep(j *job, w *wood, stock []layout.Board, from layout.Origin) {
	i := slices.IndexFunc(stock, func(b layout.Board) bool { return b.Mark == from.Board })
	if i < 0 {
		return // too small to keep
	}
	b := stock[i]
	b.Mark, b.Base, b.Source = w.board.Mark, w.board.Base, w.board.Source
	b.Cost = costOf(&b)
	left := j.newWood(b)
	left.corner, left.slack = w.onRoot(from.Wood), w.slack
	if from.Wood.Y1 > 0 {
		left.slack += w.board.Shift(w.board.Length)
	}
	c.left = append(c.left, left)
}
