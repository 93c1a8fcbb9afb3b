package lp

import (
	"math/rand"
	"testing"
)

// To give every one of six a task of his own: every basis of this programme is
// degenerate, and an optimum is a permutation, of which there are 720.
func TestAssignment(t *testing.T) {
	const n = 6
	for seed := range int64(100) {
		rng := rand.New(rand.NewSource(seed))
		q := &plain{senses: make([]Sense, 2*n), rhs: make([]float64, 2*n)}
		for i := range q.senses {
			q.senses[i], q.rhs[i] = Equal, 1
		}
		cost := [n][n]float64{}
		for i := range n {
			for j := range n {
				cost[i][j] = float64(rng.Intn(4))
				q.cost, q.cols = append(q.cost, cost[i][j]), append(q.cols, []Entry{{i, 1}, {n + j, 1}})
			}
		}
		p := q.program()
		if status := p.Solve(plenty); status != Optimal {
			t.Fatalf("seed %d: %v", seed, status)
		}
		proveOptimal(t, seed, q, p)
		near(t, "value", []float64{p.Value()}, []float64{cheapest(cost[:], [n]bool{})})
	}
}

// cheapest is the least cost of tasks of their own for all that are left.
func cheapest(cost [][6]float64, taken [6]bool) float64 {
	if len(cost) == 0 {
		return 0
	}
	best := 1e9
	for j, c := range cost[0] {
		if !taken[j] {
			taken[j] = true
			best = min(best, c+cheapest(cost[1:], taken))
			taken[j] = false
		}
	}
	return best
}
