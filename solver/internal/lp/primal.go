package lp

import "math"

// improve lowers the cost step by step from a basis without violations. Each step
// lets the variable with the best reduced cost grow until a value of the basis
// reaches its bound.
func (s *simplex) improve() Status {
	s.begin(s.vars.cost)
	for {
		q := s.enter(s.trueCost)
		if q < 0 {
			return Optimal
		}
		if s.left <= 0 {
			return Stopped
		}
		s.base.see(&s.vars, q, s.work.alpha)
		r := s.block()
		if r < 0 {
			return Unbounded
		}
		if s.shaky(r) && s.base.changes > 0 {
			s.refactor()
			s.findX()
			s.findY(s.trueCost)
			continue
		}
		step := s.room(r) / s.work.alpha[r]
		s.turn(q, r)
		s.change(q, r, step, step)
		s.count(step)
	}
}

// shaky tells whether the pivot in a seat is so small that it may be rounding
// and no more.
func (s *simplex) shaky(seat int) bool { return math.Abs(s.work.alpha[seat]) < 1e-6 }

// begin starts to price at other costs.
func (s *simplex) begin(cost []float64) {
	s.cost, s.list, s.idle = cost, s.list[:0], 0
}

// room is how far the value in a seat can fall, or grow where alpha is below 0,
// until it reaches its bound.
func (s *simplex) room(seat int) float64 {
	if s.vars.fixed[s.base.order[seat]] {
		return 0
	}
	return max(s.base.x[seat], 0)
}

// blocks tells whether the value in a seat runs against its bound when the
// entering variable grows.
func (s *simplex) blocks(seat int, alpha float64) bool {
	return alpha > tiny || alpha < -tiny && s.vars.fixed[s.base.order[seat]]
}

// block is the seat that stops the entering variable, or -1. Among those that
// would be out of bounds by no more than slack it has the largest pivot (Harris
// 1973).
func (s *simplex) block() int {
	slack := s.slack
	if s.stuck() {
		slack = 0
	}
	limit := math.Inf(1)
	for i, a := range s.work.alpha {
		if s.blocks(i, a) {
			limit = min(limit, (s.room(i)+slack)/math.Abs(a))
		}
	}
	at := -1
	for i, a := range s.work.alpha {
		if s.blocks(i, a) && s.room(i)/math.Abs(a) <= limit && (at < 0 || s.leavesRather(i, at)) {
			at = i
		}
	}
	return at
}

// leavesRather tells whether seat i is given up rather than seat k, where both
// may be.
func (s *simplex) leavesRather(i, k int) bool {
	if s.stuck() {
		return s.base.order[i] < s.base.order[k]
	}
	a, b := math.Abs(s.work.alpha[i]), math.Abs(s.work.alpha[k])
	return a > b || a == b && s.base.order[i] < s.base.order[k]
}

// turn brings the duals to the basis in which variable q has seat r.
func (s *simplex) turn(q, r int) {
	rate := (s.cost[q] - s.vars.dot(q, s.work.y)) / s.work.alpha[r]
	for k, v := range s.base.line(r) {
		s.work.y[k] += rate * v
	}
}
