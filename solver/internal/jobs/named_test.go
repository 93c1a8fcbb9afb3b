package jobs_test

import (
	"context"
	"testing"

	"github.com/google/go-cmp/cmp"

	"sawbill/layout"
	"sawbill/solver"
	"sawbill/solver/internal/jobs"
)

// band is the least and the most of something.
type band struct{ lo, hi int }

func (b band) holds(n int) bool { return b.lo <= n && n <= b.hi }

func TestNamedJobsHaveTheirSize(t *testing.T) {
	for _, tc := range []struct {
		jobs                  []jobs.Named
		boards, kinds, pieces band
	}{
		{jobs.Shop(), band{15, 40}, band{8, 20}, band{60, 200}},
		{jobs.Small(), band{3, 5}, band{4, 8}, band{8, 30}},
		{[]jobs.Named{jobs.Large()}, band{200, 200}, band{35, 35}, band{1500, 1500}},
		{[]jobs.Named{jobs.Huge()}, band{1500, 1500}, band{40, 40}, band{10000, 10000}},
	} {
		for _, j := range tc.jobs {
			p := j.Problem
			if !tc.boards.holds(len(p.Stock)) || !tc.kinds.holds(len(p.Bill)) || !tc.pieces.holds(pieces(p)) {
				t.Errorf("%s: %d boards, %d kinds, %d pieces", j.Name, len(p.Stock), len(p.Bill), pieces(p))
			}
		}
	}
}

func pieces(p *layout.Problem) int {
	n := 0
	for _, part := range p.Bill {
		n += part.Quantity
	}
	return n
}

func all() []jobs.Named {
	return append(append(append(jobs.Shop(), jobs.Small()...), jobs.Bars()...), jobs.Panels()...)
}

// What files would be refused for, no job may hold either.
func TestNamedJobsAreSound(t *testing.T) {
	for _, j := range append(append(all(), jobs.ShopWarped()...), jobs.Large(), jobs.Huge()) {
		_, complaints := layout.NewProblem(j.Problem.Shop, j.Problem.Stock, j.Problem.Bill, false)
		for _, c := range complaints {
			t.Errorf("%s: %v", j.Name, c)
		}
	}
}

func TestNamedJobsAreTheSameEveryTime(t *testing.T) {
	again := all()
	for i, j := range all() {
		if diff := cmp.Diff(j, again[i]); diff != "" {
			t.Errorf("%s differs from itself:\n%s", j.Name, diff)
		}
	}
}

// A table of costs compares like with like only where nothing is missing.
func TestNamedJobsCanBeMadeWhole(t *testing.T) {
	for _, j := range all() {
		t.Run(j.Name, func(t *testing.T) {
			t.Parallel()
			ctx, enough := context.WithCancel(context.Background())
			defer enough()
			plan, _, err := solver.Solve(ctx, j.Problem, solver.Options{Rounds: 6, Observer: untilWhole{enough}})
			if err != nil {
				t.Fatal(err)
			}
			if len(plan.Missing) > 0 {
				t.Errorf("missing: %v", plan.Missing)
			}
		})
	}
}

// untilWhole ends a solve at the first plan that leaves nothing missing.
type untilWhole struct{ enough func() }

// Improved looks at what is missing.
func (u untilWhole) Improved(_ int, plan *layout.Plan) {
	if len(plan.Missing) == 0 {
		u.enough()
	}
}

// Round takes no interest.
func (untilWhole) Round(int)                {}
func (untilWhole) Proven(int, layout.Money) {}
