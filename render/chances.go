package render

import (
	"fmt"
	"strings"

	"sawbill/layout"
)

// Chances draws how likely a stock is enough against the boards that are bought, as a
// simulation found it: a point for every number of boards, with the interval in which
// the true chance lies with a confidence of 95 %, and under it which board the last of
// them is like.
func Chances(plan *layout.Plan, r *layout.Risk, o Options) []Page {
	s := &sheet{types: newTypesetter(), paper: o.Paper, plan: plan}
	s.newPage()
	head := newBlock(s.types)
	head.text("How likely the stock is enough", 0, 6, style{titleCap, true})
	head.height = 4 + head.lines(fmt.Sprintf("Of %d simulated cuttings with hidden defects, against the boards that are bought. "+
		"Bars: 95%% confidence. These are low figures; look each board over again before you cut it.", r.Finished.Of),
		0, 13, s.width(), plain())
	s.put(head)
	s.put(chancePlot(s, r.Bought, s.bottom()-s.y-2))
	return s.finish("chance that the stock is enough")
}

// chancePlot is the curve, as high as there is room.
func chancePlot(s *sheet, bought []layout.BoughtBoard, height float64) *block {
	b := newBlock(s.types)
	b.height = height
	d := Box{18, 6, s.width() - 4, height - 26}
	y := func(share float64) float64 { return d.Y2 - share*d.h() }
	step := d.w() / (float64(len(bought)) + 0.4)
	x := func(n int) float64 { return d.X1 + (float64(n)+0.65)*step }
	b.chanceScale(d, y)
	for i, p := range bought { // before the curve, for their ground hides the scale
		b.figure(p.Finished, x(i), y(p.Finished.Value()), d)
	}
	for i, p := range bought {
		low, high := p.Finished.Interval()
		at := Point{x(i), y(p.Finished.Value())}
		if i > 0 {
			b.line(Point{x(i - 1), y(bought[i-1].Finished.Value())}, at, heavyLine)
		}
		for _, end := range []float64{y(low), y(high)} {
			b.line(Point{at.X - 1.6, end}, Point{at.X + 1.6, end}, middleLine)
		}
		b.line(Point{at.X, y(low)}, Point{at.X, y(high)}, middleLine)
		b.box(Box{at.X - 1.3, at.Y - 1.3, at.X + 1.3, at.Y + 1.3}, Black, Black, thinLine)
		b.middle(fmt.Sprint(i), at.X, d.Y2+6, strong())
		b.likeWords(p.Like, at.X, d.Y2+12, step-2)
	}
	b.text("boards bought, one after the other", d.X1, height-1, plain())
	return b
}

// likeWords says in two lines at most which board one is like.
func (b *block) likeWords(mark string, x, y, width float64) {
	text := "none"
	if mark != "" {
		text = "like " + mark
	}
	lines := b.types.wrap(text, width, plain())
	b.middle(lines[0], x, y, plain())
	if len(lines) > 1 {
		b.middle(b.types.cut(strings.Join(lines[1:], " "), width, plain()), x, y+lineStep, plain())
	}
}

// chanceScale is the frame with lines at every tenth, and the figures at every fifth.
func (b *block) chanceScale(d Box, y func(float64) float64) {
	for i := range 11 {
		at := y(float64(i) / 10)
		b.line(Point{d.X1, at}, Point{d.X2, at}, hairline)
		if i%2 == 0 {
			text := fmt.Sprintf("%d%%", 10*i)
			b.text(text, d.X1-2-b.types.width(text, plain()), at+textCap/2, plain())
		}
	}
	b.box(d, NoInk, Black, middleLine)
}

// middle sets a text about the middle of its line.
func (b *block) middle(text string, x, y float64, s style) {
	b.text(text, x-b.types.width(text, s)/2, y, s)
}

// figure writes the chance beside its point. The curve rises, so that nothing of it lies
// to the right and below of a point, nor to the left and above.
func (b *block) figure(s layout.Share, x, y float64, d Box) {
	text := s.Percent()
	w := b.types.width(text, strong())
	at, base := x+2.8, y+textCap+2.2
	if base > d.Y2-2 {
		at, base = x-2.8-w, y-2.2
	}
	b.box(Box{at - labelPad, base - textCap - labelPad, at + w + labelPad, base + labelPad}, White, NoInk, 0)
	b.text(text, at, base, strong())
}
