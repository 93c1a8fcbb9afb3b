package render

import (
	"sawbill/layout"
)

// woodOf draws the outline, what becomes of the wood, and its defects.
func (d *boardSheet) woodOf(b *block, f frame) {
	outline := []Point{
		{f.x(0), f.y(0)}, {f.x(d.board.Length), f.y(0)},
		{f.x(d.board.Length), f.y(d.board.TipWidth)}, {f.x(0), f.y(d.board.Width)},
	}
	b.polygon(outline, WasteTone, NoInk, 0)
	for _, n := range d.work.Plan.Root.Children {
		if len(n.Children) > 0 || n.Offcut != "" {
			d.pieceOf(b, f, n)
		} else {
			b.crossWood(d, f, n.Rect)
		}
	}
	for _, r := range roughWaste(d.work.Plan.Root) {
		b.crossWood(d, f, r)
	}
	for _, s := range d.stepsOf("") {
		if !s.NoCut {
			b.kerf(f.box(d.inWood(s.Kerf)))
		}
	}
	for _, defect := range d.board.Defects {
		b.defect(f.box(defect.Rect), defect.Kind)
	}
	b.air(d, f)
	b.polygon(outline, NoInk, Black, heavyLine)
}

// air wipes out what was drawn beyond a tapered far edge.
func (b *block) air(d *boardSheet, f frame) {
	if d.board.Width == d.board.TipWidth {
		return
	}
	const reach = 1.2
	edge := d.taper(f, f.wood)
	top := f.at.Y1 - reach
	b.polygon([]Point{
		edge[3], edge[2], {f.at.X2 + reach, edge[2].Y}, {f.at.X2 + reach, top}, {f.at.X1 - reach, top}, {f.at.X1 - reach, edge[3].Y},
	}, White, NoInk, 0)
}

// pieceOf draws a blank or offcut and the pieces to come, without words.
func (d *boardSheet) pieceOf(b *block, f frame, n *layout.Node) {
	b.polygon(d.taper(f, n.Rect), White, NoInk, 0)
	for _, blank := range d.work.Blanks {
		if n.Rect.Contains(blank.Node.Rect) {
			for _, r := range waste(blank.Node, blank.Usable, d.shop) {
				b.crossWood(d, f, r)
			}
		}
	}
	for _, leaf := range n.Leaves() {
		switch {
		case leaf.Part != "":
			b.box(f.box(leaf.Rect), White, Black, thinLine)
		case leaf.Offcut != "":
			b.polygon(d.taper(f, leaf.Rect), OffcutTone, Black, thinLine)
		}
	}
}

// taper is a rectangle of the board on paper, cut to its wood.
func (d *boardSheet) taper(f frame, r layout.Rect) []Point {
	left, right := max(r.Y1, min(r.Y2, d.board.Far(r.X1))), max(r.Y1, min(r.Y2, d.board.Far(r.X2)))
	return []Point{{f.x(r.X1), f.y(r.Y1)}, {f.x(r.X2), f.y(r.Y1)}, {f.x(r.X2), f.y(right)}, {f.x(r.X1), f.y(left)}}
}

// inWood is a rectangle cut down to where the board is wide enough everywhere.
func (d *boardSheet) inWood(r layout.Rect) layout.Rect {
	along := layout.Span{Lo: min(max(0, r.X1), d.board.Length), Hi: max(0, min(d.board.Length, r.X2))}
	r.X1, r.X2 = along.Lo, along.Hi
	r.Y2 = min(r.Y2, d.board.FarMin(along))
	return r
}

// crossWood crosses out what of a rectangle is wood.
func (b *block) crossWood(d *boardSheet, f frame, r layout.Rect) {
	p := d.taper(f, r)
	b.polygon(p, WasteTone, NoInk, 0)
	b.line(p[0], p[2], thinLine)
	b.line(p[1], p[3], thinLine)
}
