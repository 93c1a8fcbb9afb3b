package render

// tick crosses a box off: what it stands for is done.
func (b *block) tick(box Box) {
	b.line(Point{box.X1, box.Y1}, Point{box.X2, box.Y2}, middleLine)
	b.line(Point{box.X1, box.Y2}, Point{box.X2, box.Y1}, middleLine)
}
