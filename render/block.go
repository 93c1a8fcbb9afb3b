package render

import (
	"cmp"
	"slices"
	"strconv"
)

// block is a piece of a sheet that stays together: its own scene, as wide as the
// sheet between its margins, with its top left corner at the origin.
type block struct {
	Scene
	height float64
	types  *typesetter
	// taken is the paper that labels and step numbers cover.
	taken []Box
}

func newBlock(t *typesetter) *block { return &block{types: t} }

// over is b with another block right below it.
func (b *block) over(other *block) *block {
	other.moved(&b.Scene, 0, b.height)
	b.height += other.height
	return b
}

// moved adds what stands on b to a page, shifted.
func (b *block) moved(page *Scene, dx, dy float64) {
	for _, s := range b.Shapes {
		points := make([]Point, len(s.Points))
		for i, p := range s.Points {
			points[i] = Point{p.X + dx, p.Y + dy}
		}
		s.Points = points
		page.Shapes = append(page.Shapes, s)
	}
	for _, l := range b.Labels {
		l.Baseline = Point{l.Baseline.X + dx, l.Baseline.Y + dy}
		l.Box = shift(l.Box, dx, dy)
		page.Labels = append(page.Labels, l)
	}
	for _, l := range b.Leaders {
		page.Leaders = append(page.Leaders, shift(l, dx, dy))
	}
}

func shift(b Box, dx, dy float64) Box { return Box{b.X1 + dx, b.Y1 + dy, b.X2 + dx, b.Y2 + dy} }

// text sets a text with the left end of its baseline at a point and gives the x
// of its right end.
func (b *block) text(text string, x, y float64, s style) float64 {
	l := b.types.label(text, Point{x, y}, s)
	b.Labels = append(b.Labels, l)
	b.taken = append(b.taken, l.Box)
	return l.Box.X2
}

// lines sets a wrapped text and gives the y of the last baseline.
func (b *block) lines(text string, x, y, width float64, s style) float64 {
	for i, line := range b.types.wrap(text, width, s) {
		if i > 0 {
			y += lineStep * s.cap / textCap
		}
		b.text(line, x, y, s)
	}
	return y
}

// leader draws an upright line that leads from a label to what it names, behind the
// step numbers that stand there.
func (b *block) leader(x, y1, y2 float64) {
	l := Box{x - 0.2, min(y1, y2), x + 0.2, max(y1, y2)}
	at := l.Y1
	for _, frame := range append(b.framedOn(l), Box{Y1: l.Y2}) {
		if at < frame.Y1 {
			b.line(Point{x, at}, Point{x, frame.Y1}, hairline)
		}
		at = max(at, frame.Y2)
	}
	b.Leaders = append(b.Leaders, l)
}

// framedOn lists the frames of the step numbers on a leader, from the top.
func (b *block) framedOn(l Box) []Box {
	var frames []Box
	for _, label := range b.Labels {
		if label.Framed && label.Box.Overlaps(l) {
			frames = append(frames, label.Box)
		}
	}
	slices.SortFunc(frames, func(f, g Box) int { return cmp.Compare(f.Y1, g.Y1) })
	return frames
}

const badgeHeight = 5.0

// badgeWidth is the width of a step number in its badge.
func (t *typesetter) badgeWidth(number int) float64 {
	return max(badgeHeight, t.width(strconv.Itoa(number), strong())+2.2)
}

// badge draws a step number in a rounded frame whose box begins at a point.
func (b *block) badge(number int, x, y float64) {
	w := b.types.badgeWidth(number)
	frame := Box{x, y, x + w, y + badgeHeight}
	b.polygon(rounded(frame, badgeHeight/2), White, Black, middleLine)
	text := strconv.Itoa(number)
	at := Point{x + (w-b.types.width(text, strong()))/2, y + (badgeHeight+textCap)/2}
	l := b.types.label(text, at, strong())
	l.Box, l.Framed = frame, true
	b.Labels = append(b.Labels, l)
	b.taken = append(b.taken, frame)
}

// free reports whether nothing stands in a box yet.
func (b *block) free(box Box) bool {
	return b.bare(box) && !slices.ContainsFunc(b.Leaders, box.Overlaps)
}

// bare reports whether no label stands in a box. A step number may stand on a
// leader, for its frame hides it.
func (b *block) bare(box Box) bool { return !slices.ContainsFunc(b.taken, box.Overlaps) }

// place finds a free place of a size in an area, as near its middle as it can.
func (b *block) place(area Box, w, h float64) (Point, bool) {
	for _, dy := range around((area.h() - h) / 2) {
		for _, dx := range around((area.w() - w) / 2) {
			at := Point{area.X1 + (area.w()-w)/2 + dx, area.Y1 + (area.h()-h)/2 + dy}
			box := Box{at.X, at.Y, at.X + w, at.Y + h}
			if area.grow(1e-9).Contains(box) && b.free(box.grow(labelPad/2)) {
				return at, true
			}
		}
	}
	return Point{}, false
}

// around lists offsets from the middle outward, up to most on either side.
func around(most float64) []float64 {
	const step = 1.0
	offsets := []float64{0}
	for d := step; d < most; d += step {
		offsets = append(offsets, -d, d)
	}
	if most > 0 {
		offsets = append(offsets, -most, most)
	}
	return offsets
}
