package column

import (
	"slices"

	"sawbill/layout"
)

// harvest keeps as an offcut whatever a cut tree leaves over that is large
// enough: gaps between children and leaves that are nothing else. It keeps the
// tree valid.
func (w *Board) harvest(root *layout.Node) {
	if w.measure.rate == 0 {
		return
	}
	if len(root.Children) == 0 {
		w.harvestNode(root, root, false)
		return
	}
	for _, c := range root.Children {
		w.harvestNode(c, c, false)
	}
	w.harvestGaps(root, root, false)
}

// harvestNode does so for a node and all below it, in a rough crosscut blank.
func (w *Board) harvestNode(n, blank *layout.Node, trued bool) {
	trued = trued || n.Trued
	if len(n.Children) == 0 {
		if n.Part == "" && n.Offcut == "" && !n.Trued && w.keeps(n.Rect, blank.Length()) {
			*n = layout.Node{Rect: n.Rect, Lean: n.Lean, Offcut: kept}
		}
		return
	}
	for _, c := range n.Children {
		w.harvestNode(c, blank, trued)
	}
	w.harvestGaps(n, blank, trued)
}

// harvestGaps keeps what lies between the children of a node. What is crosscut from
// the board is a blank of its own.
func (w *Board) harvestGaps(n, blank *layout.Node, trued bool) {
	inner := n.Rect
	if n.Trued {
		inner = w.shop.Usable(w.wood, n.Rect)
	}
	for _, gap := range w.gaps(inner, n, w.shop.Kerf(n.Cut, trued)) {
		long := blank.Length()
		if n == blank {
			long = gap.Length()
		}
		if w.keeps(gap, long) && (trued || w.kerfsClear(gap, n)) {
			n.Children = append(n.Children, &layout.Node{Rect: gap, Offcut: kept})
		}
	}
	slices.SortFunc(n.Children, inOrder)
}

// keeps reports whether a rectangle would be an offcut worth keeping, in a rough
// crosscut blank so long.
func (w *Board) keeps(r layout.Rect, blank layout.Length) bool {
	clean := w.wood.CleanOffcutIn(blank, r)
	return w.shop.Keeps(clean) && w.shop.OffcutWorth(w.wood, clean) > 0
}

// kerfsClear reports whether the kerfs beside an untrued piece meet no metal.
func (w *Board) kerfsClear(r layout.Rect, parent *layout.Node) bool {
	if len(w.metal) == 0 {
		return true
	}
	kerf := w.shop.Kerf(parent.Cut, false)
	around := r.Grow(kerf, 0)
	if parent.Cut == layout.Rip {
		around = r.Grow(0, kerf)
	}
	around = around.Intersect(parent.Rect)
	for _, m := range shifted(w.metal, w.wood.Shift(r.Length())) {
		// Metal inside the piece itself may stay in an offcut; metal that
		// reaches past its sides lies in a kerf.
		if m.Overlaps(around) && (parent.Cut == layout.Crosscut && (m.X1 < r.X1 || m.X2 > r.X2) ||
			parent.Cut == layout.Rip && (m.Y1 < r.Y1 || m.Y2 > r.Y2)) {
			return false
		}
	}
	return true
}

// gaps are the rectangles between the children of n, a kerf away from them, and
// before the first and after the last. Of leaning ones they keep clear on both faces;
// in a leaning cell none are sought.
func (w *Board) gaps(inner layout.Rect, n *layout.Node, kerf layout.Length) []layout.Rect {
	if n.Cut == layout.Rip && n.Lean > 0 {
		return nil
	}
	var found []layout.Rect
	gap := inner
	for _, c := range n.Children {
		before, after := kerf, kerf
		if c.Lean > 0 && n.Cut == layout.Rip {
			before, after = w.leanNamed(c.Lean).kerf, w.leanNamed(c.Lean).apart(w.leans[0])
		}
		if n.Cut == layout.Crosscut {
			gap.X2 = c.X1 - before
		} else {
			gap.Y2 = c.Y1 - before
		}
		found = append(found, gap)
		gap = inner
		if n.Cut == layout.Crosscut {
			gap.X1 = c.X2 + after
		} else {
			gap.Y1 = c.Y2 + after
		}
	}
	return append(found, gap)
}
