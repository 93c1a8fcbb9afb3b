package solver

import (
	"math/rand"
	"slices"
)

// related takes up to thirteen boards that could give the same parts as one of
// them, which is taken by chance.
type related struct{}

func (related) pick(s *search, _ *state, free []int, rng *rand.Rand) []int {
	if len(free) == 0 {
		return nil
	}
	first := free[rng.Intn(len(free))]
	others := slices.DeleteFunc(slices.Clone(free), func(b int) bool { return b == first || !s.shares(first, b) })
	return append(some(others, 5+rng.Intn(8), rng), first)
}

// shares reports whether two boards could give the same part.
func (s *search) shares(a, b int) bool {
	for i, gives := range s.gives[a] {
		if gives && s.gives[b][i] {
			return true
		}
	}
	return false
}

// sharesAny reports whether a board could give the same part as one of others.
func (s *search) sharesAny(others []int, b int) bool {
	return slices.ContainsFunc(others, func(other int) bool { return s.shares(other, b) })
}
