package check

import "sawbill/layout"

// v14: no blade and no knife meets metal: neither a trued node nor a kerf
// overlaps it, grown by its clearance.
func v14(s *sawn, wrong report) {
	for i := range s.wood.Defects {
		d := &s.wood.Defects[i]
		if d.Kind != layout.Metal {
			continue
		}
		for _, at := range s.spots {
			v14At(s, at, d, wrong)
		}
	}
}

func v14At(s *sawn, at *spot, d *layout.Defect, wrong report) {
	metal := s.reach(d, at)
	if at.Trued && interiorsMeet(metal, at.Rect) {
		wrong(at, "the metal at %v, with its clearance, lies in a blank that goes over the knives", d.Rect)
	}
	if at.parent == nil {
		return
	}
	for side, k := range s.kerfs(at, at.parent.Rect) {
		if cutOff(at)[side] && bladeMeets(metal, k) {
			wrong(at, "the metal at %v, with its clearance, lies in the kerf at %v", d.Rect, k)
		}
	}
}

// cutOff says for the two sides of a node whether a cut parts it from what lies
// there: none does along an edge of its parent.
func cutOff(at *spot) [2]bool {
	up := at.parent
	if up.Cut == layout.Crosscut {
		return [2]bool{at.X1 > up.X1, at.X2 < up.X2}
	}
	return [2]bool{at.Y1 > up.Y1, at.Y2 < up.Y2}
}

// bladeMeets reports whether a blade that takes a kerf meets metal. Where kerfs
// take nothing, in a shop that reckons without them, a blade still passes: a line
// through the inside of metal is refused.
func bladeMeets(metal, kerf layout.Rect) bool {
	return metal.X1 < kerf.X2 && kerf.X1 < metal.X2 && metal.Y1 < kerf.Y2 && kerf.Y1 < metal.Y2
}

// kerfs are the kerfs on the two sides of a node that has a parent, as far as
// they lie within bounds; what is left of one may be empty.
func (s *sawn) kerfs(at *spot, within layout.Rect) [2]layout.Rect {
	before, after, kerf := at.Rect, at.Rect, s.kerf(at)
	if at.parent.Cut == layout.Crosscut {
		before.X1, before.X2 = at.X1-kerf, at.X1
		after.X1, after.X2 = at.X2, at.X2+kerf
	} else {
		before.Y1, before.Y2 = at.Y1-kerf, at.Y1
		after.Y1, after.Y2 = at.Y2, at.Y2+kerf
	}
	return [2]layout.Rect{common(before, within), common(after, within)}
}

// common is what two rectangles share; it may be empty.
func common(a, b layout.Rect) layout.Rect {
	return layout.Rect{X1: max(a.X1, b.X1), X2: min(a.X2, b.X2), Y1: max(a.Y1, b.Y1), Y2: min(a.Y2, b.Y2)}
}
