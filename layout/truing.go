package layout

// Kerf is the width of a cut, rough before truing.
func (s *Shop) Kerf(c Cut, trued bool) Length {
	switch {
	case c == Crosscut:
		return s.CrosscutKerf
	case trued:
		return s.RipKerf
	}
	return s.RoughRipKerf
}

// Usable is the rectangle of a trued node, on a board without warp, from which
// its children can be cut: its own less the edge and end losses.
func (s *Shop) Usable(b *Board, r Rect) Rect {
	near := b.Edges == EdgesRough || r.Y1 > 0
	far := b.Edges != EdgesBoth || r.Y2 < b.FullWidth()
	if near {
		r.Y1 += s.EdgeJoint
	}
	if far {
		r.Y2 -= s.EdgeJoint
	}
	if b.Edges == EdgesRough {
		r.X1 += s.EndSquare
		r.X2 -= s.EndSquare
	}
	return r
}
