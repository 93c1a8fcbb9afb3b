package lp

import "math"

// descend is the dual simplex method (Lemke 1954): from a basis in which no
// variable is attractive it throws out violated values one by one and keeps it
// that way. It gives up quietly where that does not hold or does not end soon;
// what it leaves undone, repair does.
func (s *simplex) descend() {
	if s.worst(s.slack) < 0 || !s.reduce() {
		return
	}
	for range 3*len(s.rhs) + 20 {
		r := s.worst(s.slack)
		if r < 0 || s.left <= 0 {
			return
		}
		q := s.replacement(r)
		if q < 0 {
			return
		}
		s.base.see(&s.vars, q, s.work.alpha)
		pivot, seen := s.work.alpha[r], s.work.across[q]
		if math.Abs(pivot-seen) > 1e-6*(1+math.Abs(seen)) {
			s.refactor()
			s.findX()
			return
		}
		s.reprice(q, r)
		step := s.base.x[r] / pivot
		s.change(q, r, step, step)
	}
}

// reduce works out all reduced costs; false when a variable is attractive.
func (s *simplex) reduce() bool {
	s.begin(s.vars.cost)
	s.findY(s.trueCost)
	for j := range s.vars.cost {
		s.work.reduced[j] = 0
		if s.vars.seat[j] >= 0 || s.vars.fixed[j] {
			continue
		}
		d := s.vars.cost[j] - s.vars.dot(j, s.work.y)
		if d < 0 && s.attractive(j, d) {
			return false
		}
		s.work.reduced[j] = max(d, 0)
	}
	return true
}

// replacement is the variable that takes seat r so that no reduced cost falls
// below 0, or -1 where nothing can mend the violation there. Of those with nearly
// the least ratio it has the largest pivot.
func (s *simplex) replacement(r int) int {
	line, side := s.base.line(r), 1.0
	if s.violation(r) < 0 {
		side = -1
	}
	limit, across := math.Inf(1), s.work.across
	for j := range s.vars.cost {
		across[j] = 0
		if s.vars.seat[j] >= 0 {
			continue
		}
		across[j] = s.vars.dot(j, line)
		if a := side * across[j]; a > tiny && !s.vars.fixed[j] {
			limit = min(limit, s.work.reduced[j]/a)
		}
	}
	best, most := -1, 0.0
	for j := range s.vars.cost {
		if s.vars.seat[j] >= 0 || s.vars.fixed[j] {
			continue
		}
		if a := side * across[j]; a > max(tiny, most) && s.work.reduced[j] <= limit*a*(1+1e-9) {
			best, most = j, a
		}
	}
	return best
}

// reprice brings the reduced costs to the basis in which variable q has seat r.
func (s *simplex) reprice(q, r int) {
	rate := s.work.reduced[q] / s.work.across[q]
	for j, a := range s.work.across[:len(s.vars.cost)] {
		if a != 0 {
			s.work.reduced[j] = max(s.work.reduced[j]-rate*a, 0)
		}
	}
	s.work.reduced[s.base.order[r]] = math.Abs(rate)
}
