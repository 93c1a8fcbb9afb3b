package render

import "fmt"

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
	text := d.shortSize()
	if d.current != "" {
		text = "blank " + d.current + " · " + text
	}
	b.text(d.types.cut(text, d.width()-key-x, plain()), x, 7.5, plain())
	d.smallKey(b, d.width()-key+2)
	b.line(Point{0, 11.5}, Point{d.width(), 11.5}, hairline)
	b.height = 14
	return b
}

// shortSize is the board's species and rough size in few words: the first page
// has said the rest.
func (d *boardSheet) shortSize() string {
	width := d.reading(d.board.Width)
	if d.board.TipWidth != d.board.Width {
		width += " to " + d.reading(d.board.TipWidth)
	}
	return fmt.Sprintf("%s %s x %s x %s, %s", d.board.Species, d.reading(d.board.Thickness), width, d.reading(d.board.Length), d.unit())
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
