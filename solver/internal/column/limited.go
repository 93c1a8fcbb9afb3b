package column

import "sawbill/layout"

// BestLimited finds the best column of a board at the given prices, one for each
// row of the bill, that makes no more than limits of each row; nil, or a
// negative limit, stands for any number. It works until it has proven its column
// best, or has counted most labels and comparisons of labels; exact tells which.
// Otherwise the column is within the limits, and the best that was found.
//
// The limits are first relaxed: a price less what the limit on its part is worth
// (Fisher 1981) makes of the unlimited programme an upper bound, on the whole
// board and on whatever completes a part of a column. Then labels (value, counts)
// run through the levels of the programme (limited_chain.go). A label is dropped
// when another has at least its value and no more of any part, or when with the
// best completion it stays below a guess of the result; the guess is lowered
// until something is found. Only critical parts are counted, those whose limits
// were seen broken (Righini & Salani 2008).
func (b *Bench) BestLimited(w *Board, price []Value, limits []int, most int) (c Column, exact bool) {
	s := newLimited(b, w, price, limits, most)
	s.relax()
	exact = s.search()
	return s.best, exact
}

// limited is the state of one search for a column within limits.
type limited struct {
	b        *Bench
	w        *Board
	price    []Value // 0: not wanted
	limits   []int   // where unlimited, more than the board could hold
	binding  []bool  // the limit is less than what the board could hold
	critical []bool
	step     Value // no two columns differ in value by less

	relaxed []Value // prices less the worth of the limits
	offset  Value   // the worth of the limits, all together
	bound   Value   // no column within the limits is worth more
	best    Column

	blanks []blankWorth
	filled int // the start whose strips are in the bench; -1: none
	ledger *ledger
	cells  map[cellKey]frontFrom
	strips map[stripKey]frontFrom
	parts  []*source // by piece

	*effort
}

func newLimited(b *Bench, w *Board, price []Value, limits []int, most int) *limited {
	n := len(price)
	s := &limited{
		b: b, w: w, price: make([]Value, n), limits: make([]int, n), effort: &effort{most: max(0, most)},
		binding: make([]bool, n), critical: make([]bool, n), step: 1,
	}
	for i := range price {
		s.limits[i] = w.mostOf(i)
		if limits != nil && limits[i] >= 0 && limits[i] < s.limits[i] {
			s.limits[i], s.binding[i] = limits[i], true
		}
		if price[i] > 0 && s.limits[i] > 0 {
			s.price[i] = price[i]
		}
	}
	if w.measure.rate == 0 {
		s.step = max(1, commonStep(s.price))
	}
	return s
}

// mostOf is the most pieces of a row of the bill that the area of the board allows.
func (w *Board) mostOf(row int) int {
	area := float64(w.wood.Length) * float64(w.wood.FullWidth())
	return int(area/w.areaOf(row)) + 1
}

// areaOf is the least area that a piece of a row of the bill takes; more than the
// board has where it gives none.
func (w *Board) areaOf(row int) float64 {
	least := 2 * float64(w.wood.Length) * float64(w.wood.FullWidth())
	for _, p := range w.pieces {
		if p.row == row {
			least = min(least, float64(p.length)*float64(p.width)/float64(p.layers))
		}
	}
	return least
}

// commonStep is the greatest common divisor of the prices.
func commonStep(price []Value) Value {
	var d Value
	for _, v := range price {
		for v != 0 {
			d, v = v, d%v
		}
	}
	return d
}

// search finds the best column by labels. It guesses close below the bound
// first, for few labels come near it. It reports false when the work allowed
// ended it.
func (s *limited) search() bool {
	if s.best.Value+s.step > s.bound {
		return true
	}
	s.b.setPrices(s.relaxed)
	s.filled = -1
	s.setBlanks()
	for share := Value(16); s.best.Value+s.step <= s.bound; share = max(1, share/2) {
		guess := max(s.best.Value+s.step, s.bound-(s.bound-s.best.Value)/share)
		if !s.searchFrom(guess) {
			return false
		}
		if s.best.Value >= guess {
			return true
		}
		s.bound = guess - 1
	}
	return true
}

// searchFrom finds the best column that is worth guess or more, if there is one.
// It reports false when the work allowed ended it.
func (s *limited) searchFrom(guess Value) bool {
	for {
		labels, ok := s.labels(max(guess, s.best.Value+s.step))
		if !ok {
			return false
		}
		if !s.settle(labels) {
			return true
		}
	}
}

// labels runs the board at a guess.
func (s *limited) labels(guess Value) ([]*label, bool) {
	var ok bool
	if s.ledger, ok = newLedger(s.critical, s.limits); !ok {
		return nil, false
	}
	s.cells, s.strips = map[cellKey]frontFrom{}, map[stripKey]frontFrom{}
	s.parts = make([]*source, len(s.w.pieces))
	labels := s.boardChain().run(s, guess-s.offset)
	return labels, !s.spent()
}

// settle takes the best label that keeps all limits, and makes critical what the
// better ones break. It reports whether there was any.
func (s *limited) settle(labels []*label) bool {
	for _, l := range labels {
		if l.value <= s.best.Value {
			continue
		}
		if root := s.layBoard(l); s.within(root) {
			s.best = Column{Value: l.value, Root: root}
		}
	}
	over, broken := make([]bool, len(s.price)), false
	for _, l := range labels {
		if l.value > s.best.Value && s.markOver(s.layBoard(l), over) {
			broken = true
		}
	}
	for i := range over {
		s.critical[i] = s.critical[i] || over[i]
	}
	return broken
}

func (s *limited) within(root *layout.Node) bool {
	return !s.markOver(root, make([]bool, len(s.price)))
}

// markOver marks the rows of which a tree makes too many.
func (s *limited) markOver(root *layout.Node, over []bool) (any bool) {
	for i, n := range s.w.CountParts(root) {
		if n > s.limits[i] {
			over[i], any = true, true
		}
	}
	return any
}
