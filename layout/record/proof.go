package record

import (
	"slices"

	"sawbill/layout"
)

// proof is a plan for the rest of a draft that cuts nothing but boards that are being
// cut, with the prices that prove what such plans cost at least.
type proof struct {
	rest *rest
	plan *layout.Plan // nil where there is nothing to plan, or nothing to plan it from
}

// state writes into the totals of a draft's plan what is proven of it: of all plans
// with the same missing that leave the boards which are being cut as they are, and
// complete the same copies of glue-ups that are begun on these or are cut,
//
//	cost >= fixed + sum of d * p - profits,
//
// where fixed is what the boards that are being cut cost, less their offcuts, d what
// the other boards are to give, p its prices, and profits what they can bring at these
// prices beyond their own cost. The last is what the proof of the rest leaves of the
// worth of what it makes itself.
func (q proof) state(plan, fixed *layout.Plan) {
	parts, strips := q.prices()
	var profits layout.Money
	if q.priced() {
		profits = worth(q.plan, nil, q.plan.Totals.Prices, q.plan.Totals.StripPrices) - *q.plan.Totals.PriceBound
	}
	improve(plan, fixed, parts, strips, profits)
	t := &plan.Totals
	if q.plan == nil || q.plan.Totals.Bound == nil || !q.sameMade(plan, fixed) {
		return
	}
	if more := fixed.Totals.Cost + *q.plan.Totals.Bound; t.Bound != nil && *t.Bound < more && more <= t.Cost {
		t.Bound = &more
	}
}

// improve states what prices prove, with the profits that boards can bring at them, if
// that is more than the plan states already. A bound above the cost would be a fault of
// ours, and no news.
func improve(plan, fixed *layout.Plan, parts map[string]layout.Money, strips map[string]map[int]layout.Money, profits layout.Money) {
	t := &plan.Totals
	gain := worth(plan, fixed, parts, strips) - profits
	if gain < 0 { // at no prices at all nothing costs less than nothing
		parts, strips, gain = map[string]layout.Money{}, nil, 0
	}
	priced := fixed.Totals.Cost + gain
	if priced > t.Cost || t.PriceBound != nil && priced <= *t.PriceBound {
		return
	}
	bound := priced
	t.Prices, t.StripPrices, t.PriceBound, t.Bound = parts, strips, &priced, &bound
}

// carry states what the prices of the former plan prove of the next one. They do, with
// no more profits than then, where all boards that are free now were free then, and are
// at best what they were.
func (d *Draft) carry(plan, fixed *layout.Plan) {
	then := Open(d.former)
	if anew := then.freed(func(*layout.Board) bool { return true }); anew != nil {
		then = anew
	}
	t := d.former.Totals
	if t.PriceBound == nil || !d.noneBetter(then) {
		return
	}
	was := then.assembled()
	profits := worth(d.former, was, t.Prices, t.StripPrices) - (*t.PriceBound - was.Totals.Cost)
	parts, strips := map[string]layout.Money{}, map[string]map[int]layout.Money{}
	for _, p := range plan.Problem.Bill {
		if price, has := t.Prices[p.Name]; has {
			parts[p.Name] = price
		}
		if prices, has := t.StripPrices[p.Name]; has {
			strips[p.Name] = prices
		}
	}
	improve(plan, fixed, parts, strips, profits)
}

// noneBetter reports whether each board that is free in a draft was free in an earlier
// one and had no defect that it has not now.
func (d *Draft) noneBetter(then *Draft) bool {
	for i := range d.stock {
		now, was := d.stock[i], then.board(d.stock[i].Mark)
		if d.started(now.Mark) {
			continue
		}
		if was == nil || then.started(now.Mark) {
			return false
		}
		for _, defect := range was.Defects {
			if !slices.Contains(now.Defects, defect) {
				return false
			}
		}
		now.Defects = was.Defects
		if !sameBoard(&now, was) {
			return false
		}
	}
	return true
}

func (q proof) priced() bool { return q.plan != nil && q.plan.Totals.PriceBound != nil }

// prices are those of the rest's plan, of strips by their rows and slices. Pieces that
// may come from their own board alone, to match others, have none.
func (q proof) prices() (parts map[string]layout.Money, strips map[string]map[int]layout.Money) {
	parts = map[string]layout.Money{}
	if !q.priced() {
		return parts, nil
	}
	strips = map[string]map[int]layout.Money{}
	raise := func(s strip, price layout.Money) {
		if strips[s.row] == nil {
			strips[s.row] = map[int]layout.Money{}
		}
		strips[s.row][s.slices] = max(strips[s.row][s.slices], price)
	}
	for row, of := range q.plan.Totals.StripPrices {
		for k, price := range of {
			raise(strip{row, k}, price)
		}
	}
	for name, price := range q.plan.Totals.Prices {
		switch s, isStrip := q.rest.strips[name]; {
		case isStrip:
			raise(s, price)
		case !q.rest.held[name]:
			parts[name] = price
		}
	}
	return parts, strips
}

// sameMade reports whether the rest's plan makes what a plan needs beyond what is
// fixed.
func (q proof) sameMade(plan, fixed *layout.Plan) bool {
	own, its := needs(plan, fixed), needs(q.plan, nil)
	for name, s := range q.rest.strips {
		if its.strips[s] += its.parts[name]; its.strips[s] == 0 {
			delete(its.strips, s)
		}
		delete(its.parts, name)
	}
	return own.equal(its)
}

// worth is what a plan makes beyond what is fixed is worth at least at prices.
func worth(plan, fixed *layout.Plan, parts map[string]layout.Money, strips map[string]map[int]layout.Money) layout.Money {
	need := needs(plan, fixed)
	var sum layout.Money
	for name, n := range need.parts {
		sum += parts[name] * layout.Money(n)
	}
	for s, n := range need.strips {
		sum += strips[s.row][s.slices] * layout.Money(n)
	}
	free := plan.Problem
	if fixed != nil {
		free.Stock = slices.DeleteFunc(slices.Clone(free.Stock), func(b layout.Board) bool { return fixed.Board(b.Mark) != nil })
	}
	for _, set := range free.Sets() {
		sum += cheapest(&free, set, need.slices[set.Name], strips)
	}
	return sum
}

// cheapest is the least that new copies of a set with so many slices are worth:
//
//	least(0) = 0, least(n) = min over k of least(max(0, n - k)) + price of a copy of k
func cheapest(p *layout.Problem, set layout.Set, wanted int, prices map[string]map[int]layout.Money) layout.Money {
	least, counts := make([]layout.Money, max(0, wanted)+1), p.SliceCounts(set)
	for n := 1; n < len(least); n++ {
		for i, k := range counts {
			sum := least[max(0, n-k)]
			for _, row := range set.Rows {
				sum += prices[p.Bill[row].Name][k] * layout.Money(p.Bill[row].Quantity)
			}
			if i == 0 || sum < least[n] {
				least[n] = sum
			}
		}
	}
	return least[max(0, wanted)]
}
