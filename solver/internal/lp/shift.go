package lp

import "math"

// maxShifts is how often a Solve shifts right-hand sides.
const maxShifts = 3

// count notes a step, and shifts the right-hand sides when there has been no
// progress for long.
func (s *simplex) count(step float64) {
	if step > s.slack {
		s.idle = 0
		return
	}
	if s.idle++; s.idle > s.patience && s.shifts < maxShifts && !s.shifted {
		s.shift()
	}
}

// stuck tells whether steps have stayed without progress so long that the rules
// change to ones that cannot go round in circles.
func (s *simplex) stuck() bool { return s.idle > 10*s.patience }

// shift changes the right-hand sides so that every value in the basis that is
// within its bounds grows a little, each by another amount: then no two reach
// their bounds together (Charnes 1952).
func (s *simplex) shift() {
	s.shifted, s.idle = true, 0
	s.shifts++
	for i, j := range s.base.order {
		if s.vars.fixed[j] || s.side(i) != 0 {
			continue
		}
		_, part := math.Modf(float64(j+1) * math.Phi)
		grow := s.slack * 1000 * (1 + part)
		s.base.x[i] += grow
		rows, coefs := s.vars.entries(j)
		for k, r := range rows {
			s.work.shift[r] += coefs[k] * grow
		}
	}
}

// unshift goes back to the true right-hand sides.
func (s *simplex) unshift() {
	s.shifted = false
	clear(s.work.shift)
}
