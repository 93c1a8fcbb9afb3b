package layout

// Finish is what a board can finish to in blanks of one length.
type Finish struct {
	Length           Length // of the blank
	Thickness, Width Length // not above 0 where truing leaves nothing
	// TooWide says that the blank must be rough-ripped before it goes over the
	// machines. Then it loses less to cup and twist than Thickness says.
	TooWide bool
}

// FullFinish is what b finishes to in one blank as long as its end trims and the
// machines allow, across its whole width.
func (s *Shop) FullFinish(b *Board) Finish {
	l := b.Length - 2*s.EndTrim
	if s.MaxBlank > 0 {
		l = min(l, s.MaxBlank)
	}
	return s.finish(b, l)
}

// ShortFinish is what b finishes to in blanks of 24 in, or of 600 mm in a shop that
// works in millimetres; of a shorter board it is the FullFinish.
func (s *Shop) ShortFinish(b *Board) Finish {
	l := 24 * Inch
	if s.Units == Millimetres {
		l = 600 * Millimetre
	}
	full := s.FullFinish(b)
	if full.Length <= l {
		return full
	}
	return s.finish(b, l)
}

// finish takes the blank at the wider end of the board.
func (s *Shop) finish(b *Board, l Length) Finish {
	l = max(0, min(l, b.Length))
	x := min(s.EndTrim, b.Length-l)
	if b.TipWidth > b.Width {
		x = max(0, b.Length-s.EndTrim-l)
	}
	blank := Rect{x, x + l, 0, b.FullWidth()}
	usable, lost := s.Usable(b, blank), s.LossesOf(b, blank)
	most := s.MachineWidth()
	return Finish{
		Length: l, Thickness: s.AvailableIn(b, blank),
		Width:   min(usable.Y2, b.FarMin(blank.Along())-lost.Far) - usable.Y1,
		TooWide: most > 0 && b.WoodWidth(blank) > most,
	}
}
