package render

import (
	"fmt"

	"sawbill/layout"
	"sawbill/layout/steps"
)

// roughRip draws a blank that is ripped before truing, with the lines to snap on
// it: a stage of its own, between the rough crosscuts and the truing.
func (d *boardSheet) roughRip(run []steps.Step) *block {
	v := &roughView{boardSheet: d, block: newBlock(d.types), run: run, wood: run[0].Wood}
	v.draw()
	return v.block
}

type roughView struct {
	*boardSheet
	*block
	run  []steps.Step
	wood layout.Rect
	f    frame
}

func (v *roughView) draw() {
	y := v.lines(v.why(), 0, textCap+1, v.width(), plain())
	tags := v.lineTags()
	left := 14.0
	for _, g := range tags {
		left = max(left, v.types.badgeWidth(g.number)+v.types.width(g.text, plain())+11)
	}
	wide := v.width() - 2*left
	high := min(max(wide*float64(v.wood.Width())/float64(v.wood.Length()), 24, sidePitch*float64(len(tags))), 60)
	v.f = newFrame(v.wood, Box{left, y + 5, left + wide, y + 5 + high})
	v.pieces()
	v.ends(tags)
	v.note(v.defects())
}

// why says what makes the rip necessary.
func (v *roughView) why() string {
	width, most := v.board.WoodWidth(v.wood), v.shop.MachineWidth()
	text := chalk(v.run[0].Piece)
	switch {
	case most > 0 && width > most:
		text += fmt.Sprintf(" is %s wide, and the machines take %s", v.reading(v.up(width)), v.reading(most))
	case v.board.Cup > 0:
		text += ": narrower pieces lose less to cup"
	default:
		text += ": to be trued in narrower pieces"
	}
	return text + ". Snap a line between marks at both ends, then saw along it by eye or by a track."
}

// lineTags are the readings of the lines from the reference edge.
func (v *roughView) lineTags() []sideTag {
	var tags []sideTag
	for _, s := range v.run {
		if s.NoCut || s.Wood.X1 != v.wood.X1 {
			continue
		}
		g := sideTag{at: s.Kerf.Y1, kerf: 1, number: s.Number}
		if s.From == steps.Far {
			g.at, g.kerf = s.Kerf.Y2, -1
		}
		g.text = v.reading(g.at - v.wood.Y1)
		tags = append(tags, g)
	}
	sortTags(tags)
	return tags
}

// pieces draws the wood, what the rips make of it and the lines.
func (v *roughView) pieces() {
	v.polygon(v.taper(v.f, v.wood), WasteTone, NoInk, 0)
	for _, r := range roughWaste(v.blankNode()) {
		v.crossWood(v.boardSheet, v.f, r)
	}
	for _, n := range v.blankNode().Children {
		ink := White
		if n.Offcut != "" {
			ink = OffcutTone
		}
		if gives(n) {
			v.polygon(v.taper(v.f, n.Rect), ink, NoInk, 0)
		} else {
			v.crossWood(v.boardSheet, v.f, n.Rect)
		}
	}
	for _, defect := range v.board.Defects {
		defect.Rect.Y2 += v.board.Shift(v.wood.Length())
		if r := defect.Rect.Intersect(v.wood); !r.Empty() {
			v.defect(v.f.box(r), defect.Kind)
		}
	}
	for _, s := range v.run {
		if s.Wood.X1 == v.wood.X1 && !s.Kerf.Empty() {
			v.kerf(v.f.box(s.Kerf.Intersect(v.wood.Grow(0, v.shop.RoughRipKerf))))
		}
	}
	v.air(v.boardSheet, v.f)
	v.polygon(v.taper(v.f, v.wood), NoInk, Black, heavyLine)
	v.referenceEdge(v.f.at)
}

// blankNode is the node that the rips take apart.
func (v *roughView) blankNode() *layout.Node {
	for _, n := range v.work.Plan.Root.Children {
		if n.X1 == v.wood.X1 && n.Cut == layout.Rip && !n.Trued {
			return n
		}
	}
	return v.work.Plan.Root
}

// pieceName writes what a piece is in its middle, where it finds room.
func (v *roughView) pieceName(n *layout.Node) {
	if !gives(n) {
		return
	}
	name := v.work.Name(n)
	if n.Offcut != "" {
		name = "KEEP " + name
	} else if n.Trued {
		name += ", to be trued"
	}
	area := v.f.box(n.Rect).grow(-0.6)
	if at, ok := v.place(area, v.types.width(name, strong()), 1.3*textCap); ok {
		v.text(name, at.X, at.Y+1.05*textCap, strong())
	}
}

// ends puts the readings at both ends of the blank, for the line is snapped
// between them. The number of the step stands at the butt.
func (v *roughView) ends(tags []sideTag) {
	var places []float64
	for _, g := range tags {
		places = append(places, v.f.y(g.at))
	}
	half := badgeHeight / 2
	for i, y := range spread(places, sidePitch, v.f.at.Y1-1+half, v.f.at.Y2+1) {
		g := tags[i]
		for _, side := range []struct{ x, way float64 }{{v.f.at.X1, -1}, {v.f.at.X2, 1}} {
			v.line(Point{side.x, places[i]}, Point{side.x + side.way*2, places[i]}, thinLine)
			v.line(Point{side.x + side.way*2, places[i]}, Point{side.x + side.way*6, y}, hairline)
		}
		w := v.types.width(g.text, plain())
		v.text(g.text, v.f.at.X1-7-w, y+textCap/2, plain())
		v.badge(g.number, v.f.at.X1-8-w-v.types.badgeWidth(g.number), y-half)
		v.text(g.text, v.f.at.X2+7, y+textCap/2, plain())
	}
	v.text("butt", v.f.at.X1-10, v.f.at.Y2+lineStep, plain())
	v.text("tip", v.f.at.X2+2, v.f.at.Y2+lineStep, plain())
}

// defects names what is marked on the blank below the drawing, and then its pieces
// in it. It gives the y below the words.
func (v *roughView) defects() float64 {
	tags := v.defectTags(v.f, v.wood)
	for i := range tags {
		tags[i].tip += 3
	}
	words := v.types.stagger(tags, v.f.at.X1+2, v.f.at.X2)
	v.below(words, v.f.at.Y2+3)
	for _, n := range v.blankNode().Children {
		v.pieceName(n)
	}
	return v.f.at.Y2 + 3 + words.height()
}

// note says what the readings are measured from.
func (v *roughView) note(y float64) {
	text := "Readings: from the reference edge to the near side of the kerf"
	if v.board.Crook > 0 {
		text = "Readings: from the two corners of the hollow reference edge to the near side of the kerf"
	}
	v.height = v.lines(text+".", v.f.at.X1+2, y+lineStep, v.f.at.w()-4, plain()) + 3
}
