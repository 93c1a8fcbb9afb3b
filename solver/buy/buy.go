package buy

import (
	"context"
	"fmt"
	"slices"

	"sawbill/layout"
	"sawbill/layout/check"
	"sawbill/solver"
)

// Options steer a decision. The zero value works.
type Options struct {
	// Solve are the options of the two long solves. Without Rounds they end after some
	// hundreds, or when ctx does. The Observer hears of plans whose cost is what is paid.
	Solve solver.Options
	// Share gives a context that ends after a share, 0 to 1, of the time that ctx has
	// left; nil: no solve ends before ctx does.
	Share func(ctx context.Context, share float64) (context.Context, context.CancelFunc)
	// Trials is how many other sets of boards are tried at most with each effort; 0 means
	// 40, and less than 0 none.
	Trials int
}

const usualTrials = 40

func (o Options) trials() int {
	if o.Trials == 0 {
		return usualTrials
	}
	return max(0, o.Trials)
}

// efforts are the rounds with which a set of boards is planned before it counts as too
// small: at first few, so that many sets are seen.
func efforts() []int { return []int{8, 40} }

func (o Options) share(ctx context.Context, share float64) (context.Context, context.CancelFunc) {
	if o.Share == nil {
		return context.WithCancel(ctx)
	}
	return o.Share(ctx, share)
}

// Answer is boards to buy.
type Answer struct {
	// Boards are those of the yard, in the order of the stock.
	Boards []*layout.Board
	// Paid is what they cost together.
	Paid layout.Money
	// Bound says that no boards of the yard that leave the same parts missing, or none,
	// cost less together; nil where nothing was proven.
	Bound *layout.Money
	// Plan cuts the rack and these boards, and no other of the yard; it has passed the
	// checker. What it leaves missing the whole yard could not complete, as far as is
	// known.
	Plan *layout.Plan
}

// Decide looks for the cheapest boards of the yard that complete the bill of p
// together with its rack. It stops when ctx ends, when the rounds are used up or when
// nothing can be cheaper, and gives the best that it found. An error is a fault of
// ours.
func Decide(ctx context.Context, p *layout.Problem, o Options) (*Answer, error) {
	d := &decision{asked: p, paid: inYardMoney(p), o: o, failed: map[string]bool{}}
	if err := d.decide(ctx); err != nil {
		return nil, err
	}
	return d.answer()
}

// The shares of the time that is left for the rack alone, for the plan in yard money,
// for the sets from below, and for the ordinary plan.
const (
	shareOfRack     = 0.2
	shareOfPaid     = 0.4
	shareOfBelow    = 0.4
	shareOfOrdinary = 0.2
	shareOfExchange = 0.5
)

// The rounds of the two plans where nothing else bounds them.
const (
	paidRounds     = 400
	ordinaryRounds = 60
)

// step is part of a decision, and the share of the time left that it may take.
type step struct {
	share float64
	do    func(context.Context) error
}

func (d *decision) steps() []step {
	steps := []step{
		{shareOfRack, func(ctx context.Context) error { _, err := d.enough(ctx, nil); return err }},
		{shareOfPaid, func(ctx context.Context) error { return d.solve(ctx, d.paid, paidRounds) }},
		{shareOfBelow, d.fromBelow},
		{shareOfOrdinary, func(ctx context.Context) error { return d.solve(ctx, withYard(d.asked), ordinaryRounds) }},
		{shareOfExchange, d.exchange},
	}
	for _, rounds := range efforts()[1:] {
		again := func(context.Context) error {
			d.effort, d.tried, d.aside, d.failed = rounds, 0, nil, map[string]bool{}
			return nil
		}
		steps = append(steps, step{1, again}, step{shareOfBelow, d.fromBelow}, step{1, d.exchange})
	}
	return steps
}

func (d *decision) decide(ctx context.Context) error {
	d.effort = efforts()[0]
	for _, step := range d.steps() {
		if d.settled() {
			return nil
		}
		own, cancel := d.o.share(ctx, step.share)
		err := step.do(own)
		cancel()
		if err != nil {
			return err
		}
	}
	return nil
}

// decision is what is known while a decision is made.
type decision struct {
	asked, paid *layout.Problem
	o           Options
	best        *layout.Plan // for paid
	bound       *layout.Money
	boundFor    []layout.Missing // what is missing of the plans that bound speaks of
	effort      int              // rounds of a trial
	tried       int              // sets, with this effort
	failed      map[string]bool  // by set of boards: it was tried in vain with this effort
	needs       []solver.Requirement
	aside       [][]string // sets of which nothing could be shown with this effort
}

// solve solves a problem that has the boards and the bill of the one that was asked,
// and keeps the best of its plans, by what is paid at the yard. rounds bound it where
// the options do not.
func (d *decision) solve(ctx context.Context, p *layout.Problem, rounds int) error {
	o := d.o.Solve
	if o.Rounds == 0 {
		o.Rounds = rounds
	}
	next := o.Observer
	if p != d.paid {
		next = nil // it hears of what is paid alone
	}
	o.Observer = &listener{d, next}
	plan, _, err := solver.Solve(ctx, p, o)
	if err != nil {
		return err
	}
	d.take(plan)
	if p == d.paid {
		d.bound, d.boundFor = plan.Totals.Bound, plan.Missing
	}
	return nil
}

// take keeps a plan if it is better than the best.
func (d *decision) take(plan *layout.Plan) {
	if again := recut(d.paid, plan); d.best == nil || again.Score().Compare(d.best.Score()) < 0 {
		d.best = again
	}
}

// settled reports whether nothing can be cheaper.
func (d *decision) settled() bool {
	if d.best == nil {
		return false
	}
	b := d.boundOfBest()
	return len(d.best.Missing) == 0 && (d.best.Totals.Cost == 0 || b != nil && *b >= d.best.Totals.Cost)
}

// boundOfBest is the bound if it speaks of the best plan.
func (d *decision) boundOfBest() *layout.Money {
	same := slices.EqualFunc(d.boundFor, d.best.Missing, func(a, b layout.Missing) bool {
		return a.Part == b.Part && a.Quantity == b.Quantity
	})
	switch {
	case len(d.best.Missing) == 0 && d.best.Totals.Cost == 0:
		return new(layout.Money)
	case !same:
		return nil
	}
	return d.bound
}

// answer makes the best plan one of the problem that was asked.
func (d *decision) answer() (*Answer, error) {
	a := &Answer{Paid: d.best.Totals.Cost, Bound: d.boundOfBest()}
	var marks []string
	for _, b := range d.best.Boards {
		if board := d.asked.Board(b.Board); board.Source == layout.Yard {
			a.Boards, marks = append(a.Boards, board), append(marks, board.Mark)
		}
	}
	a.Plan = recut(only(d.asked, marks), d.best)
	if faults := check.Plan(a.Plan); len(faults) > 0 {
		return nil, fmt.Errorf("buy: seed %d made a plan that fails its check: %v", d.o.Solve.Seed, faults[0])
	}
	return a, nil
}

// listener hears of plans, and passes on what is heard.
type listener struct {
	d    *decision
	next solver.Observer
}

// Improved keeps the best plan by what is paid.
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
	if l.next != nil {
		l.next.Round(round)
	}
}
