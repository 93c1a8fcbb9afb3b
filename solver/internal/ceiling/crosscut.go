package ceiling

import (
	"slices"

	"sawbill/layout"
)

// cuts divides the board along into cells: what a column cuts off next starts
// somewhere in a cell. A blank that starts in one cell, and beyond which the next
// piece starts in another, is worth no more than the longest blank of that kind.
// That is worked out only for the blanks of the best path; until then a blank
// counts as much as one between the larger cells that its own were parts of.
type cuts struct {
	b      *Bench
	enough Value
	at     []layout.Length // where each cell begins
	// By cell, by cell in which the next piece starts; the last stands for the
	// end.
	most  [][]Value // of a blank between the two
	known [][]bool  // it is worked out for these very cells
	kept  [][]Value // of an offcut between the two
	best  []Value
	from  []step
}

// step says from which cell the best was reached, and how.
type step struct {
	cell int
	kind stepKind
}

type stepKind uint8

const (
	wasted stepKind = iota
	kept
	trued
)

// Most is a value that no valid cutting of the board at the given prices, one
// for each row of the bill, can exceed: the pieces in any number, and the worth
// of the offcuts. It stops refining when the bound is no more than enough, when it
// has made work steps, of a few nanoseconds each, or when stop says so; more work
// makes it sharper. stop may be nil; where it says so before anything is known,
// the value is one that no board has. sharp says that more work would not change it.
func (b *Bench) Most(w *Board, price []Value, enough Value, work int, stop func() bool) (most Value, sharp bool) {
	b.cuts = nil
	if w.bar == nil {
		return b.refined(w, price, enough, work, stop)
	}
	bound := w.bar.worth(price)
	if bound <= enough || w.bar.exact {
		return bound, true
	}
	most, sharp = b.refined(w, price, enough, work, stop)
	return min(bound, most), sharp
}

func (b *Bench) refined(w *Board, price []Value, enough Value, work int, stop func() bool) (most Value, sharp bool) {
	b.most, b.stop = work, stop
	if !b.prepare(w, price) {
		return -none, false
	}
	c := newCuts(b, enough)
	b.cuts = c
	for {
		bound := c.path()
		if bound <= enough || b.ends() {
			return bound, false
		}
		if !c.workOut() && !c.refine() {
			return bound, true
		}
	}
}

// newCuts makes cells so narrow that no two blanks start in one.
func newCuts(b *Bench, enough Value) *cuts { return newCutsOf(b, enough, b.w.fewestCells()) }

// fewestCells is how many cells there must be so that no two blanks start in one.
func (w *Board) fewestCells() int {
	least := w.briefest
	if m := w.shop.MinOffcutLength; w.rate > 0 && m > 0 && (least == 0 || m < least) {
		least = m
	}
	n := 8
	if least > 0 {
		n = max(n, int(w.wood.Length/least)+1)
	}
	return n
}

// newCutsOf makes so many cells.
func newCutsOf(b *Bench, enough Value, cells int) *cuts {
	w := b.w
	c := &cuts{b: b, enough: enough}
	n := layout.Length(cells)
	for i := range n {
		c.at = append(c.at, c.mark(w.wood.Length*i/n))
	}
	for k := range c.at {
		c.most, c.known, c.kept = append(c.most, make([]Value, n+1)), append(c.known, make([]bool, n+1)), append(c.kept, make([]Value, n+1))
		for m := k; m <= int(n); m++ {
			c.most[k][m], c.known[k][m] = c.trued(k, m, -none)
			c.kept[k][m] = c.offcut(k, m)
		}
	}
	return c
}

// path fills the programme along the board and gives its result:
//
//	F[m] = max(F[m-1], F[k] + a blank from k to m, F[k] + an offcut from k to m)
//
// where m stands for the cell in which the next piece starts. Offcuts are rough and of the
// board's full width.
func (c *cuts) path() Value {
	n := len(c.at)
	c.b.work += n * n / 2
	c.best = size(c.best, n+1, Value(0))
	c.from = size(c.from, n+1, step{})
	for k := range n {
		c.best[k] += c.kept[k][k] // within the cell: how the cell was reached stays as it is
		if c.best[k] >= c.best[k+1] {
			c.best[k+1], c.from[k+1] = c.best[k], step{k, wasted}
		}
		at, most, offcut := c.best[k], c.most[k], c.kept[k]
		for m := k + 1; m <= n; m++ {
			if gain := max(most[m], offcut[m]); gain > 0 && at+gain > c.best[m] {
				c.best[m], c.from[m] = at+gain, step{k, kindOf(most[m], offcut[m])}
			}
		}
	}
	return c.best[n]
}

