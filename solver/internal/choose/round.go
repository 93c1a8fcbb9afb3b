package choose

import "slices"

// dive settles one group after another on the item that the relaxation uses most,
// and solves it again in between.
func (s *search) dive(allowed []bool) {
	for s.left > 0 {
		at, most := -1, 0.0
		for k, x := range s.relax.x {
			if allowed[k] && x > most && !s.settled(allowed, s.items[k].group) {
				at, most = k, x
			}
		}
		if at < 0 {
			break
		}
		lo, hi := s.group(s.items[at].group)
		for k := lo; k < hi; k++ {
			allowed[k] = k == at
		}
		s.left--
		s.relax.solve(allowed)
	}
	s.round(allowed)
}

func (s *search) settled(allowed []bool, g int) bool {
	n := 0
	lo, hi := s.group(g)
	for k := lo; k < hi; k++ {
		if allowed[k] {
			n++
		}
	}
	return n == 1
}

// round takes from every group the item that the relaxation uses most.
func (s *search) round(allowed []bool) {
	chosen := make([]int, s.groups())
	for g := range chosen {
		lo, hi := s.group(g)
		chosen[g] = -1
		for k := lo; k < hi; k++ {
			if allowed[k] && (chosen[g] < 0 || s.relax.x[k] > s.relax.x[chosen[g]]) {
				chosen[g] = k
			}
		}
	}
	s.offer(chosen)
}

// offer polishes a choice, and keeps it if it is the best so far.
func (s *search) offer(chosen []int) {
	s.polish(chosen)
	if cost := s.costOf(chosen); cost < s.cost {
		s.best, s.cost = chosen, cost
	}
}

// polish changes the item of one group at a time for the best one, as long as
// that helps.
func (s *search) polish(chosen []int) {
	left := s.leftBy(chosen)
	for better := true; better; {
		better = false
		for g, now := range chosen {
			for i, n := range s.items[now].counts {
				left[i] += n
			}
			best, cost := now, s.costWith(now, left)
			lo, hi := s.group(g)
			for k := lo; k < hi; k++ {
				if c := s.costWith(k, left); c < cost {
					best, cost, better = k, c, true
				}
			}
			for i, n := range s.items[best].counts {
				left[i] -= n
			}
			chosen[g] = best
		}
	}
}

// leftBy is what a choice falls short by, below 0 where it makes too many.
func (s *search) leftBy(chosen []int) []int {
	left := slices.Clone(s.wanted)
	for _, k := range chosen {
		for i, n := range s.items[k].counts {
			left[i] -= n
		}
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
