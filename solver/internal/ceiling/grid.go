package ceiling

import "sawbill/layout"

// grid knows positions along one direction as floor(x/unit).
type grid struct {
	unit layout.Length
	n    int // of the end of the board
}

// The most positions of a board; more only slow the bound down.
const (
	mostAlong  = 2000
	mostAcross = 500
)

// newGrid chooses the unit: a mark of the shop's rule, as large as divides all
// sizes and no larger than least, and larger where the board would have more than
// most positions.
func newGrid(size layout.Length, u layout.Unit, most int, least layout.Length, sizes []layout.Length) grid {
	unit := finestMark(u)
	for divides(2*unit, sizes) && unit < size && 2*unit <= least {
		unit *= 2
	}
	for size/unit > layout.Length(most) {
		unit *= 2
	}
	return grid{unit, int(size / unit)}
}

// finestMark is the smallest mark of the shop's rule.
func finestMark(u layout.Unit) layout.Length {
	if u == layout.Millimetres {
		return layout.Millimetre / 2
	}
	return layout.Inch / 64
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

// down is the position of a place, or how many positions a size takes at least;
// below 0 it is -1.
func (g grid) down(x layout.Length) int {
	if x < 0 {
		return -1
	}
	return int(x / g.unit)
}
