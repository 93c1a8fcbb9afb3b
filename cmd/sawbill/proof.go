package main

import (
	"maps"

	"sawbill/layout"
)

// withBetterProof is a plan with what another plan for the same problem proves,
// where that is more: what no plan with the same parts missing can cost less than
// is true of all such plans. A bound above the cost is none. Prices are taken
// over by themselves, for a search can prove more than they do. Where nothing
// changes it is plan itself.
func withBetterProof(plan, other *layout.Plan) *layout.Plan {
	own, its := plan.Totals, other.Totals
	if its.Bound == nil || *its.Bound > own.Cost || !sameMissing(plan, other) {
		return plan
	}
	bound, prices := more(its.Bound, own.Bound), more(its.PriceBound, own.PriceBound)
	if !bound && !prices {
		return plan
	}
	next := *plan
	if bound {
		next.Totals.Bound = its.Bound
	}
	if prices {
		next.Totals.Prices, next.Totals.StripPrices, next.Totals.PriceBound = its.Prices, its.StripPrices, its.PriceBound
	}
	return &next
}

// more reports whether the first of two bounds, either of which may be none, says
// more.
func more(a, b *layout.Money) bool { return a != nil && (b == nil || *a > *b) }

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
