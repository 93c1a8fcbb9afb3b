package solver

import (
	"cmp"
	"slices"

	"sawbill/layout"
	"sawbill/solver/internal/column"
)

// first makes a plan at once: each board is priced at most once, in the order of
// what its wood costs, short boards before long ones, and cut where that gives
// fair value; what is then still missing is cut from the boards passed over.
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
	var passed []int
	var spare []*column.Cut
	for _, b := range boards {
		if !wants(st.missing) || w.stop() {
			break
		}
		c := w.bench.Within(s.swift.board(b), price, st.missing, 1)
		switch r := w.rate(b, &c); {
		case r >= fair:
			st.set(b, &c)
		case r > 0:
			passed, spare = append(passed, b), append(spare, &c)
		}
	}
	s.useSpare(st, passed, spare)
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
// that is missing.
func (s *search) useSpare(st *state, passed []int, spare []*column.Cut) {
	for k, b := range passed {
		if !wants(st.missing) {
			return
		}
		price := prices(s.p, s.values, st.missing)
		if c := s.swift.board(b).Trim(spare[k], price, st.missing); c.Value > 0 {
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
			if p.Allows(part, b) && part.CutThickness(p.Shop) <= p.Shop.Available(b) {
				boards = append(boards, i)
				break
			}
		}
	}
	return boards
}
