package lp

// Value is the cost of Primal.
func (p *Program) Value() float64 {
	var sum float64
	for i, j := range p.base.order {
		sum += p.vars.cost[j] * p.base.x[i]
	}
	return sum
}

// Primal returns x by column, as the last Solve left it: optimal when that said
// Optimal, otherwise what the present basis gives, which may break rows.
func (p *Program) Primal() []float64 {
	x := make([]float64, p.Columns())
	for col := range x {
		x[col] = p.X(col)
	}
	return x
}

// X is one value of Primal.
func (p *Program) X(col int) float64 {
	j := p.variable(col)
	seat := p.vars.seat[j]
	if seat < 0 {
		return 0
	}
	return max(p.base.x[seat], 0)
}

// Dual returns y by row, as the last Solve left it: what the least cost grows by
// with every unit of the right-hand side, so at least 0 in an AtLeast row and at
// most 0 in an AtMost row, within rounding. When the end was Infeasible, y proves
// it (Farkas 1902): with these signs, y*A is at most 0 in every allowed column,
// and y*rhs above 0.
func (p *Program) Dual() []float64 {
	y := make([]float64, len(p.rhs))
	copy(y, p.work.y)
	return y
}

// ReducedCost is the cost of a column less what its entries are worth at Dual.
func (p *Program) ReducedCost(col int) float64 {
	j := p.variable(col)
	return p.vars.cost[j] - p.vars.dot(j, p.work.y)
}
