package main

import (
	"context"
	"errors"
	"os"
	"os/signal"
	"strconv"
	"time"

	"github.com/urfave/cli/v2"

	"sawbill/layout"
	"sawbill/solver"
)

// limits say how long to think.
type limits struct {
	time   time.Duration // 0: as long as it takes
	rounds int           // 0: as many as there is time for
	within percent       // of the cost, proven to be enough
	seed   int64
}

func limitsOf(c *cli.Context) (limits, error) {
	l := limits{time: c.Duration("time"), rounds: c.Int("rounds"), seed: c.Int64("seed")}
	switch {
	case l.time < 0:
		return l, usageError("--time %q: want a time such as 30s, or 0 to go on until the plan is proven", l.time.String())
	case l.rounds < 0:
		return l, usageError("--rounds %q: want a whole number that is not negative", strconv.Itoa(l.rounds))
	case l.rounds > 0 && !c.IsSet("time"):
		l.time = 0
	}
	var err error
	if within := c.String("within"); within != "" { // not every command has the flag
		l.within, err = parseWithin(within)
	}
	return l, err
}

// solve thinks until the limits are reached or the user has seen enough. It
// gives the best plan and why it stopped.
func (l limits) solve(c *cli.Context, p *layout.Problem) (plan *layout.Plan, stopped string, err error) {
	var status solver.Status
	var ended error
	err = l.think(c, func(ctx context.Context, o solver.Options) (err error) {
		o.Within = l.within.share()
		plan, status, err = solver.Solve(ctx, p, o)
		ended = ctx.Err()
		return err
	})
	if err != nil {
		return nil, "", err
	}
	return plan, l.stopped(status, ended, plan), nil
}

// think calls do with a context that ends with the time, or when the user has seen
// enough, and with options by which a solve shows its progress.
func (l limits) think(c *cli.Context, do func(context.Context, solver.Options) error) error {
	ctx, end := l.begin(c)
	defer end()
	bar := newProgress(c.App.ErrWriter, l.rounds, l.time)
	defer bar.done()
	return do(ctx, solver.Options{Seed: l.seed, Rounds: l.rounds, Observer: bar.observer()})
}

// begin is a context that ends with the time, or when the user has seen enough. end is
// to be called when the thinking is over.
func (l limits) begin(c *cli.Context) (ctx context.Context, end func()) {
	ctx, stop := signal.NotifyContext(c.Context, os.Interrupt)
	context.AfterFunc(ctx, stop) // from then on Ctrl-C ends the program
	if l.time == 0 {
		return ctx, stop
	}
	ctx, cancel := context.WithTimeout(ctx, l.time)
	return ctx, func() {
		cancel()
		stop()
	}
}

// shareOfTime is a context that ends after a share of the time that another one has
// left; where that has no end in sight, it has none.
func shareOfTime(ctx context.Context, share float64) (context.Context, context.CancelFunc) {
	deadline, limited := ctx.Deadline()
	if !limited {
		return context.WithCancel(ctx)
	}
	return context.WithTimeout(ctx, time.Duration(share*float64(time.Until(deadline))))
}

// stopped says why a solve ended; it is empty where the limits and the proof of
// the plan say it.
func (l limits) stopped(status solver.Status, ended error, plan *layout.Plan) string {
	gap, proven := plan.Totals.Gap()
	switch {
	case status == solver.Near && gap > 0:
		return "within " + l.within.String()
	case status != solver.Stopped:
		return ""
	case errors.Is(ended, context.Canceled):
		return "interrupted"
	case l.within == 0:
		return ""
	case proven && gap <= l.within.share():
		return "after " + l.used(ended) + ", with parts still missing"
	}
	return "after " + l.used(ended) + ", not yet within " + l.within.String()
}

// used is the limit that was reached: the time where that ended the solve.
func (l limits) used(ended error) string {
	if ended != nil {
		return l.time.String()
	}
	return count(l.rounds, "round")
}
