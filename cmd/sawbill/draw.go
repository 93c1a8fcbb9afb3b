package main

import (
	"fmt"
	"strings"

	"github.com/urfave/cli/v2"

	"sawbill/layout"
	"sawbill/layout/steps"
)

func drawCommand() *cli.Command {
	return &cli.Command{
		Name:      "draw",
		Usage:     "draw a plan again, without planning",
		UsageText: "sawbill draw --job DIR [--paper PAPER] [--units UNIT] [--by ORDER] [MARK...]",
		ArgsUsage: "marks of boards",
		Description: "The plan is checked first. Without marks all its boards are drawn, DIR/job.png and\n" +
			"DIR/job.pdf too, and the steps are written to DIR/steps.csv.\n\n" +
			"   sawbill draw --job toolchest\n" +
			"   sawbill draw --job toolchest --paper a4 E1 A2",
		Flags: []cli.Flag{
			&cli.PathFlag{TakesFile: true, Name: "job", Usage: "the folder `DIR` of the job"},
			paperFlag(), unitsFlag(), byFlag(),
		},
		Action: runDraw,
	}
}

func runDraw(c *cli.Context) error {
	if err := checkWords(c, manyWords, "job"); err != nil {
		return err
	}
	job := job{c.Path("job")}
	plan, err := readPlan(job.planPath())
	if err != nil {
		return err
	}
	o, _, err := drawingOf(c, plan.Print)
	if err != nil {
		return err
	}
	unlock, err := job.lock()
	if err != nil {
		return err
	}
	defer unlock()
	if err := checkPlan(c, job.planPath(), plan); err != nil {
		return err
	}
	shown, err := inUnits(c, plan)
	if err != nil {
		return err
	}
	if !c.Args().Present() {
		return job.redraw(c, plan, shown, o)
	}
	boards, err := namedBoards(shown, c.Args().Slice())
	if err != nil {
		return err
	}
	_, err = job.drawBoards(c, shown, boards, o)
	if err == nil {
		fmt.Fprintln(c.App.Writer, "caution:", steps.SafetyFirst)
	}
	return err
}

// namedBoards finds the boards with these marks among those that a plan cuts.
func namedBoards(plan *layout.Plan, marks []string) ([]*layout.BoardPlan, error) {
	var known []string
	for _, b := range plan.Boards {
		known = append(known, b.Board)
	}
	var boards []*layout.BoardPlan
	for _, mark := range marks {
		b := plan.Board(mark)
		if b == nil {
			return nil, usageError("the plan cuts no board marked %q", mark).
				withHint("it cuts " + strings.Join(known, ", "))
		}
		boards = append(boards, b)
	}
	return boards, nil
}
