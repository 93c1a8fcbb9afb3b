package buy

import (
	"cmp"
	"context"
	"slices"

	"sawbill/layout"
	"sawbill/solver"
)

// exchange leaves out boards of the best set, dearest first, or takes a cheaper one
// for them, as long as that leaves no more missing.
func (d *decision) exchange(ctx context.Context) error {
	for again := true; again; {
		again = false
		have := bought(d.asked, d.best)
		for _, s := range d.swaps(have) {
			if d.tried >= d.o.trials() || ctx.Err() != nil {
				return nil
			}
			marks := s.of(have)
			if d.hopeless(marks, s.price) {
				continue
			}
			enough, err := d.enough(ctx, marks)
			if err != nil {
				return err
			}
			if enough {
				again = true
				break
			}
		}
	}
	return nil
}

// swap is a board that is left out of a set, and another one in its place, or none.
// price is that of the set it gives.
type swap struct {
	out, in string
	price   layout.Money
}

// of is the set that it gives.
func (s swap) of(have []string) []string {
	marks := slices.DeleteFunc(slices.Clone(have), func(mark string) bool { return mark == s.out })
	if s.in != "" {
		marks = append(marks, s.in)
	}
	return marks
}

// swaps are those by which one board is left out of a set, and then those with a
// cheaper board in its place, the cheapest sets first. They are as many as boards are
// had times boards there are, so a set is made of one only when its turn comes.
func (d *decision) swaps(have []string) []swap {
	held := map[string]*layout.Board{}
	var all layout.Money
	for _, mark := range have {
		held[mark] = d.asked.Board(mark)
		all += held[mark].Cost
	}
	var fewer, other []swap
	for _, mark := range have {
		cost := held[mark].Cost
		fewer = append(fewer, swap{mark, "", all - cost})
		for i := range d.asked.Stock {
			b := &d.asked.Stock[i]
			if b.Source == layout.Yard && b.Cost < cost && held[b.Mark] == nil {
				other = append(other, swap{mark, b.Mark, all - cost + b.Cost})
			}
		}
	}
	byPrice := func(a, b swap) int { return cmp.Compare(a.price, b.price) }
	slices.SortStableFunc(fewer, byPrice)
	slices.SortStableFunc(other, byPrice)
	return append(fewer, other...)
}

// hopeless reports whether a set with this price need not be tried: it is known to be
// too small, or proven to be.
func (d *decision) hopeless(marks []string, price layout.Money) bool {
	if b := d.boundOfBest(); b != nil && price < *b || d.failed[d.key(marks)] {
		return true
	}
	if !d.whole() {
		return false
	}
	boards := d.withRack(marks)
	return slices.ContainsFunc(d.needs, func(r solver.Requirement) bool { return r.Refuses(boards) })
}
