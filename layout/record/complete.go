package record

import (
	"maps"

	"sawbill/layout"
)

// Solve plans a problem; it may be called twice for one revision.
type Solve func(*layout.Problem) (*layout.Plan, error)

// Complete makes a plan of the draft: what is cut and what is untouched stays, what
// is missing is planned out of boards that are free. Only if something is then
// still missing are all boards planned again that are not being cut, and that plan
// is taken if it is the better one. The plan's revision is one more than the former
// one's, its time is that of the former. An error is that of solve.
func (d *Draft) Complete(solve Solve) (*layout.Plan, error) {
	plan := d.assembled()
	if len(plan.Missing) > 0 {
		near, err := d.fill(plan, solve)
		if err != nil {
			return nil, err
		}
		plan = near
	}
	if len(plan.Missing) > 0 && d.untouched() {
		all, err := d.anew().fill(d.anew().assembled(), solve)
		if err != nil {
			return nil, err
		}
		if all.Score().Compare(plan.Score()) < 0 {
			plan = all
		}
	}
	plan.Record.Papers = papers(d.former, plan)
	return plan, nil
}

// untouched reports whether a board that nobody has touched has cuts.
func (d *Draft) untouched() bool {
	for mark := range d.trees {
		if !d.started(mark) {
			return true
		}
	}
	return false
}

// anew is the draft without the cuts of boards that nobody has touched.
func (d *Draft) anew() *Draft {
	next := *d
	next.trees = map[string]*layout.Node{}
	maps.Copy(next.trees, d.trees)
	for mark := range d.trees {
		if !d.started(mark) {
			delete(next.trees, mark)
		}
	}
	return &next
}

// fill plans what a plan of the draft leaves missing out of the boards that it does
// not cut.
func (d *Draft) fill(plan *layout.Plan, solve Solve) (*layout.Plan, error) {
	short := map[string]int{}
	for _, m := range plan.Missing {
		short[m.Part] = m.Quantity
	}
	p := &layout.Problem{Shop: plan.Problem.Shop, Yard: plan.Problem.Yard}
	for _, part := range plan.Problem.Bill {
		if part.Quantity = short[part.Name]; part.Quantity > 0 {
			p.Bill = append(p.Bill, part)
		}
	}
	for _, b := range plan.Problem.Stock {
		if d.trees[b.Mark] == nil {
			p.Stock = append(p.Stock, b)
		}
	}
	if len(p.Stock) == 0 || len(p.Bill) == 0 {
		return plan, nil
	}
	rest, err := solve(p)
	if err != nil {
		return nil, err
	}
	var fresh []layout.BoardCut
	for _, b := range rest.Boards {
		fresh = append(fresh, layout.BoardCut{Board: b.Board, Root: b.Root})
	}
	return d.with(fresh), nil
}
