package render

import "sawbill/layout"

// frame is the four pieces of a frame around the finished face, the long ones over
// the ends of the others; none without a frame.
func (d *glueSheet) frame() []layout.Rect {
	frame := d.work.Design.Frame
	if frame == nil {
		return nil
	}
	f, wide := d.work.Face.Finished, frame.Width
	return []layout.Rect{
		{X1: f.X1 - wide, X2: f.X2 + wide, Y1: f.Y1 - wide, Y2: f.Y1},
		{X1: f.X1 - wide, X2: f.X2 + wide, Y1: f.Y2, Y2: f.Y2 + wide},
		{X1: f.X1 - wide, X2: f.X1, Y1: f.Y1, Y2: f.Y2},
		{X1: f.X2, X2: f.X2 + wide, Y1: f.Y1, Y2: f.Y2},
	}
}

// framePiece draws a piece of long grain: in the tone of its wood, with lines along
// the grain, which runs along its longer side.
func (b *block) framePiece(at Box, look woodLook) {
	b.box(at, look.fill, Black, thinLine)
	const lines = 4
	for i := 1; i < lines; i++ {
		t := float64(i) / lines
		if at.w() >= at.h() {
			y := at.Y1 + t*at.h()
			b.line(Point{at.X1, y}, Point{at.X2, y}, hairline)
			continue
		}
		x := at.X1 + t*at.w()
		b.line(Point{x, at.Y1}, Point{x, at.Y2}, hairline)
	}
}
