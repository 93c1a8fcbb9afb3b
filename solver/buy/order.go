package buy

import (
	"slices"

	"sawbill/layout"
)

// orders sorts what the plan of the rack leaves missing by the wood to buy for it.
func (a *Advice) orders() []*order {
	var orders []*order
	p := &a.Rack.Problem
	bill := wantedAnew(a.Rack)
	for _, part := range bill {
		w := a.Usual.woodFor(p.Shop, &part, bill)
		if why := a.whyNot(&part, w); why != "" {
			a.Not = append(a.Not, layout.Missing{Part: part.Name, Quantity: part.Quantity, Why: why})
			continue
		}
		part.Species, part.NotFrom, part.Spare = []string{w.species}, nil, 0
		at := slices.IndexFunc(orders, func(r *order) bool {
			return layout.SameSpecies(r.w.species, w.species) && r.w.thickness == w.thickness
		})
		if at < 0 {
			at = len(orders)
			orders = append(orders, &order{w: w, u: &a.Usual, p: layout.Problem{Shop: p.Shop}})
		}
		orders[at].p.Bill = append(orders[at].p.Bill, part)
	}
	return orders
}

// whyNot says why no bought board helps a part; it is empty where one may.
func (a *Advice) whyNot(part *layout.Part, w wood) string {
	switch {
	case len(part.From) > 0:
		return "it may come from the boards alone that its row names"
	case w.species == "":
		return "no one species will do for all that match it"
	case w.thickness == 0:
		return "no board of a usual thickness is thick enough"
	}
	return ""
}

// wantedAnew is a bill of what a plan leaves missing. Of parts that match, all are
// wanted of which any is missing; of a glue-up, the missing slices.
func wantedAnew(plan *layout.Plan) []layout.Part {
	short := map[string]int{}
	again := map[string]bool{}
	for _, m := range plan.Missing {
		short[m.Part] += m.Quantity
		if part := plan.Problem.Part(m.Part); part != nil && part.Match != "" {
			again[part.Match] = true
		}
	}
	var bill []layout.Part
	for _, part := range plan.Problem.Bill {
		switch {
		case part.Set != "" && short[part.Set] > 0:
			part.Slices = short[part.Set]
		case part.Set == "" && part.Match != "" && again[part.Match]:
		case part.Set == "" && short[part.Name] > 0:
			part.Quantity = short[part.Name]
		default:
			continue
		}
		bill = append(bill, part)
	}
	return bill
}

// sum sums the piles of an order up. Where time ended some, only those before the
// first of these count, so that slow ones are not left out.
func (r *order) sum(seed int64) Wanted {
	n := slices.Index(r.done, false)
	if n < 0 {
		n = len(r.done)
	}
	w := Wanted{Species: r.w.species, Thickness: r.w.thickness, Piles: n}
	for i := range r.p.Bill {
		w.Parts = append(w.Parts, r.p.Bill[i].Name)
	}
	var amounts []Amount
	for k, boards := range r.need[:n] {
		if boards == 0 {
			w.Short++
			continue
		}
		amounts = append(amounts, Amount{boards, newPile(r.u, r.w, seed, k).volume(boards)})
	}
	slices.SortFunc(amounts, func(a, b Amount) int { return a.Volume.Cmp(b.Volume) })
	at := func(of, in int) *Amount {
		if k := (n*of+in-1)/in - 1; 0 <= k && k < len(amounts) {
			return &amounts[k]
		}
		return nil
	}
	w.Half, w.Most = at(1, 2), at(9, 10)
	w.Width, w.Length = r.leastSize()
	return w
}
