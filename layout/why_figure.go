package layout

// figureStep is how finely a shop is told what a board gives: 1/64 in or 1/10 mm.
// Figures are rounded down to it.
func (s *Shop) figureStep() Length {
	if s.Units == Millimetres {
		return Millimetre / 10
	}
	return SixtyFourth
}

// largest is the largest multiple of step up to limit that will do, above a floor
// that is one itself; floor where none will. What does for a length does for every
// shorter one above the floor.
func largest(step, floor, limit Length, does func(Length) bool) Length {
	lo, hi := floor/step, limit/step+1 // lo is kept, hi will not do or is beyond the limit
	if lo+1 >= hi || !does((lo+1)*step) {
		return floor
	}
	for lo++; hi-lo > 1; {
		if mid := lo + (hi-lo)/2; does(mid * step) {
			lo = mid
		} else {
			hi = mid
		}
	}
	return lo * step
}

// most is the largest piece that any of the rooms holds, by the dimension that
// size sets, up to limit, and the first board that gives it; no board and 0 where
// none does.
func (q *query) most(rooms []*room, limit Length, sized func(Length) lie) (*Board, Length) {
	var board *Board
	var most Length
	for _, r := range rooms {
		more := largest(q.shop.figureStep(), most, limit, func(l Length) bool { return r.holds(sized(l)) })
		if more > most {
			board, most = r.board, more
		}
	}
	return board, most
}

// trues is the greatest thickness that a blank of the room finishes to, if it is
// as short and as narrow as a piece that lies so lets it be, and how long it then
// is. Defects are left out.
func (r *room) trues(l lie) (thickness, length Length) {
	b := r.board
	length, _ = r.blankLengths(l, roughRip{})
	length = max(0, min(length, r.within.Len()))
	lost := r.shop.LossesOf(b, b.Frame())
	near := min(r.shop.EdgeJoint, b.Shift(length)+lost.Near) // ripped, or as it is
	wide := max(0, min(near+l.wide()+2*l.side+lost.Far, b.Width, b.TipWidth))
	return r.shop.AvailableIn(b, Rect{0, length, 0, wide}), length
}
