package main

import (
	"fmt"
	"os"

	"github.com/urfave/cli/v2"
)

func verifyCommand() *cli.Command {
	return &cli.Command{
		Name:      "verify",
		Usage:     "check a plan from its file alone",
		UsageText: "sawbill verify DIR|FILE",
		ArgsUsage: "the folder of a job or the file of a plan",
		Description: "Replays every cut and lists each rule that the plan breaks.\n\n" +
			"   sawbill verify toolchest\n" +
			"   sawbill verify toolchest/plan-1.json",
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
	if err := checkPlan(c, path, plan); err != nil {
		return err
	}
	fmt.Fprintf(c.App.Writer, "%s: valid\n", path)
	printSummary(c.App.Writer, plan)
	return nil
}
