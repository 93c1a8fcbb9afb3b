package solver

import (
	"context"
	"runtime"

	"sawbill/layout"
	"sawbill/solver/internal/snug"
)

// Options steer a solve. The zero value works.
type Options struct {
	// Seed makes the search reproducible; default 0.
	Seed int64
	// Rounds stops the search after so many rounds; 0 means no limit.
	Rounds int
	// Workers is how many tasks are planned side by side; 0 means one a
	// processor. It never changes the answer.
	Workers int
	// Within ends the solve when the gap between the cost and what is proven is no
	// more than this share of the cost, 0 to 1; 0 means when they are equal.
	Within float64
	// Unproven leaves the proof out and spends all work on the plan, which may then have
	// no bound.
	Unproven bool
	// Observer hears of progress; nil hears nothing.
	Observer Observer
}

func (o Options) workers() int {
	if o.Workers > 0 {
		return o.Workers
	}
	return min(runtime.GOMAXPROCS(0), tasksARound)
}

// Observer hears of the progress of a solve, from one goroutine at a time.
type Observer interface {
	// Improved is called with each better plan that is found. round is 0 for the
	// first plan.
	Improved(round int, plan *layout.Plan)
	// Proven is called when more is proven: no plan with the same parts missing
	// costs less than bound.
	Proven(round int, bound layout.Money)
	// Round is called after every round.
	Round(round int)
}

// Status says why a solve ended.
type Status uint8

// The ways in which a solve ends.
const (
	// Stopped means that the context ended or the rounds were used up.
	Stopped Status = iota
	// Settled means that nothing is left to try.
	Settled
	// Near means that the gap is no more than was asked for.
	Near
)

// Solve finds a plan for p that leaves the least missing and then costs the
// least (layout.Score). It stops when ctx ends, when the rounds are used up, when
// nothing is left to try or when the plan is proven to be near enough to the best,
// and returns the best plan found, which has passed the checker, with what is
// proven. A context that has ended already gives whatever the first plan holds by
// then, at worst nothing but missing parts. An error is a fault of ours and names
// the seed.
//
// Spare pieces are laid into the scrap of that plan, where they cost nothing, and its
// needless cuts are taken out.
func Solve(ctx context.Context, p *layout.Problem, o Options) (*layout.Plan, Status, error) {
	plan, status, err := withoutSpares(ctx, p, o)
	if err != nil {
		return nil, status, err
	}
	if plan, err = withSpares(p, plan, o.Seed); err != nil {
		return nil, status, err
	}
	return snug.Plan(plan), status, nil
}

func withoutSpares(ctx context.Context, p *layout.Problem, o Options) (*layout.Plan, Status, error) {
	stop := func() bool { return ctx.Err() != nil }
	if sets := p.Sets(); len(sets) > 0 {
		return newGlueUps(p, sets, o, stop).solve()
	}
	s, a := newSearch(p, o, stop), &outcome{asked: p}
	if s.heeds.words = matched(p); len(s.heeds.words) > 0 {
		a.s = newSearch(swiftHomes(p, o, stop), o, stop)
		if err := a.takeEarly(); err != nil {
			return nil, Stopped, err
		}
		s = s.withHomes()
	}
	a.s = s
	status, err := s.run(ctx, a)
	if err != nil {
		return nil, status, err
	}
	if !a.early && s.tidy(a.proven()) {
		if err := a.take(a.round); err != nil {
			return nil, status, err
		}
	}
	return a.plan, status, nil
}

// run searches until there is a reason to end, and says which.
func (s *search) run(ctx context.Context, a *outcome) (Status, error) {
	s.settleIslands(s.first())
	if err := a.take(0); err != nil {
		return Stopped, err
	}
	if s.unmatched == nil {
		s.settle(s.best)
	} else {
		s.settleLike(s.unmatched.master)
	}
	better := s.improve(s.second())
	if s.o.Unproven { // else better prices come first
		better = s.plunge(0) || better
	}
	if s.exactly(0, better) {
		if err := a.take(0); err != nil {
			return Stopped, err
		}
	}
	if !s.o.Unproven {
		s.beginProof()
	}
	for n := 1; ; n++ {
		switch {
		case len(s.usable) == 0:
			return Settled, nil
		case a.near():
			return Near, nil
		case ctx.Err() != nil || s.o.Rounds > 0 && n > s.o.Rounds:
			return Stopped, nil
		}
		if err := s.workRound(n, a); err != nil {
			return Stopped, err
		}
	}
}

// hastyDive is the round after which dives wait for no proof where something is missing still.
const hastyDive = 2

// workRound makes one round of the search and one step of the proof.
func (s *search) workRound(n int, a *outcome) error {
	better := s.round(n)
	if n%s.diveEvery() == 0 || s.fresh || n == hastyDive && wants(s.best.missing) {
		better, s.fresh = s.plunge(n) || better, false
	}
	if s.exactly(n, better) {
		if err := a.take(n); err != nil {
			return err
		}
	}
	// What is missing now may be made with the hasty dive; then the proof would begin anew.
	early := n < hastyDive && wants(s.best.missing) && len(s.usable) > sampledBoards
	was := s.best
	ahead := !early && s.stepProof()
	if s.best != was { // the cuttings of a proof were a better plan
		if err := a.take(n); err != nil {
			return err
		}
	}
	s.fresh = s.fresh || ahead
	if ahead || a.provenMore() {
		a.prove(n)
	}
	if s.o.Observer != nil {
		s.o.Observer.Round(n)
	}
	return nil
}
