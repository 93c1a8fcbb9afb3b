package render

import (
	"sawbill/layout"
	"sawbill/layout/steps"
)

const (
	boardLeft  = 13.0 // for the word butt
	boardRight = 30.0 // for the reading at the tip
	bracket    = 7.0  // between board and tape: the names of the blanks
)

// wholeBoard draws the uncut board with the tape for its rough cuts.
func (d *boardSheet) wholeBoard() *block {
	b := newBlock(d.types)
	left, right := boardLeft, d.width()-boardRight
	full := d.board.Frame()
	high := min(max(float64(full.Width())*(right-left)/float64(full.Length()), 26), 58)
	f := newFrame(full, Box{left, 0, right, high})

	tape, blanks := d.roughTape(f)
	readings := d.types.stagger(tape, left, d.width())
	f.at = shift(f.at, 0, readings.height()+3+bracket)
	b.above(readings, f.at.Y1-bracket)
	b.line(Point{left, f.at.Y1 - bracket}, Point{right, f.at.Y1 - bracket}, middleLine)
	d.woodOf(b, f)
	d.brackets(b, f, blanks)
	b.text("butt", 0, f.at.Y2-f.at.h()/2+textCap/2, plain())
	b.text("tip", right+2, f.at.Y2-f.at.h()/2+textCap/2, plain())
	b.referenceEdge(f.at)
	y := f.at.Y2 + 3
	words := d.defectTags(f, full)
	for i := range words {
		words[i].tip += 3
	}
	names := d.types.stagger(words, 0, d.width())
	b.below(names, y)
	d.roughRips(b, f)
	y += names.height() + 1.6 + textCap
	note := "Reference edge toward you. A black flag on a tape shows the side of the reading on which the saw passes. Crossed out: waste. Light grey: keep."
	if f.distorted() {
		note += " Not to scale across."
	}
	b.height = b.lines(note, 0, y+2.5, d.width(), plain()) + 4
	return b
}

// roughTape has the readings of the rough crosscuts from the butt, and the
// blanks to be named between them.
func (d *boardSheet) roughTape(f frame) (tape []tag, blanks []*layout.Node) {
	tape = []tag{{at: f.x(0), text: "0"}}
	for _, s := range d.stepsOf("") {
		if s.Operation != steps.Crosscut || s.NoCut {
			continue
		}
		g := tag{at: f.x(s.Kerf.X1), number: s.Number, text: d.reading(s.Kerf.X1), kerf: 1, tip: bracket}
		if s.From == steps.Tip {
			g.at, g.text, g.kerf = f.x(s.Kerf.X2), d.reading(s.Kerf.X2), -1
		}
		tape = append(tape, g)
	}
	for _, n := range d.work.Plan.Root.Children {
		if len(n.Children) > 0 || n.Offcut != "" {
			if d.types.width(d.bracketText(n), strong())+3 > f.box(n.Rect).w() {
				tape = append(tape, tag{at: f.x((n.X1 + n.X2) / 2), text: d.bracketText(n), tip: bracket})
			} else {
				blanks = append(blanks, n)
			}
		}
	}
	return tape, blanks
}

func (d *boardSheet) bracketText(n *layout.Node) string {
	if n.Offcut != "" {
		return "keep " + n.Offcut
	}
	return d.work.Name(n)
}

// brackets name the blanks between the board and its tape.
func (d *boardSheet) brackets(b *block, f frame, blanks []*layout.Node) {
	for _, n := range blanks {
		at := f.box(n.Rect)
		text := d.bracketText(n)
		if longer := text + ", " + d.reading(n.Length()) + " long"; d.types.width(longer, strong())+8 < at.w() {
			text = longer
		}
		w := d.types.width(text, strong())
		x, y := at.X1+(at.w()-w)/2, f.at.Y1-bracket/2
		b.line(Point{at.X1 + 0.6, y}, Point{x - 1, y}, hairline)
		b.line(Point{x + w + 1, y}, Point{at.X2 - 0.6, y}, hairline)
		b.text(text, x, y+textCap/2, strong())
	}
}

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

// defectTags name the defects in a part of the board, below the drawing.
func (d *boardSheet) defectTags(f frame, wood layout.Rect) []tag {
	var tags []tag
	for _, defect := range d.board.Defects {
		if r := d.inWood(defect.Rect.Intersect(wood)); !r.Empty() {
			at := f.box(r)
			tags = append(tags, tag{
				at: (at.X1 + at.X2) / 2, tip: f.at.Y2 - (at.Y1+at.Y2)/2, text: defectWord(defect),
			})
		}
	}
	return tags
}

// roughRips number the rough rips on their lines.
func (d *boardSheet) roughRips(b *block, f frame) {
	for _, s := range d.stepsOf("") {
		if s.Operation != steps.RoughRip || s.NoCut {
			continue
		}
		line := f.box(s.Kerf)
		text := d.reading(s.Setting)
		w := d.types.badgeWidth(s.Number) + 1 + d.types.width(text, plain())
		y := (line.Y1 + line.Y2) / 2
		at, ok := b.place(Box{line.X1, y - 9, line.X2, y + 9}, w, badgeHeight)
		if ok {
			b.box(Box{at.X, at.Y, at.X + w, at.Y + badgeHeight}.grow(0.4), White, NoInk, 0)
			b.badge(s.Number, at.X, at.Y)
			b.text(text, at.X+d.types.badgeWidth(s.Number)+1, at.Y+(badgeHeight+textCap)/2, plain())
		}
	}
}
