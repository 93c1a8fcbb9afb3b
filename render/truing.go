package render

import (
	"fmt"
	"strings"

	"sawbill/layout"
	"sawbill/layout/steps"
)

// truingCosts says what of the thickness of a blank goes when it is trued, and
// what it is planed to. It is empty where nothing goes.
func (d *boardSheet) truingCosts(blank *steps.Blank) string {
	t := blank.Truing
	var takes []string
	for _, loss := range []struct {
		what string
		by   layout.Length
	}{{"two rough faces", t.Faces.Skim}, {"bow", t.Faces.Bow}, {"cup", t.Faces.Cup}, {"twist", t.Faces.Twist}} {
		if loss.by > 0 {
			takes = append(takes, held(loss.what+" "+d.reading(d.up(loss.by))))
		}
	}
	if len(takes) == 0 {
		return ""
	}
	return fmt.Sprintf("Truing takes of %s: %s. It can finish to %s and is planed to %s.",
		d.reading(t.From), strings.Join(takes, ", "), d.reading(d.down(t.Finishes)), d.reading(blank.Thickness))
}

// warp lists what is bent about the board, as it was measured over its whole
// length and width; empty when it is flat and straight.
func (d *boardSheet) warp() string {
	var list []string
	for _, gap := range []struct {
		what string
		by   layout.Length
	}{{"bow", d.board.Bow}, {"crook", d.board.Crook}, {"cup", d.board.Cup}, {"twist", d.board.Twist}} {
		if gap.by > 0 {
			list = append(list, held(gap.what+" "+d.reading(gap.by)))
		}
	}
	return strings.Join(list, ", ")
}

// moved is what is marked at a place of a blank of a crooked board: jointed
// straight, the wood there lies up to so much farther from the reference edge.
func (v *blankView) moved(r layout.Rect) layout.Rect {
	r.Y2 += v.board.Shift(v.blank.Node.Length())
	return r
}
