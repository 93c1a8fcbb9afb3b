package render

import (
	"fmt"

	"sawbill/layout"
	"sawbill/layout/steps"
)

// sideTag is a reading at a place across the blank.
type sideTag struct {
	at     layout.Length
	number int
	more   int // how many further steps share the reading
	text   string
	kerf   int
}

func (v *blankView) title() float64 {
	s := style{titleCap, true}
	text, x := "Blank "+v.blank.Name, 0.0
	if v.wood != v.blank.Usable {
		text += fmt.Sprintf(" from %s to %s", v.reading(v.wood.X1-v.blank.Usable.X1), v.reading(v.wood.X2-v.blank.Usable.X1))
	}
	for _, st := range v.list {
		if st.Operation == steps.True && v.wood.X1 == v.blank.Usable.X1 {
			v.badge(st.Number, 0, 1)
			x = v.types.badgeWidth(st.Number) + 2
			text += fmt.Sprintf(": plane to %s, %s, %s", v.reading(v.blank.Thickness), v.tapeWide(st.OffTape), v.tapeLong(st.OffTape))
		}
	}
	y := v.lines(text, x, titleCap+1, v.width()-x, s) + 2.5
	if costs := v.truingCosts(v.blank); costs != "" && x > 0 {
		y = v.lines(costs, 0, y+textCap+0.8, v.width(), plain()) + 2
	}
	return y
}

// sortRips takes the rips apart: those of the whole blank are read on the left,
// the last ones on the right.
func (v *blankView) sortRips() {
	u := v.blank.Usable
	for _, s := range v.list {
		if !s.Rips() || s.NoCut {
			continue
		}
		g := sideTag{at: s.Kerf.Y1, kerf: 1, number: s.Number}
		if s.From == steps.Far {
			g.at, g.kerf = s.Kerf.Y2, -1
		}
		g.text = v.reading(g.at - u.Y1)
		if s.Kerf.X1 <= u.X1 && s.Kerf.X2 >= u.X2 {
			v.across = append(v.across, g)
			continue
		}
		if mid := (s.Kerf.X1 + s.Kerf.X2) / 2; mid < v.wood.X1 || mid >= v.wood.X2 {
			continue
		}
		v.last = addTag(v.last, g)
	}
	sortTags(v.across)
	sortTags(v.last)
}

// gutters are the widths beside the drawing that the readings need.
func (v *blankView) gutters() (left, right float64) {
	for _, g := range v.across {
		left = max(left, v.types.badgeWidth(g.number)+1+v.types.width(g.text, plain()))
	}
	for _, g := range v.last {
		right = max(right, v.types.badgeWidth(g.number)+1+v.types.width(furtherSteps(g.more)+g.text, plain()))
	}
	return left + 9, max(right+9, 24)
}

// tape has the readings of the crosscuts from the squared end, each once.
func (v *blankView) tape(f frame) []tag {
	u := v.blank.Usable
	tags := []tag{{at: f.x(v.wood.X1), text: v.reading(v.down(v.wood.X1 - u.X1))}}
	if v.wood.X1 > u.X1 { // a drawing that goes on begins at no mark
		tags = nil
	}
	seen := map[layout.Length]int{} // where in tags, by place and side
	for _, s := range v.list {
		if s.Operation != steps.Crosscut || s.NoCut {
			continue
		}
		at, kerf := s.Kerf.X1, 1
		if s.From == steps.Tip {
			at, kerf = s.Kerf.X2, -1
		}
		if at < v.wood.X1 || at > v.wood.X2 {
			continue
		}
		place := at*2 + layout.Length(max(0, kerf))
		if i, known := seen[place]; known {
			tags[i].more++
			continue
		}
		seen[place] = len(tags)
		tags = append(tags, tag{at: f.x(at), number: s.Number, text: v.reading(at - u.X1), kerf: kerf, tip: tapeGap})
	}
	return tags
}

// wooden draws the blank with waste, pieces, kerfs and defects.
func (v *blankView) wooden() {
	u := v.wood
	v.box(v.f.at, WasteTone, NoInk, 0)
	for _, r := range waste(v.blank.Node, v.blank.Usable, v.shop) {
		if r = r.Intersect(u); !r.Empty() {
			v.crossWood(v.boardSheet, v.f, r)
		}
	}
	for _, leaf := range v.blank.Node.Leaves() {
		switch r := leaf.Rect.Intersect(u); {
		case r.Empty():
		case leaf.Part != "":
			v.box(v.f.box(r), White, Black, middleLine)
		case leaf.Offcut != "":
			v.polygon(v.taper(v.f, r), OffcutTone, Black, middleLine)
		}
	}
	for _, defect := range v.board.Defects {
		if r := v.moved(defect.Rect).Intersect(u); !r.Empty() {
			v.defect(v.f.box(r), defect.Kind)
			v.hatched = append(v.hatched, v.f.box(v.inWood(r)))
		}
	}
	v.goingDefects()
	v.air(v.boardSheet, v.f)
	for _, s := range v.list {
		edge := u.Grow(0, v.shop.RipKerf)
		if u.X2 == v.blank.Usable.X2 {
			edge.X2 += v.shop.CrosscutKerf
		}
		if k := s.Kerf.Intersect(edge); !k.Empty() {
			v.kerf(v.f.box(k))
		}
	}
	v.polygon(v.taper(v.f, u), NoInk, Black, middleLine)
	v.referenceEdge(v.f.at)
	if u.X1 == v.blank.Usable.X1 {
		v.line(v.taper(v.f, u)[3], Point{v.f.at.X1, v.f.at.Y2}, heavyLine)
	}
}
