package main

import (
	"fmt"
	"io"
	"text/tabwriter"

	"sawbill/layout"
	"sawbill/layout/quote"
	"sawbill/layout/steps"
)

// printQuote is a quote in tables, rounded to cents.
func printQuote(w io.Writer, plan *layout.Plan, q *quote.Quote) {
	fmt.Fprintf(w, "job %s, revision %d, check word %s\n", plan.Job, plan.Revision, steps.CheckWord(plan))
	t := tabwriter.NewWriter(w, 0, 0, 2, ' ', 0)
	printQuotedBoards(t, q)
	printQuotedParts(t, q)
	fmt.Fprintf(t, "\nwood\t%s\n", amount(q.Wood))
	if c := q.Charges; c != nil {
		fmt.Fprintf(t, "%s h at %s\t%s\n", c.Hours, c.Rate.Cents(), amount(q.Labour))
		fmt.Fprintf(t, "finish\t%s\nhardware\t%s\n", amount(c.Finish), amount(c.Hardware))
		fmt.Fprintf(t, "margin, %s of all that\t%s\n", q.MarginShare(), amount(q.Margin))
		fmt.Fprintf(t, "total\t%s\n", amount(q.Total))
	}
	t.Flush()
	if why := unpriced(plan.Problem.Shop, plan.Problem.Stock); why != "" {
		fmt.Fprintln(w, why)
	}
	for _, m := range plan.Missing {
		fmt.Fprintf(w, "not in it: %d of %s, missing\n", m.Quantity, m.Part)
	}
	fmt.Fprintln(w, "rounded to cents; quote.csv has the exact amounts")
}

func printQuotedBoards(w io.Writer, q *quote.Quote) {
	fmt.Fprintf(w, "board\tspecies\t%s\t%s\t%s\n", right("cost"), right("returned"), right("net"))
	for i := range q.Boards {
		b := &q.Boards[i]
		fmt.Fprintf(w, "%s\t%s\t%s\t%s\t%s\n", b.Says(), b.Species, amount(b.Cost), amount(b.Returned), amount(b.Net()))
	}
}

func printQuotedParts(w io.Writer, q *quote.Quote) {
	fmt.Fprintf(w, "\npart\tfinished piece\t%s\t%s\t%s\n", right("pieces"), right("wood"), right("each"))
	for i := range q.Parts {
		p := &q.Parts[i]
		each := ""
		if p.Needed > 0 {
			each = p.Each().Cents()
		}
		fmt.Fprintf(w, "%s\t%s\t%s\t%s\t%s\n", p.Name, p.Piece, right(p.Count()), amount(p.Wood), right(each))
	}
	if q.Loose != 0 {
		fmt.Fprintf(w, "%s\t\t\t%s\n", quote.LooseWords, amount(q.Loose))
	}
	if len(q.Pieces) > 0 {
		fmt.Fprintf(w, "\nfinished piece\t%s\n", right("wood"))
	}
	for i := range q.Pieces {
		fmt.Fprintf(w, "%s\t%s\n", q.Pieces[i].Says(), amount(q.Pieces[i].Wood))
	}
}

func amount(m layout.Money) string { return right(m.Cents()) }

// right sets a cell of a table of figures to the right.
func right(cell string) string { return fmt.Sprintf("%10s", cell) }
