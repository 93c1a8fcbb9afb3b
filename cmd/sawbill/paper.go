package main

import (
	"strings"

	"github.com/urfave/cli/v2"

	"sawbill/layout"
	"sawbill/render"
)

func paperFlag() cli.Flag {
	return &cli.StringFlag{Name: "paper", Value: "letter", Usage: "draw for sheets of `PAPER`: letter or a4"}
}

// drawingOf reads --paper and --by.
func drawingOf(c *cli.Context) (render.Options, error) {
	o, err := paperOf(c)
	if err != nil {
		return o, err
	}
	o.Order, err = orderOf(c)
	return o, err
}

// paperOf reads --paper.
func paperOf(c *cli.Context) (render.Options, error) {
	switch strings.ToLower(c.String("paper")) {
	case "letter":
		return render.Options{Paper: render.Letter}, nil
	case "a4":
		return render.Options{Paper: render.A4}, nil
	}
	return render.Options{}, badWord("paper", c.String("paper"), []string{"letter", "a4"})
}

func unitsFlag() cli.Flag {
	return &cli.StringFlag{Name: "units", Usage: "write lengths in `UNIT`: in or mm; otherwise as the plan's shop does"}
}

// inUnits reads --units and gives the plan as it should be drawn: its lengths
// stay as they are and are only written in another way.
func inUnits(c *cli.Context, plan *layout.Plan) (*layout.Plan, error) {
	shop := *plan.Problem.Shop
	switch strings.ToLower(c.String("units")) {
	case "":
		return plan, nil
	case "in":
		shop.Units = layout.Inches
	case "mm":
		shop.Units = layout.Millimetres
	default:
		return nil, badWord("units", c.String("units"), []string{"in", "mm"})
	}
	shown := *plan
	shown.Problem.Shop = &shop
	return &shown, nil
}

// badWord says that a flag was given a word that it does not know.
func badWord(flag, word string, known []string) error {
	return usageError("--%s %q: %s", flag, word, layout.WantOneOf(word, known))
}
