package main

import (
	"strconv"
	"strings"

	"github.com/urfave/cli/v2"

	"sawbill/layout"
	"sawbill/layout/files"
	"sawbill/layout/record"
)

func moreCommand() *cli.Command {
	return &cli.Command{
		Name:      "more",
		Usage:     "ask for more pieces of a part, more slices of a glue-up, or parts that the bill did not have",
		UsageText: "sawbill more --job DIR NAME N\n   sawbill more --job DIR --bill FILE",
		ArgsUsage: "the part or the glue-up, and how many more of it",
		Description: "What is cut and what is planned stays; what is new is planned around it. The file is a\n" +
			"bill of the parts that are new, with the columns that every bill has.\n\n" +
			"   sawbill more --job toolchest \"lid slat\" 2\n" +
			"   sawbill more --job toolchest --bill tray.csv",
		Flags:  append(changeFlags(), &cli.PathFlag{TakesFile: true, Name: "bill", Usage: "the parts that are new, a bill in `FILE`"}),
		Action: runMore,
	}
}

func runMore(c *cli.Context) error {
	if c.Path("bill") != "" {
		if err := checkWords(c, 0, "job"); err != nil {
			return err
		}
		return change(c, func(d *record.Draft) error { return moreParts(c, d) })
	}
	words, err := jobWords(c, 2, "which part, and how many more of it; or --bill FILE")
	if err != nil {
		return err
	}
	last := len(words) - 1
	n, err := strconv.Atoi(words[last])
	if err != nil || n < 1 || n > layout.MaxQuantity {
		return usageError("%q: want how many more, a whole number from 1 to %d", words[last], layout.MaxQuantity)
	}
	return change(c, func(d *record.Draft) error { return d.More(strings.Join(words[:last], " "), n) })
}

// moreParts reads the bill of parts that are new.
func moreParts(c *cli.Context, d *record.Draft) error {
	var source files.Source
	closeAll, err := openSources(c, map[string]*files.Source{"bill": &source})
	defer closeAll()
	if err != nil {
		return err
	}
	parts, warnings, err := files.LoadMore(source, d.Shop(), d.Stock(), d.Yard())
	if err != nil {
		return err
	}
	tellWarnings(c.App.ErrWriter, warnings)
	return d.MoreParts(parts)
}
