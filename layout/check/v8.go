package check

import (
	"slices"

	"sawbill/layout"
)

// v8: a part meets its grade with the face to show that it names. Where it names
// none that is face A, the better face, which lies up: only where face A would
// not do must it name the other.
func v8(s *sawn, wrong report) {
	for _, at := range s.spots {
		if at.part == nil {
			continue
		}
		grade, ok := s.job.shop.Grades[at.part.Grade]
		if !ok {
			wrong(at, "the shop knows no grade %q", at.part.Grade)
			continue
		}
		v8Faces(at, v8Spoils(s, at, grade, layout.FaceA), v8Spoils(s, at, grade, layout.FaceB), wrong)
	}
}

// v8Faces judges a part by what spoils face A as its show face, and what spoils
// face B.
func v8Faces(at *spot, spoilsA, spoilsB *layout.Defect, wrong report) {
	grade := at.part.Grade
	tell := func(d *layout.Defect, format string, face layout.Face) {
		wrong(at, format+": %s at %v", grade, face, d.Kind, d.Rect)
	}
	switch {
	case spoilsA != nil && spoilsB != nil:
		tell(spoilsA, "it is not %s, with face %v to show or the other", layout.FaceA)
	case at.Show == layout.FaceB && spoilsB != nil:
		tell(spoilsB, "it is not %s with face %v to show, only with the other", layout.FaceB)
	case at.Show == layout.FaceA && spoilsA != nil:
		tell(spoilsA, "it is not %s with face %v to show, only with the other", layout.FaceA)
	case at.Show == layout.Through && spoilsA != nil:
		tell(spoilsA, "show is missing: it is not %s with face %v to show, only with the other", layout.FaceA)
	}
}

// v8Spoils finds a defect that keeps a part from its grade when face show is
// its show face, or nil.
func v8Spoils(s *sawn, at *spot, grade layout.Grade, show layout.Face) *layout.Defect {
	wood := at.Rect
	wood.Y2 += at.Lean
	for i := range s.wood.Defects {
		d := &s.wood.Defects[i]
		if !interiorsMeet(s.reach(d, at), wood) {
			continue
		}
		front, back := d.Face == show, d.Face != show
		if d.Face == layout.Through {
			front, back = true, true
		}
		if front && !slices.Contains(grade.Show, d.Kind) || back && !slices.Contains(grade.Back, d.Kind) {
			return d
		}
	}
	return nil
}

// reach is the rectangle of a defect, grown by its clearance and by the shift
// of the blank in which a node lies.
func (s *sawn) reach(d *layout.Defect, at *spot) layout.Rect {
	c := s.job.shop.Clearance[d.Kind]
	return layout.Rect{
		X1: d.Rect.X1 - c.Along, X2: d.Rect.X2 + c.Along,
		Y1: d.Rect.Y1 - c.Across, Y2: d.Rect.Y2 + c.Across + at.shift - at.slack,
	}
}

// interiorsMeet reports whether two rectangles share more than an edge.
func interiorsMeet(a, b layout.Rect) bool {
	return max(a.X1, b.X1) < min(a.X2, b.X2) && max(a.Y1, b.Y1) < min(a.Y2, b.Y2)
}
