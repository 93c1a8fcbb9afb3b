package check

import "sawbill/layout"

// v2: children lie inside what is usable of their parent, span it the other
// way, and leave a kerf between one another.
func v2(s *sawn, wrong report) {
	for _, at := range s.spots {
		in := s.usable(at)
		for i, kid := range at.kids {
			v2Inside(at, kid, in, wrong)
			v2Spans(at, kid, in, wrong)
			if i > 0 {
				v2Apart(s, at.kids[i-1], kid, wrong)
			}
		}
	}
}

func v2Inside(at, kid *spot, in layout.Rect, wrong report) {
	slack := layout.Length(0)
	if at.Trued {
		slack = at.slack // the shift of a crooked blank was rounded
	}
	if kid.X1 < in.X1 || kid.X2 > in.X2 || kid.Y1 < in.Y1-slack || kid.Y2 > in.Y2 {
		wrong(kid, "it lies at %v, outside what is usable of its parent: %v", kid.Rect, in)
	}
}

func v2Spans(at, kid *spot, in layout.Rect, wrong report) {
	switch {
	case at.Cut == layout.Crosscut && (kid.Y1 != in.Y1 || kid.Y2 != in.Y2):
		wrong(kid, "a crosscut goes right across: it must run from y %v to %v, not from %v to %v",
			in.Y1, in.Y2, kid.Y1, kid.Y2)
	case at.Cut == layout.Rip && (kid.X1 != in.X1 || kid.X2 != in.X2):
		wrong(kid, "a rip goes right through: it must run from x %v to %v, not from %v to %v",
			in.X1, in.X2, kid.X1, kid.X2)
	}
}

func v2Apart(s *sawn, before, kid *spot, wrong report) {
	gap := kid.X1 - before.X2
	if kid.parent.Cut == layout.Rip {
		gap = kid.Y1 - before.Y2
	}
	kerf := s.kerf(kid)
	switch {
	case gap < 0:
		wrong(kid, "it overlaps its neighbour or is out of order: it starts %v before that one ends", -gap)
	case gap < kerf:
		wrong(kid, "it is %v from its neighbour; the kerf of the %v takes %v", gap, kid.parent.Cut, kerf)
	}
}
