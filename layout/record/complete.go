package record

import "sawbill/layout"

// Solve plans a problem; it may be called several times for one revision.
type Solve func(*layout.Problem) (*layout.Plan, error)

// Complete makes a plan of the draft: what is cut and what is untouched stays, what
// is missing is planned out of boards that are free. If something is then still
// missing, boards that nobody has touched are planned again, too: first those that
// could give a part that is missing, then all; such a plan is taken if it is a better
// one. The plan's revision is one more than the former one's, its time is that of
// the former. An error is that of solve, which is asked three times at most.
func (d *Draft) Complete(solve Solve) (*layout.Plan, error) {
	plan, err := d.fill(solve)
	if err != nil {
		return nil, err
	}
	before := len(d.trees)
	for _, free := range []func(*layout.Board) bool{d.couldHelp(plan), func(*layout.Board) bool { return true }} {
		next := d.freed(free)
		if len(plan.Missing) == 0 || len(next.trees) == before {
			continue
		}
		before = len(next.trees)
		other, err := next.fill(solve)
		if err != nil {
			return nil, err
		}
		if other.Score().Compare(plan.Score()) < 0 {
			plan = other
		}
	}
	plan.Record.Papers = papers(d.former, plan)
	return plan, nil
}

// couldHelp is for boards that could give a part that a plan leaves missing.
func (d *Draft) couldHelp(plan *layout.Plan) func(*layout.Board) bool {
	return func(b *layout.Board) bool {
		for _, m := range plan.Missing {
			if part := plan.Problem.Part(m.Part); part != nil && plan.Problem.CouldHold(part, b) {
				return true
			}
		}
		return false
	}
}

// freed is the draft without the cuts of boards that are to be planned again, of
// those that nobody has touched.
func (d *Draft) freed(free func(*layout.Board) bool) *Draft {
	next := *d
	next.trees = map[string]*layout.Node{}
	for mark, root := range d.trees {
		if d.started(mark) || !free(d.board(mark)) {
			next.trees[mark] = root
		}
	}
	return &next
}

// fill plans what the draft leaves missing out of the boards that it does not cut.
func (d *Draft) fill(solve Solve) (*layout.Plan, error) {
	plan := d.assembled()
	p := &layout.Problem{Shop: plan.Problem.Shop, Yard: plan.Problem.Yard}
	for _, m := range plan.Missing {
		if part := plan.Problem.Part(m.Part); part != nil {
			short := *part
			short.Quantity = m.Quantity
			p.Bill = append(p.Bill, short)
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
