package solver

import (
	"fmt"
	"slices"

	"sawbill/layout"
	"sawbill/layout/check"
)

// take hands a plan out once the checker has passed it.
func (q *glueUps) take(plan *layout.Plan, n int) error {
	if q.guide != nil {
		q.guide.follow(plan)
		q.guide.state(&plan.Totals)
	}
	if faults := check.Plan(plan); len(faults) > 0 {
		return fmt.Errorf("solver: seed %d made a plan that fails its check: %v", q.o.Seed, faults[0])
	}
	q.plan, q.round = plan, n
	if q.o.Observer != nil {
		q.o.Observer.Improved(n, plan)
	}
	return nil
}

// prove takes the proof further and states what is proven by now.
func (q *glueUps) prove(n int) {
	if q.guide == nil || q.o.Unproven {
		return
	}
	q.guide.step()
	plan := *q.plan
	q.guide.state(&plan.Totals)
	if b, old := plan.Totals.Bound, q.plan.Totals.Bound; b == nil || old != nil && *b <= *old {
		return
	}
	q.plan = &plan
	if q.o.Observer != nil {
		q.o.Observer.Proven(n, *plan.Totals.Bound)
	}
}

// tidy makes the plan of the best trial tidier, as that of any job.
func (q *glueUps) tidy() error {
	gap, ok := q.plan.Totals.Gap()
	t := q.alive[0]
	if t.plan.Score().Compare(q.plan.Score()) != 0 || !t.s.tidy(ok && gap == 0) {
		return nil
	}
	t.finish(q)
	same := func(a, b layout.Missing) bool { return a.Part == b.Part && a.Quantity == b.Quantity }
	if !slices.EqualFunc(t.plan.Missing, q.plan.Missing, same) {
		return nil
	}
	return q.take(t.plan, q.round)
}
