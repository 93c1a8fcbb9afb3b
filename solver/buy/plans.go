package buy

import (
	"context"

	"sawbill/layout"
	"sawbill/solver"
)

// The rounds of the two plans where nothing else bounds them.
const (
	paidRounds     = 400
	ordinaryRounds = 60
)

// rackAlone tries whether anything need be bought at all.
func (d *decision) rackAlone(ctx context.Context) error {
	_, err := d.enough(ctx, nil)
	return err
}

// shareOfWhole is how much of its time the plan in yard money takes once it leaves
// nothing missing.
const shareOfWhole = 0.5

// solvePaid makes the plan in yard money, and takes over what is proven of it.
func (d *decision) solvePaid(ctx context.Context) error {
	soft, end := d.o.share(ctx, shareOfWhole)
	defer end()
	ctx, stop := context.WithCancel(ctx)
	defer stop()
	o := d.o.Solve
	o.Observer = &listener{d: d, next: o.Observer, round: func() {
		if soft.Err() != nil && d.whole() {
			stop()
		}
	}}
	plan, err := d.solve(ctx, d.paid, paidRounds, o)
	if err != nil {
		return err
	}
	d.bound, d.boundFor = plan.Totals.Bound, plan.Missing
	return nil
}

// solveOrdinary makes the plan that anybody would make who may buy, so that no boards
// are bought that cost more than that would.
func (d *decision) solveOrdinary(ctx context.Context) error {
	o := d.o.Solve
	o.Observer = &listener{d: d} // nobody else hears: its cost is not what is paid
	_, err := d.solve(ctx, withYard(d.asked), ordinaryRounds, o)
	return err
}

// solve solves a problem that has the boards and the bill of the one that was asked,
// and keeps the best of its plans. rounds bound it where the options do not.
func (d *decision) solve(ctx context.Context, p *layout.Problem, rounds int, o solver.Options) (*layout.Plan, error) {
	if o.Rounds == 0 {
		o.Rounds = rounds
	}
	plan, _, err := solver.Solve(ctx, p, o)
	if err == nil {
		d.take(plan)
	}
	return plan, err
}

// listener hears of plans, and passes on what is heard.
type listener struct {
	d     *decision
	next  solver.Observer // nil: nobody
	round func()          // nil: nothing is done
}

// Improved keeps the best plan by what is paid: the last pass of a solve may spend a
// little on tidiness.
func (l *listener) Improved(round int, plan *layout.Plan) {
	l.d.take(plan)
	if l.next != nil {
		l.next.Improved(round, plan)
	}
}

// Proven passes on what is proven.
func (l *listener) Proven(round int, bound layout.Money) {
	if l.next != nil {
		l.next.Proven(round, bound)
	}
}

// Round passes the round on.
func (l *listener) Round(round int) {
	if l.round != nil {
		l.round()
	}
	if l.next != nil {
		l.next.Round(round)
	}
}
