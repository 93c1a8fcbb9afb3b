package main

import (
	"testing"

	"sawbill/layout"
)

// proven is a plan that costs 100 and leaves pieces of a rail missing.
func proven(bound layout.Money, missing ...layout.Missing) *layout.Plan {
	return &layout.Plan{Missing: missing, Totals: layout.Totals{
		Cost: 100, Bound: &bound, PriceBound: &bound, Prices: map[string]layout.Money{"rail": bound},
	}}
}

func TestWithBetterProof(t *testing.T) {
	rails := layout.Missing{Part: "rail", Quantity: 2, Why: "no room"}
	stiles := layout.Missing{Part: "stile", Quantity: 2}
	unproven := &layout.Plan{Totals: layout.Totals{Cost: 100}}
	for _, c := range []struct {
		name        string
		plan, other *layout.Plan
		want        layout.Money
	}{
		{"more", proven(90), proven(95), 95},
		{"the best", proven(90), proven(100), 100},
		{"from nothing", unproven, proven(95), 95},
		{"same parts missing, for another reason", proven(90, rails), proven(95, layout.Missing{Part: "rail", Quantity: 2}), 95},
		// Nothing is taken over.
		{"less", proven(90), proven(85), 90},
		{"nothing proven", proven(90), unproven, 90},
		{"other parts missing", proven(90, rails), proven(95, stiles), 90},
		{"fewer missing", proven(90, rails), proven(95), 90},
		{"more than the cost", proven(90), proven(101), 90},
	} {
		before := c.plan.Totals.Bound
		got := withBetterProof(c.plan, c.other).Totals
		if *got.Bound != c.want || *got.PriceBound != c.want || got.Prices["rail"] != c.want {
			t.Errorf("%s: %v by %v from %v, want %v", c.name, *got.Bound, *got.PriceBound, got.Prices, c.want)
		}
		if c.plan.Totals.Bound != before {
			t.Errorf("%s: the plan itself was changed", c.name)
		}
	}
}

// A search through all plans can prove more than any prices; neither of the two
// proofs is lost to the other.
func TestBoundAndPricesFromTwoPlans(t *testing.T) {
	best := layout.Money(100)
	searched := &layout.Plan{Totals: layout.Totals{Cost: 100, Bound: &best}}
	for name, got := range map[string]*layout.Plan{
		"the bound is taken over":   withBetterProof(proven(90), searched),
		"the prices are taken over": withBetterProof(searched, proven(90)),
	} {
		if b := got.Totals; *b.Bound != 100 || b.PriceBound == nil || *b.PriceBound != 90 || b.Prices["rail"] != 90 {
			t.Errorf("%s: %+v", name, b)
		}
	}
}
