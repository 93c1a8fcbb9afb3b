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
const mostLimits = 300

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

// variants are prices to seek cuts at: these, and where words are heeded the same of which
// pieces of a word are worth nothing, for most boards give none.
func (m *master) variants(price []column.Value) [][]column.Value {
	list := [][]column.Value{price}
	if len(m.heeds.words) > 0 {
		free := slices.Clone(price)
		for _, rows := range m.heeds.words {
			for _, i := range rows {
				free[i] = 0
			}
		}
		list = append(list, free)
	}
	return list
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

// lessAt is what the prices of a board are lowered by, and what that is worth in all; none
// of a part whose price is 0.
func (a *attempt) lessAt(board int, price []column.Value) (lowered []column.Value, worth ceiling.Value) {
	lowered = price
	for n, less := range a.less {
		l := a.dual.m.heeds.limits[n]
		v := min(column.Value(less), price[l.row])
		if l.board != board || v <= 0 {
			continue
		}
		if worth == 0 {
			lowered = slices.Clone(price)
		}
		lowered[l.row] -= v
		worth += ceiling.Value(v) * ceiling.Value(a.s.most(l.row, a.dual.m.demand[l.row]))
	}
	return lowered, worth
}

// heeding is a look at a board at prices of its own.
type heeding struct {
	price []column.Value
	most  ceiling.Value
	found *copied
}

// heed finds what the k-th board is worth at prices when limits and words are heeded. counts
// is what the cutting makes that it was bounded with; nil where that is not known.
func (a *attempt) heed(w *worker, k int, price []column.Value, counts []int, work int) []heeding {
	var looks []heeding
	lowered, worth := a.lessAt(a.boards[k], price)
	if worth > 0 {
		h := a.lookAgain(w, k, lowered, a.enough(k)-worth, work)
		looks, counts = append(looks, h), h.found.pieces()
		a.held[k] = min(a.held[k], h.most+worth)
	}
	a.without[k] = min(a.without[k], a.held[k])
	free := slices.Clone(price)
	gives := false
	for _, rows := range a.dual.m.heeds.words {
		gives = gives || counts == nil || holdsAny(rows, counts)
		for _, i := range rows {
			free[i] = 0
		}
	}
	if lowered, worth = a.lessAt(a.boards[k], free); gives && !slices.Equal(free, price) {
		h := a.lookAgain(w, k, lowered, a.enough(k)-worth, work)
		looks = append(looks, h)
		a.without[k] = min(a.without[k], h.most+worth)
	}
	return looks
}

// lookAgain looks at the k-th board at prices of its own.
func (a *attempt) lookAgain(w *worker, k int, price []column.Value, enough ceiling.Value, work int) heeding {
	s, b := a.s, a.boards[k]
	h := heeding{price: price}
	h.most, _ = w.high.Most(ceiling.New(s.p, &s.p.Stock[b]), exactly(price), max(0, enough), work, w.stop)
	w.looks += w.high.Work()
	if h.most > enough && !w.stop() {
		h.found = w.copied(s.quick.board(b), price)
	}
	return h
}

// tell gives the master what a look at the k-th board showed, where that tells everything,
// and remembers what of the cut is wanted.
func (a *attempt) tell(k int, h heeding) {
	b, f := a.boards[k], h.found
	if a.dual.m.alike(a.dual.m.of[b]) && f.counts != nil {
		a.dual.m.offerRaw(rawColumn{board: b, worth: residue(h.most, f.counts, h.price), counts: f.counts}, a.dual.factor(b))
		a.s.learnLimits(b, f.counts, a.dual.m.demand)
	}
	wanted := a.s.quick.board(b).Trim(&f.cut, h.price, a.dual.m.demand[:len(h.price)])
	a.s.pool.add(b, &wanted)
}

// residue is what a board is worth beside its pieces.
func residue(most ceiling.Value, counts []int, price []column.Value) float64 {
	worth := column.Value(most)
	for i, n := range counts {
		worth -= column.Value(n) * price[i]
	}
	return float64(worth)
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
