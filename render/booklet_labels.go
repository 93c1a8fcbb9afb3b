package render

import (
	"fmt"

	"sawbill/layout"
	"sawbill/layout/steps"
)

// slip is what a label to cut out says: what is written on the wood, large, and
// what it is.
type slip struct {
	name  string
	lines []string
}

const (
	slipsAcross = 4
	slipHeight  = 30.0
)

// labels are for every finished piece and every offcut to keep.
func (b *booklet) labels() []Page {
	slips := b.slips()
	if len(slips) == 0 {
		return nil
	}
	s := b.newSheet()
	head := newBlock(s.types)
	head.height = head.lines("Labels to cut out: tape or pin each to its piece as it comes off the saw.", 0, textCap+1, s.width(), strong()) + 3
	s.put(head)
	for len(slips) > 0 {
		n := min(slipsAcross, len(slips))
		s.add(b.slipRow(s, slips[:n]), 0)
		slips = slips[n:]
	}
	return s.finish("labels")
}

func (b *booklet) slips() []slip {
	var parts, kept []slip
	for _, sheet := range b.sheets {
		for i := range sheet.Steps {
			st := &sheet.Steps[i]
			if st.Part != "" {
				parts = append(parts, b.partSlip(st))
			}
			if st.Offcut != "" {
				kept = append(kept, b.offcutSlip(sheet, st))
			}
		}
	}
	return append(parts, kept...)
}

func (b *booklet) partSlip(s *steps.Step) slip {
	lines := []string{s.Part, b.size(s.OffSize.Length, s.OffSize.Width, s.OffSize.Thickness), "from " + s.Board + ", step " + fmt.Sprint(s.Number)}
	if s.Count.Spare {
		lines[0] = "spare " + s.Part
	}
	if s.Show != layout.Through {
		lines[2] += ", show " + s.Show.String()
	}
	if s.Slices > 0 { // a strip, to be put with those that are as long
		lines[1] = b.reading(s.OffSize.Length) + " long, " + counted(s.Slices, "slice")
	}
	return slip{s.Off, lines}
}

func (b *booklet) offcutSlip(sheet *steps.Sheet, s *steps.Step) slip {
	d := &boardSheet{words: b.words, board: sheet.Board, work: sheet}
	leaf := offcutLeaf(sheet.Plan.Root, s.Offcut)
	thickness := s.OffSize.Thickness
	if s.KeepsRest {
		thickness = s.RestSize.Thickness
	}
	lines := []string{
		"keep " + d.surface(s) + " " + sheet.Board.Species, // what is cut short is the wood, which can be seen
		d.cleanSize(leaf) + " x " + b.reading(thickness),
		"from " + s.Board,
	}
	if with := defectsIn(sheet.Board, leaf.Rect); with != "" {
		lines[2] = with // the name already says which board
	}
	return slip{s.Offcut, lines}
}

// slipRow is one row of labels with the lines to cut along.
func (b *booklet) slipRow(s *sheet, slips []slip) *block {
	row := newBlock(s.types)
	w := s.width() / slipsAcross
	for i, t := range slips {
		x := float64(i) * w
		row.dashedBox(Box{x, 0, x + w, slipHeight})
		look := style{7, true}
		for look.cap > textCap && s.types.width(t.name, look) > w-5 {
			look.cap -= 0.25
		}
		name := s.types.wrap(t.name, w-5, look)
		name = name[max(0, len(name)-2):] // the end sets a name apart
		for j, line := range name {
			row.text(line, x+2.5, 9.5-5.2*float64(len(name)-1-j), look)
		}
		for j, line := range t.lines {
			row.text(s.types.cut(line, w-5, plain()), x+2.5, 16+5.2*float64(j), plain())
		}
	}
	row.height = slipHeight
	return row
}

// dashedBox is a box to cut along.
func (s *Scene) dashedBox(b Box) {
	c := b.corners()
	for i := range c {
		s.line(c[i], c[(i+1)%len(c)], hairline, 2, 1.5)
	}
}
