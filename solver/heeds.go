package solver

import (
	"slices"

	"sawbill/layout"
	"sawbill/solver/internal/ceiling"
	"sawbill/solver/internal/column"
	"sawbill/solver/internal/lp"
)

// Prices take no heed of two rules: that no board gives more of a part than is wanted, and
// that pieces of one match word come from one board. Both are heeded when something is
// proven, so more is proven than the prices prove.
//
// No board holds more than d pieces of a part. So with any less(board, part) >= 0 what a board
// is worth at prices p is no more than
//
//	held = most(board, p - less) + sum of less * d
//
// (Geoffrion 1974). In the linear programme that is a row for a board and a part,
//
//	sum over cuts of the board of (pieces - d) * share <= 0,
//
// of which less is the dual value. There is one for those boards and parts of which a
// cutting has been seen that holds too many.
//
// And in every plan at most as many boards as there are words give any piece of a word. No
// other board is worth more than its best cutting without such pieces, so no plan costs less
// than
//
//	sum of d * p - sum over boards of max(0, without - cost) - the largest gains,
//
// as many as there are words, where a board's gain is
//
//	max(0, held - cost) - max(0, without - cost).
//
// In the programme a word is one row more, in which the cuts that hold any of its pieces
// have one share in all.

// heeds is what the programme and the proof heed beside prices.
type heeds struct {
	words  [][]int // the rows of the bill of every match word
	limits []limit
}

// limit is that a board holds no more of a part than is wanted.
type limit struct {
	board int // the first of those alike
	row   int // of the bill
}

// mostLimits is the most limits that are heeded.
const mostLimits = 200

// matched lists the rows of the bill of every match word.
func matched(p *layout.Problem) [][]int {
	var list [][]int
	for _, word := range words(p) {
		var rows []int
		for i := range p.Bill {
			if p.Bill[i].Match == word {
				rows = append(rows, i)
			}
		}
		list = append(list, rows)
	}
	return list
}

// most is how many pieces of a part a board gives at most where so many are wanted. Spare
// pieces may be left out of a cutting, but not one of several layers.
func (s *search) most(row, wanted int) int {
	if part := &s.p.Bill[row]; part.Resaw {
		wanted += part.Spare
	}
	return wanted
}

// learnLimits notes which parts a cutting of a board holds too many of.
func (s *search) learnLimits(board int, counts, demand []int) {
	for i, n := range counts {
		l := limit{board, i}
		if s.copies == nil && n > s.most(i, demand[i]) && len(s.heeds.limits) < mostLimits && !slices.Contains(s.heeds.limits, l) {
			s.heeds.limits = append(s.heeds.limits, l)
		}
	}
}

// holdsAny reports whether there are pieces of any of these rows.
func holdsAny[N int | float64](rows []int, counts []N) bool {
	return slices.ContainsFunc(rows, func(i int) bool { return i < len(counts) && counts[i] > 0 })
}

// without is prices of which pieces of a word are worth nothing.
func (m *master) without(price []column.Value) []column.Value {
	free := slices.Clone(price)
	for _, rows := range m.heeds.words {
		for _, i := range rows {
			free[i] = 0
		}
	}
	return free
}

// ofWords reports whether there are pieces of any word, or it is not known what there is.
func (m *master) ofWords(counts []int) bool {
	return len(m.heeds.words) > 0 && (counts == nil || slices.ContainsFunc(m.heeds.words, func(rows []int) bool { return holdsAny(rows, counts) }))
}

// heedRow is the first row of the programme for what is heeded: words, then limits.
func (m *master) heedRow() int { return len(m.clusters) + len(m.demand) }

// heedsLess reports whether there is more to heed than the programme does.
func (m *master) heedsLess() bool {
	return !m.forced && m.keepsAll() && len(m.heeds.limits) < len(m.s.heeds.limits)
}

