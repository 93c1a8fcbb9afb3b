package solver

import (
	"cmp"
	"slices"

	"sawbill/layout"
	"sawbill/solver/internal/column"
)

// first makes a plan at once: each board is priced once, or of boards that are
// alike one, in the order of what their wood costs, short boards before long ones,
// and cut where that gives fair value. What is then still missing is cut from the
// boards passed over, as they were priced as far as that goes; where little of a
// cut is still wanted, its board is priced again, as long as there are no more
// pricings than boards.
func (s *search) first() *state {
	return s.construct(func(a, b int) int {
		x, y := &s.p.Stock[a], &s.p.Stock[b]
		return cmp.Or(cmp.Compare(s.dearness(a), s.dearness(b)), cmp.Compare(x.Length, y.Length))
	}, fairAtFirst, newState(s.p).missing)
}

// second makes another plan in the same way at settled values, the more
// appealing boards first.
func (s *search) second() *state {
	return s.construct(func(a, b int) int { return cmp.Compare(s.appeal[b], s.appeal[a]) }, fairWhenSettled, s.best.missing)
}

// construct cuts boards in an order, those first that give at least fair value
// for money. short is what must be expected to go missing.
func (s *search) construct(order func(a, b int) int, fair float64, short []int) *state {
	st := newState(s.p)
	price := prices(s.p, s.values, short)
	boards := slices.Clone(s.usable)
	slices.SortStableFunc(boards, order)
	w := s.workers[0]
	before := w.bench.Runs
	var passed []int
	var spare []*column.Cut
	same := map[int]*column.Cut{} // what boards alike give as long as nothing is cut
	for _, b := range boards {
		if !wants(st.missing) || w.stop() {
			break
		}
		c := same[s.swift.twin[b]]
		if c == nil {
			cut := w.bench.Within(s.swift.board(b), price, st.missing, 1)
			c = &cut
			same[s.swift.twin[b]] = c
		}
		switch r := w.rate(b, c); {
		case r >= fair:
			st.set(b, c)
			clear(same)
		case r > 0:
			passed, spare = append(passed, b), append(spare, c)
		}
	}
	s.useSpare(st, passed, spare, before)
	return st
}

// The value for money at which a board is cut. Start values are marked up by
// half, so the first is about the usual waste; at settled values hardly any board
// gives more than it costs.
const (
	fairAtFirst     = 0.9
	fairWhenSettled = 0.6
)

// useSpare cuts boards that were passed over while they still make something
// that is missing. before is how many pricings there were before the plan.
func (s *search) useSpare(st *state, passed []int, spare []*column.Cut, before int) {
	w := s.workers[0]
	for k, b := range passed {
		if !wants(st.missing) || w.stop() {
			return
		}
		price := prices(s.p, s.values, st.missing)
		c := s.swift.board(b).Trim(spare[k], price, st.missing)
		if c.Value < spare[k].Value/2 && w.bench.Runs-before < len(s.usable) {
			again := w.bench.Within(s.swift.board(b), price, st.missing, 1)
			if again.Value > c.Value {
				c = again
			}
		}
		if c.Value > 0 {
			st.set(b, &c)
		}
	}
}

// dearness groups boards by their cost for their area.
func (s *search) dearness(i int) int {
	b := &s.p.Stock[i]
	area := float64(b.Length) / 1e6 * float64(b.Width+b.TipWidth) / 2e6
	return int(float64(b.Cost) * 20 / max(area, 1))
}

// usableBoards lists the boards that may give something.
func usableBoards(p *layout.Problem) []int {
	var boards []int
	for i := range p.Stock {
		b := &p.Stock[i]
		for k := range p.Bill {
			part := &p.Bill[k]
			if mayGive(p, part, b) {
				boards = append(boards, i)
				break
			}
		}
	}
	return boards
}

// rate is how much value a cut gives for its money; 0 when it makes nothing.
func (w *worker) rate(board int, c *column.Cut) float64 {
	if c.Value <= 0 {
		return 0
	}
	return float64(c.Value) / max(netValue(w.p, board, c), 1)
}
