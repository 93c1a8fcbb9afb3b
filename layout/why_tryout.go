package layout

import "slices"

// tryout seeks a place for a piece and its blank in a room, for one length of the
// blank. Both can be pushed along the board and across it until something stops
// them, so it looks only where the piece, its blank or a kerf beside that touches a
// trim, an edge, a defect or metal.
type tryout struct {
	*room
	piece      lie
	cut        roughRip
	length     Length // of the blank
	end        Length // from an end of the blank to the piece, at least
	shift      Length
	bad, metal []Rect // as the blank meets them
}

func (r *room) newTryout(l lie, cut roughRip, bad []Rect, length Length) *tryout {
	t := &tryout{room: r, piece: l, cut: cut, end: r.endLoss(), length: length, shift: r.board.Shift(length)}
	t.bad, t.metal = shifted(bad, t.shift), shifted(r.metal, t.shift)
	return t
}

// couldHold reports whether there is a place for a piece whose blank is ripped so.
// The blank is as short as it may be, or reaches just far enough that no crosscut
// meets metal from which a rough rip parts it.
func (r *room) couldHold(l lie, cut roughRip, bad []Rect) bool {
	least, most := r.blankLengths(l, cut)
	if least > most {
		return false
	}
	shortest := r.newTryout(l, cut, bad, least)
	return shortest.succeeds() || slices.ContainsFunc(shortest.pastMetal(most), func(longer Span) bool {
		return r.newTryout(l, cut, bad, longer.Len()).succeedsFrom(longer.Lo)
	})
}

// shifted are marked rectangles as they may lie in a crooked blank.
func shifted(rects []Rect, s Length) []Rect {
	if s == 0 {
		return rects
	}
	var moved []Rect
	for _, r := range rects {
		r.Y2 += s
		moved = append(moved, r)
	}
	return moved
}

// pastMetal lists longer blanks, of no more than most, whose ends are moved past the
// metal that the crosscuts of this one meet.
func (t *tryout) pastMetal(most Length) []Span {
	if len(t.metal) == 0 || !t.cut.near && !t.cut.far {
		return nil
	}
	var list []Span
	for _, start := range t.starts() {
		longer := Span{t.freeStart(start), t.freeEnd(start + t.length)}
		if t.length < longer.Len() && longer.Len() <= most && !slices.Contains(list, longer) {
			list = append(list, longer)
		}
	}
	return list
}

// freeEnd is where a crosscut after a blank that reaches x at least meets no metal,
// or the end of the room.
func (t *tryout) freeEnd(x Length) Length {
	for moved := true; moved; {
		moved = false
		for _, m := range t.metal {
			if x < m.X2 && m.X1 < x+t.shop.CrosscutKerf {
				x, moved = m.X2, true
			}
		}
	}
	return min(x, t.within.Hi)
}

// freeStart is where a crosscut before a blank that begins at x at the latest meets
// no metal, or the start of the room.
func (t *tryout) freeStart(x Length) Length {
	for moved := true; moved; {
		moved = false
		for _, m := range t.metal {
			if m.X1 < x && x-t.shop.CrosscutKerf < m.X2 {
				x, moved = m.X1, true
			}
		}
	}
	return max(x, t.within.Lo)
}

func (t *tryout) succeeds() bool { return slices.ContainsFunc(t.starts(), t.succeedsFrom) }

// succeedsFrom reports whether there is a place in the blank that starts there.
func (t *tryout) succeedsFrom(start Length) bool {
	for _, x := range t.alongs(start) {
		for _, y := range t.acrosses(x) {
			if t.fits(start, x, y) {
				return true
			}
		}
	}
	return false
}

// starts are the places of the blank's end at the butt.
func (t *tryout) starts() []Length {
	kerf, slack := t.shop.CrosscutKerf, t.length-t.piece.length-2*t.end
	list := append(make([]Length, 0, 2+2*len(t.bad)+6*len(t.metal)), t.within.Lo, t.within.Hi-t.length)
	for _, o := range t.bad {
		list = append(list, o.X2-t.end-slack, o.X1-t.piece.length-t.end)
	}
	for _, m := range t.metal {
		list = append(list, m.X1-t.length-kerf, m.X1-t.length, m.X2-t.length, m.X1, m.X2, m.X2+kerf)
	}
	return between(list, t.within.Lo, t.within.Hi-t.length)
}

// alongs are the places of the piece along its blank.
func (t *tryout) alongs(start Length) []Length {
	lo, hi := start+t.end, start+t.length-t.end-t.piece.length
	if lo == hi {
		return []Length{lo}
	}
	list := []Length{lo, hi}
	for _, o := range t.bad {
		list = append(list, o.X2, o.X1-t.piece.length)
	}
	return between(list, lo, hi)
}

// acrosses are the places of the piece across the board.
func (t *tryout) acrosses(x Length) []Length {
	wide, beside := t.piece.wide(), t.piece.side+t.shop.EdgeJoint+t.shop.RoughRipKerf
	lo, hi := t.reach(x)
	list := append(make([]Length, 0, 2+2*len(t.bad)+2*len(t.metal)), lo, hi)
	for _, o := range t.bad {
		list = append(list, o.Y2, o.Y1-wide)
	}
	for _, m := range t.metal {
		list = append(list, m.Y2+beside, m.Y1-beside-wide)
	}
	return between(list, lo, hi)
}

// reach is the least and the largest y at which the piece may begin, as far as
// the edges are concerned.
func (t *tryout) reach(x Length) (lo, hi Length) {
	lost := t.shop.LossesOf(t.board, t.board.Frame())
	if t.cut.near {
		lost.Near = t.shop.EdgeJoint
	}
	if t.cut.far {
		lost.Far = t.shop.EdgeJoint
	}
	far := min(t.board.FullWidth()-t.piece.side, t.board.FarMin(Span{x, x + t.piece.length}))
	return t.shift + lost.Near + t.piece.side, far - lost.Far - t.piece.wide()
}

// between keeps the lengths from lo to hi.
func between(list []Length, lo, hi Length) []Length {
	return slices.DeleteFunc(list, func(l Length) bool { return l < lo || hi < l })
}