// heeded are the entries of a column of a cluster in these rows.
func (m *master) heeded(c int, counts []float64) []lp.Entry {
	var entries []lp.Entry
	row := m.heedRow()
	for _, rows := range m.heeds.words {
		if holdsAny(rows, counts) {
			entries = append(entries, lp.Entry{Row: row, Coef: 1})
		}
		row++
	}
	for _, l := range m.heeds.limits {
		if m.of[l.board] == c {
			n := -float64(m.s.most(l.row, m.demand[l.row]))
			if l.row < len(counts) {
				n += counts[l.row]
			}
			entries = append(entries, lp.Entry{Row: row, Coef: n})
		}
		row++
	}
	return entries
}

// lessAt is what the prices of a board are lowered to, and what that is worth in all; none
// of a part whose price is 0.
func (a *attempt) lessAt(board int, price []column.Value) (lowered []column.Value, worth ceiling.Value) {
	lowered = slices.Clone(price)
	for n, less := range a.less {
		if l := a.dual.m.heeds.limits[n]; l.board == board {
			v := min(column.Value(less), lowered[l.row])
			lowered[l.row] -= v
			worth += ceiling.Value(v) * ceiling.Value(a.s.most(l.row, a.dual.m.demand[l.row]))
		}
	}
	return lowered, worth
}

// look is what a board was found to be worth at prices of its own.
type look struct {
	price []column.Value
	most  ceiling.Value
	sharp bool
	found *copied
}

// heed finds what the k-th board is worth at prices when limits and words are heeded. counts
// is what the cutting makes that it was bounded with; nil where that is not known.
func (a *attempt) heed(w *worker, k int, price []column.Value, counts []int, work int) []look {
	var looks []look
	again := func(price []column.Value) (worth ceiling.Value) {
		lowered, worth := a.lessAt(a.boards[k], price)
		l := a.lookAgain(w, k, lowered, a.enough(k)-worth, work)
		looks = append(looks, l)
		return l.most + worth
	}
	if lowered, _ := a.lessAt(a.boards[k], price); !slices.Equal(lowered, price) {
		a.held[k] = min(a.held[k], again(price))
		counts = looks[0].found.pieces()
	}
	a.without[k] = min(a.without[k], a.held[k])
	if free := a.dual.m.without(price); a.dual.m.ofWords(counts) && !slices.Equal(free, price) {
		a.without[k] = min(a.without[k], again(free))
	}
	return looks
}

// lookAgain looks at the k-th board at prices of its own.
func (a *attempt) lookAgain(w *worker, k int, price []column.Value, enough ceiling.Value, work int) look {
	s, b := a.s, a.boards[k]
	l := look{price: price}
	l.most, l.sharp = w.high.Most(a.ready(b), exactly(price), max(0, enough), work, w.stop)
	w.looks += w.high.Work()
	if l.most > enough && !w.stop() {
		l.found = w.copied(s.quick.board(b), price)
	}
	return l
}

// tell gives the master what a look at the k-th board showed, what the relaxation makes where
// that is known to the end, or else the cut, and remembers what of the cut is wanted. It
// reports whether it was the former.
func (a *attempt) tell(k int, l look) (all bool) {
	b, f := a.boards[k], l.found
	c := rawColumn{board: b, worth: float64(column.FromMoney(f.cut.Worth)), counts: f.cut.Counts}
	if all = l.sharp && f.counts != nil && a.dual.m.alike(a.dual.m.of[b]); all {
		c.worth, c.counts = float64(l.most), f.counts
		for i, n := range f.counts {
			c.worth -= float64(n) * float64(l.price[i])
		}
		a.s.learnLimits(b, f.counts, a.dual.m.demand)
	}
	a.dual.m.offerRaw(c, a.dual.factor(b))
	wanted := a.s.quick.board(b).Trim(&f.cut, l.price, a.dual.m.demand[:len(l.price)])
	a.s.pool.add(b, &wanted)
	return all
}

// exactly is prices as the bounds take them.
func exactly(price []column.Value) []ceiling.Value {
	list := make([]ceiling.Value, len(price))
	for i, v := range price {
		list[i] = ceiling.Value(v)
	}
	return list
}

// largest is the sum of the n largest values of a list, which it sorts.
func largest(n int, list []ceiling.Value) ceiling.Value {
	slices.Sort(list)
	var sum ceiling.Value
	for _, v := range list[max(0, len(list)-n):] {
		sum += v
	}
	return sum
}
