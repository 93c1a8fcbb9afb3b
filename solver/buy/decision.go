package buy

import (
	"fmt"
	"slices"

	"sawbill/layout"
	"sawbill/layout/check"
	"sawbill/solver"
	"sawbill/solver/internal/snug"
)

// decision is what is known while a decision is made.
type decision struct {
	asked, paid *layout.Problem
	o           Options
	lots        [][]int      // of boards of the yard, see lotsOf
	best        *layout.Plan // for paid; nil at first
	bound       *layout.Money
	boundFor    []layout.Missing // what is missing of the plans that bound speaks of
	needs       []solver.Requirement
	refused     [][]string // sets that do not meet one of these

	effort int             // rounds of a trial
	tried  int             // sets, with this effort
	failed map[string]bool // by set of boards: it was tried in vain with this effort
	aside  [][]string      // sets of which nothing could be shown with this effort
}

func newDecision(p *layout.Problem, o Options) *decision {
	d := &decision{asked: p, paid: inYardMoney(p), o: o, lots: lotsOf(p)}
	d.begin(efforts()[0])
	return d
}

// begin lets sets of boards be tried anew, with so many rounds.
func (d *decision) begin(rounds int) {
	d.effort, d.tried, d.failed, d.aside = rounds, 0, map[string]bool{}, nil
}

// take keeps a plan if it is better than the best, by what is paid at the yard.
func (d *decision) take(plan *layout.Plan) {
	if again := recut(d.paid, plan); d.best == nil || again.Score().Compare(d.best.Score()) < 0 {
		d.best = again
	}
}

// whole reports whether the best plan leaves nothing missing.
func (d *decision) whole() bool { return d.best != nil && len(d.best.Missing) == 0 }

// settled reports whether nothing can be cheaper.
func (d *decision) settled() bool {
	if !d.whole() {
		return false
	}
	b := d.boundOfBest()
	return b != nil && *b >= d.best.Totals.Cost
}

// boundOfBest is the bound if it speaks of the best plan.
func (d *decision) boundOfBest() *layout.Money {
	same := slices.EqualFunc(d.boundFor, d.best.Missing, func(a, b layout.Missing) bool {
		return a.Part == b.Part && a.Quantity == b.Quantity
	})
	switch {
	case d.whole() && d.best.Totals.Cost == 0:
		return new(layout.Money)
	case !same:
		return nil
	}
	return d.bound
}

// raise takes a proof that no set costs less that leaves nothing missing.
func (d *decision) raise(least layout.Money) {
	least = min(least, d.best.Totals.Cost)
	if b := d.boundOfBest(); b == nil || *b < least {
		d.bound, d.boundFor = &least, nil
	}
}

// answer makes the best plan one of the problem that was asked.
func (d *decision) answer() (*Answer, error) {
	marks := bought(d.asked, d.best)
	a := &Answer{Paid: d.best.Totals.Cost, Bound: d.boundOfBest(), Plan: snug.Plan(recut(only(d.asked, marks), d.best))}
	for _, mark := range marks {
		a.Boards = append(a.Boards, d.asked.Board(mark))
	}
	if faults := check.Plan(a.Plan); len(faults) > 0 {
		return nil, fmt.Errorf("buy: seed %d made a plan that fails its check: %v", d.o.Solve.Seed, faults[0])
	}
	return a, nil
}