// kindOf says which of two is worth more.
func kindOf(blank, offcut Value) stepKind {
	if offcut >= blank {
		return kept
	}
	return trued
}

// offcut is the worth of an offcut from cell k on when the next piece starts in
// cell m.
func (c *cuts) offcut(k, m int) Value {
	w := c.b.w
	if m < k || w.rate == 0 || c.end(m)-c.at[k]+w.over() < w.shop.MinOffcutLength {
		return 0
	}
	if m == k { // perhaps several
		return w.sound(c.at[k]-w.soon, c.end(m)+w.late)
	}
	return w.rough(c.at[k]-w.soon, c.end(m)+w.late, w.shift(max(w.shop.MinOffcutLength, c.shortest(k, m))))
}

// mark is the last place at or before x where a cell may begin.
func (c *cuts) mark(x layout.Length) layout.Length {
	if w := c.b.w; w.x.exact {
		return w.x.at(w.x.down(x))
	}
	return x
}

// latest is the last place of cell m where a piece may start.
func (c *cuts) latest(m int) layout.Length {
	if w := c.b.w; w.x.exact {
		return c.next(m) - w.x.unit
	}
	return c.next(m)
}

// next is where the cell after m begins; end is where a piece ends at the latest
// when the next starts in cell m.
func (c *cuts) next(m int) layout.Length {
	if m+1 < len(c.at) {
		return c.at[m+1]
	}
	return c.b.w.wood.Length
}

func (c *cuts) end(m int) layout.Length {
	if m == len(c.at) {
		return c.b.w.wood.Length
	}
	return c.latest(m) - c.b.w.shop.CrosscutKerf
}

// shortest is how short a piece may be that starts in cell k when the next starts in
// cell m.
func (c *cuts) shortest(k, m int) layout.Length {
	start := c.b.w.wood.Length
	if m < len(c.at) {
		start = c.at[m]
	}
	return max(0, start-c.b.w.shop.CrosscutKerf-c.latest(k))
}

// trued is the most that a blank which starts in cell k is worth when the next piece
// starts in cell m, as far as it is worked out; known says that it is to the end. It
// is worked out no further when it is no more than enough.
func (c *cuts) trued(k, m int, enough Value) (most Value, known bool) {
	w, s := c.b.w, c.spanOf(k, m)
	if !w.gives(s) {
		return 0, true
	}
	return c.b.blank(s.a, s.e, s.short, enough)
}

// blankSpan is where a blank lies at most, and how short it may be.
type blankSpan struct{ a, e, short layout.Length }

// spanOf is the span of a blank that starts in cell k when the next piece starts in cell m.
func (c *cuts) spanOf(k, m int) blankSpan {
	w := c.b.w
	s := blankSpan{max(c.at[k], w.from), min(c.end(m), w.to), max(c.shortest(k, m), w.briefest)}
	if w.most > 0 {
		s.e = min(s.e, c.latest(k)+w.most)
	}
	return s
}

// steps calls do with every step of the best path.
func (c *cuts) steps(do func(k, m int, kind stepKind)) {
	for m := len(c.at); m > 0 && c.from[m].cell < m; m = c.from[m].cell {
		do(c.from[m].cell, m, c.from[m].kind)
	}
}

// workOut works out the blanks of the best path one step further; it reports false
// when all are known.
func (c *cuts) workOut() bool {
	new := false
	c.steps(func(k, m int, kind stepKind) {
		if kind == trued && !c.known[k][m] {
			most, known := c.trued(k, m, c.floor(k, m))
			c.most[k][m], c.known[k][m], new = min(c.most[k][m], most), known, true
		}
	})
	return new
}

// refine divides the cells in which the pieces of the best path start and end, first those
// that are wide; it reports false when none can be divided. What starts in the first cell
// starts at the butt, unless it matters how short a blank may be.
func (c *cuts) refine() bool {
	var split []int
	first := 1
	if c.shortens() {
		first = 0
	}
	widest := layout.Length(0)
	c.steps(func(k, m int, kind stepKind) {
		if kind == wasted {
			return
		}
		for _, cell := range []int{m, k} {
			if first <= cell && cell < len(c.at) && c.wide(cell) >= 2*c.finest() {
				split = append(split, cell)
				widest = max(widest, c.wide(cell))
			}
		}
	})
	slices.Sort(split)
	split = slices.Compact(split)
	for i := len(split) - 1; i >= 0; i-- {
		if 2*c.wide(split[i]) > widest {
			c.split(split[i])
		}
	}
	return len(split) > 0
}

