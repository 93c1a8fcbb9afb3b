package solver

import "math/rand"

// samePart takes up to four boards that make one kind of part, so that it can
// be shared out in another way.
type samePart struct{}

func (samePart) style() style { return replan }

func (samePart) pick(s *search, now *state, free []int, rng *rand.Rand) []int {
	row := rng.Intn(len(s.p.Bill))
	var makers []int
	for _, b := range free {
		if now.cuts[b].Counts[row] > 0 {
			makers = append(makers, b)
		}
	}
	return some(makers, 2+rng.Intn(3), rng)
}
