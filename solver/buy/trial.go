package buy

import (
	"cmp"
	"context"
	"slices"

	"sawbill/layout"
	"sawbill/solver"
)

// enough reports whether the rack and some boards of the yard are found to leave no
// more missing than the best plan, and keeps the plan if it is the cheapest.
func (d *decision) enough(ctx context.Context, marks []string) (bool, error) {
	d.tried++
	ctx, stop := context.WithCancel(ctx)
	defer stop()
	found := &firstAsGood{stop: stop}
	if d.best != nil {
		found.as = missing(d.best)
	}
	o := d.o.Solve
	o.Rounds, o.Unproven, o.Observer = d.effort, true, found
	plan, _, err := solver.Solve(ctx, only(d.asked, marks), o)
	if err != nil {
		return false, err
	}
	if found.plan == nil {
		found.Improved(0, plan)
	}
	if found.plan == nil {
		d.failed[d.key(marks)] = true
		d.take(plan)
		return false, nil
	}
	d.take(found.plan)
	return true, nil
}

// missing is the score of what a plan leaves missing, whatever it costs.
func missing(plan *layout.Plan) layout.Score {
	s := plan.Score()
	s.Cost = 0
	return s
}

// firstAsGood ends a solve with the first plan that leaves no more missing than
// another; at first than a whole one.
type firstAsGood struct {
	as   layout.Score
	stop context.CancelFunc
	plan *layout.Plan
}

// Improved keeps the first plan that is as good.
func (f *firstAsGood) Improved(_ int, plan *layout.Plan) {
	if f.plan == nil && missing(plan).Compare(f.as) <= 0 {
		f.plan = plan
		f.stop()
	}
}

// Proven is of no interest.
func (*firstAsGood) Proven(int, layout.Money) {}

// Round is of no interest.
func (*firstAsGood) Round(int) {}

// exchange leaves out boards of the best set, dearest first, or takes a cheaper one
// for them, as long as that leaves no more missing.
func (d *decision) exchange(ctx context.Context) error {
	for again := true; again; {
		again = false
		for _, marks := range d.neighbours() {
			if d.tried >= d.o.trials() || ctx.Err() != nil {
				return nil
			}
			if d.hopeless(marks) {
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

// neighbours are the sets without one of the best boards, and then those with a
// cheaper board in its place, the cheapest sets first.
func (d *decision) neighbours() [][]string {
	have := bought(d.asked, d.best)
	var fewer, other [][]string
	for k, mark := range have {
		rest := slices.Delete(slices.Clone(have), k, k+1)
		fewer = append(fewer, rest)
		for i := range d.asked.Stock {
			b := &d.asked.Stock[i]
			if b.Source == layout.Yard && b.Cost < d.asked.Board(mark).Cost && !slices.Contains(have, b.Mark) {
				other = append(other, append(slices.Clone(rest), b.Mark))
			}
		}
	}
	byPrice := func(a, b []string) int { return cmp.Compare(d.price(a), d.price(b)) }
	slices.SortStableFunc(fewer, byPrice)
	slices.SortStableFunc(other, byPrice)
	return append(fewer, other...)
}

func (d *decision) price(marks []string) layout.Money {
	var sum layout.Money
	for _, m := range marks {
		sum += d.asked.Board(m).Cost
	}
	return sum
}

// hopeless reports whether a set need not be tried: it is known to be too small, or
// proven to be.
func (d *decision) hopeless(marks []string) bool {
	if b := d.boundOfBest(); d.failed[d.key(marks)] || b != nil && d.price(marks) < *b {
		return true
	}
	if !d.whole() {
		return false
	}
	boards := d.withRack(marks)
	return slices.ContainsFunc(d.needs, func(r solver.Requirement) bool { return r.Refuses(boards) })
}

// withRack are the boards of the rack and some of the yard, by index into the stock.
func (d *decision) withRack(marks []string) []int {
	var boards []int
	for i := range d.asked.Stock {
		if b := &d.asked.Stock[i]; b.Source == layout.Rack || b.Source == layout.Yard && slices.Contains(marks, b.Mark) {
			boards = append(boards, i)
		}
	}
	return boards
}
