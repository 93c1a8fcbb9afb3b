package lp

import (
	"fmt"
	"math"
	"slices"
)

// Sense says how the sum of a row compares with its right-hand side.
type Sense int

// The senses of a row.
const (
	AtLeast Sense = iota
	AtMost
	Equal
)

// Entry is one coefficient of a column. Entries of one row add up.
type Entry struct {
	Row  int
	Coef float64
}

// Program is a linear programme and the basis that its last Solve ended with.
// Rows are fixed when it is made, columns come and go. It is not safe for use by
// several goroutines at once.
type Program struct {
	rhs  []float64
	vars variables
	base basis
	work workspace
	// patience is how many steps without progress are borne before right-hand
	// sides are shifted; ten times as many before Bland's rule is used.
	patience int
	// freshAfter is how many changes the inverse bears.
	freshAfter int
}

// variables holds all columns, first those of the logical variables, one a row.
type variables struct {
	start  []int // of each variable's entries, and the end of the last
	row    []int32
	coef   []float64
	cost   []float64
	fixed  []bool    // at most 0
	weight []float64 // 1 / length of the column as the first basis sees it
	seat   []int     // in the basis, or -1
}

// New makes a programme without columns. It panics when the lengths differ or a
// right-hand side is not finite.
func New(senses []Sense, rhs []float64) *Program {
	if len(senses) != len(rhs) {
		panic(fmt.Sprintf("lp: %d senses and %d right-hand sides", len(senses), len(rhs)))
	}
	p := &Program{rhs: slices.Clone(rhs), patience: 20 + len(rhs)/4, freshAfter: 150}
	p.vars.start = []int{0}
	for i, sense := range senses {
		mustBeFinite(rhs[i])
		coef := 1.0
		if sense == AtLeast {
			coef = -1
		}
		p.Add(0, []Entry{{i, coef}})
		p.vars.fixed[i] = sense == Equal
	}
	p.base.reset(&p.vars, len(rhs))
	return p
}

// Add appends a column and returns its index: 0 for the first one, one more for
// every further one. It panics on a row that does not exist and on numbers that
// are not finite.
func (p *Program) Add(cost float64, entries []Entry) int {
	mustBeFinite(cost)
	v := &p.vars
	square := 1.0
	for _, e := range entries {
		mustBeFinite(e.Coef)
		if e.Row < 0 || e.Row >= len(p.rhs) {
			panic(fmt.Sprintf("lp: no row %d", e.Row))
		}
		if e.Coef != 0 {
			v.row = append(v.row, int32(e.Row))
			v.coef = append(v.coef, e.Coef)
			square += e.Coef * e.Coef
		}
	}
	v.start = append(v.start, len(v.row))
	v.cost = append(v.cost, cost)
	v.fixed = append(v.fixed, false)
	v.weight = append(v.weight, 1/math.Sqrt(square))
	v.seat = append(v.seat, -1)
	return len(v.cost) - 1 - len(p.rhs)
}

// Columns returns how many columns there are, forbidden ones too.
func (p *Program) Columns() int { return len(p.vars.cost) - len(p.rhs) }

// Forbid fixes a column at 0 until it is allowed again.
func (p *Program) Forbid(col int) { p.vars.fixed[p.variable(col)] = true }

// Allow undoes Forbid.
func (p *Program) Allow(col int) { p.vars.fixed[p.variable(col)] = false }

// SetRHS changes the right-hand side of a row.
func (p *Program) SetRHS(row int, v float64) {
	mustBeFinite(v)
	p.rhs[row] = v
}

// variable is the variable of a column.
func (p *Program) variable(col int) int {
	if col < 0 || col >= p.Columns() {
		panic(fmt.Sprintf("lp: no column %d", col))
	}
	return len(p.rhs) + col
}

func mustBeFinite(v float64) {
	if math.IsNaN(v) || math.IsInf(v, 0) {
		panic(fmt.Sprintf("lp: number %v", v))
	}
}

// entries returns the rows and coefficients of a variable.
func (v *variables) entries(j int) ([]int32, []float64) {
	lo, hi := v.start[j], v.start[j+1]
	return v.row[lo:hi], v.coef[lo:hi]
}

// dot is the sum of y times the column of variable j.
func (v *variables) dot(j int, y []float64) float64 {
	rows, coefs := v.entries(j)
	var sum float64
	for k, r := range rows {
		sum += y[r] * coefs[k]
	}
	return sum
}
