package column

import (
	"sawbill/layout"
)

// snug moves what lies less than one grid unit beyond its place toward the
// reference edge and the butt end of its blank, so that a coarse grid costs no
// trim cut between neighbours. What would then meet a defect or the far edge
// stays where it is.
func (w *Board) snug(root *layout.Node) {
	root.Walk(func(n *layout.Node) {
		if n.Trued {
			w.snugIn(n, n)
		}
	})
}

// snugIn does so for everything inside n, which lies in a trued node.
func (w *Board) snugIn(n, trued *layout.Node) {
	inner := n.Rect
	if n == trued {
		inner = w.shop.Usable(w.wood, n.Rect)
	}
	var moved layout.Length // how far the child before has come
	for i, c := range n.Children {
		var by, unit layout.Length
		if n.Cut == layout.Rip {
			by, unit = c.Y1-inner.Y1-w.insetOf(c, n), w.y.unit
			if i > 0 {
				by = c.Y1 - n.Children[i-1].Y2 - w.leanNamed(n.Children[i-1].Lean).apart(w.leanNamed(c.Lean))
			}
		} else {
			by, unit = c.X1-max(inner.X1, trued.X1+w.shop.Snipe), w.x.unit
			if i > 0 {
				by = c.X1 - n.Children[i-1].X2 - w.shop.CrosscutKerf
			}
		}
		if 0 < by && by < unit+moved && w.move(c, trued, n.Cut, -by) {
			moved = by
		} else {
			moved = 0
		}
		w.snugIn(c, trued)
	}
}

// insetOf is how far a ripped child stays from the near edge of its parent: along an
// edge that leans as much, it loses nothing.
func (w *Board) insetOf(c, parent *layout.Node) layout.Length {
	if c.Lean == parent.Lean {
		return 0
	}
	return w.leanNamed(c.Lean).inset()
}

// move shifts a node in a trued one and all below it if its parts stay sound and on the board,
// and reports whether they do.
func (w *Board) move(n, trued *layout.Node, cut layout.Cut, by layout.Length) bool {
	n.Shift(cut, by)
	for _, leaf := range n.Leaves() {
		if leaf.Part != "" && !w.holds(leaf, trued.Rect) {
			n.Shift(cut, -by)
			return false
		}
	}
	for _, leaf := range n.Leaves() {
		if leaf.Part != "" {
			leaf.Show = w.pieceOf(leaf).show(w.under(leaf, trued.Length()))
		}
	}
	return true
}

// holds reports whether the wood under a part leaf is sound enough for it, in a
// trued node.
func (w *Board) holds(leaf *layout.Node, trued layout.Rect) bool {
	p, hit := w.pieceOf(leaf), w.under(leaf, trued.Length())
	return leaf.Y2+leaf.Lean <= w.wood.FarMin(leaf.Along())-w.shop.LossesOf(w.wood, trued).Far &&
		!(p.blockA.meets(hit) && p.blockB.meets(hit))
}
