package render

import (
	"fmt"
	"math"
	"slices"
	"strings"
)

// tag is a short text beside a drawing that belongs to one place in it.
type tag struct {
	at     float64 // the place along the tape
	tip    float64 // how far into the drawing its leader goes
	named  Box     // what it names there, empty for a mere place
	number int     // of a step, 0 for none
	more   int     // how many further steps share the reading
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
		w += t.badgeWidth(g.number) + 1 + t.width(furtherSteps(g.more), plain())
	}
	return w
}

// furtherSteps stands behind a step number when more steps have its reading.
func furtherSteps(n int) string {
	if n == 0 {
		return ""
	}
	return fmt.Sprintf("+%d  ", n)
}

const tagGap = 0.9 // between a leader and its text

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
	if g.more > 0 {
		b.text(strings.TrimSpace(furtherSteps(g.more)), x-0.3, base, plain())
		x += b.types.width(furtherSteps(g.more), plain())
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
