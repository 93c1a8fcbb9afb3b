package record

import (
	"cmp"
	"slices"

	"sawbill/layout"
)

// Solve plans a problem; it may be called several times for one revision. Whoever has
// a time for all must keep some for later calls, but not at the last.
type Solve func(p *layout.Problem, last bool) (*layout.Plan, error)

// Complete makes a plan of the draft: what is cut and what is untouched stays, what
// is missing is planned out of boards that are free. Then boards are planned again, if
// that leaves less missing: boards that nobody has touched, as few as will do of those
// that could give a part that is missing, then all; and what is left of boards that are being cut and
// have lost pieces. A board that nobody has touched and that has lost pieces is also
// planned again where that costs less. So whatever the former plan made and nothing that
// was told forbids is made by the next one, however little solve finds. The plan's
// revision is one more than the former one's, its time is that of the former. An error
// is that of solve.
func (d *Draft) Complete(solve Solve) (*layout.Plan, error) {
	c := &completion{solve: solve}
	best, err := c.filled(d)
	if err != nil {
		return nil, err
	}
	for _, way := range []way{d.hurtAnew, d.helpersAnew(0, 1), d.helpersAnew(1, 3), d.helpersAnew(3, len(d.trees)), d.allAnew, d.brokenUp} {
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
	return plan, c.prove(best, plan)
}

// completion is what has been planned on the way to a revision.
type completion struct {
	solve  Solve
	proofs []attempt
}

// attempt is a plan for all that a draft leaves when nothing is fixed but boards that
// are being cut.
type attempt struct {
	draft *Draft
	proof proof
}

// way gives a draft that may be completed to a better plan than the best so far, or
// nil, and what is better.
type way func(best *Draft) (*Draft, func(a, b layout.Score) bool)

func cheaper(a, b layout.Score) bool { return a.Compare(b) < 0 }

// lessMissing does not look at the cost: new sheets for a few cents are no gain.
func lessMissing(a, b layout.Score) bool {
	a.Cost = b.Cost
	return a.Compare(b) < 0
}

func (d *Draft) hurtAnew(*Draft) (*Draft, func(a, b layout.Score) bool) {
	return d.freed(func(b *layout.Board) bool { return d.hurt[b.Mark] }), cheaper
}

// helpersAnew frees boards that could give something that the best plan so far leaves
// missing, more than few of them and at most so many: those with the most wood that is
// no part.
func (d *Draft) helpersAnew(few, most int) way {
	return func(best *Draft) (*Draft, func(a, b layout.Score) bool) {
		plan := best.assembled()
		var helpers []layout.BoardPlan
		for _, b := range d.assembled().Boards {
			if wood := d.board(b.Board); !d.started(b.Board) && slices.ContainsFunc(plan.Missing, func(m layout.Missing) bool {
				return couldGive(&plan.Problem, m.Part, wood)
			}) {
				helpers = append(helpers, b)
			}
		}
		if len(helpers) <= few {
			return nil, nil
		}
		slices.SortStableFunc(helpers, func(a, b layout.BoardPlan) int { return cmp.Compare(spareWood(b), spareWood(a)) })
		helpers = helpers[:min(most, len(helpers))]
		return d.freed(func(b *layout.Board) bool {
			return slices.ContainsFunc(helpers, func(h layout.BoardPlan) bool { return h.Board == b.Mark })
		}), lessMissing
	}
}

func spareWood(b layout.BoardPlan) float64 { return b.Account.Scrap + b.Account.Offcuts }

func (d *Draft) allAnew(best *Draft) (*Draft, func(a, b layout.Score) bool) {
	if len(best.assembled().Missing) == 0 {
		return nil, nil
	}
	return d.freed(func(*layout.Board) bool { return true }), lessMissing
}

// brokenUp ends the work on boards that are being cut and have lost pieces: what is
// left of them is stock.
func (d *Draft) brokenUp(best *Draft) (*Draft, func(a, b layout.Score) bool) {
	if len(best.assembled().Missing) == 0 {
		return nil, nil
	}
	next := d.clone()
	for mark := range d.hurt {
		if d.started(mark) {
			next.dissolve(mark)
		}
	}
	if len(next.trees) == len(d.trees) {
		return nil, nil
	}
	return next, lessMissing
}

// couldGive reports whether a board could give a part, or a strip of the set that has
// this name.
func couldGive(p *layout.Problem, name string, b *layout.Board) bool {
	return slices.ContainsFunc(p.Bill, func(part layout.Part) bool {
		switch {
		case part.Set == name && name != "":
			strip := p.Shop.Strip(&part, p.Shop.LeastSlices(&part))
			return p.CouldHold(&strip, b)
		case part.Set == "" && part.Name == name:
			return p.CouldHold(&part, b)
		}
		return false
	})
}

// freed is the draft without the cuts of boards that are to be planned again, of
// those that nobody has touched; nil where there are none.
func (d *Draft) freed(free func(*layout.Board) bool) *Draft {
	next := d.clone()
	for mark := range d.trees {
		if !d.started(mark) && free(d.board(mark)) {
			delete(next.trees, mark)
		}
	}
	if len(next.trees) == len(d.trees) {
		return nil
	}
	return next
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
