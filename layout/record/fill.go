package record

import (
	"slices"

	"sawbill/layout"
)

// empty reports whether there is nothing to plan, or nothing to plan it from.
func (r *rest) empty() bool { return len(r.problem.Stock) == 0 || len(r.problem.Bill) == 0 }

// planned is a draft with the rest planned.
func (c *completion) planned(d *Draft, r *rest) (*Draft, error) {
	next := d.clone()
	if r.empty() {
		next.withoutWaiting()
		return next, nil
	}
	plan, err := c.solve(r.problem, false)
	if err != nil {
		return nil, err
	}
	c.proofs = append(c.proofs, attempt{d, proof{r, plan}})
	next.plant(r, plan)
	return next, nil
}

// plant takes the cuts of a plan for the rest over.
func (d *Draft) plant(r *rest, plan *layout.Plan) {
	var fresh []layout.BoardCut
	for _, b := range plan.Boards {
		root := b.Root.Clone()
		for _, leaf := range root.Leaves() {
			if s, strip := r.strips[leaf.Part]; strip {
				leaf.Part, leaf.Slices = s.row, s.slices
			}
		}
		fresh = append(fresh, layout.BoardCut{Board: b.Board, Root: root})
	}
	d.with(fresh) // names what is in the new trees
	for _, c := range fresh {
		d.trees[c.Board] = c.Root
	}
	d.withoutWaiting()
}

// withoutWaiting gives strips of glue-ups up that are not cut yet and would wait for
// the others of their copy, of boards that are not being cut first.
func (d *Draft) withoutWaiting() {
	for {
		surplus := d.surplus()
		if len(surplus) == 0 {
			return
		}
		for _, mark := range d.untouchedFirst() {
			changed := false
			for _, leaf := range d.trees[mark].Leaves() {
				s := strip{leaf.Part, leaf.Slices}
				if surplus[s] > 0 && !d.isCut(leaf) {
					surplus[s] -= leaf.Pieces()
					d.scrap(mark, leaf)
					changed = true
				}
			}
			if changed {
				d.tidy(d.trees[mark])
				d.mend(mark)
				d.drop(mark)
			}
		}
	}
}

// surplus counts the strips that are in no whole copy and are not cut.
func (d *Draft) surplus() map[strip]int {
	plan := d.assembled()
	left := map[strip]int{}
	for row, counts := range plan.Strips() {
		for k, n := range counts {
			left[strip{row, k}] = n
		}
	}
	for _, set := range plan.Problem.Sets() {
		for _, c := range plan.Copies(set) {
			for _, i := range set.Rows {
				row := &plan.Problem.Bill[i]
				left[strip{row.Name, c.Slices}] -= c.Count * row.Quantity
			}
		}
	}
	for _, c := range d.record.Cut {
		if c.Slices > 0 {
			left[strip{c.Part, c.Slices}]--
		}
	}
	for s, n := range left {
		if n <= 0 {
			delete(left, s)
		}
	}
	return left
}

// untouchedFirst are the boards that the draft cuts, those that are being cut last.
func (d *Draft) untouchedFirst() []string {
	var marks []string
	for i := range d.stock {
		if mark := d.stock[i].Mark; d.trees[mark] != nil {
			marks = append(marks, mark)
		}
	}
	slices.SortStableFunc(marks, func(a, b string) int {
		switch {
		case d.started(a) == d.started(b):
			return 0
		case d.started(a):
			return 1
		}
		return -1
	})
	return marks
}

// drop leaves a board alone of which nothing is made, or ends the work on one that is
// being cut.
func (d *Draft) drop(mark string) {
	switch root := d.trees[mark]; {
	case root == nil:
	case d.started(mark):
		d.settle(mark)
	case !holdsPart(root):
		delete(d.trees, mark)
	}
}