// wide is how much of the board is in a cell.
func (c *cuts) wide(cell int) layout.Length { return c.next(cell) - c.at[cell] }

// finest is how narrow a cell may be: a position of an exact grid, or a mark of the shop's
// rule, on long boards more.
func (c *cuts) finest() layout.Length {
	if w := c.b.w; w.x.exact {
		return w.x.unit
	}
	return max(c.b.w.shop.Units.Mark(), c.b.w.wood.Length/mostAlong)
}

// shortens reports whether shorter blanks give more of the board than longer ones.
func (c *cuts) shortens() bool { return !c.b.w.wood.Flat() || c.b.w.wood.Crook > 0 }

// split divides a cell in two. What starts in its first half, and what ends with
// its second, is what it was, unless that it can no longer be so short makes a difference;
// of the rest it is known only that it is no more.
func (c *cuts) split(cell int) {
	was := c.shapesAt(cell, cell)
	c.at = slices.Insert(c.at, cell+1, c.mark(c.at[cell]+c.wide(cell)/2))
	for k := range c.most {
		c.most[k] = slices.Insert(c.most[k], cell, c.most[k][cell])
		c.known[k] = slices.Insert(c.known[k], cell, c.known[k][cell] && c.most[k][cell] == 0)
		c.kept[k] = slices.Insert(c.kept[k], cell, 0)
	}
	later, known := slices.Clone(c.most[cell]), slices.Clone(c.known[cell])
	for m := range later {
		known[m] = known[m] && later[m] == 0
	}
	later[cell], known[cell] = 0, true // nothing ends before it starts
	c.most, c.known = slices.Insert(c.most, cell+1, later), slices.Insert(c.known, cell+1, known)
	is := c.shapesAt(cell, cell+1)
	for k := range cell + 1 {
		c.known[k][cell+1] = c.known[k][cell+1] && (c.most[k][cell+1] == 0 || was.ending[k] == is.ending[k])
	}
	for m := cell + 1; m <= len(c.at); m++ {
		c.known[cell][m] = c.known[cell][m] && (c.most[cell][m] == 0 || was.starting[m-1-cell] == is.starting[m-cell])
	}
	c.kept = slices.Insert(c.kept, cell+1, make([]Value, len(later)))
	for k := range c.at {
		c.kept[k][cell] = c.offcut(k, cell)
	}
	for m := range c.kept[cell+1] {
		c.kept[cell+1][m] = c.offcut(cell+1, m)
	}
}

// shape is all that tells how much a blank is worth at most: where it lies, and as far as it
// matters how short it may be.
type shape struct {
	a, e         layout.Length
	lanes, first int           // how many last so long, and the position across of the first strip
	shift        layout.Length // in some steps of a position
	long         bool          // it is too long in any case
}

// shapes are those of the blanks that start in each cell up to one and end with another, and
// of those that start in the one and end with it or any later cell.
type shapes struct{ ending, starting []shape }

// shapesAt are the shapes of the blanks that start in cell from, or end with cell to. They
// are all the same where it makes no difference how short blanks may be.
func (c *cuts) shapesAt(from, to int) shapes {
	s := shapes{make([]shape, from+1), make([]shape, len(c.at)+1-from)}
	if !c.shortens() {
		return s
	}
	for k := range s.ending {
		s.ending[k] = c.shapeOf(k, to)
	}
	for m := range s.starting {
		s.starting[m] = c.shapeOf(from, from+m)
	}
	return s
}

// shiftSteps is in how many steps of a position it is told where the wood of a blank begins.
const shiftSteps = 8

func (c *cuts) shapeOf(k, m int) shape {
	w, s := c.b.w, c.spanOf(k, m)
	shift := w.shift(s.short)
	is := shape{a: s.a, e: s.e, first: w.y.down(shift + w.near), shift: shift / max(1, w.y.unit/shiftSteps), long: w.most > 0 && s.short > w.most}
	for i := range w.lanes {
		if s.short <= w.lanes[i].longest {
			is.lanes++
		}
	}
	return is
}

// floor is the value at which a blank of the best path is looked at no further
// for now: then the board is worth no more than enough, or so much less that
// another path is likely to be the best.
func (c *cuts) floor(k, m int) Value {
	bound := c.best[len(c.at)]
	return c.most[k][m] - min(bound-c.enough, bound/100+1)
}
