package main

import (
	"fmt"

	"github.com/urfave/cli/v2"

	"sawbill/layout"
	"sawbill/layout/record"
)

func measuredCommand() *cli.Command {
	length := func(name, usage string) cli.Flag { return &cli.StringFlag{Name: name, Usage: usage} }
	return &cli.Command{
		Name:      "measured",
		Usage:     "tell that a board, a blank or a strip measures otherwise than planned",
		UsageText: "sawbill measured --job DIR [--thickness T] [--width W] [--length L] [options] NAME",
		ArgsUsage: "the mark of a board, or a name as it stands on the wood",
		Description: "Sizes are written as in the stock file; what is not said is as planned. What still fits\n" +
			"into the piece stays; where nothing does it is a board of the stock, of that size.\n\n" +
			"   sawbill measured --job toolchest --thickness 11/16 E4-2\n" +
			"   sawbill measured --job toolchest --crook 3/8 A3",
		Flags: append(changeFlags(),
			length("thickness", "it is `T` thick"), length("width", "it is `W` wide, at the butt"),
			length("tip-width", "it is `W` wide at the tip; otherwise as wide as at the butt"), length("length", "it is `L` long"),
			length("bow", "its largest `GAP` along the face"), length("crook", "its largest `GAP` along the edge"),
			length("cup", "its largest `GAP` across the face"), length("twist", "the `LIFT` of its fourth corner"),
		),
		Action: runMeasured,
	}
}

func runMeasured(c *cli.Context) error {
	words, err := jobWords(c, 1, "what was measured")
	if err != nil {
		return err
	}
	if len(words) > 1 {
		return usageError("%q is one word too many", words[1]).withHint(seeHelp(c))
	}
	return change(c, func(d *record.Draft) error {
		sizes, err := sizesOf(c, d.Shop())
		if err != nil {
			return err
		}
		return d.Measured(words[0], sizes)
	})
}

// sizesOf reads the flags of measured.
func sizesOf(c *cli.Context, shop *layout.Shop) (record.Sizes, error) {
	var s record.Sizes
	var warp record.Warp
	said := false
	for _, f := range []struct {
		name string
		to   *layout.Length
		gap  bool
	}{
		{"thickness", &s.Thickness, false}, {"width", &s.Width, false}, {"tip-width", &s.TipWidth, false}, {"length", &s.Length, false},
		{"bow", &warp.Bow, true}, {"crook", &warp.Crook, true}, {"cup", &warp.Cup, true}, {"twist", &warp.Twist, true},
	} {
		text := c.String(f.name)
		if text == "" {
			continue
		}
		l, err := layout.ParseLength(text, shop.Units)
		if err != nil {
			return s, fmt.Errorf("--%s: %w", f.name, err)
		}
		if l == 0 && !f.gap {
			return s, fmt.Errorf("--%s %q: want more than 0", f.name, text)
		}
		*f.to, said = l, true
		if f.gap {
			s.Warp = &warp
		}
	}
	if !said {
		return s, fmt.Errorf("say what it measures, such as --thickness 11/16")
	}
	return s, nil
}
