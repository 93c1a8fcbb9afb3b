package solver

import (
	"fmt"
	"math"
	"testing"

	"sawbill/layout/check/bound"
	"sawbill/solver/internal/column"
	"sawbill/solver/internal/exhaust"
	"sawbill/solver/internal/jobs"
)

// TestNoBoundAboveThePlan holds what is proven of three thousand random jobs, mostly tiny ones, at the
// prices of the whole job and set by set, against the cost of a plan with the same
// parts missing.
func TestNoBoundAboveThePlan(t *testing.T) {
	for part := range int64(2) {
		t.Run(fmt.Sprint(part), func(t *testing.T) {
			t.Parallel()
			for seed := 1500 * part; seed < 1500*(part+1); seed++ {
				proveVaried(t, seed)
			}
		})
	}
}

func proveVaried(t *testing.T, seed int64) {
	p := exhaust.Tiny(seed)
	if seed%8 == 0 {
		p = jobs.Varied(jobs.Size{Boards: 1 + int(seed%16)/8, Kinds: 1 + int(seed%3), Pieces: 2 + int(seed%6)}, seed)
	}
	s := newSearch(p, Options{Seed: seed, Workers: 1}, func() bool { return false })
	s.settleIslands(s.first())
	s.proveRoughly(5e5)
	s.sets = s.newSets()
	cost := s.best.cost()
	if b, ok := s.proof.bound(made(p, s.best)); ok && b.bound > cost {
		t.Errorf("seed %d: a plan costs %v, the prices say %v", seed, cost, b.bound)
	}
	s.sets.borrow()
	if b, ok := s.sets.bound(); ok && b > cost {
		t.Errorf("seed %d: a plan costs %v, the sets say %v", seed, cost, b)
	}
}

// proveRoughly makes a few passes over all boards, the first at prices drawn by chance
// about those that the search begins with, for any prices prove something. Every other job is
// looked at roughly at first.
func (s *search) proveRoughly(work int) {
	s.master = s.newDual(s.newMaster(s.usable, made(s.p, s.best), false))
	s.master.ended = true
	s.master.center = shaken(s.start, s.rng)
	s.proof = s.newProof()
	s.proof.work, s.proof.samples = work, 0
	s.proof.attempts[0].rough = s.o.Seed%2 == 1
	for range 3 {
		s.proof.step()
	}
}

// TestBoundsAreProvenAgain has the bounds of a hundred random jobs proven from the
// prices in the plan alone.
func TestBoundsAreProvenAgain(t *testing.T) {
	proven := 0
	for seed := range int64(100) {
		p := exhaust.Tiny(seed)
		s := newSearch(p, Options{Seed: seed, Workers: 1}, func() bool { return false })
		s.settleIslands(s.first())
		s.proveRoughly(2e6)
		plan := s.best.plan(p)
		if !s.state(plan) || plan.Totals.PriceBound == nil {
			continue
		}
		proven++
		again, err := bound.Prove(func() bool { return false }, plan)
		if err != nil || len(again.Violations) > 0 {
			t.Errorf("seed %d: %v %v", seed, err, again.Violations)
		}
	}
	if proven < 80 {
		t.Errorf("only %d of 100 jobs have a bound", proven)
	}
}

// The proof has more than half of the work only where the next pass promises much, or where
// that is not known, and nothing is to be made.
func TestShareOfTheProof(t *testing.T) {
	p := shortJob()
	p.Bill = p.Bill[:1]
	whole := solved(p)
	nothing := newSearch(p, Options{Workers: 1}, func() bool { return false })
	nothing.best = newState(p)
	cost := float64(column.FromMoney(whole.best.cost()))
	for _, test := range []struct {
		s       *search
		promise float64
		want    int
	}{{whole, unknown, 3}, {whole, cost / 50, 3}, {whole, cost / 100, 1}, {whole, 0, 1}, {nothing, unknown, 1}} {
		q := &proof{s: test.s, promise: test.promise}
		if got := q.share(); got != test.want {
			t.Errorf("promised %v of %v: share %d, want %d", test.promise, cost, got, test.want)
		}
	}
}

// The first looks at many boards are rough. A proof does not end with such ones, and what it
// proves is no more than a plan costs.
func TestLooksBecomeClose(t *testing.T) {
	p := jobs.New(jobs.Size{Boards: sampledBoards + 2, Kinds: 5, Pieces: 40}, 2)
	s := newSearch(p, Options{Workers: 2}, func() bool { return false })
	s.settleIslands(s.first())
	s.settle(s.best)
	s.proof = s.newProof()
	if !s.proof.attempts[0].rough {
		t.Errorf("the first looks are close")
	}
	for n := 0; n < 2000 && !s.proof.ended; n++ {
		s.proof.step()
	}
	last := s.proof.attempts[len(s.proof.attempts)-1]
	if !s.proof.ended || last.rough {
		t.Errorf("in the end: ended %v, rough %v", s.proof.ended, last.rough)
	}
	if b, ok := s.proof.bound(made(p, s.best)); !ok || b.bound > s.best.cost() || b.bound == 0 {
		t.Errorf("%v is proven of a plan of %v", b.bound, s.best.cost())
	}
}

// The prices of a pass stay the nearer to the best so far the more is promised.
func TestPull(t *testing.T) {
	for _, test := range []struct{ promised, proven, want float64 }{
		{100, 100, 0.3}, {101, 100, 0.34}, {90, 100, 0.3}, {200, 100, 0.7}, {1, 0, 0.7},
	} {
		if got := pullFor(test.promised, test.proven); math.Abs(got-test.want) > 1e-9 {
			t.Errorf("%v promised, %v proven: %v, want %v", test.promised, test.proven, got, test.want)
		}
	}
}
