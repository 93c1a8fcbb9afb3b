package render

import (
	"sawbill/layout"
	"sawbill/layout/steps"
)

// going are the defects that are dangerous at the machines and lie wholly in
// the wood that truing takes off a blank.
func (v *blankView) going() []layout.Defect {
	var list []layout.Defect
	for _, defect := range v.board.Defects {
		r := defect.Rect.Intersect(v.blank.Node.Rect)
		dangerous := steps.Flies(defect.Kind) || defect.Kind == layout.Metal
		if dangerous && !r.Empty() && r.Intersect(v.blank.Usable).Empty() && v.nearWindow(r) {
			defect.Rect = r
			list = append(list, defect)
		}
	}
	return list
}

// nearWindow reports whether something beside the blank belongs to this part of
// its drawing.
func (v *blankView) nearWindow(r layout.Rect) bool {
	x := max(v.blank.Usable.X1, min(v.blank.Usable.X2, (r.X1+r.X2)/2))
	return v.wood.X1 <= x && (x < v.wood.X2 || v.wood.X2 == v.blank.Usable.X2)
}

// goingBox is where such a defect is drawn: along the side on which it lies, in
// a narrow margin around the blank.
func (v *blankView) goingBox(r layout.Rect) Box {
	const far, near = 2.6, 0.4
	at, b := v.f.at, v.f.box(r)
	outer := Box{at.X1 - far, at.Y1 - far, at.X2 + far, at.Y2 + far}
	clamp := func(x, lo, hi float64) float64 { return max(lo, min(hi, x)) }
	b = Box{clamp(b.X1, outer.X1, outer.X2), clamp(b.Y1, outer.Y1, outer.Y2), clamp(b.X2, outer.X1, outer.X2), clamp(b.Y2, outer.Y1, outer.Y2)}
	u := v.blank.Usable
	switch {
	case r.X2 <= u.X1:
		b.X1, b.X2 = outer.X1, at.X1-near
	case r.X1 >= u.X2:
		b.X1, b.X2 = at.X2+near, outer.X2
	case r.Y2 <= u.Y1:
		b.Y1, b.Y2 = at.Y2+near, outer.Y2
	default:
		b.Y1, b.Y2 = outer.Y1, at.Y1-near
	}
	return b
}

func (v *blankView) goingDefects() {
	for _, defect := range v.going() {
		v.defect(v.goingBox(defect.Rect), defect.Kind)
	}
}

// goingTags name them below the drawing.
func (v *blankView) goingTags() []tag {
	var tags []tag
	for _, defect := range v.going() {
		g := tagOf(v.goingBox(defect.Rect), v.f)
		g.text = defectWord(defect) + ", in the wood that truing takes"
		tags = append(tags, g)
	}
	return tags
}
