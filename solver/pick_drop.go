package solver

import "math/rand"

// drop takes up to four boards and tries to make do without the first of them.
type drop struct{}

func (drop) style() style { return squeeze }

func (drop) pick(_ *search, _ *state, free []int, rng *rand.Rand) []int {
	return some(free, 2+rng.Intn(3), rng)
}
