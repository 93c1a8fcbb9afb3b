package lp

import (
	"cmp"
	"math"
	"slices"
)

// repair minimises the sum of violations from whatever basis there is (Wolfe
// 1965). On the way of an entering variable that sum is convex and made of
// straight pieces: a step goes to its lowest point, past corners where values
// come within their bounds or leave them.
func (s *simplex) repair() Status {
	s.begin(s.work.zero)
	for s.worst(s.slack) >= 0 {
		s.findY(s.side)
		q := s.enter(s.side)
		if q < 0 {
			return Infeasible
		}
		if s.left <= 0 {
			return Stopped
		}
		s.base.see(&s.vars, q, s.work.alpha)
		c, ok := s.lowest(q)
		if (!ok || s.shaky(c.seat)) && s.base.changes > 0 {
			s.refactor()
			s.findX()
			continue
		}
		if !ok {
			return Stopped // the sum cannot fall for ever: rounding misleads
		}
		s.change(q, c.seat, c.step, c.step)
		s.count(c.step)
	}
	return Optimal
}

// side is the slope of the violation in a seat: -1 below, 1 above, 0 within the
// bounds.
func (s *simplex) side(seat int) float64 {
	switch v := s.violation(seat); {
	case v < -s.slack:
		return -1
	case v > s.slack:
		return 1
	}
	return 0
}

// corner is a step at which the value in a seat reaches its bound, and by how
// much the slope of the sum of violations grows there.
type corner struct {
	step, bend float64
	seat       int
}

// lowest is the corner at which the sum of violations stops falling as variable
// q grows. Of corners in nearly the same place it takes the largest pivot.
func (s *simplex) lowest(q int) (corner, bool) {
	corners := s.corners()
	slope := -s.vars.dot(q, s.work.y)
	at := 0
	for ; at < len(corners); at++ {
		if slope += corners[at].bend; slope >= 0 {
			break
		}
	}
	if at == len(corners) {
		if at == 0 {
			return corner{}, false
		}
		at--
	}
	best, reach := corners[at], s.slack*(1+corners[at].step)
	for _, c := range corners {
		if math.Abs(c.step-corners[at].step) <= reach && s.leavesRather(c.seat, best.seat) {
			best = c
		}
	}
	return best, true
}

// corners lists the corners on the way of the entering variable, nearest first.
func (s *simplex) corners() []corner {
	var found []corner
	for i, a := range s.work.alpha {
		x, fixed := s.base.x[i], s.vars.fixed[s.base.order[i]]
		size := math.Abs(a)
		if size <= tiny {
			continue
		}
		switch side := s.side(i); {
		case side == 0 && fixed:
			found = append(found, corner{0, size, i})
		case side == 0 && a > 0:
			found = append(found, corner{max(x, 0) / a, size, i})
		case side*a > 0 && fixed:
			found = append(found, corner{x / a, 2 * size, i})
		case side*a > 0:
			found = append(found, corner{x / a, size, i})
		}
	}
	slices.SortFunc(found, func(a, b corner) int {
		return cmp.Or(cmp.Compare(a.step, b.step), cmp.Compare(s.base.order[a.seat], s.base.order[b.seat]))
	})
	return found
}
