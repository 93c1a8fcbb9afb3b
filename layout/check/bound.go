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
		switch part := j.part(name); {
		case part == nil:
			note("", "", "prices name %q, which the bill does not ask for", name)
		case part.Set != "":
			note("", "", "the price of %s is for one piece; in a set there is one for each number of slices", name)
		}
		if t.Prices[name] < 0 {
			note("", "", "the price of %s is negative: %v", name, t.Prices[name])
		}
	}
	stripPrices(j, note)
}

// stripPrices are for rows of sets and not negative.
func stripPrices(j *job, note note) {
	prices := j.plan.Totals.StripPrices
	for _, name := range slices.Sorted(maps.Keys(prices)) {
		if part := j.part(name); part == nil || part.Set == "" {
			note("", "", "prices of strips name %q, which is no row of a set", name)
		}
		for _, k := range slices.Sorted(maps.Keys(prices[name])) {
			if m := prices[name][k]; m < 0 {
				note("", "", "the price of %s with %d slices is negative: %v", name, k, m)
			}
		}
	}
}
