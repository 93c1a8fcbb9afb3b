package lp

import "math"

// workspace holds what is overwritten all the time.
type workspace struct {
	alpha           []float64 // by seat
	y               []float64 // by row
	rest            []float64 // by row or seat
	peak            float64   // the largest dual or cost that the duals come from
	at              []int32
	zero            []float64 // by variable: costs while violations are mended
	shift           []float64 // by row: added to the right-hand sides
	across, reduced []float64 // by variable
}

// settle makes room for work on the present columns.
func (p *Program) settle() {
	w, m := &p.work, len(p.rhs)
	if w.alpha == nil {
		w.alpha, w.y, w.rest = make([]float64, m), make([]float64, m), make([]float64, m)
		w.shift, w.at = make([]float64, m), make([]int32, 0, m)
	}
	for len(w.zero) < len(p.vars.cost) {
		w.zero = append(w.zero, 0)
		w.across = append(w.across, 0)
		w.reduced = append(w.reduced, 0)
	}
}

// findX works out the values of the basis: the inverse times the right-hand
// sides, and once more for what is left over.
func (p *Program) findX() {
	clear(p.base.x)
	for range 2 {
		rest := p.unmet()
		for i := range p.base.x {
			line := p.base.line(i)
			for k, v := range rest {
				p.base.x[i] += line[k] * v
			}
		}
	}
}

// unmet is, by row, what the right-hand side exceeds the row's sum by.
func (p *Program) unmet() []float64 {
	rest := p.work.rest
	for i, v := range p.rhs {
		rest[i] = v + p.work.shift[i]
	}
	for i, j := range p.base.order {
		rows, coefs := p.vars.entries(j)
		for k, r := range rows {
			rest[r] -= coefs[k] * p.base.x[i]
		}
	}
	return rest
}

// findY works out the duals of the given costs: the costs of the basis times its
// inverse, and once more for what is left over.
func (p *Program) findY(cost func(seat int) float64) {
	y := p.work.y
	clear(y)
	p.work.peak = 0
	for i := range p.base.order {
		p.work.peak = max(p.work.peak, math.Abs(cost(i)))
	}
	for range 2 {
		for i, j := range p.base.order {
			p.work.rest[i] = cost(i) - p.vars.dot(j, y)
		}
		for i, v := range p.work.rest {
			if v == 0 {
				continue
			}
			for k, inv := range p.base.line(i) {
				y[k] += v * inv
			}
		}
	}
	for _, v := range y {
		p.work.peak = max(p.work.peak, math.Abs(v))
	}
}

// trueCost is the cost of the variable in a seat.
func (p *Program) trueCost(seat int) float64 { return p.vars.cost[p.base.order[seat]] }

// slackness is how far a value may be out of its bounds: a part in 10^9 of the
// largest right-hand side.
func (p *Program) slackness() float64 {
	largest := 1.0
	for _, v := range p.rhs {
		largest = max(largest, math.Abs(v))
	}
	return largest * 1e-9
}

// violation is how far the value in a seat is out of its bounds: below 0 when it
// must grow, above 0 when it must fall.
func (p *Program) violation(seat int) float64 {
	x := p.base.x[seat]
	if x < 0 || p.vars.fixed[p.base.order[seat]] {
		return x
	}
	return 0
}

// worst is the seat with the largest violation beyond slack, or -1.
func (p *Program) worst(slack float64) int {
	at := -1
	for i := range p.base.x {
		if size := math.Abs(p.violation(i)); size > slack {
			at, slack = i, size
		}
	}
	return at
}

// accurate tells whether the values satisfy the equations of the rows as closely
// as bounds are kept.
func (p *Program) accurate(slack float64) bool {
	for _, v := range p.unmet() {
		if math.Abs(v) > slack {
			return false
		}
	}
	return true
}
