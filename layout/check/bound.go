package check

import (
	"maps"
	"slices"
)

// bound: a lower bound is no more than the cost and no less than what the
// prices alone prove; prices are for parts of the bill and not negative. That
// the prices prove what they claim is beyond this package.
func bound(j *job, note note) {
	t := &j.plan.Totals
	if t.Bound != nil && *t.Bound > t.Cost {
		note("", "", "the bound %v is more than the cost %v", *t.Bound, t.Cost)
	}
	if t.PriceBound != nil {
		switch {
		case t.Prices == nil:
			note("", "", "price_bound is given without the prices that prove it")
		case t.Bound == nil:
			note("", "", "the prices prove %v, but no bound is given", *t.PriceBound)
		case *t.Bound < *t.PriceBound:
			note("", "", "the bound %v is less than the %v that the prices prove", *t.Bound, *t.PriceBound)
		}
	}
	for _, name := range slices.Sorted(maps.Keys(t.Prices)) {
		if j.part(name) == nil {
			note("", "", "prices name %q, which the bill does not ask for", name)
		}
		if t.Prices[name] < 0 {
			note("", "", "the price of %s is negative: %v", name, t.Prices[name])
		}
	}
}
