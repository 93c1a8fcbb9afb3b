package steps

import "sawbill/layout"

// locate fills in where in the board's frame the pieces lie that a step makes.
func (w *worker) locate(s *Step) {
	s.OffWood = s.Wood
	switch {
	case s.Operation == True:
		s.OffWood = w.sheet.Blanks[len(w.sheet.Blanks)-1].Usable
	case s.Operation == Resaw && !s.NoCut:
		s.RestWood = s.Wood
	case s.NoCut || s.Kerf.Empty():
	case s.Operation == Crosscut:
		s.OffWood, s.RestWood = parted(s.Wood, s.Kerf, layout.Crosscut)
		if s.From == Tip {
			s.OffWood, s.RestWood = s.RestWood, s.OffWood
		}
	default:
		s.OffWood, s.RestWood = parted(s.Wood, s.Kerf, layout.Rip)
		if s.From == Far {
			s.OffWood, s.RestWood = s.RestWood, s.OffWood
		}
	}
}

// parted are the two pieces that a kerf leaves of a piece: the one at the butt or
// at the reference edge first.
func parted(wood, kerf layout.Rect, c layout.Cut) (near, beyond layout.Rect) {
	s, k := span(wood, c), span(kerf, c)
	near = withSpan(wood, c, layout.Span{Lo: s.Lo, Hi: min(s.Hi, max(s.Lo, k.Lo))})
	beyond = withSpan(wood, c, layout.Span{Lo: max(s.Lo, min(s.Hi, k.Hi)), Hi: s.Hi})
	return near, beyond
}
