package layout

import "slices"

// fits judges one place of the blank and of the piece in it by the rules for a
// valid plan.
func (t *tryout) fits(start, x, y Length) bool {
	blank := t.blank(start, y)
	if t.cut.near != (blank.Y1 > 0) || t.cut.far != (blank.Y2 < t.board.FullWidth()) {
		return false
	}
	piece := Rect{x, x + t.piece.length, y, y + t.piece.wide()}
	usable := t.shop.Usable(t.board, blank).Grow(0, -t.piece.side)
	far := t.board.FarMin(piece.Along()) - t.shop.LossesOf(t.board, blank).Far
	return usable.Contains(piece) && piece.Y2 <= far && !meets(t.bad, piece) &&
		(len(t.metal) == 0 || !t.hitsMetal(blank)) && t.machinesTake(blank, t.piece)
}

// blank is the rectangle that is trued: as wide as the board, or where it is ripped
// rough as narrow as the piece lets it be.
func (t *tryout) blank(start, y Length) Rect {
	blank := Rect{start, start + t.length, 0, t.board.FullWidth()}
	beside := t.piece.side + t.shop.EdgeJoint
	if t.cut.near {
		blank.Y1 = y - beside
	}
	if t.cut.far {
		blank.Y2 = y + t.piece.wide() + beside
	}
	return blank
}

// hitsMetal reports whether the knives, or a blade beside the blank, meet metal.
func (t *tryout) hitsMetal(blank Rect) bool {
	frame := t.board.Frame()
	column := Rect{blank.X1, blank.X2, frame.Y1, frame.Y2}
	if meets(t.metal, blank) || t.bladeMeetsMetal(column, frame, Crosscut, t.shop.CrosscutKerf) {
		return true
	}
	return t.bladeMeetsMetal(blank, column, Rip, t.shop.RoughRipKerf)
}

// bladeMeetsMetal looks at the kerfs on both sides of a piece, where a cut parts it
// from its parent. A kerf that takes nothing is still a line that a blade runs along.
func (t *tryout) bladeMeetsMetal(piece, parent Rect, c Cut, kerf Length) bool {
	beside := kerfsBeside(piece, parent, c, kerf)
	before, after := piece.X1 > parent.X1, piece.X2 < parent.X2
	if c == Rip {
		before, after = piece.Y1 > parent.Y1, piece.Y2 < parent.Y2
	}
	return before && meets(t.metal, beside[0]) || after && meets(t.metal, beside[1])
}

// meets reports whether a rectangle meets the interior of any of a list.
func meets(list []Rect, r Rect) bool {
	return slices.ContainsFunc(list, r.Overlaps)
}
