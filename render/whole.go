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
	y += names.height() + 1.6 + textCap
	note := "Before you cut: mark face A, an arrow to the butt, and the reference edge on every blank. " +
		"Black flag: the saw passes on this side of the reading. Crossed out: waste. Light grey: keep."
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

// defectTags name the defects in a part of the board, below the drawing.
func (d *boardSheet) defectTags(f frame, wood layout.Rect) []tag {
	var tags []tag
	for _, defect := range d.board.Defects {
		if r := d.inWood(defect.Rect.Intersect(wood)); !r.Empty() {
			g := tagOf(f.box(r), f)
			g.text = defectWord(defect)
			tags = append(tags, g)
		}
	}
	return tags
}
