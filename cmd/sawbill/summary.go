package main

import (
	"fmt"
	"io"
	"strconv"
	"strings"
	"text/tabwriter"

	"sawbill/layout"
	"sawbill/layout/steps"
)

// printSummary says in a few lines what a plan does and, where it was just made,
// why the thinking stopped; that may be empty.
func printSummary(w io.Writer, p *layout.Plan, stopped string) {
	fmt.Fprintf(w, "job %s, revision %d, check word %s\n", p.Job, p.Revision, steps.CheckWord(p))
	t := tabwriter.NewWriter(w, 0, 0, 2, ' ', 0)
	fmt.Fprintf(t, "cost\t%s\n", costOf(p))
	fmt.Fprintf(t, "proof\t%s\n", steps.Proof(p))
	if stopped != "" {
		fmt.Fprintf(t, "stopped\t%s\n", stopped)
	}
	if p.Totals.Yield != nil {
		fmt.Fprintf(t, "yield\t%.1f%% of the wood becomes parts\n", 100**p.Totals.Yield)
	}
	printMade(t, p)
	fmt.Fprintf(t, "boards\t%s\n", boardsToCut(p))
	fmt.Fprintf(t, "offcuts kept\t%s\n", offcutsKept(p))
	fmt.Fprintf(t, "the wood\t%s\n", account(p))
	t.Flush()
	printShort(w, p)
	if len(p.Boards) > 0 {
		fmt.Fprintln(w, "caution:", steps.SafetyFirst)
	}
}

// printShort says what a plan does not make, and which strips of glue-ups are cut and
// wait for the others of their copy.
func printShort(w io.Writer, p *layout.Plan) {
	for _, m := range p.Missing {
		fmt.Fprintf(w, "missing: %d of %s: %s\n", m.Quantity, m.Part, m.Why)
	}
	for _, c := range p.Waiting() {
		fmt.Fprintf(w, "waits: %s (%s, %s): the other strips of its copy cannot be made; noted as spoiled it is wood for shorter ones\n",
			c.Wood.Mark, c.Part, count(c.Slices, "slice"))
	}
}

// costOf is the cost of a plan, with what it counts in where that is not money.
func costOf(p *layout.Plan) string {
	cost := p.Totals.Cost.Cents()
	if why := unpriced(p.Problem.Shop, p.Problem.Stock); why != "" {
		cost += " (" + why + ")"
	}
	return cost
}

func boardsToCut(p *layout.Plan) string {
	var marks []string
	for _, b := range p.Boards {
		mark := b.Board
		if wood := p.Problem.Board(mark); wood != nil && wood.Source == layout.Yard {
			mark += " (yard)"
		}
		marks = append(marks, mark)
	}
	return listed(marks)
}

func offcutsKept(p *layout.Plan) string { return listed(offcutMarks(p)) }

func offcutMarks(p *layout.Plan) []string {
	var marks []string
	for _, b := range p.Boards {
		for _, leaf := range b.Root.Leaves() {
			if leaf.Offcut != "" {
				marks = append(marks, leaf.Offcut)
			}
		}
	}
	return marks
}

// listed counts the words and names them.
func listed(words []string) string {
	if len(words) == 0 {
		return "none"
	}
	return strconv.Itoa(len(words)) + ": " + strings.Join(words, ", ")
}

// account says where the wood of all cut boards goes, in shares of its volume.
func account(p *layout.Plan) string {
	var sum layout.Account
	for _, b := range p.Boards {
		sum = sum.Plus(b.Account)
	}
	if sum.Sum() <= 0 {
		return "none is cut"
	}
	share := func(part float64, name string) string {
		return fmt.Sprintf("%s %.1f%%", name, 100*part/sum.Sum())
	}
	return strings.Join([]string{
		share(sum.Parts, "parts"), share(sum.Offcuts, "offcuts kept"), share(sum.Planing, "planing"), share(sum.Kerf, "kerf"),
		share(sum.Edges, "edges and ends"), share(sum.Defects, "defects"), share(sum.Scrap, "scrap"),
	}, ", ")
}

// count is "1 piece" or "3 pieces"; of "kind of part" the kind is counted.
func count(n int, what string) string {
	if n != 1 {
		noun, rest, _ := strings.Cut(what, " of ")
		what = noun + "s"
		if rest != "" {
			what += " of " + rest
		}
	}
	return strconv.Itoa(n) + " " + what
}
