package column

import (
	"cmp"
	"slices"

	"sawbill/layout"
)

// relaxRounds is how often the prices of the limits are moved.
const relaxRounds = 40

// relax finds prices for the limits that make the bound low, by subgradient
// steps (Held, Wolfe & Crowder 1974): with u >= 0 the price of a limit,
//
//	bound(u) = best unlimited column at price - u, plus the sum of u * limit,
//
// and the limits that a column breaks say where the bound falls. Every column on
// the way is trimmed to the limits; the best of them is kept.
func (s *limited) relax() {
	at := s.byArea()
	s.bound = 1 << 62
	pace, stale := 1.0, 0
	for round := 0; round < relaxRounds && s.bound >= s.best.Value+s.step && !s.spent(); round++ {
		relaxed, offset := s.relaxedAt(at)
		column := s.b.Best(s.w, relaxed)
		s.work += len(s.w.profiles)
		counts := s.take(column)
		bound := column.Value + offset
		if stale++; bound < s.bound {
			if s.bound-bound > s.bound/2000 {
				stale = 0
			}
			s.bound, s.relaxed, s.offset = bound, relaxed, offset
		}
		if stale > 6 {
			pace, stale = pace/2, 0
		}
		if !s.move(at, counts, pace*float64(min(bound-s.best.Value, bound/20))) {
			break
		}
	}
}

// byArea are the prices of limits that go with the relaxation by area alone: the
// board is filled with the parts that are worth most for their area, as many as
// their limits allow, and what the best of them are worth beyond the density of
// the last is the worth of their limits (Dantzig 1957).
func (s *limited) byArea() []float64 {
	area := make([]float64, len(s.price))
	order := make([]int, 0, len(s.price))
	for i := range s.price {
		area[i] = s.w.areaOf(i)
		if s.price[i] > 0 {
			order = append(order, i)
		}
	}
	density := func(i int) float64 { return float64(s.price[i]) / area[i] }
	slices.SortStableFunc(order, func(i, j int) int { return cmp.Compare(density(j), density(i)) })
	left := float64(s.w.wood.Length) * float64(s.w.wood.Width+s.w.wood.TipWidth) / 2
	last := 0.0
	for _, i := range order {
		if left -= area[i] * float64(s.limits[i]); left <= 0 {
			last = density(i)
			break
		}
	}
	u := make([]float64, len(s.price))
	for _, i := range order {
		if s.binding[i] {
			u[i] = max(0, float64(s.price[i])-last*area[i])
		}
	}
	return u
}

// relaxedAt rounds prices of limits: a wanted part keeps a price of at least 1.
func (s *limited) relaxedAt(u []float64) (relaxed []Value, offset Value) {
	relaxed = make([]Value, len(s.price))
	for i, p := range s.price {
		relaxed[i] = p
		if s.binding[i] && p > 0 {
			cut := max(0, min(Value(u[i]), p-1))
			relaxed[i] -= cut
			offset += cut * Value(s.limits[i])
		}
	}
	return relaxed, offset
}

// move takes a step that would lower the bound by gap were it straight. It
// reports false when there is nowhere to go.
func (s *limited) move(u []float64, counts []int, gap float64) bool {
	slope := make([]float64, len(u))
	sum := 0.0
	for i := range u {
		if !s.binding[i] || s.price[i] == 0 {
			continue
		}
		slope[i] = float64(counts[i] - s.limits[i])
		if slope[i] < 0 && u[i] == 0 {
			slope[i] = 0
		}
		sum += slope[i] * slope[i]
	}
	if sum == 0 {
		return false
	}
	for i := range u {
		u[i] = min(max(0, u[i]+slope[i]*gap/sum), float64(s.price[i]))
	}
	return true
}

// take counts what a column makes, makes the parts critical of which there are
// too many, and keeps it, trimmed to the limits, if it is the best so far.
func (s *limited) take(c Column) []int {
	if c.Root == nil {
		return make([]int, len(s.price))
	}
	counts := s.w.CountParts(c.Root)
	for i, n := range counts {
		s.critical[i] = s.critical[i] || n > s.limits[i]
	}
	left := append([]int(nil), s.limits...)
	s.w.cutSurplus(c.Root, left)
	s.w.dropWaste(c.Root)
	if v := s.w.valueOf(c.Root, s.price); v > s.best.Value {
		s.best = Column{Value: v, Root: c.Root}
	}
	return counts
}

// valueOf adds up a cut tree at some prices.
func (w *Board) valueOf(root *layout.Node, price []Value) Value {
	var sum Value
	root.LeavesByBlank(func(blank, leaf *layout.Node) {
		switch {
		case leaf.Part != "":
			sum += Value(leaf.Pieces()) * price[w.rows[leaf.Part]]
		case leaf.Offcut != "":
			r := w.wood.CleanOffcutIn(blank.Length(), leaf.Rect)
			sum += w.measure.worth(r.X1, r.X2, r.Y1, r.Y2)
		}
	})
	return sum
}
