package bound

import "sawbill/layout"

// tapers reports whether the far edge slants.
func (w *wood) tapers() bool { return w.board.Width != w.board.TipWidth }

// reach is the far edge at x, held within the board, with the micrometre that
// a rounded edge may be missed by.
func (w *wood) reach(x layout.Length) layout.Length {
	far := w.board.Far(min(max(x, 0), w.board.Length))
	if w.tapers() {
		far += layout.Micrometre
	}
	return far
}

// narrow is the most that the narrower end of a piece can measure which is at
// least length long and begins in one of the positions from.
func (w *wood) narrow(from span, length layout.Length) layout.Length {
	if w.board.TipWidth > w.board.Width {
		return w.reach(w.x.last(from.hi))
	}
	return w.reach(w.x.at(from.lo) + length)
}
