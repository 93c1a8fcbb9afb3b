package check

import "sawbill/layout"

// losses is what truing takes from a node beyond the crook: from its near edge,
// its far edge and each of its ends.
type losses struct{ near, far, end layout.Length }

// lossesOf holds the edges of a trued node against the board's. An edge that is
// a rough edge of the board, or a rough rip, is jointed; ends are squared
// unless the board's reference edge is straight.
func (s *sawn) lossesOf(at *spot) losses {
	var lost losses
	near, far := s.jointed(at)
	if near {
		lost.near = s.job.shop.EdgeJoint
	}
	if far {
		lost.far = s.job.shop.EdgeJoint
	}
	if !s.referenceStraight() {
		lost.end = s.job.shop.EndSquare
	}
	return lost
}

// jointed says which edges of a trued node are to be straightened.
func (s *sawn) jointed(at *spot) (near, far bool) {
	near = at.Y1 > 0 || !s.referenceStraight()
	far = at.Y2 < s.full() || s.wood.Edges != layout.EdgesBoth
	return near, far
}

func (s *sawn) referenceStraight() bool {
	return s.wood.Edges != layout.EdgesRough && s.wood.Crook == 0
}

// usable is the rectangle from which the children of a node are cut: its own,
// less the losses where the node is trued.
func (s *sawn) usable(at *spot) layout.Rect {
	if !at.Trued {
		return at.Rect
	}
	lost := s.lossesOf(at)
	return layout.Rect{
		X1: at.X1 + lost.end, X2: at.X2 - lost.end,
		Y1: max(at.Y1, at.shift) + lost.near, Y2: at.Y2 - lost.far,
	}
}
