package main

import (
	"context"
	"testing"

	"sawbill/layout"
	"sawbill/layout/check/bound"
	"sawbill/layout/files"
	"sawbill/solver"
)

// sampleProblem reads a sample that has a bill.
func sampleProblem(t *testing.T, name string) *layout.Problem {
	t.Helper()
	job, err := files.Load(files.Input{
		Shop:  sampleFile(t, name, "shop.toml"),
		Stock: sampleFile(t, name, "stock.csv"),
		Bill:  sampleFile(t, name, "bill.csv"),
	})
	if err != nil {
		t.Fatalf("%s: %v", name, err)
	}
	return job.Problem
}

func solved(t *testing.T, p *layout.Problem, rounds int) *layout.Plan {
	t.Helper()
	plan, _, err := solver.Solve(context.Background(), p, solver.Options{Rounds: rounds})
	if err != nil {
		t.Fatal(err)
	}
	return plan
}

// Boards that are warped give more in short blanks: with blanks about as long as the
// boards, 96, the hall bench costs half as much again, in as many rounds.
func TestShortBlanksCostLess(t *testing.T) {
	const rounds = 12
	short := solved(t, sampleProblem(t, "hallbench"), rounds)
	whole := sampleProblem(t, "hallbench")
	whole.Shop.MinBlank = 90 * layout.Inch
	long := solved(t, whole, rounds)
	if len(short.Missing)+len(long.Missing) > 0 {
		t.Fatalf("missing %v, in long blanks %v", short.Missing, long.Missing)
	}
	if long.Totals.Cost < short.Totals.Cost*5/4 {
		t.Errorf("costs %v, in long blanks no more than %v", short.Totals.Cost, long.Totals.Cost)
	}
}

// feature is one way in which wood is not flat, straight or simple.
type feature struct {
	name string
	used func(b *layout.Board, trued, n *layout.Node, p *layout.Part) bool
}

// The plans of the two samples use every way in which wood is cut otherwise than flat
// and square, and what they say of their bounds is proven again from their prices.
func TestSamplesUseEveryFeature(t *testing.T) {
	features := []feature{
		{"bow", func(b *layout.Board, _, _ *layout.Node, _ *layout.Part) bool { return b.Bow > 0 }},
		{"crook", func(b *layout.Board, _, _ *layout.Node, _ *layout.Part) bool { return b.Crook > 0 }},
		{"cup", func(b *layout.Board, _, _ *layout.Node, _ *layout.Part) bool { return b.Cup > 0 }},
		{"twist", func(b *layout.Board, _, _ *layout.Node, _ *layout.Part) bool { return b.Twist > 0 }},
		{"rough rip", func(b *layout.Board, trued, _ *layout.Node, _ *layout.Part) bool {
			return trued.Width() < b.FullWidth()
		}},
		{"bevel", func(_ *layout.Board, _, n *layout.Node, _ *layout.Part) bool { return n.Lean > 0 }},
		{"on edge", func(_ *layout.Board, _, n *layout.Node, _ *layout.Part) bool { return n.OnEdge }},
		{"resaw", func(_ *layout.Board, _, n *layout.Node, _ *layout.Part) bool { return n.Layers > 1 }},
		{"planed thinner", func(_ *layout.Board, trued, n *layout.Node, p *layout.Part) bool {
			return n.Layers <= 1 && !n.OnEdge && p.Thickness < trued.Thickness
		}},
		{"match", func(_ *layout.Board, _, _ *layout.Node, p *layout.Part) bool { return p.Match != "" }},
	}
	seen := map[string]bool{}
	for _, name := range []string{"hallbench", "trugs"} {
		plan := solved(t, sampleProblem(t, name), 12)
		for i := range plan.Boards {
			board := plan.Problem.Board(plan.Boards[i].Board)
			plan.Boards[i].Root.Walk(func(trued *layout.Node) {
				for _, n := range trued.Leaves() {
					for _, f := range features {
						if trued.Trued && n.Part != "" && f.used(board, trued, n, plan.Problem.Part(n.Part)) {
							seen[f.name] = true
						}
					}
				}
			})
		}
		proof, err := bound.Prove(func() bool { return false }, plan)
		if err != nil || len(proof.Violations) > 0 {
			t.Errorf("%s: %v %v", name, err, proof.Violations)
		}
	}
	for _, f := range features {
		if !seen[f.name] {
			t.Errorf("no part of the samples needs: %s", f.name)
		}
	}
}
