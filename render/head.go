package render

import (
	"fmt"
	"slices"
	"strings"

	"sawbill/layout"
	"sawbill/layout/steps"
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

// runningHead heads the pages after the first: the board, the blank that the
// page goes on with, and how it lies.
func (d *boardSheet) runningHead() *block {
	b := newBlock(d.types)
	s := style{7, true}
	for s.cap > textCap && d.types.width(d.board.Mark, s) > 90 {
		s.cap -= 0.5
	}
	const key = 62.0
	x := b.text(d.types.cut(d.board.Mark, d.width()/3, s), 0, 7.5, s) + 6
	text := d.board.Species + ", " + d.roughSize()
	if d.current != "" {
		text = "blank " + d.current + " · " + text
	}
	b.text(d.types.cut(text, d.width()-key-x, plain()), x, 7.5, plain())
	d.smallKey(b, d.width()-key+2)
	b.line(Point{0, 11.5}, Point{d.width(), 11.5}, hairline)
	b.height = 14
	return b
}

// smallKey shows how a piece lies: face A up, the butt left, the reference edge
// toward the reader.
func (d *boardSheet) smallKey(b *block, x float64) {
	x = b.text("butt", x, 5.6, plain()) + 1.5
	wood := Box{x, 1, d.width(), 7.4}
	b.box(wood, White, Black, middleLine)
	text := "A up, ref. edge below"
	b.text(text, wood.X1+(wood.w()-d.types.width(text, plain()))/2, 5.9, plain())
	b.referenceEdge(wood)
}

// assumptions are the things that the plan took for granted and a person should
// know before the first cut.
func (d *boardSheet) assumptions() *block {
	b := newBlock(d.types)
	s := d.shop
	text := []string{fmt.Sprintf("Kerfs: rip %s, crosscut %s, rough rip %s.",
		d.reading(s.RipKerf), d.reading(s.CrosscutKerf), d.reading(s.RoughRipKerf))}
	if s.JointerWidth == 0 || s.PlanerWidth == 0 {
		text = append(text, "No machine widths given; widest blank "+d.reading(d.up(d.widestBlank()))+".")
	}
	if d.board.Bow == 0 && d.board.Crook == 0 && d.board.Cup == 0 && d.board.Twist == 0 {
		text = append(text, "No warp marked: taken as flat and straight.")
	}
	if d.about() {
		text = append(text, "~ means about: to the nearest mark of the rule.")
	}
	if over := d.allowances(); len(over) > 0 {
		text = append(text, "Parts are cut over: "+strings.Join(over, ", ")+".")
	}
	y := b.lines(strings.Join(text, " "), 0, textCap+0.5, d.width(), plain())
	b.height = y + 4
	return b
}

// allowances are what parts are cut larger than finished by.
func (d *boardSheet) allowances() []string {
	var over []string
	for _, a := range []struct {
		by   layout.Length
		what string
	}{{d.shop.LengthAllowance, " long"}, {d.shop.WidthAllowance, " wide"}, {d.shop.ThicknessAllowance, " thick"}} {
		if a.by > 0 {
			over = append(over, held(d.reading(a.by)+a.what))
		}
	}
	return over
}

// about reports whether a setting or a size of the sheet is no mark of the rule.
func (d *boardSheet) about() bool {
	return slices.ContainsFunc(d.work.Steps, func(s steps.Step) bool {
		return slices.ContainsFunc([]layout.Length{
			s.Setting, s.OffTape.Length, s.RestTape.Length, s.OffSize.Width, s.OffTape.Butt, s.RestTape.Butt,
		}, func(l layout.Length) bool { return strings.HasPrefix(d.reading(l), "~") })
	})
}

// widestBlank is the widest wood that goes over the machines.
func (d *boardSheet) widestBlank() layout.Length {
	var widest layout.Length
	for _, blank := range d.work.Blanks {
		r := blank.Node.Rect
		widest = max(widest, min(r.Y2, max(d.board.Far(r.X1), d.board.Far(r.X2)))-r.Y1)
	}
	return widest
}
