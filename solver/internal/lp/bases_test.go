package lp

import (
	"math"
	"math/rand"
	"testing"
)

// An optimum, if there is one, is at a basis (Dantzig 1951); so on tiny
// programmes all of them are tried.
func TestEqualsEveryBasis(t *testing.T) {
	optimal := 0
	for seed := range int64(3000) {
		rng := rand.New(rand.NewSource(seed))
		q := random(rng, 1+rng.Intn(3), 1+rng.Intn(5))
		for j := range q.cost {
			q.cost[j] = math.Abs(q.cost[j]) // never unbounded
		}
		p := q.program()
		status := p.Solve(plenty)
		want, found := everyBasis(q)
		if found != (status == Optimal) {
			t.Errorf("seed %d: ended %v, but a basis that fits: %v", seed, status, found)
			continue
		}
		if !found {
			continue
		}
		optimal++
		if math.Abs(p.Value()-want) > 1e-7*(1+want) {
			t.Errorf("seed %d: value %g, the best basis has %g", seed, p.Value(), want)
		}
	}
	if optimal < 500 {
		t.Errorf("only %d programmes had an optimum", optimal)
	}
}

// everyBasis is the least cost over all bases of the programme with its slacks.
func everyBasis(q *plain) (float64, bool) {
	a, cost := q.dense(), append([]float64(nil), q.cost...)
	for i := range a {
		for k, sense := range q.senses {
			v := 0.0
			if i == k && sense != Equal {
				v = []float64{-1, 1}[sense]
			}
			a[i] = append(a[i], v)
		}
	}
	cost = append(cost, make([]float64, len(a))...)
	best, found := math.Inf(1), false
	chosen := make([]int, 0, len(a))
	var choose func(from int)
	choose = func(from int) {
		if len(chosen) > 0 {
			if v, ok := costOf(a, q.rhs, cost, chosen); ok {
				best, found = min(best, v), true
			}
		}
		for j := from; j < len(cost) && len(chosen) < len(a); j++ {
			chosen = append(chosen, j)
			choose(j + 1)
			chosen = chosen[:len(chosen)-1]
		}
	}
	choose(0)
	if fits(a, q.rhs, nil, nil) {
		best, found = min(best, 0), true
	}
	return best, found
}

// costOf solves for the chosen columns alone, all others 0, by Gauss's
// elimination; false when they depend on each other or the solution does not
// fit.
func costOf(a [][]float64, rhs, cost []float64, chosen []int) (float64, bool) {
	rows := make([][]float64, len(a))
	for i := range rows {
		for _, j := range chosen {
			rows[i] = append(rows[i], a[i][j])
		}
		rows[i] = append(rows[i], rhs[i])
	}
	n := len(chosen)
	for k := range n {
		largest := k
		for i := k; i < len(rows); i++ {
			if math.Abs(rows[i][k]) > math.Abs(rows[largest][k]) {
				largest = i
			}
		}
		rows[k], rows[largest] = rows[largest], rows[k]
		if math.Abs(rows[k][k]) < 1e-9 {
			return 0, false
		}
		for i := range rows {
			if i == k {
				continue
			}
			f := rows[i][k] / rows[k][k]
			for l := k; l <= n; l++ {
				rows[i][l] -= f * rows[k][l]
			}
		}
	}
	x, total := make([]float64, n), 0.0
	for k, j := range chosen {
		x[k] = rows[k][n] / rows[k][k]
		total += cost[j] * x[k]
	}
	return total, fits(a, rhs, chosen, x)
}

func fits(a [][]float64, rhs []float64, chosen []int, x []float64) bool {
	for _, v := range x {
		if v < -1e-9 {
			return false
		}
	}
	for i, b := range rhs {
		for k, j := range chosen {
			b -= a[i][j] * x[k]
		}
		if math.Abs(b) > 1e-8 {
			return false
		}
	}
	return true
}
