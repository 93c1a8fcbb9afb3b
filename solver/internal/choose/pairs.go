package choose

import (
	"cmp"
	"slices"
)

// promising is how many items of a group are tried in pairs.
const promising = 24

// rank notes the items of every group that cost least at the present prices.
func (s *search) rank(allowed []bool) {
	s.ranked = make([][]int, s.groups())
	for g := range s.ranked {
		lo, hi := s.group(g)
		for k := lo; k < hi; k++ {
			s.reduced[k] = s.reduce(k, s.wanted)
			if allowed[k] {
				s.ranked[g] = append(s.ranked[g], k)
			}
		}
		slices.SortFunc(s.ranked[g], func(a, b int) int {
			return cmp.Or(cmp.Compare(s.reduced[a], s.reduced[b]), cmp.Compare(a, b))
		})
		s.ranked[g] = s.ranked[g][:min(len(s.ranked[g]), promising)]
	}
}

// pairUp changes the items of two groups at a time for the best promising ones,
// as long as that helps.
func (s *search) pairUp(chosen []int) {
	cost := s.costOf(chosen)
	for better := true; better; {
		better = false
		for g := range chosen {
			for h := range g {
				if c := s.bestPair(chosen, g, h, cost); c < cost {
					cost, better = c, true
				}
			}
		}
	}
}

// bestPair puts the best promising pair into two groups if the whole then costs
// less than what it did, and returns the cost.
func (s *search) bestPair(chosen []int, g, h int, cost int64) int64 {
	old := [2]int{chosen[g], chosen[h]}
	left := s.leftBy(chosen)
	var others int64
	for f, k := range chosen {
		if f == g || f == h {
			s.take(left, k, 1)
		} else {
			others += s.items[k].cost
		}
	}
	best := old
	for _, a := range s.ranked[g] {
		s.take(left, a, -1)
		for _, b := range s.ranked[h] {
			if c := others + s.items[a].cost + s.costWith(b, left); c < cost {
				best, cost = [2]int{a, b}, c
			}
		}
		s.take(left, a, 1)
	}
	chosen[g], chosen[h] = best[0], best[1]
	return cost
}

// take adds so many times the pieces of an item to what is left.
func (s *search) take(left []int, k, times int) {
	for i, n := range s.items[k].counts {
		left[i] += times * n
	}
}
