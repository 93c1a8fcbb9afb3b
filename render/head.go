package render

import (
	"fmt"
	"strings"

	"sawbill/layout"
)

const orientationWidth = 74.0

// head names the board, large, and shows how to lay it.
func (d *boardSheet) head() *block {
	b := newBlock(d.types)
	mark := style{markCap, true}
	const most = 75
	for mark.cap > 5 && d.types.width(d.board.Mark, mark) > most {
		mark.cap--
	}
	low := b.lines(d.board.Mark, 0, mark.cap+1, most, mark)
	x := min(most, d.types.width(d.board.Mark, mark)) + 7
	width := d.width() - orientationWidth - 6 - x
	y := b.lines(d.board.Species+", "+d.roughSize(), x, titleCap+1, width, style{titleCap, true})
	if place := d.placeLine(); place != "" {
		y = b.lines(place, x, y+7, width, strong())
	}
	if d.board.Note != "" {
		y = b.lines("Note: "+d.board.Note, x, y+lineStep+0.5, width, plain())
	}
	d.orientation(b, d.width()-orientationWidth)
	b.height = max(y+3, low+3, 24)
	return b
}

func (d *boardSheet) roughSize() string {
	width := d.reading(d.board.Width) + " wide"
	if d.board.TipWidth != d.board.Width {
		width = fmt.Sprintf("%s wide at the butt, %s at the tip", d.reading(d.board.Width), d.reading(d.board.TipWidth))
	}
	return fmt.Sprintf("%s thick, %s, %s long, %s", d.reading(d.board.Thickness), width, d.reading(d.board.Length), d.unit())
}

func (d *boardSheet) placeLine() string {
	var parts []string
	if d.board.Place != "" {
		parts = append(parts, "Place: "+d.board.Place)
	}
	if d.board.Source != layout.Rack {
		parts = append(parts, "from the "+d.board.Source.String())
	}
	if d.board.Grade != "" {
		parts = append(parts, "seller's grade: "+d.board.Grade)
	}
	return strings.Join(parts, " · ")
}

// orientation is a small board that shows face, butt and reference edge.
func (d *boardSheet) orientation(b *block, x float64) {
	wood := Box{x + 11, 1, x + orientationWidth, 13}
	b.box(wood, White, Black, middleLine)
	b.text("butt", x, 8.5, plain())
	text := "face A up, " + d.board.Mark
	text = d.types.cut(text, wood.w()-4, strong())
	b.text(text, wood.X1+(wood.w()-d.types.width(text, strong()))/2, 8.8, strong())
	b.referenceEdge(wood)
	b.text("reference edge, toward you", wood.X1, 20.5, plain())
}

// referenceEdge marks the lower edge of a box as the one to measure from.
func (s *Scene) referenceEdge(wood Box) {
	s.line(Point{wood.X1, wood.Y2}, Point{wood.X2, wood.Y2}, heavyLine)
	for _, part := range []float64{0.1, 0.5, 0.9} {
		x := wood.X1 + part*wood.w()
		s.polygon([]Point{{x, wood.Y2}, {x - 1.5, wood.Y2 + 2.6}, {x + 1.5, wood.Y2 + 2.6}}, Black, NoInk, 0)
	}
}
