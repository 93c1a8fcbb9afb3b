package lp

import (
	"math"
	"math/rand"
	"testing"
)

// plain is a programme as it was made, to hold answers against.
type plain struct {
	senses []Sense
	rhs    []float64
	cost   []float64
	cols   [][]Entry
}

func (q *plain) program() *Program {
	p := New(q.senses, q.rhs)
	for j, c := range q.cost {
		p.Add(c, q.cols[j])
	}
	return p
}

// dense is the matrix, entries of one row added up.
func (q *plain) dense() [][]float64 {
	a := make([][]float64, len(q.rhs))
	for i := range a {
		a[i] = make([]float64, len(q.cost))
	}
	for j, entries := range q.cols {
		for _, e := range entries {
			a[e.Row][j] += e.Coef
		}
	}
	return a
}

// random makes programmes of every kind: small whole numbers, so that many are
// degenerate, infeasible or unbounded, and some with real numbers.
func random(rng *rand.Rand, rows, cols int) *plain {
	q := &plain{}
	senses := 1 + rng.Intn(3)
	least := []int{-3, 0}[rng.Intn(2)]
	whole := rng.Intn(3) > 0
	number := func(low, high int) float64 {
		if whole {
			return float64(low + rng.Intn(high-low+1))
		}
		return float64(low) + rng.Float64()*float64(high-low)
	}
	for range rows {
		q.senses = append(q.senses, Sense(rng.Intn(senses)))
		q.rhs = append(q.rhs, number(least, 6))
	}
	for range cols {
		q.cost = append(q.cost, number(min(least+rng.Intn(4), 0), 9))
		var entries []Entry
		for range rng.Intn(min(rows, 6) + 1) {
			entries = append(entries, Entry{rng.Intn(rows), number(least, 5)})
		}
		q.cols = append(q.cols, entries)
	}
	return q
}

// Every end is proven: an optimum by a dual solution of the same value, the lack
// of a solution by Farkas's multipliers, the lack of an end by how the optimum
// follows a limit that is put on the sum of x.
func TestEveryEndIsProven(t *testing.T) {
	ends := map[Status]int{}
	for seed := range int64(6000) {
		rng := rand.New(rand.NewSource(seed))
		q := random(rng, 1+rng.Intn(12), 1+rng.Intn(25))
		p := q.program()
		status := p.Solve(plenty)
		ends[status]++
		prove(t, seed, q, p, status)
	}
	for _, status := range []Status{Optimal, Infeasible, Unbounded} {
		if ends[status] < 300 {
			t.Errorf("only %d programmes ended %v", ends[status], status)
		}
	}
}

// The ways out of standstill, used from the first step on, end the same way; and
// so does an inverse that is worked out all the time.
func TestWaysOutOfStandstill(t *testing.T) {
	tests := []struct {
		name                 string
		patience, freshAfter int
	}{
		{"right-hand sides are shifted", 0, 150},
		{"the smallest index wins", -1, 150},
		{"always a fresh inverse", 20, 1},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			for seed := range int64(2000) {
				rng := rand.New(rand.NewSource(seed))
				q := random(rng, 1+rng.Intn(12), 1+rng.Intn(25))
				p := q.program()
				p.patience, p.freshAfter = test.patience, test.freshAfter
				prove(t, seed, q, p, p.Solve(plenty))
			}
		})
	}
}

func prove(t *testing.T, seed int64, q *plain, p *Program, status Status) {
	t.Helper()
	switch status {
	case Optimal:
		proveOptimal(t, seed, q, p)
	case Infeasible:
		proveInfeasible(t, seed, q, p)
	case Unbounded:
		proveUnbounded(t, seed, q, p)
	default:
		t.Errorf("seed %d: ended %v", seed, status)
	}
}

const eps = 1e-6

func proveOptimal(t *testing.T, seed int64, q *plain, p *Program) {
	t.Helper()
	x, y := p.Primal(), p.Dual()
	checkPrimal(t, seed, q, x)
	checkSigns(t, seed, q, y)
	var primal, dual float64
	for j, c := range q.cost {
		primal += c * x[j]
		d := p.ReducedCost(j)
		if d < -eps*(1+math.Abs(c)) {
			t.Errorf("seed %d: column %d has reduced cost %g", seed, j, d)
		}
		if d > eps*(1+math.Abs(c)) && x[j] > eps {
			t.Errorf("seed %d: column %d is used at reduced cost %g", seed, j, d)
		}
	}
	for i, b := range q.rhs {
		dual += b * y[i]
	}
	if math.Abs(primal-dual) > eps*(1+math.Abs(primal)) || math.Abs(primal-p.Value()) > eps*(1+math.Abs(primal)) {
		t.Errorf("seed %d: primal %g, dual %g, value %g", seed, primal, dual, p.Value())
	}
}

func checkPrimal(t *testing.T, seed int64, q *plain, x []float64) {
	t.Helper()
	for i, line := range q.dense() {
		var sum float64
		for j, a := range line {
			sum += a * x[j]
		}
		over := sum - q.rhs[i]
		if q.senses[i] != AtMost && over < -eps*(1+math.Abs(sum)) || q.senses[i] != AtLeast && over > eps*(1+math.Abs(sum)) {
			t.Errorf("seed %d: row %d misses its right-hand side by %g", seed, i, over)
		}
	}
	for j, v := range x {
		if v < 0 {
			t.Errorf("seed %d: x[%d] = %g", seed, j, v)
		}
	}
}

func checkSigns(t *testing.T, seed int64, q *plain, y []float64) {
	t.Helper()
	for i, v := range y {
		if q.senses[i] == AtLeast && v < -eps || q.senses[i] == AtMost && v > eps {
			t.Errorf("seed %d: row %d has dual %g", seed, i, v)
		}
	}
}

// No x >= 0 can do y*A <= 0 at every column and yet y*b > 0.
func proveInfeasible(t *testing.T, seed int64, q *plain, p *Program) {
	t.Helper()
	y := p.Dual()
	checkSigns(t, seed, q, y)
	var worth, size float64
	for i, b := range q.rhs {
		worth += b * y[i]
		size = max(size, math.Abs(y[i]))
	}
	if worth <= 1e-7*size {
		t.Errorf("seed %d: y*b is %g", seed, worth)
	}
	for j := range q.cost {
		if d := p.ReducedCost(j) - q.cost[j]; d < -eps*size {
			t.Errorf("seed %d: column %d: y*a is %g", seed, j, -d)
		}
	}
}

func proveUnbounded(t *testing.T, seed int64, q *plain, p *Program) {
	t.Helper()
	checkPrimal(t, seed, q, p.Primal())
	near, far := boxed(t, seed, q, 1e4), boxed(t, seed, q, 2e4)
	if far > near-1 {
		t.Errorf("seed %d: %g within a sum of 1e4, %g within 2e4", seed, near, far)
	}
}

// boxed is the proven optimum with a limit on the sum of x.
func boxed(t *testing.T, seed int64, q *plain, limit float64) float64 {
	t.Helper()
	b := &plain{append(q.senses[:len(q.senses):len(q.senses)], AtMost), append(q.rhs[:len(q.rhs):len(q.rhs)], limit), q.cost, nil}
	for _, entries := range q.cols {
		b.cols = append(b.cols, append(entries[:len(entries):len(entries)], Entry{len(q.rhs), 1}))
	}
	p := b.program()
	if status := p.Solve(plenty); status != Optimal {
		t.Errorf("seed %d: within a limit: %v", seed, status)
		return 0
	}
	proveOptimal(t, seed, b, p)
	return p.Value()
}
