package exhaust

import (
	"math/rand"
	"slices"
	"testing"

	"sawbill/layout"
	"sawbill/layout/check"
)

// TestBestPasses lets the checker pass the best plan of random jobs, and finds
// its cost again by what it leaves missing.
func TestBestPasses(t *testing.T) {
	for seed := range int64(150) {
		p := Tiny(seed)
		job := New(p, TinyUnit)
		best := job.Best()
		for _, v := range check.Plan(best) {
			t.Errorf("seed %d: %v", seed, v)
		}
		cost, ok := job.Cost(missing(p, best))
		if !ok || cost != best.Totals.Cost {
			t.Errorf("seed %d: the best plan costs %v, the least is %v", seed, best.Totals.Cost, cost)
		}
	}
}

// TestPairs lets the checker pass the tree of every pair that makes a piece, and
// counts in it what the pair says.
func TestPairs(t *testing.T) {
	for seed := range int64(60) {
		p := Tiny(seed)
		b := &p.Stock[0]
		if !p.Takes(b) {
			continue
		}
		for _, pair := range Pairs(p, b, TinyUnit) {
			if slices.Max(pair.Made) == 0 {
				continue
			}
			plan := layout.Assemble(p, []layout.BoardCut{{Board: b.Mark, Root: pair.Root()}})
			for _, v := range check.Plan(plan) {
				t.Errorf("seed %d: %v", seed, v)
			}
			made := make([]int, len(p.Bill))
			for i, n := range missing(p, plan) {
				made[i] = p.Bill[i].Quantity - n
			}
			if worth := b.Cost - plan.Totals.Cost; !slices.Equal(made, pair.Made) || worth != pair.Worth {
				t.Errorf("seed %d: the tree gives %v and %v, the pair says %v and %v", seed, made, worth, pair.Made, pair.Worth)
			}
		}
	}
}

// TestCost asks what a plan costs that may leave some pieces missing, and then for
// the best plan where nobody asked for those pieces.
func TestCost(t *testing.T) {
	whole := 0
	for seed := range int64(60) {
		p := Tiny(seed)
		less, short := fewer(rand.New(rand.NewSource(seed)), p)
		cost, ok := New(p, TinyUnit).Cost(short)
		best := New(less, TinyUnit).Best()
		if complete := len(best.Missing) == 0; ok != complete || ok && cost != best.Totals.Cost {
			t.Errorf("seed %d: cost %v, %v; with fewer pieces asked for %v, %v", seed, cost, ok, best.Totals.Cost, complete)
		}
		if ok {
			whole++
		}
	}
	if whole < 20 || whole > 50 {
		t.Errorf("%d of 60 jobs can be done whole", whole)
	}
}

// fewer is a job that asks for less by a random number of pieces, row by row.
func fewer(rng *rand.Rand, p *layout.Problem) (*layout.Problem, []int) {
	less := *p
	less.Bill = slices.Clone(p.Bill)
	short := make([]int, len(p.Bill))
	for i := range p.Bill {
		short[i] = rng.Intn(p.Bill[i].Quantity + 1)
		less.Bill[i].Quantity -= short[i]
	}
	return &less, short
}

func missing(p *layout.Problem, plan *layout.Plan) []int {
	n := make([]int, len(p.Bill))
	for i := range p.Bill {
		for _, m := range plan.Missing {
			if m.Part == p.Bill[i].Name {
				n[i] += m.Quantity
			}
		}
	}
	return n
}
