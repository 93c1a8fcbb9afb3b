package lp

import (
	"math"
	"math/rand"
	"testing"
)

// Whatever is changed, going on from the old basis ends as beginning anew does.
func TestWarmEqualsCold(t *testing.T) {
	optimal := 0
	for seed := range int64(600) {
		rng := rand.New(rand.NewSource(seed))
		q := random(rng, 1+rng.Intn(10), 1+rng.Intn(15))
		warm := q.program()
		forbidden := make([]bool, len(q.cost))
		for range 12 {
			forbidden = alter(rng, q, warm, forbidden)
			status := warm.Solve(plenty)
			cold := q.program()
			for j, f := range forbidden {
				if f {
					cold.Forbid(j)
				}
			}
			if want := cold.Solve(plenty); status != want {
				t.Fatalf("seed %d: warm %v, cold %v", seed, status, want)
			}
			if status != Optimal {
				continue
			}
			optimal++
			if math.Abs(warm.Value()-cold.Value()) > 1e-6*(1+math.Abs(cold.Value())) {
				t.Errorf("seed %d: warm %g, cold %g", seed, warm.Value(), cold.Value())
			}
			checkPrimal(t, seed, q, warm.Primal())
		}
	}
	if optimal < 1500 {
		t.Errorf("only %d programmes had an optimum", optimal)
	}
}

// alter changes a programme in one of the ways that there are, and its plain
// copy alike.
func alter(rng *rand.Rand, q *plain, p *Program, forbidden []bool) []bool {
	switch rng.Intn(5) {
	case 0:
		more := random(rng, len(q.rhs), 1+rng.Intn(5))
		for j, cost := range more.cost {
			p.Add(cost, more.cols[j])
		}
		q.cost, q.cols = append(q.cost, more.cost...), append(q.cols, more.cols...)
		return append(forbidden, make([]bool, len(more.cost))...)
	case 1, 2:
		row := rng.Intn(len(q.rhs))
		q.rhs[row] += float64(rng.Intn(7) - 3)
		p.SetRHS(row, q.rhs[row])
	case 3:
		for range 3 {
			if j := rng.Intn(len(forbidden)); forbidden[j] {
				forbidden[j] = false
				p.Allow(j)
			} else {
				forbidden[j] = true
				p.Forbid(j)
			}
		}
	case 4:
		return purge(rng, q, p, forbidden)
	}
	return forbidden
}

func purge(rng *rand.Rand, q *plain, p *Program, forbidden []bool) []bool {
	keep := make([]bool, len(q.cost))
	for j := range keep {
		keep[j] = rng.Intn(3) > 0
	}
	moved := p.Purge(func(col int) bool { return keep[col] })
	left := &plain{senses: q.senses, rhs: q.rhs}
	var kept []bool
	for j, to := range moved {
		if to < 0 {
			continue
		}
		left.cost, left.cols = append(left.cost, q.cost[j]), append(left.cols, q.cols[j])
		kept = append(kept, forbidden[j])
	}
	if len(kept) == 0 { // so that later changes have something to change
		p.Add(1, nil)
		left.cost, left.cols, kept = append(left.cost, 1), append(left.cols, nil), append(kept, false)
	}
	*q = *left
	return kept
}
