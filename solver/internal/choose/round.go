package choose

import "slices"

// dive settles one group after another on the item that the relaxation uses most,
// and solves it again in between.
func (s *search) dive(allowed []bool) {
	for r, ok := s.look(allowed); ok && len(r.open) > 0 && s.left > 0; r, ok = s.look(allowed) {
		s.left--
		s.solve(s.relax(allowed, r), allowed)
		if s.ranked == nil {
			s.rank(allowed)
		}
		at, most := -1, 0.0
		for k, share := range s.share {
			if share > most {
				at, most = k, share
			}
		}
		if at < 0 {
			break
		}
		lo, hi := s.group(s.items[at].group)
		for k := lo; k < hi; k++ {
			allowed[k] = k == at
		}
	}
	s.round(allowed)
}

// round takes from every group the item that the relaxation uses most.
func (s *search) round(allowed []bool) {
	chosen := make([]int, s.groups())
	for g := range chosen {
		lo, hi := s.group(g)
		chosen[g] = -1
		for k := lo; k < hi; k++ {
			if allowed[k] && (chosen[g] < 0 || s.share[k] > s.share[chosen[g]]) {
				chosen[g] = k
			}
		}
	}
	if !slices.Equal(chosen, s.rounded) {
		s.rounded = slices.Clone(chosen)
		s.offer(chosen)
	}
}

// offer polishes a choice, and keeps it if it is the best so far.
func (s *search) offer(chosen []int) {
	s.polish(chosen)
	if s.costOf(chosen) >= s.cost {
		return
	}
	if s.ranked != nil {
		s.pairUp(chosen)
	}
	s.best, s.cost = chosen, s.costOf(chosen)
}

// polish changes the item of one group at a time for the best one, as long as
// that helps.
func (s *search) polish(chosen []int) {
	left := s.leftBy(chosen)
	for better := true; better; {
		better = false
		for g, now := range chosen {
			s.take(left, now, 1)
			best, cost := now, s.costWith(now, left)
			lo, hi := s.group(g)
			for k := lo; k < hi; k++ {
				if c := s.costWith(k, left); c < cost {
					best, cost, better = k, c, true
				}
			}
			s.take(left, best, -1)
			chosen[g] = best
		}
	}
}

// leftBy is what a choice falls short by, below 0 where it makes too many.
func (s *search) leftBy(chosen []int) []int {
	left := slices.Clone(s.wanted)
	for _, k := range chosen {
		s.take(left, k, -1)
	}
	return left
}

// costWith is the cost of an item and of what is still missing after it.
func (s *search) costWith(k int, left []int) int64 {
	it := &s.items[k]
	cost := it.cost
	for i, n := range it.counts {
		if short := left[i] - n; short > 0 {
			cost += int64(short) * s.penalty[i]
		}
	}
	return cost
}

// costOf is the cost of a choice with its penalties.
func (s *search) costOf(chosen []int) int64 {
	var cost int64
	for _, k := range chosen {
		cost += s.items[k].cost
	}
	for i, n := range s.leftBy(chosen) {
		cost += int64(max(n, 0)) * s.penalty[i]
	}
	return cost
}
