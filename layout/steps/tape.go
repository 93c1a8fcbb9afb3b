package steps

import "sawbill/layout"

// Tape is what a tape reads on a piece as it lies there, rough far edge and
// unsquared tip end and all. It is more than the Size of a piece of which only
// the straight part is counted on.
type Tape struct {
	Length    layout.Length
	Butt, Tip layout.Length // widths at its two ends
}

// Shaving is the size below which what falls off is no piece but a shaving.
const Shaving = layout.Millimetre / 2

// Across is the size that a cut gave a piece: its length after a crosscut, its
// width, where it is widest, after a rip.
func (t Tape) Across(op Operation) layout.Length {
	if op == Crosscut || op == Plane {
		return t.Length
	}
	return max(t.Butt, t.Tip)
}

// measure fills in what a tape reads on the piece in hand and on what the step
// makes of it.
func (w *worker) measure(s *Step, p piece) {
	whole := w.lying(p)
	s.Whole = w.tape(whole)
	off, rest := whole, whole
	switch {
	case s.Operation == True: // measured when it was trued
		return
	case s.NoCut || s.Kerf.Empty():
		s.OffTape = s.Whole
		return
	case s.Operation == Crosscut && s.From == Butt:
		off.X2, rest.X1 = s.Kerf.X1, s.Kerf.X2
	case s.Operation == Crosscut:
		off.X1, rest.X2 = s.Kerf.X2, s.Kerf.X1
	case s.From == Reference:
		off.Y2, rest.Y1 = s.Kerf.Y1, s.Kerf.Y2
	default:
		off.Y1, rest.Y2 = s.Kerf.Y2, s.Kerf.Y1
	}
	s.OffTape, s.RestTape = w.tape(off), w.tape(rest)
}

// lying is where a piece lies with what is still rough on it.
func (w *worker) lying(p piece) layout.Rect {
	r := p.rect
	if p.openTip {
		r.X2 += w.wood.tip
	}
	if p.rawFar {
		r.Y2 += w.wood.loss
	}
	return r
}

// tape measures a rectangle cut to the outline of the board; it is zero where
// no wood is left.
func (w *worker) tape(r layout.Rect) Tape {
	t := Tape{
		Length: r.Length(),
		Butt:   max(0, min(r.Y2, w.board.Far(r.X1))-r.Y1),
		Tip:    max(0, min(r.Y2, w.board.Far(r.X2))-r.Y1),
	}
	if t.Length <= 0 || t.Butt == 0 && t.Tip == 0 {
		return Tape{}
	}
	return t
}
