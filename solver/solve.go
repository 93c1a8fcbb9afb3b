package solver

import (
	"context"
	"fmt"
	"runtime"

	"sawbill/layout"
	"sawbill/layout/check"
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
)

// Solve finds a plan for p that leaves the least missing and then costs the
// least (layout.Score). It stops when ctx ends, when the rounds are used up or
// when nothing is left to try, and returns the best plan found, which has
// passed the checker. A context that has ended already gives whatever the first
// plan holds by then, at worst nothing but missing parts. An error is a fault of
// ours and names the seed.
func Solve(ctx context.Context, p *layout.Problem, o Options) (*layout.Plan, Status, error) {
	s := newSearch(p, o, func() bool { return ctx.Err() != nil })
	s.settleIslands(s.first())
	best, err := s.passed(s.best)
	if err != nil {
		return nil, Stopped, err
	}
	s.improved(0, best)
	s.settle(s.best.netValue())
	if s.improve(s.second()) {
		if best, err = s.passed(s.best); err != nil {
			return nil, Stopped, err
		}
		s.improved(0, best)
	}
	for n := 1; ; n++ {
		switch {
		case len(s.usable) == 0:
			return best, Settled, nil
		case ctx.Err() != nil || o.Rounds > 0 && n > o.Rounds:
			return best, Stopped, nil
		}
		if s.round(n) {
			if best, err = s.passed(s.best); err != nil {
				return nil, Stopped, err
			}
			s.improved(n, best)
		}
		if o.Observer != nil {
			o.Observer.Round(n)
		}
	}
}

func (s *search) improved(round int, plan *layout.Plan) {
	if s.o.Observer != nil {
		s.o.Observer.Improved(round, plan)
	}
}

// passed is the plan of a state once the checker has passed it.
func (s *search) passed(st *state) (*layout.Plan, error) {
	plan := st.plan()
	if faults := check.Plan(plan); len(faults) > 0 {
		return nil, fmt.Errorf("solver: seed %d made a plan that fails its check: %v", s.o.Seed, faults[0])
	}
	return plan, nil
}
