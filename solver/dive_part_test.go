package solver

import (
	"math/rand"
	"slices"
	"testing"

	"sawbill/layout/check"
	"sawbill/solver/internal/jobs"
)

// TestDivesOfParts takes a job of many kinds of boards. Dives cut some boards of it anew,
// which share parts, leave the others as they are, and together make a better plan that is
// valid.
func TestDivesOfParts(t *testing.T) {
	p := jobs.New(jobs.Size{Boards: fewEnough + 60, Kinds: 8, Pieces: 400}, 3)
	s := newSearch(p, Options{Workers: 2}, func() bool { return false })
	s.settleIslands(s.first())
	s.settle(s.best)
	if !s.divesInParts() {
		t.Fatalf("only %d kinds of boards", len(s.alike()))
	}

	dives := []*dive{{s: s, rng: rand.New(rand.NewSource(1))}, {s: s, rng: rand.New(rand.NewSource(2))}}
	s.setBoards(dives)
	for k, d := range dives {
		if n := len(d.boards); n < 20 || n > len(s.usable)/2+1 {
			t.Errorf("dive %d cuts %d boards", k, n)
		}
		if k > 0 && slices.ContainsFunc(d.boards, func(b int) bool { return slices.Contains(dives[0].boards, b) }) {
			t.Errorf("two dives cut the same board")
		}
		d.slow, d.by, d.w = 1, s.quick, s.workers[k]
		d.run()
		for b, c := range d.st.cuts {
			if c != s.best.cuts[b] && !slices.Contains(d.boards, b) {
				t.Errorf("dive %d cut board %d, which is none of its own", k, b)
			}
		}
	}

	before := s.best.score()
	if !s.plunge(2) || s.best.score().Compare(before) >= 0 {
		t.Errorf("the dives found nothing better")
	}
	for _, v := range check.Plan(s.best.plan(p)) {
		t.Error(v)
	}
}

// A dive of a part takes of the boards that the plan cuts and of the others as large a share,
// and none that shares no part with the first.
func TestSomeSharing(t *testing.T) {
	p := jobs.New(jobs.Size{Boards: 60, Kinds: 6, Pieces: 120}, 4)
	s := newSearch(p, Options{Workers: 1}, func() bool { return false })
	s.settleIslands(s.first())
	for seed := range int64(8) {
		boards := s.someSharing(20, s.free(), rand.New(rand.NewSource(seed)))
		used, sharing, cut := 0, 0, 0
		for _, b := range s.usable {
			if s.shares(boards[0], b) {
				sharing++
				if s.best.cuts[b] != nil {
					cut++
				}
			}
		}
		for _, b := range boards {
			if !s.shares(boards[0], b) {
				t.Errorf("seed %d: board %d shares no part with the first", seed, b)
			}
			if s.best.cuts[b] != nil {
				used++
			}
		}
		if n := len(boards); n > 21 || n < min(19, sharing) || sharing > 21 && (used-1)*sharing > n*cut || used*sharing < (n-3)*cut {
			t.Errorf("seed %d: %d boards, %d of them cut in the plan, which cuts %d of %d", seed, n, used, cut, sharing)
		}
	}
}
