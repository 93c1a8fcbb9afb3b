package main

import (
	"fmt"
	"io"
	"math"
	"strconv"
	"strings"
	"text/tabwriter"

	"sawbill/layout"
	"sawbill/layout/files"
	"sawbill/layout/steps"
	"sawbill/solver/buy"
)

// asking is advice as the files and the terminal tell it.
func asking(p *layout.Problem, a *buy.Advice) files.Asking {
	shop := p.Shop
	list := files.Asking{Shop: shop, Missing: a.Rack.Missing, Not: a.Not}
	for _, w := range a.Woods {
		list.Woods = append(list.Woods, files.Asked{
			Species: w.Species, Thickness: w.Thickness, Parts: w.Parts, Piles: w.Piles, Short: w.Short,
			Half: wanted(shop, w.Species, w.Half), Most: wanted(shop, w.Species, w.Most), Width: w.Width, Length: w.Length,
		})
	}
	if len(list.Woods) == 0 {
		return list
	}
	if len(p.Stock) > 0 {
		list.Assumed = []string{"the rack is planned first and keeps its plan"}
	}
	list.Assumed = append(list.Assumed, assumed(shop, &a.Usual)...)
	return list
}

func wanted(shop *layout.Shop, species string, a *buy.Amount) *files.AskedWood {
	if a == nil {
		return nil
	}
	wood := &files.AskedWood{Boards: a.Boards, Volume: a.Volume}
	thousandths, _ := files.Amount(shop, a.Volume)
	if price, ok := shop.PriceOf(species); ok && price <= math.MaxInt64/layout.Money(max(1, thousandths)) {
		price = price * layout.Money(thousandths) / 1000
		wood.Price = &price
	}
	return wood
}

// assumed says in plain lines what the amounts rest on, and what of it is a guess.
func assumed(shop *layout.Shop, u *buy.Usual) []string {
	say := func(l layout.Length) string { return l.Format(shop.Units, shop.Fraction) }
	widths := fmt.Sprintf("%s to %s wide, mostly %s to %s", say(u.Narrowest), say(u.Widest), say(u.Narrow), say(u.Wide))
	lines := []string{
		"from a pile boards are taken as they come, good or poor",
	}
	if shop.Units == layout.Millimetres {
		lines = append(lines,
			fmt.Sprintf("thicknesses as sawn in Britain, and those of the rough boards in the stock; at least %s over the finished one, from a rule for buying rough wood", say(u.Spare)),
			fmt.Sprintf("boards %s, %s to %s long: a guess", widths, say(u.Shortest), say(u.Longest+u.Over)))
	} else {
		lines = append(lines,
			fmt.Sprintf("thicknesses in quarters, at least %s over the finished one: a rule for buying rough wood", say(u.Spare)),
			fmt.Sprintf("boards %s: known in the trade, but a guess", widths),
			fmt.Sprintf("boards 8' to 16' long, mostly even feet, up to %s more: a survey of 14 mills; how lengths share out is a guess", say(u.Over)))
	}
	area := "3 to 4 square feet"
	if shop.Units == layout.Millimetres {
		area = "0.28 to 0.37 m²"
	}
	lines = append(lines,
		"one defect on every "+area+" of the face, mostly knots, some checks, splits and wane: a guess, from how many clear cuttings grading rules allow",
		"boards are rough and flat: where they are bowed, cupped or twisted, ask for thicker ones or more",
	)
	if most := shop.MachineWidth(); most > 0 && most < u.Widest {
		lines = append(lines, fmt.Sprintf("boards wider than %s are ripped rough before the machines take them. %s", say(most), steps.CautionRoughRip))
	}
	return lines
}

// printAsking is what to say at the yard.
func printAsking(w io.Writer, a files.Asking) {
	if len(a.Missing) == 0 {
		fmt.Fprintln(w, "nothing to buy: the rack completes the bill")
		return
	}
	fmt.Fprintln(w, "the rack does not complete the bill:")
	for _, m := range a.Missing {
		fmt.Fprintf(w, "  %d of %s\n", m.Quantity, m.Part)
	}
	if len(a.Woods) > 0 {
		fmt.Fprintln(w, "\nask for so much; nine in ten piles of boards completed the bill with no more:")
		printAsked(w, a)
		printPiles(w, a)
	}
	for _, m := range a.Not {
		fmt.Fprintf(w, "not to be bought: %d of %s: %s\n", m.Quantity, m.Part, m.Why)
	}
	if len(a.Assumed) > 0 {
		fmt.Fprintln(w, "\nreckoned with:")
	}
	for _, line := range a.Assumed {
		fmt.Fprintf(w, "  %s\n", line)
	}
}

func printAsked(w io.Writer, a files.Asking) {
	t := tabwriter.NewWriter(w, 0, 0, 2, ' ', 0)
	say := func(l layout.Length) string {
		if l == 0 {
			return "none is of use"
		}
		return l.Format(a.Shop.Units, a.Shop.Fraction)
	}
	unit, priced := "board feet", len(a.Shop.Price) > 0
	if a.Shop.PriceUnit == layout.PerCubicMetre {
		unit = "m³"
	}
	head := "  species\tthickness\t" + unit + "\thalf needed\tboards\tleast width\tleast length"
	if priced {
		head += "\tcosts about"
	}
	fmt.Fprintln(t, head+"\tfor")
	for _, k := range a.Woods {
		most, half, boards, price := "unknown", "unknown", "", ""
		if k.Most != nil {
			most, boards = figure(a.Shop, k.Most.Volume), strconv.Itoa(k.Most.Boards)
			if k.Most.Price != nil {
				price = k.Most.Price.Cents()
			}
		}
		if k.Half != nil {
			half = figure(a.Shop, k.Half.Volume)
		}
		row := []string{"  " + k.Species, say(k.Thickness) + " rough", most, half, boards, say(k.Width), say(k.Length)}
		if priced {
			row = append(row, price)
		}
		fmt.Fprintln(t, strings.Join(append(row, strings.Join(k.Parts, ", ")), "\t"))
	}
	t.Flush()
}

func figure(shop *layout.Shop, v *layout.Volume) string {
	thousandths, _ := files.Amount(shop, v)
	return files.Thousandths(thousandths)
}

// printPiles says what the amounts come from, and what is of no use at any amount.
func printPiles(w io.Writer, a files.Asking) {
	for _, k := range a.Woods {
		name := k.Species + " " + k.Thickness.Format(a.Shop.Units, a.Shop.Fraction)
		switch {
		case k.Short > 0:
			fmt.Fprintf(w, "%s: %d of %s did not complete the bill however much was taken: choose boards for the largest parts\n", name, k.Short, count(k.Piles, "pile"))
		case k.Piles < pilesOfEach:
			fmt.Fprintf(w, "%s: only %s planned in the time\n", name, count(k.Piles, "pile"))
		}
	}
	fmt.Fprintln(w, "A board narrower than the least width, or shorter than the least length, gives none of the parts named in its line.")
}
