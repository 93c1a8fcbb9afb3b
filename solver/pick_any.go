package solver

import "math/rand"

// anyFew takes one to four boards by chance.
type anyFew struct{}

func (anyFew) style() style { return replan }

func (anyFew) pick(_ *search, _ *state, free []int, rng *rand.Rand) []int {
	return some(free, 1+rng.Intn(4), rng)
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
