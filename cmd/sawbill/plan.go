package main

import (
	"context"
	"os"
	"os/signal"
	"strconv"
	"time"

	"github.com/urfave/cli/v2"

	"sawbill/layout"
	"sawbill/solver"
)

func planCommand() *cli.Command {
	return &cli.Command{
		Name:      "plan",
		Usage:     "which boards to cut, and how: a plan and its drawings",
		UsageText: "sawbill plan --stock FILE --bill FILE [--shop FILE] --job DIR [options]",
		Description: "Writes DIR/plan.json, a drawing of each board to cut in DIR/boards and DIR/job.png.\n" +
			"A better plan for the same job that is there already is kept. Ctrl-C ends the\n" +
			"thinking; the best plan so far is written.\n\n" +
			"   sawbill plan --stock rack.csv --bill bill.csv --shop shop.toml --job toolchest\n" +
			"   sawbill plan --stock rack.csv --bill bill.csv --job toolchest --yard --time 1m\n" +
			"   sawbill plan --stock rack.csv --bill bill.csv --job toolchest --rounds 50 --seed 7",
		Flags: append(problemFlags(),
			&cli.PathFlag{Name: "job", Usage: "write the plan and its drawings to `DIR`"},
			&cli.DurationFlag{Name: "time", Value: 10 * time.Second, Usage: "think no longer than `TIME`, such as 30s or 5m"},
			&cli.IntFlag{Name: "rounds", Usage: "think for `N` rounds, however long they take unless --time is given too; the same rounds and seed give the same plan"},
			&cli.Int64Flag{Name: "seed", Usage: "search in another order for each `N`"},
			paperFlag(),
		),
		Action: runPlan,
	}
}

func runPlan(c *cli.Context) error {
	if err := checkWords(c, 0, "stock", "bill", "job"); err != nil {
		return err
	}
	o, err := paperOf(c)
	if err != nil {
		return err
	}
	limits, err := limitsOf(c)
	if err != nil {
		return err
	}
	problem, err := loadProblem(c)
	if err != nil {
		return err
	}
	job, err := openJob(c.Path("job"))
	if err != nil {
		return err
	}
	plan, err := limits.solve(c, problem)
	if err != nil {
		return err
	}
	return job.deliver(c, plan, o)
}

// limits say how long to think.
type limits struct {
	time   time.Duration // 0: as long as the rounds take
	rounds int           // 0: as many as there is time for
	seed   int64
}

func limitsOf(c *cli.Context) (limits, error) {
	l := limits{c.Duration("time"), c.Int("rounds"), c.Int64("seed")}
	switch {
	case l.time <= 0:
		return l, usageError("--time %q: want more than nothing, such as 30s", l.time.String())
	case l.rounds < 0:
		return l, usageError("--rounds %q: want a whole number that is not negative", strconv.Itoa(l.rounds))
	case l.rounds > 0 && !c.IsSet("time"):
		l.time = 0
	}
	return l, nil
}

// solve thinks until the limits are reached or the user has seen enough.
func (l limits) solve(c *cli.Context, p *layout.Problem) (*layout.Plan, error) {
	ctx, stop := signal.NotifyContext(c.Context, os.Interrupt)
	defer stop()
	context.AfterFunc(ctx, stop) // from then on Ctrl-C ends the program
	if l.time > 0 {
		var cancel context.CancelFunc
		ctx, cancel = context.WithTimeout(ctx, l.time)
		defer cancel()
	}
	bar := newProgress(c.App.ErrWriter, l.rounds, l.time)
	defer bar.done()
	plan, _, err := solver.Solve(ctx, p, solver.Options{Seed: l.seed, Rounds: l.rounds, Observer: bar.observer()})
	return plan, err
}
