package render

import (
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

// descriptions of a piece, the fullest first. The first few say everything.
func (v *blankView) descriptions(n *layout.Node) [][]string {
	name, size := v.work.Name(n), v.sizeOf(n)
	if n.Offcut != "" {
		return [][]string{{"KEEP " + name, size}, {"KEEP " + name + "  " + size}, {"KEEP " + name}, {v.shortName(n)}}
	}
	if n.Show != layout.Through {
		size += ", show " + n.Show.String()
	}
	return [][]string{
		{n.Part, name, size},
		{n.Part + "  " + name, size},
		{n.Part + "  " + name + "  " + size},
		{n.Part + "  " + name},
		{n.Part + "  " + v.shortName(n)},
		{v.shortName(n)},
	}
}

// full reports whether a description says everything.
func full(n *layout.Node, option int) bool {
	return option < 2 || n.Part != "" && option < 3
}

// sizeOf is the finished size of a part, or the size of an offcut.
func (v *blankView) sizeOf(n *layout.Node) string {
	part := v.plan.Problem.Part(n.Part)
	switch {
	case part == nil:
		return v.cleanSize(n)
	case part.Length == 0: // of a set: the plan chooses
		return v.size(n.Length(), part.Width, part.Thickness)
	}
	return v.size(part.Length, part.Width, part.Thickness)
}

// shortName is the end of a name: what sets it apart on its board.
func (v *blankView) shortName(n *layout.Node) string {
	return strings.TrimPrefix(v.work.Name(n), v.board.Mark+"-")
}

// ground is what a word may stand on.
type ground uint8

const (
	offHatch ground = iota
	overHatch
)

// describe writes lines, the first bold, into an area if there is room: off the
// hatched wood, or over it on a white ground.
func (v *blankView) describe(area Box, lines []string, where ground) bool {
	const step = 5.2
	var w float64
	for i, l := range lines {
		w = max(w, v.types.width(l, firstStrong(i)))
	}
	h := 1.3*textCap + float64(len(lines)-1)*step
	n := len(v.taken)
	if where == offHatch {
		v.taken = append(v.taken, v.hatched...)
	}
	at, ok := v.place(area, w, h)
	v.taken = v.taken[:n]
	if !ok {
		return false
	}
	if where == overHatch {
		v.box(Box{at.X, at.Y, at.X + w, at.Y + h}.grow(0.4), White, NoInk, 0)
	}
	for i, l := range lines {
		x := at.X + (w-v.types.width(l, firstStrong(i)))/2
		v.text(l, x, at.Y+1.05*textCap+float64(i)*step, firstStrong(i))
	}
	return true
}

func firstStrong(line int) style {
	if line == 0 {
		return strong()
	}
	return plain()
}

// keyOf says below the drawing what the words in it leave out.
func (v *blankView) keyOf(n *layout.Node) {
	what := n.Part + ", " + v.sizeOf(n)
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
	var tags []tag
	for _, g := range v.defectTags(v.f, v.wood) {
		if !v.upper(g, v.f) {
			tags = append(tags, g)
		}
	}
	for _, leaf := range v.blank.Node.Leaves() {
		if name := v.work.Name(leaf); v.outside[name] && (leaf.Part != "" || leaf.Offcut != "") && v.shows(leaf.Rect) {
			at := v.f.box(leaf.Rect.Intersect(v.wood))
			tags = append(tags, tag{at: (at.X1 + at.X2) / 2, tip: v.f.at.Y2 - (at.Y1+at.Y2)/2, text: v.shortName(leaf)})
			v.keyOf(leaf)
		}
	}
	for _, s := range v.list {
		if v.outside[badgeName(s.Number)] {
			at := v.f.box(s.Kerf.Intersect(v.wood))
			if s.Kerf.Empty() {
				at = v.f.box(s.Wood.Intersect(v.wood))
			}
			tags = append(tags, tag{at: (at.X1 + at.X2) / 2, tip: v.f.at.Y2 - (at.Y1+at.Y2)/2, number: s.Number})
		}
	}
	y := v.f.at.Y2 + 3
	for i := range tags {
		tags[i].tip += 3
	}
	v.separate(tags)
	words := v.types.stagger(tags, 0, v.width())
	v.below(words, y)
	return y + words.height()
}

// upper reports whether the place that a tag names is nearer the far edge.
func (v *blankView) upper(g tag, f frame) bool { return g.tip > f.at.h()/2 }

// upperDefects are the words for the defects near the far edge; they stand on
// the tape, where their leaders cross less.
func (v *blankView) upperDefects(f frame) []tag {
	var tags []tag
	for _, g := range v.defectTags(f, v.wood) {
		if v.upper(g, f) {
			g.tip = f.at.h() - g.tip + tapeGap
			tags = append(tags, g)
		}
	}
	return tags
}

// separate moves leaders that would run on each other, or over a step number, a
// little aside.
func (v *blankView) separate(tags []tag) {
	const step = 0.8
	for i := range tags {
		for n := 0; n < 40 && v.blocked(tags, i); n++ {
			tags[i].at += step
		}
	}
}

func (v *blankView) blocked(tags []tag, i int) bool {
	g := tags[i]
	for _, t := range tags[:i] {
		if t.at-0.7 < g.at && g.at < t.at+0.7 {
			return true
		}
	}
	return !v.free(Box{g.at - 0.3, v.f.at.Y2 + 3 - g.tip, g.at + 0.3, v.f.at.Y2 + 3})
}

// legend closes the drawing.
func (v *blankView) legend(y float64) {
	text := "Jointed reference edge below, squared butt end left."
	if v.blank.OpenTip {
		text += " Tip end not yet square."
	}
	if v.blank.OpenFar {
		text += " Far edge still rough."
	}
	v.notes = append([]string{text}, v.notes...)
	for _, what := range slices.Sorted(maps.Keys(v.short)) {
		v.notes = append(v.notes, what+": "+strings.Join(v.short[what], " ")+".")
	}
	v.height = v.lines(strings.Join(v.notes, " "), 0, y+textCap+1.5, v.width(), plain()) + 3
}
