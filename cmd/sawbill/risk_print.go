package main

import (
	"fmt"
	"io"
	"math"
	"slices"
	"text/tabwriter"

	"sawbill/layout"
	"sawbill/layout/steps"
)

// printRisk tells what a simulation found, with what it rests on first.
func printRisk(w io.Writer, plan *layout.Plan, r *layout.Risk) {
	fmt.Fprintf(w, "job %s, revision %d, check word %s\n", plan.Job, plan.Revision, steps.CheckWord(plan))
	printAssumed(w, plan.Problem.Shop, r)
	fmt.Fprintf(w, "\n%s\n", chanceWords(r))
	if r.Finished.Count < r.Finished.Of {
		fmt.Fprintln(w, "It may be more: the simulation throws the wood of a spoiled piece away and plans again in haste;\n"+
			"a plan that is made again with more time may find what it misses.")
	}
	printOpenings(w, r)
	printPartsAtRisk(w, r)
	printMoreBoards(w, plan, r)
	fmt.Fprintln(w, "caution: look each board over again, both faces, before you cut it: this reckons with what nobody has seen, and finds nothing")
	fmt.Fprintln(w, "caution:", steps.SafetyFirst)
}

func printAssumed(w io.Writer, shop *layout.Shop, r *layout.Risk) {
	fmt.Fprintf(w, "%s, seed %d, with these hidden defects:\n", count(r.Finished.Of, "draw"), r.Seed)
	say := func(l layout.Length) string { return l.Format(shop.Units, shop.Fraction) }
	t := tabwriter.NewWriter(w, 0, 0, 2, ' ', 0)
	fmt.Fprintf(t, "species\t%6s\t%10s\tin 10 board feet\tlong x wide\tin all of it\n", "boards", "board feet")
	for _, a := range r.Assumed {
		fmt.Fprintf(t, "%s\t%6d\t%10.2f\t%v%s\t%s x %s%s\t%.1f\n", a.Species, a.Boards, a.BoardFeet,
			a.Per10BF, guessed(a.RateSaid), say(a.Length), say(a.Width), guessed(a.SizeSaid), a.Per10BF.Float()*a.BoardFeet/10)
	}
	t.Flush()
	if slices.ContainsFunc(r.Assumed, func(a layout.AssumedHidden) bool { return !a.RateSaid || !a.SizeSaid }) {
		fmt.Fprintln(w, "What is a guess is better said in the shop's tables [hidden.SPECIES], from what your boards have shown.")
	}
}

func guessed(said bool) string {
	if said {
		return ""
	}
	return ", a guess"
}

// chanceWords say how likely the stock is enough.
func chanceWords(r *layout.Risk) string {
	nothing := !slices.ContainsFunc(r.Assumed, func(a layout.AssumedHidden) bool { return a.Per10BF > 0 })
	switch {
	case nothing && r.Finished.Count == r.Finished.Of:
		return "it is certain that the stock is enough: nothing hides in this wood, as it is reckoned here"
	case nothing:
		return "it is certain that the stock is not enough, as far as the simulation can plan again"
	}
	enough := fmt.Sprintf("the stock is enough in %s of all draws (95%% confidence: %s)", r.Finished.Percent(), interval(r.Finished))
	if !ordered(r) {
		return enough
	}
	return fmt.Sprintf("%s when boards are cut in the order below,\nand in %s (%s) in the order of the plan",
		enough, r.AsPlanned.Percent(), interval(r.AsPlanned))
}

// ordered reports whether there are boards to be cut in one order or another.
func ordered(r *layout.Risk) bool { return len(r.Order) > 1 }

// interval is rounded outward.
func interval(s layout.Share) string {
	low, high := s.Interval()
	return fmt.Sprintf("%.1f to %.1f%%", math.Floor(1000*low)/10, math.Ceil(1000*high)/10)
}

