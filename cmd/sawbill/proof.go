package main

import (
	"maps"

	"sawbill/layout"
)

// withBetterProof is a plan with what another plan for the same problem proves,
// where that is more: what no plan with the same parts missing can cost less than
// is true of all such plans. A bound above the cost is none. Where nothing
// changes it is plan itself.
func withBetterProof(plan, other *layout.Plan) *layout.Plan {
	own, bound := plan.Totals.Bound, other.Totals.Bound
	switch {
	case bound == nil, own != nil && *own >= *bound, *bound > plan.Totals.Cost, !sameMissing(plan, other):
		return plan
	}
	next := *plan
	next.Totals.Bound = bound
	next.Totals.Prices, next.Totals.PriceBound = other.Totals.Prices, other.Totals.PriceBound
	return &next
}

// sameMissing reports whether two plans leave as many pieces of each part
// unmade.
func sameMissing(a, b *layout.Plan) bool { return maps.Equal(missingOf(a), missingOf(b)) }

func missingOf(p *layout.Plan) map[string]int {
	short := map[string]int{}
	for _, m := range p.Missing {
		short[m.Part] += m.Quantity
	}
	return short
}
