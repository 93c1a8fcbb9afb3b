package record

import "sawbill/layout"

// Solve plans a problem; it may be called several times for one revision. Whoever has
// a time for all must keep some for later calls, but not at the last.
type Solve func(p *layout.Problem, last bool) (*layout.Plan, error)

// Complete makes a plan of the draft: what is cut and what is untouched stays, what
// is missing is planned out of boards that are free. Then boards are planned again, if
// that leaves less missing: boards that nobody has touched, as few as will do of those
// that could give a part that is missing, then all; and what is left of boards that are
// being cut and have lost pieces. A board that nobody has touched and that has lost
// pieces is also planned again where that costs less. So whatever the former plan made
// and nothing that was told forbids is made by the next one, however little solve finds.
// The plan's revision is one more than the former one's, its time is that of the former.
// An error is that of solve.
func (d *Draft) Complete(solve Solve) (*layout.Plan, error) {
	c := &completion{solve: solve}
	best, err := c.filled(d)
	if err != nil {
		return nil, err
	}
	for _, way := range d.ways() {
		next, better := way(best)
		if next == nil {
			continue
		}
		if next, err = c.filled(next); err != nil {
			return nil, err
		}
		if better(next.assembled().Score(), best.assembled().Score()) {
			best = next
		}
	}
	plan := best.assembled()
	plan.Record.Papers = papers(d.former, plan)
	if err := c.prove(best, plan); err != nil {
		return nil, err
	}
	return plan, nil
}

// completion is what has been planned on the way to a revision.
type completion struct {
	solve  Solve
	proofs []attempt
}

// attempt is a plan for what a draft leaves.
type attempt struct {
	draft *Draft
	proof proof
}

// filled is a draft with what it leaves missing planned out of the boards that it
// does not cut. Copies of glue-ups that are begun are completed where that can be; where
// it cannot, their slices are made otherwise.
func (c *completion) filled(d *Draft) (*Draft, error) {
	r := d.rest(nil)
	next, err := c.planned(d, r)
	if err != nil {
		return nil, err
	}
	hopeless := r.left(next)
	if len(hopeless) == 0 {
		return next, nil
	}
	other, err := c.planned(d, d.rest(hopeless))
	if err == nil && lessMissing(other.assembled().Score(), next.assembled().Score()) {
		next = other
	}
	return next, err
}

// prove states what is proven of the plan of a draft. Where nothing was planned yet
// that fixes no more than what is being cut, that is done now.
func (c *completion) prove(best *Draft, plan *layout.Plan) error {
	base := best.freed(func(*layout.Board) bool { return true })
	if base == nil {
		base = best
	}
	fixed := base.assembled()
	best.carry(plan, fixed)
	for _, a := range c.proofs {
		if a.draft.fixesAs(base) {
			a.proof.state(plan, fixed)
			return nil
		}
	}
	q := proof{rest: base.rest(nil)}
	if !q.rest.empty() {
		var err error
		if q.plan, err = c.solve(q.rest.problem, true); err != nil {
			return err
		}
	}
	q.state(plan, fixed)
	return nil
}

// fixesAs reports whether two drafts cut the same boards, and all of these are being
// cut.
func (d *Draft) fixesAs(o *Draft) bool {
	if len(d.trees) != len(o.trees) {
		return false
	}
	for mark, root := range d.trees {
		if !d.started(mark) || o.trees[mark] == nil || !sameTree(root, o.trees[mark]) {
			return false
		}
	}
	return true
}
