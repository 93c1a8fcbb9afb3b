package solver

import (
	"context"
	"fmt"
	"testing"

	"sawbill/layout"
	"sawbill/layout/check"
	"sawbill/solver/internal/jobs"
)

// TestRandomJobs solves random jobs and lets the checker pass every plan. Solve
// does so itself; here its answer is not trusted.
func TestRandomJobs(t *testing.T) {
	for seed := range int64(200) {
		p := jobs.New(jobs.Size{Boards: 1 + int(seed%9), Kinds: 1 + int(seed%7), Pieces: 10 + int(seed%40)}, seed)
		plan, _, err := Solve(context.Background(), p, Options{Seed: seed, Rounds: 1, Workers: 2})
		if err != nil {
			t.Fatalf("seed %d: %v", seed, err)
		}
		for _, v := range check.Plan(plan) {
			t.Errorf("seed %d: %v", seed, v)
		}
	}
}

func summary(plan *layout.Plan) string {
	missing := 0
	for _, m := range plan.Missing {
		missing += m.Quantity
	}
	return fmt.Sprintf("cost %s missing %d boards %d", plan.Totals.Cost, missing, len(plan.Boards))
}
