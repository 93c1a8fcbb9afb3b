package main

import (
	"strings"

	"github.com/urfave/cli/v2"

	"sawbill/layout/files"
	"sawbill/layout/record"
)

func cutCommand() *cli.Command {
	return &cli.Command{
		Name:      "cut",
		Usage:     "tell what is cut: boards, blanks, strips or single pieces",
		UsageText: "sawbill cut --job DIR NAME...",
		ArgsUsage: "marks of boards, or names as they stand on the wood",
		Description: "What is cut stays cut, whatever is planned later. A board of which all is cut leaves\n" +
			"the stock, and its offcuts are boards of the stock.\n\n" +
			"   sawbill cut --job toolchest E1 A2\n" +
			"   sawbill cut --job toolchest E4-1 E4-2a",
		Flags: changeFlags(),
		Action: func(c *cli.Context) error {
			names, err := jobWords(c, 1, "what is cut")
			if err != nil {
				return err
			}
			return change(c, func(d *record.Draft) error { return d.Cut(names...) })
		},
	}
}

func foundCommand() *cli.Command {
	return &cli.Command{
		Name:      "found",
		Usage:     "tell of a defect that came to light",
		UsageText: "sawbill found --job DIR NAME DEFECTS",
		ArgsUsage: "the board or piece, and the defects",
		Description: "Defects are written as in the stock file. On a board they are measured from its butt\n" +
			"and its reference edge; on a blank, a strip or a piece from the butt end and the edge\n" +
			"toward you of that.\n\n" +
			"   sawbill found --job toolchest E4 \"knot 31..33 x 1-1/2..3\"\n" +
			"   sawbill found --job toolchest E4-2 \"check 0..4; pin 9 x 2 d1/4 /B\"",
		Flags: changeFlags(),
		Action: func(c *cli.Context) error {
			words, err := jobWords(c, 2, "on what it was found, and what")
			if err != nil {
				return err
			}
			return change(c, func(d *record.Draft) error { return found(d, words[0], strings.Join(words[1:], " ")) })
		},
	}
}

func found(d *record.Draft, name, text string) error {
	frame, err := d.Frame(name)
	if err != nil {
		return err
	}
	defects, err := files.ParseDefects(text, frame, d.Shop())
	if err != nil {
		return err
	}
	return d.Found(name, defects)
}

func spoiledCommand() *cli.Command {
	return &cli.Command{
		Name:      "spoiled",
		Usage:     "tell of pieces that are of no use",
		UsageText: "sawbill spoiled --job DIR ID...",
		ArgsUsage: "ids of pieces",
		Description: "They are wanted again. What is left of their wood is stock, of its present size,\n" +
			"where it is large enough to keep.\n\n" +
			"   sawbill spoiled --job toolchest E4-2a",
		Flags: changeFlags(),
		Action: func(c *cli.Context) error {
			ids, err := jobWords(c, 1, "which pieces")
			if err != nil {
				return err
			}
			return change(c, func(d *record.Draft) error { return d.Spoiled(ids...) })
		},
	}
}
