package solver

import "math/rand"

// alone takes one board, to be cut for the same pieces with larger offcuts.
type alone struct{}

func (alone) style() style { return recut }

func (alone) pick(_ *search, _ *state, free []int, rng *rand.Rand) []int { return some(free, 1, rng) }
