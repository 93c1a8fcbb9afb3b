package main

import (
	"fmt"
	"io"
	"slices"
	"strings"
	"text/tabwriter"

	"sawbill/layout"
	"sawbill/layout/files"
	"sawbill/layout/steps"
)

// printBuying is a list to take to the yard.
func printBuying(w io.Writer, b files.Buying) {
	if len(b.Boards) == 0 {
		fmt.Fprintf(w, "nothing to buy: %s\n", b.Proof)
		printMissing(w, b.Missing)
		return
	}
	fmt.Fprintf(w, "buy %s for %s; %s\n\n", count(len(b.Boards), "board"), b.Paid.Cents(), b.Proof)
	printBought(w, b)
	printBoughtSums(w, b)
	fmt.Fprintln(w, "\nhow to know them:")
	for _, board := range b.Boards {
		fmt.Fprintf(w, "  %s: %s\n", board.Mark, looks(b.Shop, board))
		for _, caution := range boardCautions(b.Shop, board) {
			fmt.Fprintf(w, "    %s\n", caution)
		}
	}
	printMissing(w, b.Missing)
	fmt.Fprintln(w, "\nMeasure each board and look at both its faces before you pay: only what the stock says of it was reckoned with.")
	fmt.Fprintln(w, "Once they are yours, give them the source rack and plan.")
}

func printMissing(w io.Writer, list []layout.Missing) {
	for _, m := range list {
		fmt.Fprintf(w, "missing: %d of %s: %s\n", m.Quantity, m.Part, m.Why)
	}
}

func printBought(w io.Writer, b files.Buying) {
	t := tabwriter.NewWriter(w, 0, 0, 2, ' ', 0)
	measure := measureOf(b.Shop)
	say := func(l layout.Length) string { return l.Format(b.Shop.Units, b.Shop.Fraction) }
	fmt.Fprintf(t, "board\tplace\tspecies\tthickness\twidth\tlength\t%s\t%10s\n", measure.heads, "price")
	for _, board := range b.Boards {
		width := say(board.Width)
		if board.TipWidth != board.Width {
			width += " to " + say(board.TipWidth) + " at the tip"
		}
		alone := layout.Tally(b.Shop, []layout.Board{*board})[0]
		fmt.Fprintf(t, "%s\t%s\t%s\t%s %s\t%s\t%s\t%s\t%10s\n", board.Mark, board.Place, board.Species, say(board.Thickness), board.Faces,
			width, say(board.Length), measure.cells(&alone), board.Cost.Cents())
	}
	t.Flush()
}

// printBoughtSums sums boards up by species and thickness.
func printBoughtSums(w io.Writer, b files.Buying) {
	var boards []layout.Board
	for _, board := range b.Boards {
		boards = append(boards, *board)
	}
	groups := layout.Tally(b.Shop, boards)
	t := tabwriter.NewWriter(w, 0, 0, 2, ' ', 0)
	measure := measureOf(b.Shop)
	fmt.Fprintf(t, "\nin all\tthickness\tboards\t%s\t%10s\n", measure.heads, "price")
	for _, g := range groups {
		thickness := g.Thickness.Format(b.Shop.Units, b.Shop.Fraction) + " " + g.Faces.String()
		fmt.Fprintf(t, "%s\t%s\t%6d\t%s\t%10s\n", g.Species, thickness, len(g.Boards), measure.cells(&g), g.Worth.Cents())
	}
	if len(groups) > 1 {
		all := sum("all", groups)
		fmt.Fprintf(t, "all\t\t%6d\t%s\t%10s\n", len(all.Boards), measure.cells(&all), all.Worth.Cents())
	}
	t.Flush()
	if why := unpriced(b.Shop, boards); why != "" {
		fmt.Fprintln(w, why)
	}
}

// looks is what a buyer sees of a board.
func looks(shop *layout.Shop, b *layout.Board) string {
	words := []string{}
	for _, text := range []string{b.Grade, b.Note} {
		if text != "" {
			words = append(words, text)
		}
	}
	words = append(words, "edges straight: "+[...]string{"none", "one", "both"}[b.Edges])
	for _, gap := range []struct {
		name string
		gap  layout.Length
	}{{"bow", b.Bow}, {"crook", b.Crook}, {"cup", b.Cup}, {"twist", b.Twist}} {
		if gap.gap > 0 {
			words = append(words, gap.name+" "+gap.gap.Format(shop.Units, shop.Fraction))
		}
	}
	defects := files.WrittenDefects(b, shop.Units)
	if defects == "" {
		defects = "no defects marked"
	}
	return strings.Join(append(words, defects), "; ")
}

// boardCautions is what a buyer should know of a board before it is cut.
func boardCautions(shop *layout.Shop, b *layout.Board) []string {
	var list []string
	if slices.ContainsFunc(b.Defects, func(d layout.Defect) bool { return d.Kind == layout.Metal }) {
		list = append(list, string(steps.CautionMetal))
	}
	if most := shop.MachineWidth(); most > 0 && b.FullWidth() > most {
		list = append(list, "Wider than the machines: it is ripped rough first. "+string(steps.CautionRoughRip))
	}
	return list
}
