package lp

import (
	"cmp"
	"math"
	"slices"
)

// basis is a square choice of variables, one a seat, with its inverse and with
// the values that the variables take.
type basis struct {
	order   []int     // variable by seat
	inv     []float64 // row by row: seat times programme row
	x       []float64 // by seat
	changes int       // of the inverse since it was worked out
}

// tiny is the least size of a pivot.
const tiny = 1e-9

// reset makes the basis of logical variables.
func (b *basis) reset(v *variables, m int) {
	b.order, b.inv, b.x = make([]int, m), make([]float64, m*m), make([]float64, m)
	for i := range m {
		b.order[i] = i
		v.seat[i] = i
		b.inv[i*m+i] = v.coef[i]
	}
}

// line is row i of the inverse.
func (b *basis) line(i int) []float64 {
	m := len(b.order)
	return b.inv[i*m : (i+1)*m]
}

// see writes variable j as the basis sees it into alpha: the inverse times its
// column.
func (b *basis) see(v *variables, j int, alpha []float64) {
	rows, coefs := v.entries(j)
	for i := range alpha {
		line := b.line(i)
		var sum float64
		for k, r := range rows {
			sum += line[r] * coefs[k]
		}
		alpha[i] = sum
	}
}

// pivot changes the inverse to what it is after the variable that the basis sees
// as alpha has taken seat r.
func (b *basis) pivot(r int, alpha []float64, at []int32) {
	pivot := b.line(r)
	at = at[:0]
	for k, v := range pivot {
		if v != 0 {
			pivot[k] = v / alpha[r]
			at = append(at, int32(k))
		}
	}
	for i, a := range alpha {
		if i == r || a == 0 {
			continue
		}
		line := b.line(i)
		if 3*len(at) > len(line) {
			for k, v := range pivot {
				line[k] -= a * v
			}
			continue
		}
		for _, k := range at {
			line[k] -= a * pivot[k]
		}
	}
	b.changes++
}

// refactor works out the inverse afresh by Gauss-Jordan elimination with the
// largest pivot in each column, sparse columns first. Columns that depend on
// others leave the basis for logical variables.
func (p *Program) refactor() {
	b, v, m := &p.base, &p.vars, len(p.rhs)
	members := slices.Clone(b.order)
	slices.SortFunc(members, func(j, k int) int {
		return cmp.Or(cmp.Compare(v.start[j+1]-v.start[j], v.start[k+1]-v.start[k]), cmp.Compare(j, k))
	})
	for _, j := range members {
		v.seat[j] = -1
	}
	clear(b.inv)
	for i := range m {
		b.order[i] = -1
		b.inv[i*m+i] = 1
	}
	for _, j := range members {
		p.seat(j)
	}
	for i := range m {
		if v.seat[i] < 0 && slices.Contains(b.order, -1) {
			p.seat(i)
		}
	}
	b.changes = 0
}

// seat gives variable j the free seat where its pivot is largest, if there is
// one.
func (p *Program) seat(j int) {
	b, alpha := &p.base, p.work.alpha
	b.see(&p.vars, j, alpha)
	at, size := -1, tiny
	for i, a := range alpha {
		if b.order[i] < 0 && math.Abs(a) > size {
			at, size = i, math.Abs(a)
		}
	}
	if at >= 0 {
		b.pivot(at, alpha, p.work.at)
		b.order[at], p.vars.seat[j] = j, at
	}
}
