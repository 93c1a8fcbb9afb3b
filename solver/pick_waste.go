package solver

import (
	"cmp"
	"math/rand"
	"slices"
)

// wasteful takes one of the boards that give the least value for their net
// cost, and up to two others.
type wasteful struct{}

func (wasteful) style() style { return replan }

func (wasteful) pick(s *search, now *state, free []int, rng *rand.Rand) []int {
	if len(free) == 0 {
		return nil
	}
	byRate := slices.Clone(free)
	slices.SortStableFunc(byRate, func(a, b int) int {
		return cmp.Compare(s.yield(now, a), s.yield(now, b))
	})
	at := rng.Intn((len(byRate) + 2) / 3)
	worst := byRate[at]
	others := slices.Delete(byRate, at, at+1)
	return append(some(others, rng.Intn(3), rng), worst)
}

// yield is the value that a board of a plan gives for its net cost.
func (s *search) yield(now *state, b int) float64 {
	return valueOf(now.cuts[b].Counts, s.values) / max(netValue(s.p, b, now.cuts[b]), 1)
}
