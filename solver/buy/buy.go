package buy

import (
	"context"

	"sawbill/layout"
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
	d := newDecision(p, o)
	for _, step := range d.steps() {
		if d.settled() {
			break
		}
		own, cancel := o.share(ctx, step.share)
		err := step.do(own)
		cancel()
		if err != nil {
			return nil, err
		}
	}
	return d.answer()
}

// efforts are the rounds with which a set of boards is planned before it counts as too
// small: at first few, so that many sets are seen.
func efforts() []int { return []int{8, 40} }

// step is part of a decision, and the share of the time left that it may take.
type step struct {
	share float64
	do    func(context.Context) error
}

// steps are the rack alone, the plan in yard money, the sets from below, the ordinary
// plan and the exchange of boards; then sets are tried with more effort.
func (d *decision) steps() []step {
	steps := []step{
		{0.2, d.rackAlone}, {0.75, d.solvePaid}, {0.4, d.fromBelow}, {0.3, d.solveOrdinary}, {0.5, d.exchange},
	}
	for _, rounds := range efforts()[1:] {
		again := func(context.Context) error {
			d.begin(rounds)
			return nil
		}
		steps = append(steps, step{1, again}, step{0.4, d.fromBelow}, step{1, d.exchange})
	}
	return steps
}
