package ceiling

import "sawbill/layout"

// grid knows positions along one direction as floor(x/unit). Where whatever a place
// may be measured from is a multiple of the unit, some best cutting has all places
// on the grid (Herz 1972): then it is exact, and a position stands for one place,
// otherwise for all up to the next. Under a slanting edge the best offcut is not on any
// grid, but towards its narrow end less than a unit longer than one that is, so parts may be
// held to the grid where offcuts are taken for that much longer there.
type grid struct {
	unit  layout.Length
	n     int // of the end of the board
	exact bool
	slack layout.Length // how far the places of a position reach where it is an offcut that lies there: 0 or unit
}

// The most positions of a board. Where the far edge slants, or bevels or a crook take what
// is no multiple of anything, more across take several times as long for hardly a sharper
// bound, unless the grid is exact: such a one is worth more positions than another.
const (
	mostAlong          = 2000
	mostAlongExact     = 4000
	mostAcross         = 500
	mostAcrossSlanting = 256
	mostAcrossUneven   = 128
)

// mostAcross is the most positions of the board across.
func (w *Board) mostAcross(ways []way) int {
	switch {
	case w.uneven(ways):
		return mostAcrossUneven
	case w.slants():
		return mostAcrossSlanting
	}
	return mostAcross
}

// mostExact is the most positions of an exact grid along: under a slanting edge each takes
// several times as long.
func (w *Board) mostExact() int {
	if w.slants() {
		return mostAlong
	}
	return mostAlongExact
}

// newGrid chooses the unit: a mark of the shop's rule, as large as divides all
// sizes and no larger than least, and larger where the board would have more than
// most positions. Anchors are what else a place may be measured from; nil where that
// cannot be listed. The unit divides them as well where that makes no more than mostExact
// positions.
func newGrid(size layout.Length, u layout.Unit, most, mostExact int, least layout.Length, sizes, anchors []layout.Length) grid {
	unit := u.Mark()
	for divides(2*unit, sizes) && unit < size && 2*unit <= least {
		unit *= 2
	}
	if anchors != nil {
		fine := unit
		for fine > u.Mark() && !divides(fine, anchors) {
			fine /= 2
		}
		if divides(fine, sizes) && divides(fine, anchors) && size/fine <= layout.Length(mostExact) {
			return grid{unit: fine, n: int(size / fine), exact: true}
		}
	}
	for size/unit > layout.Length(most) {
		unit *= 2
	}
	return grid{unit: unit, n: int(size / unit), slack: unit}
}

func divides(unit layout.Length, sizes []layout.Length) bool {
	for _, s := range sizes {
		if s%unit != 0 {
			return false
		}
	}
	return true
}

// places is the last position behind a piece of the board.
func (w *Board) places() int { return w.x.down(w.wood.Length+w.shop.CrosscutKerf) + 1 }

// at is the least place that position i stands for.
func (g grid) at(i int) layout.Length { return layout.Length(i) * g.unit }

// upTo is where the places that position i stands for end.
func (g grid) upTo(i int) layout.Length { return g.at(i) + g.slack }

// from is the first position of a piece that starts at x or later.
func (g grid) from(x layout.Length) int {
	if g.exact {
		x += g.unit - 1
	}
	return g.down(x)
}

// down is the position of a place, or how many positions a size takes at least;
// below 0 it is -1.
func (g grid) down(x layout.Length) int {
	if x < 0 {
		return -1
	}
	return int(x / g.unit)
}
