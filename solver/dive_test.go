package solver

import (
	"math/rand"
	"testing"

	"github.com/google/go-cmp/cmp"

	"sawbill/solver/internal/jobs"
)

// TestDiveByAllWorkers shows that a dive makes the same plan by one worker and by all of
// them together.
func TestDiveByAllWorkers(t *testing.T) {
	dived := func(workers int, alone bool) *state {
		s := newSearch(jobs.New(jobs.Size{Boards: 12, Kinds: 9, Pieces: 90}, 5), Options{Workers: workers}, func() bool { return false })
		s.settleIslands(s.first())
		s.settle(s.best)
		d := &dive{s: s, slow: 1, by: s.quick, rng: rand.New(rand.NewSource(1)), daring: 0.3}
		if alone {
			d.w = s.workers[0]
		}
		d.run()
		return d.st
	}
	one, all := dived(1, true), dived(3, false)
	if one.cost() != all.cost() || !cmp.Equal(one.missing, all.missing) || len(one.used()) == 0 {
		t.Errorf("one worker pays %v and misses %v, all of them %v and %v", one.cost(), one.missing, all.cost(), all.missing)
	}
}
