package render

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
