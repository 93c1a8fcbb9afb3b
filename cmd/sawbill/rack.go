package main

import (
	"fmt"
	"io"
	"path/filepath"
	"slices"
	"strings"
	"text/tabwriter"

	"github.com/urfave/cli/v2"

	"sawbill/layout"
	"sawbill/layout/files"
)

func rackCommand() *cli.Command {
	return &cli.Command{
		Name:      "rack",
		Usage:     "the stock at a glance, and what looks odd about it",
		UsageText: "sawbill rack --stock FILE [--shop FILE] [--form FILE] [--json]",
		Description: "Footage is exact and, in inches, as hardwood sellers tally it as well. What is\n" +
			"clear lies between the end trims and is free of defects on both faces. What a\n" +
			"board finishes to is told in one blank and in short ones, which lose less to\n" +
			"bow, crook and twist.\n\n" +
			"   sawbill rack --stock rack.csv --shop shop.toml\n" +
			"   sawbill rack --stock rack.csv --form sheet.png",
		Flags: []cli.Flag{
			stockFlag(), shopFlag(), paperFlag(), jsonFlag(),
			&cli.PathFlag{TakesFile: true, Name: "form", Usage: "also draw a sheet to pencil a rack into, as a PNG `FILE`"},
		},
		Action: runRack,
	}
}

func runRack(c *cli.Context) error {
	if err := checkWords(c, 0, "stock"); err != nil {
		return err
	}
	o, err := paperOf(c)
	if err != nil {
		return err
	}
	form := c.Path("form")
	if form != "" && !strings.EqualFold(filepath.Ext(form), ".png") {
		return usageError("--form %q: want a name that ends in .png", form)
	}
	out := onlyJSON(c)
	rack, err := loadRack(c)
	if err != nil {
		return err
	}
	if out != nil {
		err := files.WriteRack(out, layout.Tally(rack.Shop, rack.Boards), layout.Suspicions(rack.Shop, rack.Boards))
		if err != nil {
			return err
		}
	}
	printTally(c.App.Writer, rack.Shop, rack.Boards)
	printFinishes(c.App.Writer, rack.Shop, rack.Boards)
	printSuspicions(c.App.Writer, rack.Shop, rack.Boards)
	if form == "" {
		return nil
	}
	return drawForm(c, form, o)
}

// printTally is a table with a row for each species and thickness, and totals.
func printTally(w io.Writer, shop *layout.Shop, boards []layout.Board) {
	t := tabwriter.NewWriter(w, 0, 0, 2, ' ', 0)
	measure := measureOf(shop)
	fmt.Fprintf(t, "species\tthickness\tfinishes to\tboards\t%s\t%10s\t%5s\n", measure.heads, "worth", "clear")
	say := func(l layout.Length) string { return l.Format(shop.Units, shop.Fraction) }
	row := func(g *layout.TallyGroup, thickness, finishes string) {
		fmt.Fprintf(t, "%s\t%s\t%s\t%6d\t%s\t%10s\t%4.0f%%\n", g.Species, thickness, finishes,
			len(g.Boards), measure.cells(g), g.Worth.Cents(), 100*g.Clear/g.Area)
	}
	for _, g := range layout.Tally(shop, boards) {
		finishes := say(g.Finishes)
		if slices.ContainsFunc(g.Boards, func(b *layout.Board) bool { return !b.Flat() }) {
			finishes = "up to " + finishes
		}
		row(&g, say(g.Thickness)+" "+g.Faces.String(), finishes)
	}
	for _, total := range totals(shop, boards) {
		row(&total, "", "")
	}
	t.Flush()
	if why := unpriced(shop, boards); why != "" {
		fmt.Fprintln(w, why)
	}
}

// totals sums all boards, and apart from them those that are not on the rack or
// not to be cut. A total of no boards is left out.
func totals(shop *layout.Shop, boards []layout.Board) []layout.TallyGroup {
	from := func(source layout.Source) []layout.Board {
		return slices.DeleteFunc(slices.Clone(boards), func(b layout.Board) bool { return b.Source != source })
	}
	all := []layout.TallyGroup{
		sum("all", layout.Tally(shop, boards)),
		sum("of these on hold", layout.Tally(shop, from(layout.Hold))),
		sum("of these at the yard", layout.Tally(shop, from(layout.Yard))),
	}
	return slices.DeleteFunc(all, func(g layout.TallyGroup) bool { return len(g.Boards) == 0 })
}

func sum(name string, groups []layout.TallyGroup) layout.TallyGroup {
	total := layout.TallyGroup{Species: name, Volume: new(layout.Volume)}
	for _, g := range groups {
		total.Boards = append(total.Boards, g.Boards...)
		total.Volume.Add(g.Volume, 1)
		total.Trade += g.Trade
		total.Worth += g.Worth
		total.Clear += g.Clear
		total.Area += g.Area
	}
	return total
}

// measure is how a shop measures wood: the heads of the columns, and their
// cells for a group.
type measure struct {
	heads string
	cells func(*layout.TallyGroup) string
}

func measureOf(shop *layout.Shop) measure {
	if shop.Units == layout.Millimetres {
		return measure{"        m³", func(g *layout.TallyGroup) string {
			return fmt.Sprintf("%10.4f", g.Volume.MM3()/1e9)
		}}
	}
	return measure{"board feet\tas tallied", func(g *layout.TallyGroup) string {
		return fmt.Sprintf("%10.2f\t%10d", g.Volume.BoardFeet(), g.Trade)
	}}
}

func printSuspicions(w io.Writer, shop *layout.Shop, boards []layout.Board) {
	list := layout.Suspicions(shop, boards)
	if len(list) == 0 {
		return
	}
	fmt.Fprintln(w, "\nworth a second look:")
	for _, s := range list {
		fmt.Fprintf(w, "  %s: %s\n", s.Board, s.Why)
	}
}
