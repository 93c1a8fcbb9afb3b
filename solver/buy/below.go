package buy

import (
	"context"
	"math/bits"
	"slices"

	"sawbill/layout"
	"sawbill/solver"
	"sawbill/solver/internal/choose"
)

// fromBelow comes to the cheapest set of boards from below (Benders 1962): the
// cheapest set that meets all requirements known so far costs no more than any that
// completes the bill. If it can be shown not to complete the bill, that gives a new
// requirement; if it does complete it, nothing is cheaper. A set of which neither can
// be shown is put aside: from then on sets still come in the order of their price, but
// nothing more is proven.
func (d *decision) fromBelow(ctx context.Context) error {
	if !d.whole() {
		return nil
	}
	q := solver.NewRequirements(ctx, withYard(d.asked), d.o.Solve)
	for proven := true; d.tried < d.o.trials()/2 && len(d.refused)/4 < d.o.trials()/2 && ctx.Err() == nil; {
		marks, price, ok := d.cheapest()
		if !ok {
			return nil
		}
		if proven {
			d.raise(price)
		}
		if price >= d.best.Totals.Cost {
			return nil
		}
		if need, refused := q.That(d.withRack(marks)); refused {
			d.needs, d.refused = append(d.needs, need), append(d.refused, marks)
			continue
		}
		enough, err := d.enough(ctx, marks)
		if err != nil || ctx.Err() != nil {
			return err
		}
		if !enough {
			proven = false
			d.aside = append(d.aside, marks)
		}
	}
	return nil
}

const (
	needUnits  = 10_000 // in which a requirement is counted
	belowNodes = 1000   // of one choice
	mostChosen = 1 << 59
)

// cheapest is the cheapest set of boards of the yard that meets all requirements and
// is part of none that was refused, for these are met by a hair once they are rounded,
// or put aside. ok is false when that is not certain.
func (d *decision) cheapest() (marks []string, price layout.Money, ok bool) {
	lots := d.lots
	var demand []int
	var gives []func(lot, n int) int // by demand: what so many boards of a lot give
	for _, r := range d.needs {
		left := r.Wanted
		for _, b := range d.withRack(nil) {
			left -= r.Most[b]
		}
		if left <= 0 {
			continue
		}
		demand = append(demand, needUnits)
		gives = append(gives, func(lot, n int) int { return shareOf(min(r.Most[lots[lot][0]], left)*int64(n), left) })
	}
	for _, set := range slices.Concat(d.refused, d.aside) {
		demand = append(demand, 1)
		gives = append(gives, func(lot, n int) int {
			if n > d.among(lots[lot], set) {
				return 1
			}
			return 0
		})
	}
	return d.choose(demand, gives)
}

func (d *decision) choose(demand []int, gives []func(lot, n int) int) (marks []string, price layout.Money, ok bool) {
	var columns []choose.Column
	var takes []int // by column: how many boards
	var all int64
	for k, lot := range d.lots {
		cost := int64(d.asked.Stock[lot[0]].Cost)
		for n := 1; n <= len(lot); n++ {
			counts := make([]int, len(demand))
			for r := range demand {
				counts[r] = gives[r](k, n)
			}
			columns, takes = append(columns, choose.Column{Group: k, Cost: int64(n) * cost, Counts: counts}), append(takes, n)
		}
		all += cost * int64(len(lot))
	}
	if all >= mostChosen/needUnits/int64(len(demand)+1) {
		return nil, 0, false // sums of penalties could be too large
	}
	penalty := make([]int64, len(demand))
	for r := range penalty {
		penalty[r] = all + 1
	}
	choice, cost, proven := choose.Best(len(d.lots), demand, penalty, columns, nil, belowNodes)
	for k, c := range choice {
		if c < 0 {
			continue
		}
		for _, b := range d.lots[k][:takes[c]] {
			marks = append(marks, d.asked.Stock[b].Mark)
		}
	}
	return marks, layout.Money(cost), proven && cost <= all
}

// shareOf is how much of a whole above 0 a part is, in units, rounded up; at most all
// of them.
func shareOf(part, whole int64) int {
	if part >= whole {
		return needUnits
	}
	hi, lo := bits.Mul64(uint64(part), needUnits)
	units, rest := bits.Div64(hi, lo, uint64(whole))
	if rest > 0 {
		units++
	}
	return int(units)
}
