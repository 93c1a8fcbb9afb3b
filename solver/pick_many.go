package solver

import "math/rand"

// many takes up to ten boards, to be planned again out of cuts that are
// remembered.
type many struct{}

func (many) style() style { return remix }

func (many) pick(_ *search, _ *state, free []int, rng *rand.Rand) []int {
	return some(free, 2+rng.Intn(9), rng)
}
