package main

import (
	"fmt"
	"strconv"
	"strings"
	"text/tabwriter"

	"github.com/urfave/cli/v2"

	"sawbill/layout"
	"sawbill/layout/files"
	"sawbill/layout/record"
	"sawbill/layout/steps"
)

func historyCommand() *cli.Command {
	return &cli.Command{
		Name:      "history",
		Usage:     "list the revisions of a job and what made them",
		UsageText: "sawbill history --job DIR [--json]",
		Description: "The present revision comes last.\n\n" +
			"   sawbill history --job toolchest",
		Flags:  []cli.Flag{jobFlag(), jsonFlag()},
		Action: runHistory,
	}
}

func runHistory(c *cli.Context) error {
	if err := checkWords(c, 0, "job"); err != nil {
		return err
	}
	plans, err := job{c.Path("job")}.revisions()
	if err != nil {
		return err
	}
	if out := onlyJSON(c); out != nil {
		var reports []files.Report
		for _, p := range plans {
			r := reportOf(p)
			r.Broken = brokenRules(p)
			reports = append(reports, r)
		}
		return files.WriteReports(out, reports)
	}
	t := tabwriter.NewWriter(c.App.Writer, 0, 0, 2, ' ', 0)
	fmt.Fprintln(t, "revision\tmade\tcheck word\tcut\tto cut\tmissing\twhat")
	for _, p := range plans {
		fmt.Fprintf(t, "%d\t%s\t%s\t%d\t%d\t%d\t%s\n", p.Revision, p.Made.Format("2006-01-02 15:04"), steps.CheckWord(p),
			cutPieces(p), toCut(p), missingPieces(p), whatMade(p))
	}
	return t.Flush()
}

func cutPieces(p *layout.Plan) int {
	if p.Record == nil {
		return 0
	}
	return len(p.Record.Cut)
}

// whatMade is what was told when a revision was made, in a few words.
func whatMade(p *layout.Plan) string {
	if p.Record == nil {
		return "planned"
	}
	return strings.Join(p.Record.Told, "; ")
}

func backCommand() *cli.Command {
	return &cli.Command{
		Name:      "back",
		Usage:     "take the last change of a job back, or go back to a revision",
		UsageText: "sawbill back --job DIR [--to N]",
		Description: "The earlier revision becomes the next one: nothing is lost, and to go back is a change\n" +
			"like any other. What was told of cuts since is told no more; wood that is cut is cut\n" +
			"all the same, so go back only where what was told was wrong.\n\n" +
			"   sawbill back --job toolchest\n" +
			"   sawbill back --job toolchest --to 3",
		Flags:  []cli.Flag{jobFlag(), &cli.IntFlag{Name: "to", Usage: "go back to revision `N`; otherwise to the one before"}, paperFlag(), byFlag(), jsonFlag()},
		Action: runBack,
	}
}

func runBack(c *cli.Context) error {
	if err := checkWords(c, 0, "job"); err != nil {
		return err
	}
	return revise(c, func(j job, former *layout.Plan) (*layout.Plan, error) {
		to := c.Int("to")
		if !c.IsSet("to") {
			to = record.Before(former)
		}
		plans, err := j.revisions()
		if err != nil {
			return nil, err
		}
		var known []string
		for _, p := range plans[:len(plans)-1] {
			if p.Revision == to {
				if err := checkPlan(c, "revision "+strconv.Itoa(to), p); err != nil {
					return nil, err
				}
				return record.Back(p, former), nil
			}
			known = append(known, strconv.Itoa(p.Revision))
		}
		if len(known) == 0 {
			return nil, usageError("revision %d is the first of this job", former.Revision)
		}
		return nil, usageError("there is no revision %d to go back to", to).withHint("there are " + strings.Join(known, ", "))
	})
}
