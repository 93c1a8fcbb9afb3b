package lp

import (
	"math"
	"testing"
)

const plenty = 10000

// row is a row of a small programme as it is written on paper: the coefficients
// of all columns, the sense, the right-hand side.
type row struct {
	coefs []float64
	sense Sense
	rhs   float64
}

func programme(cost []float64, rows ...row) *Program {
	var senses []Sense
	var rhs []float64
	for _, r := range rows {
		senses, rhs = append(senses, r.sense), append(rhs, r.rhs)
	}
	p := New(senses, rhs)
	for j, c := range cost {
		var entries []Entry
		for i, r := range rows {
			entries = append(entries, Entry{i, r.coefs[j]})
		}
		p.Add(c, entries)
	}
	return p
}

func TestOnPaper(t *testing.T) {
	tests := []struct {
		name   string
		p      *Program
		status Status
		value  float64
		x, y   []float64 // not looked at where nil
	}{
		{
			// Two duals a and b: 2a + b <= 4, a + 3b <= 6 at the most of 3a + 4b:
			// both tight, a = 6/5, b = 8/5, 18/5 + 32/5 = 10.
			"covering", programme([]float64{4, 6}, row{[]float64{2, 1}, AtLeast, 3}, row{[]float64{1, 3}, AtLeast, 4}),
			Optimal, 10, []float64{1, 1}, []float64{1.2, 1.6},
		},
		{
			// Most of 3x + 2y in x + y <= 4, x <= 2: x = 2, y = 2.
			"packing", programme([]float64{-3, -2}, row{[]float64{1, 1}, AtMost, 4}, row{[]float64{1, 0}, AtMost, 2}),
			Optimal, -10, []float64{2, 2}, []float64{-2, -1},
		},
		{
			// x + y = 5 with x <= 3 in front: the cheaper x as far as it goes.
			"equation", programme([]float64{1, 2}, row{[]float64{1, 1}, Equal, 5}, row{[]float64{1, 0}, AtMost, 3}),
			Optimal, 7, []float64{3, 2}, []float64{2, -1},
		},
		{
			"below an equation of 0", programme([]float64{-1}, row{[]float64{1}, Equal, 0}),
			Optimal, 0, []float64{0}, nil,
		},
		{
			"two rows that contradict", programme([]float64{1}, row{[]float64{1}, AtLeast, 3}, row{[]float64{1}, AtMost, 2}),
			Infeasible, 0, nil, nil,
		},
		{
			"a negative sum of nothing negative", programme([]float64{1, 1}, row{[]float64{1, 2}, Equal, -1}),
			Infeasible, 0, nil, nil,
		},
		{
			// x and y grow together for ever.
			"no end", programme([]float64{-1, -1}, row{[]float64{1, -1}, AtMost, 1}),
			Unbounded, 0, nil, nil,
		},
		{
			"no rows", programme([]float64{1, 0}), Optimal, 0, []float64{0, 0}, []float64{},
		},
		{
			"a row said twice", programme([]float64{1, 3}, row{[]float64{1, 1}, Equal, 2}, row{[]float64{1, 1}, Equal, 2}),
			Optimal, 2, []float64{2, 0}, nil,
		},
		{
			// Beale (1955): the plain rule goes round in circles here. The optimum
			// is at x1 = 1/25, x3 = 1.
			"circles", programme([]float64{-0.75, 150, -0.02, 6},
				row{[]float64{0.25, -60, -0.04, 9}, AtMost, 0},
				row{[]float64{0.5, -90, -0.02, 3}, AtMost, 0},
				row{[]float64{0, 0, 1, 0}, AtMost, 1}),
			Optimal, -0.05, []float64{0.04, 0, 1, 0}, nil,
		},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			if status := test.p.Solve(plenty); status != test.status {
				t.Fatalf("ended %v, want %v", status, test.status)
			}
			if test.status != Optimal {
				return
			}
			near(t, "value", []float64{test.p.Value()}, []float64{test.value})
			if test.x != nil {
				near(t, "x", test.p.Primal(), test.x)
			}
			if test.y != nil {
				near(t, "y", test.p.Dual(), test.y)
			}
		})
	}
}

func near(t *testing.T, what string, got, want []float64) {
	t.Helper()
	if len(got) != len(want) {
		t.Fatalf("%s: %d numbers, want %d", what, len(got), len(want))
	}
	for i := range got {
		if math.Abs(got[i]-want[i]) > 1e-7*(1+math.Abs(want[i])) {
			t.Errorf("%s: %v, want %v", what, got, want)
			return
		}
	}
}

// Forbidding the cheap column leaves the dear one, allowing it brings it back.
func TestForbidAndAllow(t *testing.T) {
	p := programme([]float64{1, 5}, row{[]float64{1, 1}, AtLeast, 2})
	p.Solve(plenty)
	near(t, "at first", p.Primal(), []float64{2, 0})
	p.Forbid(0)
	p.Solve(plenty)
	near(t, "forbidden", p.Primal(), []float64{0, 2})
	p.Forbid(1)
	if status := p.Solve(plenty); status != Infeasible {
		t.Errorf("all forbidden: %v", status)
	}
	p.Allow(0)
	p.Solve(plenty)
	near(t, "allowed", p.Primal(), []float64{2, 0})
}

// A row that asks for more, then for less than before.
func TestRightHandSideChanges(t *testing.T) {
	p := programme([]float64{2, 3}, row{[]float64{1, 0}, AtMost, 4}, row{[]float64{1, 1}, AtLeast, 3})
	for _, step := range []struct{ rhs, value float64 }{{3, 6}, {7, 8 + 9}, {1, 2}, {-5, 0}} {
		p.SetRHS(1, step.rhs)
		if status := p.Solve(plenty); status != Optimal {
			t.Fatalf("rhs %v: %v", step.rhs, status)
		}
		near(t, "value", []float64{p.Value()}, []float64{step.value})
	}
}

// Columns that are not in the basis go, the others keep their values under new
// indices.
func TestPurge(t *testing.T) {
	p := programme([]float64{9, 1, 9, 2}, row{[]float64{1, 1, 0, 0}, AtLeast, 1}, row{[]float64{0, 0, 1, 1}, AtLeast, 3})
	p.Solve(plenty)
	moved := p.Purge(func(int) bool { return false })
	for col, want := range []int{-1, 0, -1, 1} {
		if moved[col] != want {
			t.Fatalf("moved %v", moved)
		}
	}
	near(t, "x", p.Primal(), []float64{1, 3})
	if col := p.Add(0.5, []Entry{{1, 1}}); col != 2 {
		t.Errorf("new column has index %d", col)
	}
	p.Solve(plenty)
	near(t, "x with another column", p.Primal(), []float64{1, 0, 3})
}

// With no iterations left nothing is claimed.
func TestLimit(t *testing.T) {
	p := programme([]float64{1, 1}, row{[]float64{1, 2}, AtLeast, 3})
	if status := p.Solve(0); status != Stopped {
		t.Errorf("ended %v", status)
	}
	if status := p.Solve(plenty); status != Optimal {
		t.Errorf("going on ended %v", status)
	}
}
