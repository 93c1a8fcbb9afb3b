package solver

import "math/rand"

// anyFew takes up to nine boards by chance.
type anyFew struct{}

func (anyFew) pick(_ *search, _ *state, free []int, rng *rand.Rand) []int {
	return some(free, 4+rng.Intn(6), rng)
}

// some takes n of list by chance.
func some(list []int, n int, rng *rand.Rand) []int {
	order := rng.Perm(len(list))
	var taken []int
	for _, k := range order[:min(n, len(list))] {
		taken = append(taken, list[k])
	}
	return taken
}
