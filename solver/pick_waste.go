package solver

import (
	"cmp"
	"math/rand"
	"slices"
)

// wasteful takes one of the boards that give the least value for their net
// cost, and up to two others.
type wasteful struct{}

func (wasteful) name() string { return "wasteful" }
func (wasteful) style() style { return replan }

func (wasteful) pick(s *search, free []int, rng *rand.Rand) []int {
	if len(free) == 0 {
		return nil
	}
	byRate := slices.Clone(free)
	slices.SortStableFunc(byRate, func(a, b int) int {
		return cmp.Compare(s.valueOf(a)*s.netOf(b), s.valueOf(b)*s.netOf(a))
	})
	at := rng.Intn((len(byRate) + 2) / 3)
	worst := byRate[at]
	others := slices.Delete(byRate, at, at+1)
	return append(some(others, rng.Intn(3), rng), worst)
}
