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
	for _, k := range s.kerfs(at, at.parent.Rect) {
		if interiorsMeet(metal, k) {
			wrong(at, "the metal at %v, with its clearance, lies in the kerf at %v", d.Rect, k)
		}
	}
}

// kerfs are the kerfs on the two sides of a node that has a parent, as far as
// they lie within bounds; what is left of one may be empty.
func (s *sawn) kerfs(at *spot, within layout.Rect) [2]layout.Rect {
	kerf := s.kerf(at)
	sides := [2]layout.Rect{at.Rect, at.Rect}
	if at.parent.Cut == layout.Crosscut {
		sides[0].X1, sides[0].X2 = max(at.X1-kerf, within.X1), at.X1
		sides[1].X1, sides[1].X2 = at.X2, min(at.X2+kerf, within.X2)
	} else {
		sides[0].Y1, sides[0].Y2 = max(at.Y1-kerf, within.Y1), at.Y1
		sides[1].Y1, sides[1].Y2 = at.Y2, min(at.Y2+kerf, within.Y2)
	}
	return sides
}
