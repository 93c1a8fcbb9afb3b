package render

import (
	"fmt"

	"sawbill/layout"
	"sawbill/layout/steps"
)

// row is one step of the list.
func (d *boardSheet) row(s *steps.Step) *block {
	b := newBlock(d.types)
	const top = 0.7
	base := top + (badgeHeight+textCap)/2
	b.box(Box{0.2, top + 0.3, 0.2 + tickSize, top + 0.3 + tickSize}, White, Black, middleLine)
	b.badge(s.Number, numberColumn, top)
	off, left := d.comesOff(s)
	bottom := base
	for _, c := range []struct {
		x, width float64
		text     string
		style    style
	}{
		{pieceColumn, doColumn - pieceColumn, chalk(s.Piece), strong()},
		{doColumn, setColumn - doColumn, operation(s), plain()},
		{setColumn, offColumn - setColumn, d.reading(s.Setting), style{boldCap, true}},
		{offColumn, leftColumn - offColumn, off, plain()},
		{leftColumn, d.width() - leftColumn, left, plain()},
	} {
		bottom = max(bottom, b.lines(c.text, c.x, base, c.width-2, c.style))
	}
	b.height = bottom + 1.5
	b.line(Point{0, b.height}, Point{d.width(), b.height}, hairline)
	return b
}

func operation(s *steps.Step) string {
	edges := map[steps.From]string{
		steps.Butt: "butt end", steps.Tip: "tip end", steps.Reference: "reference edge", steps.Far: "far edge",
	}
	switch {
	case s.NoCut:
		return "no cut: it has its size"
	case s.Operation == steps.True:
		return "true: flatten, plane, joint, square butt"
	case s.Operation == steps.Plane:
		return "plane thinner"
	}
	return string(s.Operation) + ", " + edges[s.From]
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
	along, across := s.OffSize.Length, s.OffSize.Width
	switch {
	case s.Off == "" && s.Operation == steps.Crosscut:
		return "waste, " + d.reading(along)
	case s.Off == "":
		return "waste, " + d.reading(across)
	case s.Part != "":
		return fmt.Sprintf("%s %s, %s, %s", s.Off, s.Part, d.size(along, across, s.OffSize.Thickness), held(s.Count.String()))
	case s.Offcut != "" && !s.KeepsRest:
		return d.keeps(s.Offcut)
	case s.Operation == steps.True:
		return chalk(s.Off) + ", " + d.size(along, d.down(d.blankOf(s.Blank).LeastWidth)) + " at least"
	case s.Operation == steps.Crosscut || s.Operation == steps.Plane:
		return chalk(s.Off) + ", " + d.reading(along) + " long"
	}
	return chalk(s.Off) + ", " + d.reading(across) + " wide"
}

// keeps gives an offcut with the size that counts of it.
func (d *boardSheet) keeps(mark string) string {
	for _, leaf := range d.work.Plan.Root.Leaves() {
		if leaf.Offcut == mark {
			return "KEEP " + mark + ", " + d.cleanSize(leaf)
		}
	}
	return "KEEP " + mark
}

func (d *boardSheet) cleanSize(leaf *layout.Node) string {
	clean := d.board.CleanOffcut(leaf.Rect)
	return d.size(d.down(clean.Length()), d.down(clean.Width()))
}

// remains describes what lies beyond the kerf.
func (d *boardSheet) remains(s *steps.Step) string {
	across := s.Operation != steps.Crosscut
	size, word := s.RestSize.Length, " long"
	if across {
		size, word = s.RestSize.Width, " wide"
	}
	switch {
	case s.RestSize == (steps.Size{}):
		return "nothing"
	case s.Rest == "":
		return "waste, " + d.reading(size)
	case s.KeepsRest:
		return d.keeps(s.Offcut)
	}
	return chalk(s.Rest) + ", " + d.reading(size) + word
}
