package steps

import "sawbill/layout"

// piece is a piece of wood as it now is, in the frame of the board it came
// from.
type piece struct {
	id        string
	rect      layout.Rect // its wood, or the box around it where the far edge tapers
	thickness layout.Length
	// rawFar says that nobody has cut the far edge yet. openFar and openTip say
	// that the far edge, at least in places, or the tip end is still rough:
	// whatever must be straight there needs a cut.
	rawFar, openFar, openTip bool
}

func (p piece) size() Size {
	return Size{p.rect.Length(), p.rect.Width(), p.thickness}
}

// span is the extent of a rectangle in the direction in which a cut divides it.
func span(r layout.Rect, c layout.Cut) layout.Span {
	if c == layout.Crosscut {
		return r.Along()
	}
	return r.Across()
}

// withSpan is r with its extent in that direction replaced.
func withSpan(r layout.Rect, c layout.Cut, s layout.Span) layout.Rect {
	if c == layout.Crosscut {
		r.X1, r.X2 = s.Lo, s.Hi
	} else {
		r.Y1, r.Y2 = s.Lo, s.Hi
	}
	return r
}

// open reports whether the side on which a cut's pieces end is still rough.
func (p piece) open(c layout.Cut) bool {
	if c == layout.Crosscut {
		return p.openTip
	}
	return p.openFar
}

// sawn is p with that side cut clean.
func (p piece) sawn(c layout.Cut) piece {
	if c == layout.Crosscut {
		p.openTip = false
	} else {
		p.rawFar, p.openFar = false, false
	}
	return p
}

// wood is how far the far edge of a blank lets its pieces reach: the taper of
// the board, less what is lost to straighten the edge.
type wood struct {
	board *layout.Board
	loss  layout.Length
	tip   layout.Length // lost to square the tip end, while that is still rough
}

// clip shortens p to its wood and reports the far edge open where the wood runs
// out before the piece's own edge.
func (w wood) clip(p piece) piece {
	most := max(w.board.Far(p.rect.X1), w.board.Far(p.rect.X2))
	least := w.board.FarMin(p.rect.Along()) - w.loss
	p.openFar = p.rawFar || least < p.rect.Y2
	p.rect.Y2 = max(p.rect.Y1, min(p.rect.Y2, most))
	return p
}

// wanted are the children of a node that are not waste and lie in the wood of
// p, cut short to it.
func wanted(n *layout.Node, p piece) []child {
	var kids []child
	for _, c := range n.Children {
		r := c.Rect
		r.Y2 = min(r.Y2, p.rect.Y2)
		if !isWaste(c) && !r.Empty() {
			kids = append(kids, child{c, span(r, n.Cut), n.Cut == layout.Rip && r.Y2 < c.Y2})
		}
	}
	return kids
}

// child is one piece that a node is divided into.
type child struct {
	node *layout.Node
	span layout.Span
	// short says that the wood ends before the node does, so that there is no
	// edge to cut.
	short bool
}

// settle goes down from n while the piece already is n's only child, and nothing
// is left to be cut clean on the way.
func settle(n *layout.Node, p piece) *layout.Node {
	for len(n.Children) == 1 {
		c := n.Children[0]
		r := c.Rect
		r.Y2 = min(r.Y2, p.rect.Y2)
		if r != p.rect || p.open(n.Cut) && r == c.Rect && c.Offcut == "" {
			return n
		}
		n = c
	}
	return n
}
