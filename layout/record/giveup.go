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

// scrap gives a planned piece up. Where its wood is large enough it is an offcut to
// keep, which bears the name of the piece.
func (d *Draft) scrap(mark string, leaf *layout.Node) {
	was := *leaf
	*leaf = layout.Node{Rect: leaf.Rect}
	plain := was.Part != "" && was.Pieces() == 1 && was.Lean == 0 && !was.Trued && d.Shop().ThicknessAllowance == 0
	if !plain {
		return
	}
	b := d.board(mark)
	d.trees[mark].LeavesByBlank(func(blank, other *layout.Node) {
		if other == leaf && d.Shop().Keeps(b.CleanOffcutIn(blank.Length(), leaf.Rect)) {
			leaf.Offcut = was.ID
		}
	})
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
	p := &layout.Problem{Shop: d.Shop(), Stock: []layout.Board{*d.board(mark)}, Bill: d.record.Wanted, Yard: d.former.Problem.Yard}
	plan := layout.AssembleWith(p, nil, []layout.BoardCut{{Board: mark, Root: d.trees[mark]}}, nil)
	return slices.DeleteFunc(check.Plan(plan), func(v check.Violation) bool { return v.Board != mark })
}

// mend gives up as little as it must of a board whose tree breaks rules: single
// pieces, or whole blanks. Where neither will do, work on a board that is being cut
// ends, and all cuts of another one are given up, for it can be planned again.
func (d *Draft) mend(mark string) {
	if d.trees[mark] == nil || len(d.faults(mark)) == 0 {
		return
	}
	d.hurt[mark] = true
	d.giveUpPieces(mark)
	if len(d.faults(mark)) > 0 {
		d.giveUpBlanks(mark)
	}
	switch {
	case len(d.faults(mark)) == 0:
		d.drop(mark)
	case d.started(mark):
		d.dissolve(mark)
	default:
		delete(d.trees, mark)
	}
}

// giveUpPieces gives up the pieces and offcuts of a board that break rules: pieces
// become offcuts, and where these break rules, too, scrap.
func (d *Draft) giveUpPieces(mark string) {
	for range 2 {
		for _, v := range d.faults(mark) {
			for _, n := range d.trees[mark].Leaves() {
				switch {
				case n.Part != "" && n.ID == v.Where && !d.isCut(n):
					d.scrap(mark, n)
				case n.Offcut != "" && "offcut "+n.Offcut == v.Where:
					*n = layout.Node{Rect: n.Rect}
				}
			}
		}
		d.tidy(d.trees[mark])
	}
}

// giveUpBlanks leaves of the blanks of a board those that break no rule together with
// the ones before them, and those of which pieces are cut. Blanks that reach beyond the
// board, which nobody has touched then, go first: it is smaller than was thought.
func (d *Draft) giveUpBlanks(mark string) {
	root := d.trees[mark]
	root.Children = slices.DeleteFunc(root.Children, func(n *layout.Node) bool { return !root.Contains(n.Rect) })
	kept := make([]layout.Node, len(root.Children))
	for i, blank := range root.Children {
		kept[i] = *blank
		if !slices.ContainsFunc(blank.Leaves(), func(n *layout.Node) bool { return n.Part != "" && d.isCut(n) }) {
			*blank = layout.Node{Rect: blank.Rect}
		}
	}
	for i, blank := range root.Children {
		was := *blank
		*blank = kept[i]
		if len(d.faults(mark)) > 0 {
			*blank = was
		}
	}
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
