package solver

import (
	"context"
	"testing"

	"sawbill/layout"
	"sawbill/solver/internal/exhaust"
)

// tinyJobs is how many jobs are held against the best of all their plans,
// fairShare how many in a hundred of them the search must plan as well as that, and
// provenShare how many it must prove to be best: those in which a tapered board
// credits offcuts it does not prove.
const (
	tinyJobs    = 300
	fairShare   = 94
	provenShare = 80
)

// TestTinyJobs holds plans and bounds of tiny jobs against the best of all plans,
// which is found by trying every position:
//
//	bound <= least cost with the same parts missing <= cost of the plan
//
// The search need not find the best plan, but mostly does.
func TestTinyJobs(t *testing.T) {
	met, bounded, proven := 0, 0, 0
	for seed := range int64(tinyJobs) {
		p := exhaust.Tiny(seed)
		plan, _, err := Solve(context.Background(), p, Options{Rounds: 6, Workers: 1})
		if err != nil {
			t.Fatalf("seed %d: %v", seed, err)
		}
		all := exhaust.New(p, exhaust.TinyUnit)
		best := all.Best()
		switch c := plan.Score().Compare(best.Score()); {
		case c < 0:
			t.Errorf("seed %d: %s is better than the best of all, %s", seed, summary(plan), summary(best))
		case c == 0:
			met++
		default:
			t.Logf("seed %d: %s; best: %s", seed, summary(plan), summary(best))
		}
		if holdBound(t, seed, plan, all) {
			bounded++
		}
		if gap, ok := plan.Totals.Gap(); ok && gap == 0 {
			proven++
		}
	}
	t.Logf("%d of %d jobs are planned best, %d have a bound, %d a gap of 0", met, tinyJobs, bounded, proven)
	if met*100 < tinyJobs*fairShare {
		t.Errorf("only %d of %d tiny jobs are planned best", met, tinyJobs)
	}
	if proven*100 < tinyJobs*provenShare {
		t.Errorf("only %d of %d tiny jobs are proven to be planned best", proven, tinyJobs)
	}
}

// holdBound compares a bound, where there is one, with the least that a plan with
// the same parts missing costs.
func holdBound(t *testing.T, seed int64, plan *layout.Plan, all *exhaust.Job) bool {
	t.Helper()
	least, ok := all.Cost(missingOf(plan))
	if !ok || least > plan.Totals.Cost {
		t.Errorf("seed %d: a plan costs %v, the least with as much missing is %v", seed, plan.Totals.Cost, least)
	}
	bound := plan.Totals.Bound
	if bound != nil && *bound > least {
		t.Errorf("seed %d: no plan costs less than %v, says the bound; one costs %v", seed, *bound, least)
	}
	return bound != nil
}

// missingOf is what a plan leaves missing, by row of the bill.
func missingOf(plan *layout.Plan) []int {
	n := make([]int, len(plan.Problem.Bill))
	for i := range plan.Problem.Bill {
		for _, m := range plan.Missing {
			if m.Part == plan.Problem.Bill[i].Name {
				n[i] += m.Quantity
			}
		}
	}
	return n
}
