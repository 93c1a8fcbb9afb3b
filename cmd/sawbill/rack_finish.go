package main

import (
	"fmt"
	"io"
	"text/tabwriter"

	"sawbill/layout"
)

// printFinishes says of each board what thickness and width it can finish to, in
// one blank and in short ones. Boards of one row of the stock stand in one line.
func printFinishes(w io.Writer, shop *layout.Shop, boards []layout.Board) {
	if len(boards) == 0 {
		return
	}
	fmt.Fprintln(w, "\nwhat each board finishes to, thick x wide:")
	t := tabwriter.NewWriter(w, 0, 0, 2, ' ', 0)
	short := "in 24\" blanks"
	if shop.Units == layout.Millimetres {
		short = "in 600 mm blanks"
	}
	fmt.Fprintf(t, "  board\tat full length\t%s\n", short)
	tooWide := false
	for i := 0; i < len(boards); {
		n := sameRow(boards[i:])
		full, less := shop.FullFinish(&boards[i]), shop.ShortFinish(&boards[i])
		fmt.Fprintf(t, "  %s\t%s\t%s\n", rowName(boards[i:i+n]), finish(shop, full), finish(shop, less))
		tooWide = tooWide || full.TooWide || less.TooWide
		i += n
	}
	t.Flush()
	if tooWide {
		fmt.Fprintln(w, "* wider than the machines: rough-rip it first, and it loses less to cup and twist")
	}
}

// sameRow is how many boards at the head of a list come from one row of the
// stock.
func sameRow(boards []layout.Board) int {
	n := 1
	for n < len(boards) && boards[n].Base == boards[0].Base {
		n++
	}
	return n
}

func rowName(boards []layout.Board) string {
	if len(boards) == 1 {
		return boards[0].Mark
	}
	return boards[0].Mark + " to " + boards[len(boards)-1].Mark
}

// finish is one cell; both figures are rounded down to what a rule shows.
func finish(shop *layout.Shop, f layout.Finish) string {
	if f.Thickness <= 0 || f.Width <= 0 {
		return "nothing"
	}
	finest := layout.Millimetre / 10
	if shop.Units == layout.Inches {
		finest = layout.Inch / layout.Length(shop.Fraction)
	}
	say := func(l layout.Length) string { return (l - l%finest).Format(shop.Units, shop.Fraction) }
	text := say(f.Thickness) + " x " + say(f.Width)
	if f.TooWide {
		text += " *"
	}
	return text
}
