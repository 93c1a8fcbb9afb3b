package render

import (
	"cmp"
	"slices"
	"strconv"

	"sawbill/layout"
	"sawbill/layout/steps"
)

func sortTags(tags []sideTag) {
	slices.SortStableFunc(tags, func(a, b sideTag) int { return cmp.Compare(b.at, a.at) })
}

// addTag adds a reading, or counts the step with the one that is there already.
func addTag(tags []sideTag, g sideTag) []sideTag {
	for i, t := range tags {
		if t.at == g.at && t.kerf == g.kerf {
			tags[i].more++
			return tags
		}
	}
	return append(tags, g)
}

const sidePitch = badgeHeight + 0.6

// sides draws the readings across the blank: of the strips on the left, of the
// last rips on the right.
func (v *blankView) sides(right float64) {
	v.side(v.across, v.f.at.X1, -1)
	v.side(v.last, right, 1)
}

func (v *blankView) side(tags []sideTag, x, way float64) {
	var places []float64
	for _, g := range tags {
		places = append(places, v.f.y(g.at))
	}
	half := badgeHeight / 2
	for i, y := range spread(places, sidePitch, v.f.at.Y1-1+half, v.f.at.Y2+1) {
		g := tags[i]
		v.line(Point{x, places[i]}, Point{x + way*2, places[i]}, thinLine)
		v.line(Point{x + way*2, places[i]}, Point{x + way*7, y}, hairline)
		up := -2.0 * float64(g.kerf)
		v.polygon([]Point{{x, places[i]}, {x, places[i] + up}, {x + way*2, places[i]}}, Black, NoInk, 0)
		text := furtherSteps(g.more) + g.text
		at := x + way*8
		if way < 0 {
			at -= v.types.width(text, plain()) + v.types.badgeWidth(g.number) + 1
		}
		v.badge(g.number, at, y-half)
		v.text(text, at+1+v.types.badgeWidth(g.number), y+textCap/2, plain())
	}
}

// numbers puts the step numbers of the other cuts on their kerfs, and those of
// planing and naming in their pieces.
func (v *blankView) numbers() {
	for _, s := range v.list {
		switch {
		case s.Operation == steps.True, s.Resawn != "", v.onSide(&s):
		case !s.Kerf.Empty() && v.shows(s.Kerf):
			v.onKerf(&s)
		}
	}
	for _, s := range v.list {
		if s.Resawn == "" && (s.NoCut || s.Operation == steps.Plane) && v.shows(s.Wood) {
			v.inPiece(&s)
		}
	}
}

// shows reports whether the middle of something lies in this drawing.
func (v *blankView) shows(r layout.Rect) bool {
	mid := (r.X1 + r.X2) / 2
	last := v.wood.X2 == v.blank.Usable.X2
	return v.wood.X1 <= mid && (mid < v.wood.X2 || last)
}

// onSide reports whether a step has its number beside the blank.
func (v *blankView) onSide(s *steps.Step) bool {
	u := v.blank.Usable
	return s.Rips() && !s.NoCut && s.Kerf.X1 <= u.X1 && s.Kerf.X2 >= u.X2
}

// onKerf puts a step number on its kerf where it is free: in the middle of a
// crosscut, near the butt of a rip.
func (v *blankView) onKerf(s *steps.Step) {
	line := v.f.box(s.Kerf.Intersect(v.wood.Grow(v.shop.CrosscutKerf, v.shop.RipKerf)))
	w := v.types.badgeWidth(s.Number)
	x, y := (line.X1+line.X2)/2, (line.Y1+line.Y2)/2
	name := badgeName(s.Number)
	if v.outside[name] {
		return
	}
	for _, bare := range []func(Box) bool{v.bareWood, v.bare} {
		for _, part := range v.along(s, w, line.w()) {
			if s.Operation == steps.Crosscut {
				y = line.Y1 + part*line.h()
			} else {
				x = line.X1 + part*line.w()
			}
			box := Box{x - w/2, y - badgeHeight/2, x + w/2, y + badgeHeight/2}
			if bare(box.grow(0.2)) && box.X2 < v.width() {
				v.badge(s.Number, box.X1, box.Y1)
				return
			}
		}
	}
	v.failed = append(v.failed, name)
}

// bareWood reports whether neither a label nor a defect stands in a box.
func (v *blankView) bareWood(box Box) bool {
	return v.bare(box) && !slices.ContainsFunc(v.hatched, box.Overlaps)
}

// along lists where on its kerf a step number may stand, best first: the middle
// of a crosscut, the butt end of a rip.
func (v *blankView) along(s *steps.Step, badge, length float64) []float64 {
	if s.Operation == steps.Crosscut {
		return []float64{0.5, 0.3, 0.7, 0.15, 0.85, 0.4, 0.6, 0.05, 0.95}
	}
	butt := (badge/2 + 1.2) / length
	return []float64{butt, 2 * butt, 3 * butt, 1 - butt, 1 - 2*butt, 0.3, 0.7, 0.5, 0.4, 0.6}
}

// inPiece puts the number of a step without a kerf into the piece it is about.
func (v *blankView) inPiece(s *steps.Step) {
	name := badgeName(s.Number)
	if v.outside[name] {
		return
	}
	area := v.f.box(s.Wood.Intersect(v.wood)).grow(-0.5)
	w := v.types.badgeWidth(s.Number)
	n := len(v.taken)
	for _, keepOff := range [][]Box{v.hatched, nil} {
		for x := area.X1; x+w <= area.X2; x++ {
			v.taken = append(v.taken, keepOff...)
			at, ok := v.place(Box{x, area.Y1, x + w, area.Y2}, w, badgeHeight)
			v.taken = v.taken[:n]
			if ok {
				v.badge(s.Number, at.X, at.Y)
				return
			}
		}
	}
	v.failed = append(v.failed, name)
}

func badgeName(number int) string { return "step " + strconv.Itoa(number) }
