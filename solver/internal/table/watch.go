package main

import (
	"context"
	"time"

	"sawbill/layout"
	"sawbill/solver"
)

// watch is a solve with the time of everything that it found.
type watch struct {
	start time.Time
	seen  []moment
	plan  *layout.Plan // the last
	ended moment
}

// moment is what is known from some time on. A cost with parts missing compares
// with none.
type moment struct {
	at      time.Duration
	cost    layout.Money
	bound   *layout.Money
	missing int
}

// observe solves a job for at most so long.
func observe(ctx context.Context, p *layout.Problem, most time.Duration, o solver.Options) (*watch, error) {
	ctx, cancel := context.WithTimeout(ctx, most)
	defer cancel()
	w := &watch{start: time.Now()}
	o.Observer = w
	plan, _, err := solver.Solve(ctx, p, o)
	if err != nil {
		return nil, err
	}
	w.plan, w.ended = plan, w.note(plan)
	return w, nil
}

// Improved notes a better plan.
func (w *watch) Improved(_ int, plan *layout.Plan) { w.seen = append(w.seen, w.note(plan)) }

// Proven notes a better bound of the plan at hand.
func (w *watch) Proven(_ int, bound layout.Money) {
	m := w.seen[len(w.seen)-1]
	m.at, m.bound = time.Since(w.start), &bound
	w.seen = append(w.seen, m)
}

// Round takes no interest.
func (w *watch) Round(int) {}

func (w *watch) note(plan *layout.Plan) moment {
	m := moment{at: time.Since(w.start), cost: plan.Totals.Cost, bound: plan.Totals.Bound}
	for _, x := range plan.Missing {
		m.missing += x.Quantity
	}
	return m
}

// at is what was known after a time; ok is false when nothing was.
func (w *watch) at(d time.Duration) (m moment, ok bool) {
	if w.ended.at <= d {
		return w.ended, true
	}
	for _, s := range w.seen {
		if s.at <= d {
			m, ok = s, true
		}
	}
	return m, ok
}

// found is when the plan that was returned was found first.
func (w *watch) found() time.Duration {
	for _, s := range w.seen {
		if s.cost == w.ended.cost && s.missing == w.ended.missing {
			return s.at
		}
	}
	return w.ended.at
}

// gap is how far the cost may lie above the least possible, as a share of it.
func (m moment) gap() (float64, bool) {
	return layout.Totals{Cost: m.cost, Bound: m.bound}.Gap()
}

// proven reports whether nothing can cost less.
func (m moment) proven() bool { return m.bound != nil && *m.bound >= m.cost }
