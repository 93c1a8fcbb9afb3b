package render

import (
	"fmt"

	"sawbill/layout"
	"sawbill/layout/steps"
)

// folds reports whether a step only names what the step before it has left, so
// that it stands in the same row.
func folds(before, s *steps.Step) bool {
	return s.NoCut && s.Part != "" && before.Rest == s.Piece && len(s.Cautions) == 0
}

// row is the first step of a list, and the next one too where that folds into
// it. It says how many steps it takes.
func (d *boardSheet) row(list []steps.Step) (*block, int) {
	s, taken, x := &list[0], 1, leftColumn
	b := newBlock(d.types)
	const top = 0.7
	base := top + (badgeHeight+textCap)/2
	b.box(Box{0.2, top + 0.3, 0.2 + tickSize, top + 0.3 + tickSize}, White, Black, middleLine)
	b.badge(s.Number, numberColumn, top)
	off, left := d.comesOff(s)
	if len(list) > 1 && folds(s, &list[1]) {
		taken = 2
		b.badge(list[1].Number, x, top)
		x += b.types.badgeWidth(list[1].Number) + 1
		left = "= " + d.result(&list[1])
	}
	if list[taken-1].Done {
		b.tick(Box{0.2, top + 0.3, 0.2 + tickSize, top + 0.3 + tickSize})
	}
	bottom := base
	for _, c := range []struct {
		x, width float64
		text     string
		style    style
	}{
		{pieceColumn, doColumn - pieceColumn, d.types.breakName(chalk(s.Piece), doColumn-pieceColumn-2), strong()},
		{doColumn, setColumn - doColumn, d.operation(s), plain()},
		{setColumn, offColumn - setColumn, d.reading(s.Setting), d.settingStyle(s)},
		{offColumn, leftColumn - offColumn, off, plain()},
		{x, d.width() - x, left, plain()},
	} {
		bottom = max(bottom, b.lines(c.text, c.x, base, c.width-2, c.style))
	}
	b.height = bottom + 1.5
	b.line(Point{0, b.height}, Point{d.width(), b.height}, hairline)
	return b, taken
}

// settingStyle is the largest in which a setting stays on one line.
func (d *boardSheet) settingStyle(s *steps.Step) style {
	look := style{boldCap, true}
	for look.cap > textCap && d.types.width(d.reading(s.Setting), look) > offColumn-setColumn-2 {
		look.cap = max(textCap, look.cap-0.1)
	}
	return look
}

// comesOff says what a step takes off and what is left. In the rough cuts what
// lies beyond the kerf comes off, and the board is left; later it is the other
// way round.
func (d *boardSheet) comesOff(s *steps.Step) (off, left string) {
	if s.NoCut || s.Operation == steps.True || s.Operation == steps.Plane {
		return d.result(s), ""
	}
	off, left = d.result(s), d.remains(s)
	if s.Blank == "" && (s.From == steps.Butt || s.From == steps.Reference) && s.Off != "" {
		return left, off
	}
	return off, left
}

// result describes the piece between stop and blade.
func (d *boardSheet) result(s *steps.Step) string {
	size := d.size(s.OffSize.Length, s.OffSize.Width, s.OffSize.Thickness)
	if s.OnEdge {
		size += held(", on edge")
	}
	switch {
	case s.Part != "" && s.Show != layout.Through:
		return fmt.Sprintf("%s %s, %s, %s, %s", s.Off, s.Part, size, held(s.Count.String()), held("show face "+s.Show.String()))
	case s.Part != "":
		return fmt.Sprintf("%s %s, %s, %s", s.Off, s.Part, size, held(s.Count.String()))
	case s.Offcut != "" && !s.KeepsRest:
		return d.keeps(s, s.OffSize.Thickness)
	case s.Off != "" && s.Operation == steps.True:
		return chalk(s.Off) + ", " + d.tapeLong(s.OffTape) + ", " + d.tapeWide(s.OffTape)
	}
	if s.Resawn != "" {
		return d.thick(s.Off, s.OffSize)
	}
	if !parallel(s.OffSection) {
		return named(s.Off) + ", " + d.faceWidths(s.OffSection)
	}
	return d.measured(s, s.Off, s.OffTape)
}

// thick names a slice of wood by its thickness.
func (w words) thick(id string, size steps.Size) string {
	return named(id) + ", " + held(w.reading(size.Thickness)+" thick")
}

// parallel reports whether a piece is as wide on face B as on face A.
func parallel(s steps.Section) bool { return s.A.Len() == s.B.Len() }

// faceWidths is how wide a piece is on its two faces.
func (w words) faceWidths(s steps.Section) string {
	wide := func(l layout.Length, f string) string { return held(w.reading(l) + " wide on " + f) }
	switch a, b := s.A.Len(), s.B.Len(); {
	case a < steps.Shaving && b < steps.Shaving:
		return "a shaving"
	case a < steps.Shaving:
		return "wedge, " + wide(b, "B")
	case b < steps.Shaving:
		return "wedge, " + wide(a, "A")
	default:
		return wide(a, "A") + ", " + held(w.reading(b)+" on B")
	}
}

// named is a piece by its chalk name, or waste.
func named(id string) string {
	if id == "" {
		return "waste"
	}
	return chalk(id)
}

// measured names a piece, or says that it is waste, with the size that the cut
// gave it.
func (d *boardSheet) measured(s *steps.Step, id string, t steps.Tape) string {
	what := "waste"
	switch size := t.Across(s.Operation); {
	case id != "":
		what = chalk(id)
	case size < steps.Shaving:
		return "a shaving"
	}
	if s.Operation == steps.Crosscut || s.Operation == steps.Plane {
		return what + ", " + d.tapeLong(t)
	}
	return what + ", " + d.tapeWide(t)
}

func (w words) tapeLong(t steps.Tape) string { return held(w.reading(t.Length) + " long") }

// tapeWide is the width, or those at butt and tip where the piece tapers. A tapered edge ends at
// no mark: what a rule shows of it is given.
func (w words) tapeWide(t steps.Tape) string {
	if t.Butt == t.Tip {
		return held(w.reading(t.Butt) + " wide")
	}
	return held(w.reading(w.down(t.Butt)) + " to " + w.reading(w.down(t.Tip)) + " wide")
}

// remains describes what lies beyond the kerf.
func (d *boardSheet) remains(s *steps.Step) string {
	switch {
	case s.RestTape == (steps.Tape{}):
		return "nothing"
	case s.Rest != "" && s.KeepsRest:
		return d.keeps(s, s.RestSize.Thickness)
	case s.Resawn != "":
		return d.thick(s.Rest, s.RestSize)
	case !parallel(s.RestSection):
		return named(s.Rest) + ", " + d.faceWidths(s.RestSection)
	}
	return d.measured(s, s.Rest, s.RestTape)
}
