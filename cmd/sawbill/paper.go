package main

import (
	"cmp"
	"strings"

	"github.com/urfave/cli/v2"

	"sawbill/layout"
	"sawbill/layout/steps"
	"sawbill/render"
)

func paperFlag() cli.Flag {
	return &cli.StringFlag{Name: "paper", Value: "letter", Usage: "draw for sheets of `PAPER`: letter or a4"}
}

// drawingOf reads --paper and --by; what is not said is as it was when the sheets of
// a plan were asked for last. It gives the words for next time, too.
func drawingOf(c *cli.Context, last layout.Print) (render.Options, layout.Print, error) {
	now := layout.Print{Paper: said(c, "paper", last.Paper), Order: said(c, "by", last.Order)}
	o, err := paperNamed(now.Paper)
	if err != nil {
		return o, now, err
	}
	o.Order, err = orderNamed(now.Order)
	return o, now, err
}

// drawnLast is how the sheets of a plan were asked for last.
func drawnLast(last layout.Print) (o render.Options, err error) {
	if o, err = paperNamed(cmp.Or(last.Paper, "letter")); err == nil {
		o.Order, err = orderNamed(cmp.Or(last.Order, steps.ByBoard.String()))
	}
	return o, err
}

// said is the word of a flag, or what stands for it where it was not said.
func said(c *cli.Context, flag, otherwise string) string {
	if c.IsSet(flag) || otherwise == "" {
		return strings.ToLower(c.String(flag))
	}
	return otherwise
}

// paperOf reads --paper.
func paperOf(c *cli.Context) (render.Options, error) { return paperNamed(c.String("paper")) }

func paperNamed(word string) (render.Options, error) {
	switch strings.ToLower(word) {
	case "letter":
		return render.Options{Paper: render.Letter}, nil
	case "a4":
		return render.Options{Paper: render.A4}, nil
	}
	return render.Options{}, badWord("paper", word, []string{"letter", "a4"})
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