// printPartsAtRisk lists the parts that are ever missing, most often first.
func printPartsAtRisk(w io.Writer, r *layout.Risk) {
	var parts []layout.PartAtRisk
	for _, p := range r.Parts {
		if p.Missing.Count > 0 {
			parts = append(parts, p)
		}
	}
	if len(parts) == 0 {
		return
	}
	slices.SortStableFunc(parts, func(a, b layout.PartAtRisk) int { return b.Missing.Count - a.Missing.Count })
	fmt.Fprintln(w, "\nwhat runs short, and how likely the stock is enough with one sound piece more of it at hand:")
	t := tabwriter.NewWriter(w, 0, 0, 2, ' ', 0)
	fmt.Fprintf(t, "part\t%11s\t%13s\t%15s\n", "short in", "pieces a draw", "enough with one")
	for _, p := range parts {
		fmt.Fprintf(t, "%s\t%11s\t%13.2f\t%15s\n", p.Part, p.Missing.Percent(), p.Mean, p.Spared.Percent())
	}
	t.Flush()
}

// printMoreBoards tells what one more board of each kind changes, and what boards
// bought in turn.
func printMoreBoards(w io.Writer, plan *layout.Plan, r *layout.Risk) {
	if r.Finished.Count == r.Finished.Of || len(r.Spares) == 0 {
		return
	}
	fmt.Fprintln(w, "\none more board, used last, like the one of middle size among those of its kind:")
	t := tabwriter.NewWriter(w, 0, 0, 2, ' ', 0)
	fmt.Fprintf(t, "like\tkind\t%7s\t%9s\n", "enough", "more by")
	for _, s := range r.Spares {
		more := layout.Share{Count: s.Finished.Count - r.Finished.Count, Of: s.Finished.Of}
		fmt.Fprintf(t, "%s\t%s\t%7s\t%9s\n", s.Like, kindOf(plan, s.Like), s.Finished.Percent(), more.Percent())
	}
	t.Flush()
	if len(r.Bought) < 2 {
		return
	}
	fmt.Fprintln(w, "\nboards bought one after the other, each time the one that helps most:")
	t = tabwriter.NewWriter(w, 0, 0, 2, ' ', 0)
	fmt.Fprintf(t, "more\tlike\t%7s\t95%% confidence\n", "enough")
	for i, b := range r.Bought {
		fmt.Fprintf(t, "%4d\t%s\t%7s\t%s\n", i, b.Like, b.Finished.Percent(), interval(b.Finished))
	}
	t.Flush()
}

// kindOf is what a board is, in a few words.
func kindOf(plan *layout.Plan, mark string) string {
	shop, b := plan.Problem.Shop, plan.Problem.Board(mark)
	say := func(l layout.Length) string { return l.Format(shop.Units, shop.Fraction) }
	return fmt.Sprintf("%s %s %s, %s x %s", b.Species, say(b.Thickness), b.Faces, say(b.FullWidth()), say(b.Length))
}

func printOpenings(w io.Writer, r *layout.Risk) {
	if !ordered(r) {
		return
	}
	fmt.Fprintln(w, "\ncut in this order, and a shortage shows early, while other boards are whole and the plan can be changed:")
	t := tabwriter.NewWriter(w, 0, 0, 2, ' ', 0)
	fmt.Fprintf(t, "board\t%16s\t%11s\t%6s\n", "shows a shortage", "pieces lost", "pieces")
	for _, o := range r.Order {
		fmt.Fprintf(t, "%s\t%16s\t%11.2f\t%6d\n", o.Board, o.Shows.Percent(), o.Lost, o.Cuts)
	}
	t.Flush()
	fmt.Fprintln(w, "A board shows a shortage in the draws in which it spoils a piece of a part that is missing in the end. First comes\n"+
		"the board with the most of these for the pieces that come off the saw until it is cut; where fewer draws were\n"+
		"finished so, the order of the plan stands here.")
}
