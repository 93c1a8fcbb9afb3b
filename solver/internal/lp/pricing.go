package lp

import "math"

// listed is how many candidates a full pass puts on the list.
const listed = 32

// enter is the variable whose growth promises most, or -1 where none lowers the
// cost. Candidates come from the list as long as it holds any (Orchard-Hays
// 1968); then all variables are priced at duals worked out afresh.
func (s *simplex) enter(cost func(seat int) float64) int {
	if s.stuck() {
		s.findY(cost)
		return s.firstAttractive()
	}
	if q := s.bestListed(); q >= 0 {
		return q
	}
	s.findY(cost)
	s.fill()
	return s.bestListed()
}

// bestListed is the best candidate on the list.
func (s *simplex) bestListed() int {
	best, most := -1, 0.0
	for _, j := range s.list {
		if score := s.score(j); score > most {
			best, most = j, score
		}
	}
	return best
}

// score is how fast the cost falls along the edge on which variable j grows, as
// measured in the first basis; 0 when j is not attractive.
func (s *simplex) score(j int) float64 {
	if s.vars.seat[j] >= 0 || s.vars.fixed[j] {
		return 0
	}
	d := s.cost[j] - s.vars.dot(j, s.work.y)
	if d >= 0 || !s.attractive(j, d) {
		return 0
	}
	return -d * s.vars.weight[j]
}

// attractive tells whether a reduced cost is below 0 by more than rounding can
// explain: a part in 10^9 of the numbers that it is the difference of, where
// duals are known to a part in 10^13 of the largest number behind them.
func (s *simplex) attractive(j int, d float64) bool {
	size := math.Abs(s.cost[j])
	rows, coefs := s.vars.entries(j)
	for k, r := range rows {
		size += (math.Abs(s.work.y[r]) + 1e-4*s.work.peak) * math.Abs(coefs[k])
	}
	return d < -1e-9*size
}

// fill prices all variables and lists the best.
func (s *simplex) fill() {
	var scores [listed]float64
	s.list = s.list[:0]
	for j := range s.vars.cost {
		score := s.score(j)
		if score == 0 || len(s.list) == listed && score <= scores[listed-1] {
			continue
		}
		if len(s.list) < listed {
			s.list = append(s.list, 0)
		}
		at := len(s.list) - 1
		for ; at > 0 && scores[at-1] < score; at-- {
			s.list[at], scores[at] = s.list[at-1], scores[at-1]
		}
		s.list[at], scores[at] = j, score
	}
}

// firstAttractive is the first variable that lowers the cost (Bland 1977).
func (s *simplex) firstAttractive() int {
	for j := range s.vars.cost {
		if s.score(j) > 0 {
			return j
		}
	}
	return -1
}
