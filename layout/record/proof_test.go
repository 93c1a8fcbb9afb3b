package record_test

import (
	"context"
	"errors"
	"sync/atomic"
	"testing"

	"pgregory.net/rapid"

	"sawbill/layout"
	"sawbill/layout/check/bound"
	"sawbill/layout/record"
	"sawbill/solver"
)

// solved plans with the solver, by a count of rounds.
func solved(p *layout.Problem) (*layout.Plan, error) {
	plan, _, err := solver.Solve(context.Background(), p, solver.Options{Rounds: 2, Workers: 1})
	return plan, err
}

// mostAsked is how often a proof asks whether it is to stop before it is given up: most are
// decided in two seconds by then, and a few on boards that taper would take minutes.
const mostAsked = 60_000

// What a revision says to be proven is proven again from its prices, with what is cut
// fixed, by the package that shares no code with the solver.
func TestBoundsOfRevisionsAreProven(t *testing.T) {
	tried, proven := 0, 0
	rapid.Check(t, func(t *rapid.T) {
		if tried++; tried > 15 {
			return // each takes the solver several times
		}
		job := randomJob(t)
		first, err := plainly(job) // as good a plan as any to go on from
		if err != nil {
			t.Fatal(err)
		}
		h := &history{first: first, plan: first, solve: always(solved)}
		for range rapid.IntRange(1, 3).Draw(t, "changes") {
			h.change(t)
		}
		if h.plan == first || h.plan.Totals.PriceBound == nil {
			return
		}
		var asked atomic.Int64
		proof, err := bound.Prove(func() bool { return asked.Add(1) > mostAsked }, h.plan)
		if errors.Is(err, bound.ErrStopped) {
			return
		}
		if err != nil {
			t.Fatal(err)
		}
		for _, v := range proof.Violations {
			t.Errorf("%v: %v of %v", h.plan.Record.Told, v, h.plan.Totals)
		}
		proven++
	})
	if proven == 0 {
		t.Error("nothing was proven")
	}
}

// Where nothing is left to be planned, what is left to be paid is what it costs.
func TestABoardThatIsBeingCutIsNoLongerPlanned(t *testing.T) {
	d := record.Open(railsOf(t))
	if err := d.Cut("A1-1a", "A2-1a"); err != nil {
		t.Fatal(err)
	}
	plan, err := d.Complete(always(solved))
	if err != nil {
		t.Fatal(err)
	}
	if b := plan.Totals.Bound; b == nil || *b != plan.Totals.Cost {
		t.Errorf("bound %v, want the cost %v", b, plan.Totals.Cost)
	}
}

// A revision that claims a ten-thousandth more than its prices prove is caught: with
// one board being cut and no prices, what that costs is all that is proven.
func TestBoundsOfRevisionsThatClaimTooMuch(t *testing.T) {
	d := record.Open(railsOf(t))
	if err := d.Cut("A1-1a"); err != nil {
		t.Fatal(err)
	}
	plan, err := d.Complete(always(plainly))
	if err != nil || plan.Totals.PriceBound == nil || *plan.Totals.PriceBound >= plan.Totals.Cost {
		t.Fatal(plan.Totals, err)
	}
	for more, wrong := range map[layout.Money]bool{0: false, 1: true} {
		claim := *plan
		priced := *plan.Totals.PriceBound + more
		claim.Totals.PriceBound, claim.Totals.Bound = &priced, &priced
		proof, err := bound.Prove(func() bool { return false }, &claim)
		if err != nil || len(proof.Violations) > 0 != wrong {
			t.Errorf("%v more: %v %v", more, proof.Violations, err)
		}
	}
}
