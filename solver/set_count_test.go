package solver

import (
	"context"
	"testing"

	"sawbill/layout/check"
	"sawbill/solver/internal/jobs"
)

// TestFewBoardsAreProven solves jobs of few boards with credit for offcuts: where no board
// tapers, most plans are proven to be the best.
func TestFewBoardsAreProven(t *testing.T) {
	if testing.Short() {
		t.Skip("many rounds")
	}
	proven := 0
	list := jobs.FewFlat()
	for _, n := range []int{2, 4, 5, 7, 20} {
		j := list[n-1]
		plan, _, err := Solve(context.Background(), j.Problem, Options{Rounds: 400})
		if err != nil {
			t.Fatal(err)
		}
		for _, f := range check.Plan(plan) {
			t.Errorf("%s: %v", j.Name, f)
		}
		if gap, ok := plan.Totals.Gap(); ok && gap == 0 {
			proven++
		}
		t.Logf("%s: %s, bound %v", j.Name, summary(plan), plan.Totals.Bound)
	}
	if proven < 4 {
		t.Errorf("%d of 5 plans are proven", proven)
	}
}
