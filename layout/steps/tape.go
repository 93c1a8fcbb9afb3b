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
	if op == Crosscut || op == Plane || op == Resaw {
		return t.Length
	}
	return max(t.Butt, t.Tip)
}

// measure fills in what a tape reads on the piece in hand and on what the step
// makes of it.
func (w *worker) measure(s *Step, p piece) {
	lying, whole := w.lying(p), w.sectionLying(p)
	s.Whole, s.WholeSection = w.tape(lying.Along(), whole), whole
	switch {
	case s.Operation == True: // measured when it was trued
		return
	case s.NoCut || s.Kerf.Empty():
		s.OffTape, s.OffSection = s.Whole, whole
		if s.Operation == Resaw && !s.NoCut {
			s.RestTape, s.RestSection = s.Whole, whole
		}
	case s.Operation == Crosscut:
		butt, tip := layout.Span{Lo: lying.X1, Hi: s.Kerf.X1}, layout.Span{Lo: s.Kerf.X2, Hi: lying.X2}
		if s.From == Tip {
			butt, tip = tip, butt
		}
		s.OffTape, s.RestTape = w.tape(butt, whole), w.tape(tip, whole)
		s.OffSection, s.RestSection = whole, whole
	default:
		near, beyond := whole.sawn(s.Kerf.Across(), s.Lean)
		if s.From == Far {
			near, beyond = beyond, near
		}
		s.OffTape, s.RestTape = w.tape(lying.Along(), near), w.tape(lying.Along(), beyond)
		s.OffSection, s.RestSection = near, beyond
	}
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

func (w *worker) sectionLying(p piece) Section {
	return sectionOf(w.lying(p).Across(), p.near, p.far)
}

// tape measures a piece cut to the outline of the board, on its wider face; it is
// zero where no wood is left.
func (w *worker) tape(along layout.Span, across Section) Tape {
	t := Tape{
		Length: along.Len(),
		Butt:   across.under(w.board.Far(along.Lo)).width(),
		Tip:    across.under(w.board.Far(along.Hi)).width(),
	}
	if t.Length <= 0 || t.Butt == 0 && t.Tip == 0 {
		return Tape{}
	}
	return t
}
