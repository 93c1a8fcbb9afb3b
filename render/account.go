package render

import (
	"fmt"

	"sawbill/layout"
)

// share is what one use takes of all the wood, and how the bar shows it.
type share struct {
	name   string
	volume float64
	fill   Ink
	angles []float64
}

func shares(a layout.Account) []share {
	return []share{
		{"parts", a.Parts, White, nil},
		{"planing", a.Planing, White, []float64{0}},
		{"offcuts kept", a.Offcuts, OffcutTone, nil},
		{"kerf", a.Kerf, Black, nil},
		{"edges and ends", a.Edges, White, []float64{45}},
		{"defects", a.Defects, White, []float64{45, 135}},
		{"scrap", a.Scrap, WasteTone, nil},
	}
}

// account draws where the wood of all boards goes, as a bar with a word and a
// figure for every part of it.
func (j *jobSheet) account() *block {
	b := newBlock(j.types)
	b.lines("Where the wood goes", 0, textCap+1.5, j.width(), style{textCap + 0.7, true})
	var sum layout.Account
	for _, bp := range j.plan.Boards {
		sum = sum.Plus(bp.Account)
	}
	if sum.Sum() <= 0 {
		b.lines("Nothing is cut.", 0, textCap+8, j.width(), plain())
		b.height = textCap + 12
		return b
	}
	const top, high, right = 8.0, 12.0, 42.0
	bar := Box{0.5, top, j.width() - right, top + high}
	var tags []tag
	x := bar.X1
	for _, s := range shares(sum) {
		part := s.volume / sum.Sum()
		if part <= 0 {
			continue
		}
		piece := Box{x, bar.Y1, x + part*bar.w(), bar.Y2}
		b.box(piece, s.fill, NoInk, 0)
		for _, angle := range s.angles {
			b.hatch(piece, angle, 1.6, nil)
		}
		b.box(piece, NoInk, Black, thinLine)
		tags = append(tags, tag{
			at: (piece.X1 + piece.X2) / 2, tip: high/4 + 1, text: fmt.Sprintf("%s %.1f%%", s.name, 100*part),
		})
		x = piece.X2
	}
	b.box(bar, NoInk, Black, middleLine)
	names := j.types.stagger(tags, 0, j.width())
	b.below(names, bar.Y2+1)
	b.height = bar.Y2 + 1 + names.height() + 6
	return b
}
