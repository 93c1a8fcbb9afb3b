package solver

import (
	"sawbill/layout"
	"sawbill/solver/internal/ceiling"
	"sawbill/solver/internal/column"
	"sawbill/solver/internal/lp"
)

// copies is what a proof knows of glue-ups, of a job whose bill has a row for each
// strip with each number of slices that fits a board. A plan makes enough copies of
// any of them, so at prices p of the strips its glue-ups are worth at least
//
//	least of sum over k of n(k) * q(k), n(k) >= 0 whole, sum of k * n(k) >= slices,
//
// where q(k) = sum over the rows of strips in a copy * p(row, k). In the linear
// programme a set is one row more, wanted so often as there are slices, and each
// kind of copy a column, which gives slices and takes strips.
type copies struct {
	sets []copySet
	goal []int        // what is made by row of the bill, none of the strips; then slices by set
	cost layout.Money // of the plan at hand
}

// copySet is the kinds of copies of one set: of lo slices, and of one more each.
type copySet struct {
	lo     int
	groups []*group
}

// goal is what the plans make that a proof is about.
func (s *search) goal() []int {
	if s.copies != nil {
		return s.copies.goal
	}
	return made(s.p, s.best)
}

// atHand is what the plan costs that a proof is to come near to.
func (s *search) atHand() layout.Money {
	if s.copies != nil {
		return s.copies.cost
	}
	return s.best.cost()
}

// offerCopies adds the kinds of copies to a master.
func (m *master) offerCopies() {
	if m.s.copies == nil {
		return
	}
	first := len(m.clusters)
	for k := range m.s.copies.sets {
		set := &m.s.copies.sets[k]
		row := len(m.s.p.Bill) + k
		for _, g := range set.groups {
			gives := min(g.slices, max(1, m.demand[row]))
			entries := []lp.Entry{{Row: first + row, Coef: float64(gives)}}
			for i, strip := range g.rows {
				entries = append(entries, lp.Entry{Row: first + strip, Coef: -float64(g.each[i])})
			}
			m.prog.Add(0, entries)
		}
	}
}

// costs are what copies of a set cost at prices of their strips, by index into its
// groups.
func costs[N ~int64 | ~float64](set *copySet, price []N) []N {
	list := make([]N, len(set.groups))
	for k, g := range set.groups {
		for i, row := range g.rows {
			list[k] += price[row] * N(g.each[i])
		}
	}
	return list
}

// worthMade is what pieces that are made are worth at least, at prices.
func (s *search) worthMade(prices []layout.Money, made []int) ceiling.Value {
	var sum ceiling.Value
	for i, p := range prices {
		sum += ceiling.Value(column.FromMoney(p)) * ceiling.Value(made[i])
	}
	if s.copies == nil {
		return sum
	}
	for k := range s.copies.sets {
		set := &s.copies.sets[k]
		least, _ := cheapest(set.lo, made[len(prices)+k], costs(set, prices))
		sum += ceiling.Value(column.FromMoney(least))
	}
	return sum
}
