package choose

import (
	"math/rand"
	"slices"
	"testing"
)

// Whatever is allowed, every choice in order stays allowed.
func TestOrderKeepsChoicesInOrder(t *testing.T) {
	struck := 0
	for seed := range int64(500) {
		rng := rand.New(rand.NewSource(seed))
		q := &job{groups: 3, demand: []int{9}, penalty: []int64{100}}
		for n := range 3 {
			q.columns = append(q.columns, Column{0, int64(n + 1), []int{n + 1}})
		}
		q.repeat(1)
		q.repeat(2)
		s := newSearch(newInstance(q.groups, q.demand, q.penalty, q.columns), 0)
		before := make([]bool, len(s.items))
		for k := range before {
			before[k] = rng.Intn(3) > 0
		}
		after := slices.Clone(before)
		s.putInOrder(after)
		for a := range 4 {
			for b := a; b < 4; b++ {
				for c := b; c < 4; c++ {
					if before[a] && before[4+b] && before[8+c] && !(after[a] && after[4+b] && after[8+c]) {
						t.Errorf("seed %d: %d, %d, %d is in order, but struck out of %v", seed, a, b, c, before)
					}
				}
			}
		}
		if !slices.Equal(before, after) {
			struck++
		}
	}
	if struck == 0 {
		t.Error("nothing was struck out")
	}
}
