package render

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"sawbill/layout"
)

// pieces writes in every part and offcut what it is, as fully as there is room.
func (v *blankView) pieces() {
	for _, leaf := range v.blank.Node.Leaves() {
		if leaf.Part == "" && leaf.Offcut == "" || !v.shows(leaf.Rect) || v.outside[v.work.Name(leaf)] {
			continue
		}
		area := v.f.box(leaf.Rect.Intersect(v.wood))
		area = Box{area.X1 + 0.9, area.Y1 + 0.1, area.X2 - 0.9, area.Y2 - 0.1}
		options := v.descriptions(leaf)
		placed := -1
		for i, lines := range append(options, options...) {
			if v.describe(area, lines, []ground{offHatch, overHatch}[i/len(options)]) {
				placed = i % len(options)
				break
			}
		}
		switch {
		case placed < 0:
			v.failed = append(v.failed, v.work.Name(leaf))
		case !full(leaf, placed):
			v.keyOf(leaf)
		}
	}
}

// keyOf says below the drawing what the words in it leave out.
func (v *blankView) keyOf(n *layout.Node) {
	what := v.partName(n) + ", " + v.sizeOf(n) + v.way(n)
	switch {
	case n.Offcut != "":
		what = "Keep, " + v.sizeOf(n)
	case n.Show != layout.Through:
		what += ", show " + n.Show.String()
	}
	v.short[what] = append(v.short[what], v.shortName(n))
}

// outsideWords sets, below the drawing, the words of defects and those that
// found no place in it. It gives the y below them.
func (v *blankView) outsideWords() float64 {
	tags := append(v.defectTags(v.f, v.wood), v.goingTags()...)
	for _, leaf := range v.blank.Node.Leaves() {
		if name := v.work.Name(leaf); v.outside[name] && (leaf.Part != "" || leaf.Offcut != "") && v.shows(leaf.Rect) {
			g := tagOf(v.f.box(leaf.Rect.Intersect(v.wood)), v.f)
			g.text = v.shortName(leaf)
			tags = append(tags, g)
			v.keyOf(leaf)
		}
	}
	for _, s := range v.list {
		if s.Resawn == "" && v.outside[badgeName(s.Number)] {
			named := s.Kerf
			if named.Empty() {
				named = s.Wood
			}
			g := tagOf(v.f.box(named.Intersect(v.wood)), v.f)
			g.number = s.Number
			tags = append(tags, g)
		}
	}
	y := v.f.at.Y2 + 3
	for i := range tags {
		tags[i].tip += 3
	}
	v.separate(tags, y)
	words := v.types.stagger(tags, 0, v.width())
	v.below(words, y)
	return y + words.height()
}

// tapeLine says what the readings of the drawing are measured from. They are not
// what the saw is set to.
func (v *blankView) tapeLine() string {
	end, edge := "squared butt end", "jointed edge"
	if v.blank.Usable.X1 == v.blank.Node.X1 {
		end = "butt end"
	}
	if v.blank.Usable.Y1 == v.blank.Node.Y1 {
		edge = "straight reference edge"
	}
	return fmt.Sprintf("Tape: from the %s and the %s of the whole blank. Set the saw by the list", end, edge)
}

// shared reports whether steps share a reading of the drawing.
func (v *blankView) shared() bool {
	return slices.ContainsFunc(v.tape(v.f), func(g tag) bool { return g.more > 0 }) ||
		slices.ContainsFunc(v.last, func(g sideTag) bool { return g.more > 0 })
}

// legend closes the drawing.
func (v *blankView) legend(y float64) {
	v.notes = append([]string{v.tapeLine()}, v.notes...)
	if v.shared() {
		v.notes = append(v.notes, "+1: one more step has this reading")
	}
	if v.blank.OpenTip {
		v.notes = append(v.notes, "Tip end not yet square")
	}
	if v.blank.OpenFar {
		v.notes = append(v.notes, "Far edge still rough")
	}
	for _, what := range slices.Sorted(maps.Keys(v.short)) {
		v.notes = append(v.notes, what+": "+strings.Join(v.short[what], " "))
	}
	v.height = v.lines(strings.Join(v.notes, " · "), 0, y+textCap+1.5, v.width(), plain()) + 3
}
