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
}

func (t *typesetter) tagWidth(g tag) float64 {
	w := t.width(g.text, plain())
	if g.number > 0 {
		w += t.badgeWidth(g.number) + 1
	}
	return w
}

const tagGap = 0.9 // between a leader and its text

// span is the paper along the tape that a tag covers.
func (t *typesetter) span(g tag) (lo, hi float64) {
	return g.at - 0.3, g.at + tagGap + t.tagWidth(g) + 1.2
}

// stagger puts the tags of a tape in rows, row 0 nearest the drawing, so that no
// text meets another text or another's leader. It gives the number of rows.
//
// Every text stands to the right of its leader. Taken from right to left, a
// leader meets no text placed before; a text must only keep clear of the texts
// in its row and of the leaders that rise higher.
func (t *typesetter) stagger(tags []tag) int {
	slices.SortStableFunc(tags, func(a, b tag) int { return cmp.Compare(a.at, b.at) })
	rows := 0
	for i := len(tags) - 1; i >= 0; i-- {
		for tags[i].row = 0; t.clash(tags[i], tags[i+1:]); tags[i].row++ {
		}
		rows = max(rows, tags[i].row+1)
	}
	return rows
}

func (t *typesetter) clash(g tag, placed []tag) bool {
	_, hi := t.span(g)
	return slices.ContainsFunc(placed, func(p tag) bool {
		lo, _ := t.span(p)
		return lo < hi && p.row >= g.row
	})
}

// above draws staggered tags over a line at y.
func (b *block) above(tags []tag, y float64) {
	for _, g := range tags {
		base := y - 2.6 - float64(g.row)*rowStep
		b.leader(g.at, y+g.tip, base-textCap)
		b.tagText(g, base)
		b.flag(g, y)
	}
}

// below draws staggered tags under a line at y.
func (b *block) below(tags []tag, y float64) {
	for _, g := range tags {
		base := y + 1.6 + textCap + float64(g.row)*rowStep
		b.leader(g.at, y-g.tip, base)
		b.tagText(g, base)
	}
}

func (b *block) tagText(g tag, base float64) {
	x := g.at + tagGap
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
