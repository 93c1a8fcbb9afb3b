package main

import (
	"fmt"
	"io"
	"path/filepath"

	"github.com/urfave/cli/v2"

	"sawbill/layout"
	"sawbill/layout/files"
	"sawbill/layout/steps"
)

func byFlag() cli.Flag {
	return &cli.StringFlag{Name: "by", Value: steps.ByBoard.String(), Usage: "number the steps by `ORDER`: board after board, or setup: all cuts at one set-up of a machine together, as far as the wood allows"}
}

// orderNamed is the order of work that --by names.
func orderNamed(word string) (steps.Order, error) {
	switch word {
	case steps.ByBoard.String():
		return steps.ByBoard, nil
	case steps.BySetup.String():
		return steps.BySetup, nil
	}
	return 0, badWord("by", word, []string{steps.ByBoard.String(), steps.BySetup.String()})
}

// writeSteps writes the steps of a whole job to its folder.
func (j job) writeSteps(c *cli.Context, plan *layout.Plan, order steps.Order) error {
	path := filepath.Join(j.dir, "steps.csv")
	err := replace(path, func(w io.Writer) error {
		return files.WriteSteps(w, plan.Problem.Shop, steps.List(plan, order))
	})
	if err == nil {
		fmt.Fprintln(c.App.Writer, path)
	}
	return err
}
