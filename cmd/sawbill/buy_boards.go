package main

import (
	"context"
	"fmt"
	"io"
	"math"

	"github.com/urfave/cli/v2"

	"sawbill/layout"
	"sawbill/layout/files"
	"sawbill/layout/steps"
	"sawbill/solver"
	"sawbill/solver/buy"
)

// buyBoards lists boards of the yard.
func buyBoards(c *cli.Context, out io.Writer, l limits, p *layout.Problem) error {
	o := buy.Options{Share: shareOfTime}
	if l.time > 0 {
		o.Trials = math.MaxInt // time bounds them
	}
	var answer *buy.Answer
	err := l.think(c, func(ctx context.Context, solve solver.Options) (err error) {
		o.Solve = solve
		answer, err = buy.Decide(ctx, p, o)
		return err
	})
	if err != nil {
		return err
	}
	list := files.Buying{
		Shop: p.Shop, Boards: answer.Boards, Paid: answer.Paid, Bound: answer.Bound, Proof: buyingProof(answer), Missing: answer.Plan.Missing,
	}
	if err := writeList(c, func(w io.Writer) error { return files.WriteBuyingTable(w, list) }); err != nil {
		return err
	}
	printBuying(c.App.Writer, list)
	if out != nil {
		if err := files.WriteBuying(out, list); err != nil {
			return err
		}
	}
	return notBought(answer.Plan)
}

// buyingProof says what is proven of what is paid.
func buyingProof(a *buy.Answer) string {
	which := "that complete the bill"
	if len(a.Plan.Missing) > 0 {
		which = "that leave the same parts missing"
	}
	switch {
	case len(a.Boards) == 0 && len(a.Plan.Missing) == 0:
		return "the rack completes the bill"
	case len(a.Boards) == 0:
		return "no board of the yard was found to make any of what the rack leaves missing"
	case a.Bound == nil:
		return "nothing is proven yet of how much less other boards could cost"
	case *a.Bound == a.Paid:
		return "proven: no boards of the yard " + which + " cost less"
	}
	return "no boards of the yard " + which + " can cost less than " + steps.Bound(layout.Totals{Cost: a.Paid, Bound: a.Bound})
}

// notBought is an error where not even the whole yard completes the bill, as far as is
// known.
func notBought(plan *layout.Plan) error {
	if len(plan.Missing) == 0 {
		return nil
	}
	short := &failure{class: partsShort, err: fmt.Errorf("%s missing, whatever is bought at the yard", missingOfWanted(plan))}
	return short.withHint("give it longer with --time, or look for other boards; without any of the yard in the stock sawbill buy says how much to ask for")
}

// writeList writes the list to the file that was asked for, if any.
func writeList(c *cli.Context, write func(io.Writer) error) error {
	if path := c.Path("out"); path != "" {
		return replace(path, write)
	}
	return nil
}
