package main

import (
	"fmt"
	"io"

	"github.com/urfave/cli/v2"

	"sawbill/layout/files"
	"sawbill/layout/record"
)

func restockCommand() *cli.Command {
	return &cli.Command{
		Name:      "restock",
		Usage:     "write the stock as it is after the cutting",
		UsageText: "sawbill restock --job DIR --out FILE [--now]",
		Description: "Boards that the job cuts are gone, and each offcut is a row with its own mark, its\n" +
			"true size, its faces and edges as they then are, and the defects that it carries.\n" +
			"With --now only what was told to be cut is cut.\n\n" +
			"   sawbill restock --job toolchest --out stock.csv",
		Flags: []cli.Flag{
			jobFlag(), &cli.PathFlag{TakesFile: true, Name: "out", Usage: "write the stock to `FILE`"},
			&cli.BoolFlag{Name: "now", Usage: "the stock as it now is: what was told to be cut is cut, and nothing else"},
		},
		Action: runRestock,
	}
}

func runRestock(c *cli.Context) error {
	if err := checkWords(c, 0, "job", "out"); err != nil {
		return err
	}
	j := job{c.Path("job")}
	plan, err := readPlan(j.planPath())
	if err != nil {
		return err
	}
	if err := checkPlan(c, j.planPath(), plan); err != nil {
		return err
	}
	boards, _ := record.After(plan)
	if c.Bool("now") {
		boards, _ = record.Now(plan)
	}
	err = replace(c.Path("out"), func(w io.Writer) error { return files.WriteStock(w, plan.Problem.Shop, boards) })
	if err != nil {
		return err
	}
	fmt.Fprintf(c.App.Writer, "%s: %s\n", c.Path("out"), count(len(boards), "board"))
	return nil
}
