package solver

import (
	"math/rand"
	"testing"

	"github.com/google/go-cmp/cmp"

	"sawbill/layout/check"
	"sawbill/solver/internal/column"
	"sawbill/solver/internal/jobs"
)

// TestTailsAreNeverWorse takes first plans for what dives made, their boards cut in the order
// of the stock. What is cut anew of them is valid, and leaves less missing or costs less, or
// else nothing changes.
func TestTailsAreNeverWorse(t *testing.T) {
	better := 0
	for seed := range int64(6) {
		p := jobs.New(jobs.Size{Boards: 14, Kinds: 7, Pieces: 60}, seed)
		s := newSearch(p, Options{Workers: 1}, func() bool { return false })
		first := s.first()
		d := &dive{s: s, w: s.workers[0], boards: s.usable, rng: rand.New(rand.NewSource(seed)), st: first.copy(), order: first.used()}
		d.cutTails()
		switch c := d.st.score().Compare(first.score()); {
		case c < 0:
			better++
		case c > 0 || !cmp.Equal(d.st.used(), first.used()):
			t.Errorf("seed %d: %v missing and %v became %v and %v", seed, first.missing, first.cost(), d.st.missing, d.st.cost())
		}
		for _, v := range check.Plan(d.st.plan(p)) {
			t.Errorf("seed %d: %v", seed, v)
		}
	}
	if better < 3 {
		t.Errorf("only %d of 6 plans became better", better)
	}
}

// The boards that were cut last come last, and behind them those that only a tail cut.
func TestLastCut(t *testing.T) {
	s := newSearch(jobs.New(jobs.Size{Boards: 6, Kinds: 2, Pieces: 8}, 1), Options{Workers: 1}, func() bool { return false })
	d := &dive{s: s, boards: s.usable, st: newState(s.p), order: []int{4, 0, 3, 1}}
	for _, b := range []int{0, 1, 2, 4} { // 3 was given up by a tail, which cut 2
		d.st.set(b, &column.Cut{})
	}
	for n, want := range map[int][]int{2: {1, 2}, 3: {0, 1, 2}, 9: {4, 0, 1, 2}} {
		if got := d.lastCut(n); !cmp.Equal(got, want) {
			t.Errorf("the last %d: %v, want %v", n, got, want)
		}
	}
}
