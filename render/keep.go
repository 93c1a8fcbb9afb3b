package render

import (
	"strings"

	"sawbill/layout"
	"sawbill/layout/steps"
)

// keeps describes the offcut of a step: what counts of its size, how thick it
// is, and what it holds.
func (d *boardSheet) keeps(s *steps.Step, thickness layout.Length) string {
	text := "KEEP " + s.Offcut
	leaf := offcutLeaf(d.work.Plan.Root, s.Offcut)
	text += ", " + d.cleanSize(leaf) + held(" x "+d.reading(thickness)) + " " + d.surface(s)
	if with := defectsIn(d.board, leaf.Rect); with != "" {
		text += ", " + with
	}
	return text
}

// surface says whether the faces of a piece are planed.
func (d *boardSheet) surface(s *steps.Step) string {
	if s.Blank == "" && d.board.Faces == layout.FacesRough {
		return "rough"
	}
	return "planed"
}

// cleanSize is the length and width that count of an offcut.
func (d *boardSheet) cleanSize(leaf *layout.Node) string {
	clean := d.board.CleanOffcut(leaf.Rect)
	d.work.Plan.Root.LeavesByBlank(func(blank, other *layout.Node) {
		if other == leaf {
			clean = d.board.CleanOffcutIn(blank.Length(), leaf.Rect)
		}
	})
	return d.size(d.down(clean.Length()), d.down(clean.Width()))
}

// defectsIn names the defects in a piece, each kind once: with knot, sap.
func defectsIn(b *layout.Board, r layout.Rect) string {
	var kinds []string
	seen := map[layout.Kind]bool{}
	for _, defect := range b.Defects {
		if defect.Rect.Overlaps(r) && !seen[defect.Kind] {
			seen[defect.Kind] = true
			kinds = append(kinds, held(steps.Word(defect.Kind)))
		}
	}
	if len(kinds) == 0 {
		return ""
	}
	return "with " + strings.Join(kinds, ", ")
}
