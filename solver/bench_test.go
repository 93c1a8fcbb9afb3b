package solver

import (
	"context"
	"fmt"
	"testing"
	"time"

	"sawbill/layout"
	"sawbill/solver/internal/jobs"
)

// BenchmarkWhole solves one job of each size: first plan alone, then for two and
// ten seconds. It reports the cost, what is missing and the rounds made.
func BenchmarkWhole(b *testing.B) {
	for _, size := range []jobs.Size{
		{Boards: 10, Kinds: 8, Pieces: 50}, {Boards: 40, Kinds: 16, Pieces: 200},
		{Boards: 150, Kinds: 25, Pieces: 700}, {Boards: 1500, Kinds: 40, Pieces: 7000},
	} {
		p := jobs.New(size, 11)
		b.Run(fmt.Sprint(size.Boards, "/first"), func(b *testing.B) {
			for b.Loop() {
				s := newSearch(p, Options{}, func() bool { return false })
				report(b, s.first().plan(), 0)
			}
		})
		for _, d := range []time.Duration{2 * time.Second, 10 * time.Second} {
			b.Run(fmt.Sprint(size.Boards, "/", d), func(b *testing.B) {
				for b.Loop() {
					solveFor(b, p, d)
				}
			})
		}
	}
}

func solveFor(b *testing.B, p *layout.Problem, d time.Duration) {
	ctx, cancel := context.WithTimeout(context.Background(), d)
	defer cancel()
	var rounds counter
	plan, _, err := Solve(ctx, p, Options{Observer: &rounds})
	if err != nil {
		b.Fatal(err)
	}
	report(b, plan, int(rounds))
}

func report(b *testing.B, plan *layout.Plan, rounds int) {
	missing := 0
	for _, m := range plan.Missing {
		missing += m.Quantity
	}
	b.ReportMetric(plan.Totals.Cost.Float(), "cost")
	b.ReportMetric(float64(missing), "missing")
	b.ReportMetric(float64(rounds), "rounds")
}

// counter counts rounds.
type counter int

func (c *counter) Improved(int, *layout.Plan) {}
func (c *counter) Round(n int)                { *c = counter(n) }

func stopped() context.Context {
	ctx, cancel := context.WithCancel(context.Background())
	cancel()
	return ctx
}
