package record

import (
	"slices"

	"sawbill/layout"
	"sawbill/layout/check"
	"sawbill/layout/steps"
)

// giveUp makes scrap of a leaf of a board that is being cut, or of all below a
// node, but pieces that are cut. What holds nothing more is scrap as a whole.
func (d *Draft) giveUp(mark string, n *layout.Node) {
	for _, leaf := range n.Leaves() {
		if leaf.Part == "" || !d.isCut(leaf) {
			*leaf = layout.Node{Rect: leaf.Rect}
		}
	}
	d.tidy(d.trees[mark])
}

// tidy makes scrap of nodes that hold nothing, and planes trued nodes no thinner than
// what is left in them needs. Nodes keep their places, so that chalk names stay.
func (d *Draft) tidy(n *layout.Node) {
	for _, c := range n.Children {
		d.tidy(c)
	}
	holds := slices.ContainsFunc(n.Leaves(), func(leaf *layout.Node) bool { return leaf.Part != "" || leaf.Offcut != "" })
	switch {
	case !holds:
		*n = layout.Node{Rect: n.Rect, Cut: layout.NoCut}
	case n.Trued:
		if need := d.need(n); need > 0 {
			n.Thickness = need
		}
	}
}

// need is the thickness that the parts below a node need, 0 without any.
func (d *Draft) need(n *layout.Node) layout.Length {
	var most layout.Length
	for _, leaf := range n.Leaves() {
		if part := d.wanted(leaf.Part); part != nil {
			most = max(most, d.Shop().NeedOf(leaf, part))
		}
	}
	return most
}

// faults are the violations of the draft that are about one board.
func (d *Draft) faults(mark string) []check.Violation {
	return slices.DeleteFunc(check.Plan(d.assembled()), func(v check.Violation) bool { return v.Board != mark })
}

// mend gives up as little as it must of a board whose tree breaks rules. Of a board
// that nobody has touched all cuts are given up, for it can be planned again.
func (d *Draft) mend(mark string) {
	if d.trees[mark] == nil || len(d.faults(mark)) == 0 {
		return
	}
	if !d.started(mark) {
		delete(d.trees, mark)
		return
	}
	for _, v := range d.faults(mark) {
		d.trees[mark].Walk(func(n *layout.Node) {
			if n.ID != "" && n.ID == v.Where && !d.isCut(n) || n.Offcut != "" && "offcut "+n.Offcut == v.Where {
				*n = layout.Node{Rect: n.Rect}
			}
		})
	}
	d.tidy(d.trees[mark])
	if len(d.faults(mark)) > 0 {
		d.dissolve(mark)
	}
	d.settle(mark)
}

// dissolve ends the work on a board: what is cut is cut, and what lies on the bench
// after the steps that were needed for it, and for the wood with these names, is
// stock.
func (d *Draft) dissolve(mark string, names ...string) {
	plan := d.assembled()
	sheet := steps.Begun(plan, plan.Board(mark))
	d.replace(mark, unfinished(sheet.Bench(sheet.Reached(names...))))
}

// unfinished are pieces with none of them a part of the bill: what is not told to
// be cut is stock.
func unfinished(bench []steps.Lying) []steps.Lying {
	for i := range bench {
		bench[i].Part = ""
	}
	return bench
}
