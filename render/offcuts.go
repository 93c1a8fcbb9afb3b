package render

import (
	"sawbill/layout"
	"sawbill/layout/steps"
)

// offcuts lists what is kept, with the size that counts and what it holds.
func (j *jobSheet) offcuts() {
	cols := columns(j.width(), []string{"keep", "species", "size", "thickness", "holds"}, []float64{34, 40, 60, 40, 56})
	var rows [][]string
	for _, sheet := range steps.All(j.plan) {
		d := &boardSheet{words: j.words, board: sheet.Board, work: sheet}
		for i := range sheet.Steps {
			s := &sheet.Steps[i]
			if s.Offcut == "" {
				continue
			}
			thickness := s.OffSize.Thickness
			if s.KeepsRest {
				thickness = s.RestSize.Thickness
			}
			leaf := offcutLeaf(sheet.Plan.Root, s.Offcut)
			rows = append(rows, []string{
				s.Offcut, sheet.Board.Species, d.cleanSize(leaf), j.reading(thickness) + " " + d.surface(s), defectsIn(sheet.Board, leaf.Rect),
			})
		}
	}
	if len(rows) > 0 {
		j.table("Offcuts to keep", cols, rows)
	}
}

// offcutLeaf is the offcut with a mark, nil when there is none.
func offcutLeaf(root *layout.Node, mark string) *layout.Node {
	for _, leaf := range root.Leaves() {
		if leaf.Offcut == mark {
			return leaf
		}
	}
	return nil
}
