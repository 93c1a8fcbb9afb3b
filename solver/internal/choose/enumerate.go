package choose

import "slices"

// few tells whether the allowed items combine in few ways.
func (s *search) few(allowed []bool, r rest) bool {
	ways := 1
	for _, g := range r.open {
		n := 0
		lo, hi := s.group(g)
		for k := lo; k < hi; k++ {
			if allowed[k] {
				n++
			}
		}
		if ways *= n; ways > s.ways {
			return false
		}
	}
	return true
}

// enumerate goes through all choices of the allowed items, group by group, but
// for those whose bound is beaten.
func (s *search) enumerate(allowed []bool, r rest) {
	if len(r.open) == 0 {
		if cost := r.cost + s.penalties(r.left); cost < s.cost {
			s.best, s.cost = s.only(allowed), cost
		}
		return
	}
	if s.beaten(s.bound(allowed, r)) {
		return
	}
	lo, hi := s.group(r.open[0])
	mine := slices.Clone(allowed[lo:hi])
	clear(allowed[lo:hi])
	for j, may := range mine {
		if !may {
			continue
		}
		next := rest{cost: r.cost + s.items[lo+j].cost, open: r.open[1:], left: slices.Clone(r.left)}
		for i, n := range s.items[lo+j].counts {
			next.left[i] = max(next.left[i]-n, 0)
		}
		allowed[lo+j] = true
		s.enumerate(allowed, next)
		allowed[lo+j] = false
	}
	copy(allowed[lo:hi], mine)
}

// penalties is what it costs to fall short.
func (s *search) penalties(left []int) int64 {
	var sum int64
	for i, n := range left {
		sum += int64(n) * s.penalty[i]
	}
	return sum
}

// only is the choice where every group has one item allowed.
func (s *search) only(allowed []bool) []int {
	chosen := make([]int, s.groups())
	for k, may := range allowed {
		if may {
			chosen[s.items[k].group] = k
		}
	}
	return chosen
}
