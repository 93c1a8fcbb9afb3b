package main

import (
	"context"
	"fmt"
	"os"
	"os/signal"

	"github.com/urfave/cli/v2"

	"sawbill/layout"
	"sawbill/layout/check/bound"
	"sawbill/layout/steps"
)

func verifyCommand() *cli.Command {
	return &cli.Command{
		Name:      "verify",
		Usage:     "check a plan from its file alone",
		UsageText: "sawbill verify [--bound] [--json] DIR|FILE",
		ArgsUsage: "the folder of a job or the file of a plan",
		Description: "Replays every cut and lists each rule that the plan breaks. With --bound it also\n" +
			"proves again, from the prices in the plan alone, what no plan with the same parts\n" +
			"missing can cost less than; a plan that carries no prices, or whose prices do not\n" +
			"prove what it says, is refused with exit code 4. That may take a minute or more for\n" +
			"a large job; Ctrl-C ends it.\n\n" +
			"   sawbill verify toolchest\n" +
			"   sawbill verify --bound toolchest\n" +
			"   sawbill verify toolchest/plan-1.json",
		Flags: []cli.Flag{
			&cli.BoolFlag{Name: "bound", Usage: "prove the lower bound again from the plan's prices"},
			jsonFlag(),
		},
		Action: runVerify,
	}
}

func runVerify(c *cli.Context) error {
	if err := checkWords(c, 1); err != nil {
		return err
	}
	if !c.Args().Present() {
		return usageError("say which plan to verify").withHint(seeHelp(c))
	}
	path := c.Args().First()
	if info, err := os.Stat(path); err == nil && info.IsDir() {
		path = job{path}.planPath()
	}
	plan, err := readPlan(path)
	if err != nil {
		return err
	}
	out := onlyJSON(c)
	report := reportOf(plan)
	if report.Broken = brokenRules(plan); len(report.Broken) > 0 {
		return writeReport(out, report, checkPlan(c, path, plan))
	}
	fmt.Fprintf(c.App.Writer, "%s: valid\n", path)
	if c.Bool("bound") {
		if err := proveBound(c, path, plan); err != nil {
			return err
		}
	}
	printSummary(c.App.Writer, plan, "")
	return writeReport(out, report, nil)
}

// proveBound proves what a plan says about its price_bound, unless the user has
// waited long enough.
func proveBound(c *cli.Context, path string, plan *layout.Plan) error {
	ctx, stop := signal.NotifyContext(c.Context, os.Interrupt)
	defer stop()
	context.AfterFunc(ctx, stop) // from then on Ctrl-C ends the program
	proof, err := bound.Prove(func() bool { return ctx.Err() != nil }, plan)
	if err != nil {
		return &failure{class: planBroken, err: fmt.Errorf("%s: %w", path, err)}
	}
	if len(proof.Violations) > 0 {
		for _, v := range proof.Violations {
			fmt.Fprintln(c.App.Writer, v)
		}
		return &failure{class: planBroken, err: fmt.Errorf("%s: its bound is not proven", path)}
	}
	fmt.Fprintf(c.App.Writer, "the prices prove: %sno plan with the same parts missing can cost less than %s\n",
		steps.FixedBy(plan.Record), plan.Totals.PriceBound.CentsDown())
	return nil
}
