package layout

// Kerf is the width of a square cut, rough before truing.
func (s *Shop) Kerf(c Cut, trued bool) Length {
	switch {
	case c == Crosscut:
		return s.CrosscutKerf
	case trued:
		return s.RipKerf
	}
	return s.RoughRipKerf
}

// Losses is what truing takes from the edges and the ends of a blank, beyond the
// hollow of a crooked edge.
type Losses struct{ Near, Far, End Length }

// LossesOf is what truing takes from a blank of b. An edge that is a rough edge of
// the board, or a rough rip, loses edge_joint: the reference edge is spared where
// the board's is straight, the far edge where both are, crooked or not. Each end
// loses end_square, unless the board's reference edge is straight.
func (s *Shop) LossesOf(b *Board, blank Rect) Losses {
	var lost Losses
	if !b.Straight() {
		lost.Near, lost.End = s.EdgeJoint, s.EndSquare
	}
	if blank.Y1 > 0 {
		lost.Near = s.EdgeJoint
	}
	if b.Edges != EdgesBoth || blank.Y2 < b.FullWidth() {
		lost.Far = s.EdgeJoint
	}
	return lost
}

// Usable is the rectangle of a trued node from which its children can be cut: its
// own, from where the wood of a crooked board begins, less the edge and end
// losses. A trued node is as long as the rough crosscut blank that it lies in.
func (s *Shop) Usable(b *Board, r Rect) Rect {
	lost := s.LossesOf(b, r)
	return Rect{
		X1: r.X1 + lost.End, X2: r.X2 - lost.End,
		Y1: max(r.Y1, b.Shift(r.Length())) + lost.Near, Y2: r.Y2 - lost.Far,
	}
}
