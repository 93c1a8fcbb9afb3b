package main

import (
	"time"

	"github.com/urfave/cli/v2"

	"sawbill/layout"
)

func planCommand() *cli.Command {
	return &cli.Command{
		Name:      "plan",
		Usage:     "which boards to cut, and how: a plan and its drawings",
		UsageText: "sawbill plan --stock FILE --bill FILE [--shop FILE] --job DIR [options]",
		Description: "Writes DIR/plan.json, the steps at the saw in DIR/steps.csv, a drawing of each board\n" +
			"to cut in DIR/boards, DIR/job.png, and all paper of the job in DIR/job.pdf.\n" +
			"A better plan for the same job that is there already is kept, and so is a better\n" +
			"proof of how little another could cost. Ctrl-C ends the thinking; the best plan so\n" +
			"far is written.\n\n" +
			"   sawbill plan --stock rack.csv --bill bill.csv --shop shop.toml --job toolchest\n" +
			"   sawbill plan --stock rack.csv --bill bill.csv --job toolchest --yard --time 1m\n" +
			"   sawbill plan --stock rack.csv --bill bill.csv --job toolchest --time 0 --within 2%\n" +
			"   sawbill plan --stock rack.csv --bill bill.csv --job toolchest --rounds 50 --seed 7",
		Flags: append(problemFlags(),
			&cli.PathFlag{TakesFile: true, Name: "job", Usage: "write the plan and its drawings to `DIR`"},
			&cli.DurationFlag{Name: "time", Value: 10 * time.Second, Usage: "think no longer than `TIME`, such as 30s or 5m; 0 thinks until the plan is proven to be the best, or Ctrl-C"},
			&cli.StringFlag{Name: "within", Value: "0%", Usage: "think no further once the cost is proven to be within `SHARE` of the least, such as 1%"},
			&cli.IntFlag{Name: "rounds", Usage: "think for `N` rounds, however long they take unless --time is given too; the same rounds and seed give the same plan"},
			&cli.Int64Flag{Name: "seed", Usage: "search in another order for each `N`"},
			paperFlag(), byFlag(), jsonFlag(),
		),
		Action: runPlan,
	}
}

func runPlan(c *cli.Context) error {
	if err := checkWords(c, 0, "stock", "bill", "job"); err != nil {
		return err
	}
	o, print, err := drawingOf(c, layout.Print{})
	if err != nil {
		return err
	}
	limits, err := limitsOf(c)
	if err != nil {
		return err
	}
	out := onlyJSON(c)
	problem, err := loadProblem(c)
	if err != nil {
		return err
	}
	unlock, err := job{c.Path("job")}.lock()
	if err != nil {
		return err
	}
	defer unlock()
	job, err := openJob(c.Path("job"))
	if err != nil {
		return err
	}
	plan, stopped, err := limits.solve(c, problem)
	if err != nil {
		return err
	}
	asked := *plan
	asked.Print = print
	kept, err := job.deliver(c, &asked, stopped, o)
	if kept == nil {
		return err
	}
	report := reportOf(kept)
	report.Stopped = stopped
	return writeReport(out, report, err)
}
