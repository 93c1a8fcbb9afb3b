package buy

import (
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
