package steps

import "sawbill/layout"

// piece is a piece of wood as it now is, in the frame of the board it came
// from.
type piece struct {
	id        string
	rect      layout.Rect // its wood on face A, or the box around it where the far edge tapers
	thickness layout.Length
	// near and far are how much its edges lean: on face B they lie so much further
	// from the reference edge of the board.
	near, far layout.Length
	// rawFar says that nobody has cut the far edge yet. openFar and openTip say
	// that the far edge, at least in places, or the tip end is still rough:
	// whatever must be straight there needs a cut.
	rawFar, openFar, openTip bool
	// parallel says that the far edge was ripped parallel to the near one, as far as
	// the wood reaches.
	parallel bool
}

// sizeOn is the size of a piece, as wide as it is on the face that lies on the
// table.
func (p piece) sizeOn(down layout.Face) Size {
	s := p.section().A
	if down == layout.FaceB {
		s = p.section().B
	}
	return Size{p.rect.Length(), max(0, s.Len()), p.thickness}
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
		p.rawFar, p.openFar, p.parallel = false, false, false
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
	p.openFar = !p.parallel && (p.rawFar || least < p.rect.Y2+p.far)
	p.rect.Y2 = max(p.rect.Y1, min(p.rect.Y2, most))
	return p
}
