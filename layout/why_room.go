package layout

import "slices"

// room is one board in which a place for a piece is sought, with nothing else cut
// from it.
type room struct {
	shop   *Shop
	board  *Board
	within Span     // where its blank may lie
	spoils [][]Rect // by the face to show: the defects that the grade does not carry, grown by their clearance
	metal  []Rect   // grown by its clearance
}

func newRoom(s *Shop, b *Board, g Grade) *room {
	r := &room{shop: s, board: b, within: Span{s.EndTrim, b.Length - s.EndTrim}}
	for _, d := range b.Defects {
		if d.Kind == Metal {
			r.metal = append(r.metal, s.grown(d))
		}
	}
	a, other := s.spoiling(b, g, FaceA), s.spoiling(b, g, FaceB)
	r.spoils = [][]Rect{a}
	if !slices.Equal(a, other) {
		r.spoils = append(r.spoils, other)
	}
	return r
}

// grown is the rectangle of a defect with its clearance.
func (s *Shop) grown(d Defect) Rect {
	c := s.Clearance[d.Kind]
	return d.Rect.Grow(c.Along, c.Across)
}

// spoiling lists the defects of a board that a piece of a grade may not meet when
// it shows a face, grown by their clearance.
func (s *Shop) spoiling(b *Board, g Grade, show Face) []Rect {
	back := FaceA + FaceB - show
	var list []Rect
	for _, d := range b.Defects {
		if d.On(show) && !slices.Contains(g.Show, d.Kind) || d.On(back) && !slices.Contains(g.Back, d.Kind) {
			list = append(list, s.grown(d))
		}
	}
	return list
}

// holds reports whether the board could give a piece that lies so. Whoever says
// yes has found a place for it and its blank; see couldHold and tryout for where it
// looks.
func (r *room) holds(l lie) bool {
	for _, cut := range r.roughRips(l) {
		for _, bad := range r.spoils {
			if r.couldHold(l, cut, bad) {
				return true
			}
		}
	}
	return false
}

// roughRip says at which edges a blank is ripped before it is trued.
type roughRip struct{ near, far bool }

// roughRips lists the ways that can help a piece in: a narrower blank only helps
// where metal lies beside it, or where the machines do not take the whole width or
// would leave too little of its thickness.
func (r *room) roughRips(l lie) []roughRip {
	length, _ := r.blankLengths(l, roughRip{})
	whole := r.board.Frame() // at the wider end
	if r.board.TipWidth > r.board.Width {
		whole.X1 = max(0, whole.X2-length)
	} else {
		whole.X2 = min(whole.X2, length)
	}
	if len(r.metal) == 0 && r.machinesTake(whole, l) {
		return []roughRip{{}}
	}
	return []roughRip{{}, {far: true}, {near: true}, {near: true, far: true}}
}

// machinesTake reports whether a blank is narrow enough for the machines, and thick
// enough for a piece when they have trued it.
func (r *room) machinesTake(blank Rect, l lie) bool {
	most := r.shop.MachineWidth()
	return (most == 0 || r.board.WoodWidth(blank) <= most) && r.shop.AvailableIn(r.board, blank) >= l.thick
}

// blankLengths are those of the shortest and the longest blank that gives a piece;
// there is none where least is above most.
func (r *room) blankLengths(l lie, cut roughRip) (least, most Length) {
	s, b := r.shop, r.board
	least, most = l.length+2*r.endLoss(), r.within.Len()
	machined := b.Faces == FacesRough || b.Edges != EdgesBoth || !b.Straight() || cut.near || cut.far || l.thick < b.Thickness
	if machined {
		least = max(least, s.MinBlank)
		if s.MaxBlank > 0 {
			most = min(most, s.MaxBlank)
		}
	}
	if least > l.length || !r.fills(l, cut) {
		least = max(least, s.MinRipLength)
	}
	return least, most
}

// fills reports whether a piece may be as wide as its blank, so that this need not be
// ripped.
func (r *room) fills(l lie, cut roughRip) bool {
	lost := r.shop.LossesOf(r.board, r.board.Frame())
	return !cut.near && !cut.far && lost.Near+lost.Far+l.lean == 0 && r.board.Crook == 0 &&
		l.across == r.board.Width && l.across == r.board.TipWidth
}

// endLoss is how far a piece stays from the ends of its blank.
func (r *room) endLoss() Length {
	return max(r.shop.LossesOf(r.board, r.board.Frame()).End, r.shop.Snipe)
}
