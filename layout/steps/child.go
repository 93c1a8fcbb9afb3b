package steps

import "sawbill/layout"

// child is one piece that a node is divided into.
type child struct {
	node *layout.Node
	span layout.Span // on face A
	// angle is at what both its edges are ripped, from square, and lean how much
	// they lean for it in wood as thick as the piece in hand.
	angle layout.Angle
	lean  layout.Length
	// short says that the wood ends before the node does, so that there is no
	// edge to cut.
	short bool
}

// wanted are the children of a node that are not waste and lie in the wood of
// p, cut short to it.
func (w *worker) wanted(n *layout.Node, p piece) []child {
	var kids []child
	for _, c := range n.Children {
		r := c.Rect
		r.Y2 = min(r.Y2, p.rect.Y2)
		if isWaste(c) || r.Empty() {
			continue
		}
		kid := child{node: c, span: span(r, n.Cut), short: n.Cut == layout.Rip && r.Y2 < c.Y2}
		if n.Cut == layout.Rip {
			kid.angle = w.angleOf(c, p.thickness)
			kid.lean = kid.angle.Lean(p.thickness)
		}
		kids = append(kids, kid)
	}
	return kids
}

// angleOf is the angle at which a node is ripped out of wood of a thickness: the
// bevel of its parts or, of leftovers, what their lean says.
func (w *worker) angleOf(n *layout.Node, thickness layout.Length) layout.Angle {
	if n.Lean == 0 {
		return 0
	}
	for _, leaf := range n.Leaves() {
		if part := w.problem.Part(leaf.Part); part != nil && same(part.Lean(), n.Lean) {
			return part.Bevel
		}
	}
	return layout.AngleOf(n.Lean, thickness)
}

// same reports whether two places are too close for any saw to tell apart. Real
// figures are rounded in a plan, by up to so much.
func same(a, b layout.Length) bool {
	return a-b <= layout.Micrometre && b-a <= layout.Micrometre
}

// settle goes down from n while the piece already is n's only child, and nothing
// is left to be cut clean on the way.
func (w *worker) settle(n *layout.Node, p piece) *layout.Node {
	if n.Part != "" && p.openTip {
		return w.yetToSquare(n)
	}
	for len(n.Children) == 1 {
		c := n.Children[0]
		r := c.Rect
		r.Y2 = min(r.Y2, p.rect.Y2)
		if r != p.rect || p.open(n.Cut) && r == c.Rect && c.Offcut == "" || !w.leansLike(p, n) {
			return n
		}
		n = c
	}
	return n
}

// yetToSquare is a strip that holds nothing but a piece as long as its blank, of which
// the tip end is still rough: it takes a crosscut as well.
func (w *worker) yetToSquare(piece *layout.Node) *layout.Node {
	strip := &layout.Node{Rect: piece.Rect, Cut: layout.Crosscut, Lean: piece.Lean, Children: []*layout.Node{piece}}
	w.sheet.names.chalk[strip] = w.sheet.names.unfinished(piece)
	return strip
}

// leansLike reports whether the edges of p already lean as those of the only
// child of n. A crosscut leaves them as they are.
func (w *worker) leansLike(p piece, n *layout.Node) bool {
	if n.Cut != layout.Rip {
		return true
	}
	lean := w.angleOf(n.Children[0], p.thickness).Lean(p.thickness)
	return same(p.near, lean) && same(p.far, lean)
}
