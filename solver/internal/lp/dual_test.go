package lp

import (
	"math"
	"math/rand"
	"testing"
)

// From a first basis with no cost below 0 the dual method goes on without ever
// making a variable attractive; where it ends without violation, that is the
// optimum.
func TestDescendKeepsReducedCosts(t *testing.T) {
	ended := 0
	for seed := range int64(1500) {
		rng := rand.New(rand.NewSource(seed))
		q := random(rng, 1+rng.Intn(12), 1+rng.Intn(25))
		for j := range q.cost {
			q.cost[j] = math.Abs(q.cost[j])
		}
		p := q.program()
		p.settle()
		s := &simplex{Program: p, left: plenty, slack: p.slackness()}
		s.findX()
		s.descend()
		if !s.reduce() {
			t.Errorf("seed %d: a variable is attractive", seed)
		}
		if s.left < plenty && s.worst(s.slack) < 0 {
			ended++
			proveOptimal(t, seed, q, p)
		}
	}
	if ended < 300 {
		t.Errorf("only %d ended without violation", ended)
	}
}
