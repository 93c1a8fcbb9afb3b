package record

import (
	"cmp"
	"slices"

	"sawbill/layout"
)

// ways are tried in this order, from the fewest new sheets on.
func (d *Draft) ways() []way {
	return []way{
		d.hurtAnew, d.helpersAnew(0, 1), d.helpersAnew(1, 3), d.helpersAnew(3, len(d.trees)), d.allAnew, d.brokenUp,
	}
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
