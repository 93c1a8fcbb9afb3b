package solver

import (
	"context"
	"testing"

	"sawbill/layout"
	"sawbill/solver/internal/jobs"
)

// BenchmarkFirst makes the first plan of a job of each size.
func BenchmarkFirst(b *testing.B) {
	for _, j := range []jobs.Named{jobs.Small()[4], jobs.Shop()[0], jobs.Large(), jobs.Huge()} {
		b.Run(j.Name, func(b *testing.B) {
			for b.Loop() {
				ctx, enough := context.WithCancel(context.Background())
				solve(ctx, b, j.Problem, Options{Observer: untilFirst{enough}})
				enough()
			}
		})
	}
}

// BenchmarkRounds makes twenty rounds on a job of each size.
func BenchmarkRounds(b *testing.B) {
	for _, j := range []jobs.Named{jobs.Small()[4], jobs.Shop()[0], jobs.Large()} {
		b.Run(j.Name, func(b *testing.B) {
			for b.Loop() {
				solve(context.Background(), b, j.Problem, Options{Rounds: 20})
			}
		})
	}
}

// solve reports the cost and what is missing.
func solve(ctx context.Context, b *testing.B, p *layout.Problem, o Options) {
	plan, _, err := Solve(ctx, p, o)
	if err != nil {
		b.Fatal(err)
	}
	missing := 0
	for _, m := range plan.Missing {
		missing += m.Quantity
	}
	b.ReportMetric(plan.Totals.Cost.Float(), "cost")
	b.ReportMetric(float64(missing), "missing")
}

// untilFirst ends a solve at its first plan.
type untilFirst struct{ enough func() }

// Improved ends the solve.
func (u untilFirst) Improved(int, *layout.Plan) { u.enough() }

// Round takes no interest.
func (untilFirst) Round(int)                {}
func (untilFirst) Proven(int, layout.Money) {}

func stopped() context.Context {
	ctx, cancel := context.WithCancel(context.Background())
	cancel()
	return ctx
}
