package render

import (
	"cmp"
	"math"
	"slices"
)

// tag is a short text beside a drawing that belongs to one place in it.
type tag struct {
	at     float64 // the place along the tape
	tip    float64 // how far into the drawing its leader goes
	number int     // of a step, 0 for none
	text   string
	// kerf says on which side of the reading the saw passes: +1 farther along the
	// tape, -1 nearer, 0 when the tag is no cut.
	kerf int
	row  int
	// beside is where its text begins and its leader ends.
	beside float64
}

// tagWidth is the width of a tag's number and text.
func (t *typesetter) tagWidth(g tag) float64 {
	w := t.width(g.text, plain())
	if g.number > 0 {
		w += t.badgeWidth(g.number) + 1
	}
	return w
}

const tagGap = 0.9 // between a leader and its text

// reach is the paper along the tape that a tag takes from its leader on.
func (t *typesetter) reach(g tag) float64 { return tagGap + t.tagWidth(g) + 1.2 }

// ladder is a set of tags with their places: rows of text, row 0 nearest the
// drawing, behind a band in which leaders may slant.
type ladder struct {
	tags []tag
	rows int
	band float64 // mm
}

// height is the paper that the texts of a ladder take beside the drawing.
func (l ladder) height() float64 {
	if len(l.tags) == 0 {
		return 0
	}
	return l.band + float64(l.rows)*rowStep
}

const (
	upright   = 3   // rows up to which leaders stay upright
	slantBand = 4.5 // mm
)

// stagger puts the tags of a tape that runs from lo to hi in rows, so that no
// text meets another text or another's leader. A few rows are reached by upright
// leaders; where it would take more, the texts are moved aside.
func (t *typesetter) stagger(tags []tag, lo, hi float64) ladder {
	slices.SortStableFunc(tags, func(a, b tag) int { return cmp.Compare(a.at, b.at) })
	for i := range tags {
		tags[i].beside = tags[i].at
	}
	rows := t.stack(tags)
	if rows <= upright {
		return ladder{tags: tags, rows: rows}
	}
	for rows = 2; !t.slide(tags, rows, lo, hi); rows++ {
	}
	return ladder{tags, rows, slantBand}
}

// stack finds rows for texts that stand right above their places.
//
// Every text stands to the right of its leader. Taken from right to left, a
// leader meets no text placed before; a text must only keep clear of the texts
// in its row and of the leaders that rise higher.
func (t *typesetter) stack(tags []tag) int {
	rows := 0
	for i := len(tags) - 1; i >= 0; i-- {
		for tags[i].row = 0; t.clash(tags[i], tags[i+1:]); tags[i].row++ {
		}
		rows = max(rows, tags[i].row+1)
	}
	return rows
}

func (t *typesetter) clash(g tag, placed []tag) bool {
	end := g.beside + t.reach(g)
	return slices.ContainsFunc(placed, func(p tag) bool { return p.beside < end && p.row >= g.row })
}

// slide gives the tags rows in turn, from the farthest to the nearest, and moves
// the texts aside until each has room up to the next text whose leader does not
// end before it: the next one in its row or a higher one. It reports whether they
// fit between lo and hi.
func (t *typesetter) slide(tags []tag, rows int, lo, hi float64) bool {
	const apart = 1.5 // between leaders
	room := func(i, j int) float64 {
		if tags[j].row >= tags[i].row {
			return t.reach(tags[i])
		}
		return apart
	}
	for i := range tags {
		tags[i].row = rows - 1 - i%rows
		tags[i].beside = max(lo, tags[i].at)
		for j := range i {
			if tags[j].row <= tags[i].row || j == i-1 {
				tags[i].beside = max(tags[i].beside, tags[j].beside+room(j, i))
			}
		}
	}
	for i := len(tags) - 1; i >= 0; i-- {
		tags[i].beside = min(tags[i].beside, hi-t.reach(tags[i]))
		for j := i + 1; j < len(tags); j++ {
			if tags[i].row <= tags[j].row || j == i+1 {
				tags[i].beside = min(tags[i].beside, tags[j].beside-room(i, j))
			}
		}
	}
	return rows > len(tags) || tags[0].beside >= lo-1e-9
}

// above draws a ladder over a line at y.
func (b *block) above(l ladder, y float64) {
	for _, g := range l.tags {
		base := y - l.band - 2.6 - float64(g.row)*rowStep
		b.lead(g, l.band, y, -1, base-textCap)
		b.tagText(g, base)
		b.flag(g, y)
	}
}

// below draws a ladder under a line at y.
func (b *block) below(l ladder, y float64) {
	for _, g := range l.tags {
		base := y + l.band + 1.6 + textCap + float64(g.row)*rowStep
		b.lead(g, l.band, y, 1, base)
		b.tagText(g, base)
	}
}

// lead draws the leader of a tag from its tip over the line at y and through the
// band, up (-1) or down (1), to the far end of its text.
func (b *block) lead(g tag, band, y, way, end float64) {
	b.leader(g.at, y-way*g.tip, y)
	b.line(Point{g.at, y}, Point{g.beside, y + way*band}, hairline)
	b.leader(g.beside, y+way*band, end)
}

func (b *block) tagText(g tag, base float64) {
	x := g.beside + tagGap
	if g.number > 0 {
		b.badge(g.number, x, base-textCap-(badgeHeight-textCap)/2)
		x += b.types.badgeWidth(g.number) + 1
	}
	b.text(g.text, x, base, plain())
}

// flag marks the side of a reading on which the saw passes.
func (b *block) flag(g tag, y float64) {
	if g.kerf != 0 {
		b.polygon([]Point{{g.at, y}, {g.at + 2*float64(g.kerf), y}, {g.at, y - 2}}, Black, NoInk, 0)
	}
}

// spread moves places along a line apart to a pitch, keeping their order and
// lying between lo and hi, if there is room there.
func spread(places []float64, pitch, lo, hi float64) []float64 {
	out := slices.Clone(places)
	least := lo
	for i := range out {
		out[i] = max(out[i], least)
		least = out[i] + pitch
	}
	most := hi
	for i := len(out) - 1; i >= 0; i-- {
		out[i] = min(out[i], most)
		most = out[i] - pitch
	}
	if len(out) > 0 && out[0] < lo-1e-9 && !math.IsInf(lo, 0) { // no room: keep the pitch, run over
		for i := range out {
			out[i] = lo + float64(i)*pitch
		}
	}
	return out
}
