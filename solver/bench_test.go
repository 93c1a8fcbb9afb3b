package solver

import (
	"context"
	"fmt"
	"os"
	"testing"
	"time"

	"sawbill/layout"
	"sawbill/solver/internal/jobs"
)

func BenchmarkWhole(b *testing.B) {
	for _, size := range []jobs.Size{
		{Boards: 10, Kinds: 8, Pieces: 50}, {Boards: 40, Kinds: 16, Pieces: 200}, {Boards: 150, Kinds: 25, Pieces: 900},
	} {
		b.Run(fmt.Sprint(size.Boards), func(b *testing.B) {
			p := jobs.New(size, 11)
			for b.Loop() {
				began := time.Now()
				plan, _, _ := Solve(stopped(), p, Options{})
				_ = plan
				for _, d := range []time.Duration{2 * time.Second, 10 * time.Second} {
					ctx, cancel := context.WithTimeout(context.Background(), d)
					rounds := &rounder{}
					plan, _, err := Solve(ctx, p, Options{Observer: rounds})
					cancel()
					if err != nil {
						b.Fatal(err)
					}
					fmt.Fprintln(os.Stderr, size, d, time.Since(began), summary(plan), "first", rounds.first, rounds.n, "rounds", rounds.at)
				}
			}
		})
	}
}

func stopped() context.Context {
	ctx, cancel := context.WithCancel(context.Background())
	cancel()
	return ctx
}

type rounder struct {
	n     int
	first string
	at    time.Duration
	began time.Time
}

func (r *rounder) Improved(n int, p *layout.Plan) {
	if n == 0 {
		r.first, r.began = summary(p), time.Now()
	}
}
func (r *rounder) Round(n int) { r.n = n; r.at = time.Since(r.began) }
