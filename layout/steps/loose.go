package steps

import (
	"fmt"

	"sawbill/layout"
)

// Flies reports whether wood of a kind can be thrown by a blade or by knives.
func Flies(k layout.Kind) bool {
	switch k {
	case layout.Loose, layout.Split, layout.Shake, layout.Bark:
		return true
	}
	return false
}

// Word is what a woodworker calls a kind of defect.
func Word(k layout.Kind) string {
	switch k {
	case layout.Loose:
		return "loose knot"
	case layout.Pin:
		return "pin knot"
	}
	return string(k)
}

// withArticle is the word for a kind in a sentence: a shake, but bark.
func withArticle(k layout.Kind) string {
	if k == layout.Bark {
		return Word(k)
	}
	return "a " + Word(k)
}

// looseNear has a caution for each defect in a blank that a machine could tear
// out.
func (w *worker) looseNear(p piece) []Caution {
	var list []Caution
	wood := w.lying(p)
	for _, d := range w.board.Defects {
		if r := w.reach(d).Intersect(wood); Flies(d.Kind) && !r.Empty() {
			list = append(list, Caution(fmt.Sprintf(
				"Here lies %s, %s, %s: cut it out first or do not machine this face; stand aside.",
				withArticle(d.Kind), w.acrossPlace(r, wood), w.alongPlace(r, wood))))
		}
	}
	return list
}

// looseInCut has a caution for each defect that the kerf of a step passes and
// from which the blade could throw a piece. A crack runs on past its mark, so
// the clearance of the kind counts.
func (w *worker) looseInCut(s *Step, p piece) []Caution {
	var list []Caution
	wood, blade := w.lying(p), s.Kerf
	wood.Y2 += p.far
	if !blade.Empty() {
		blade.Y2 += s.Lean
	}
	for _, d := range w.board.Defects {
		c := w.shop.Clearance[d.Kind]
		r := w.reach(d).Grow(c.Along, c.Across).Intersect(wood)
		if !Flies(d.Kind) && d.Kind != layout.Hole || r.Intersect(blade).Empty() {
			continue
		}
		place := w.acrossPlace(r, wood)
		if s.Operation != Crosscut {
			place = w.alongPlace(r, wood)
		}
		list = append(list, Caution(fmt.Sprintf(
			"The cut passes %s, %s: wedge, knock out or tape it first; stand aside.", withArticle(d.Kind), place)))
	}
	return list
}

// reach is the rectangle of a defect in the frame of the blank in hand: the hollow
// of a crooked edge moves it by up to the shift of the blank.
func (w *worker) reach(d layout.Defect) layout.Rect {
	r := d.Rect
	r.Y2 += w.shift
	return r
}

// covers is the wood of a piece on both faces.
func (w *worker) covers(p piece) layout.Rect {
	r := p.rect
	r.Y2 += p.far
	return r
}

// acrossPlace says where across a piece a defect lies.
func (w *worker) acrossPlace(r, piece layout.Rect) string {
	edge := "the reference edge"
	if piece.Y1 > w.reference() {
		edge = "the edge toward you"
	}
	return fmt.Sprintf("%s to %s from %s", Reading(w.shop, r.Y1-piece.Y1), Reading(w.shop, r.Y2-piece.Y1), edge)
}

// reference is where the reference edge of the board or blank in hand lies.
func (w *worker) reference() layout.Length {
	if w.blank == "" {
		return 0
	}
	return w.sheet.Blanks[len(w.sheet.Blanks)-1].Usable.Y1
}

// alongPlace says where along a piece a defect lies.
func (w *worker) alongPlace(r, piece layout.Rect) string {
	lo, hi := r.X1-piece.X1, r.X2-piece.X1
	switch {
	case lo == 0 && hi == piece.Length():
		return "over its whole length"
	case lo == 0:
		return fmt.Sprintf("at the butt end, %s long", Reading(w.shop, hi))
	case hi == piece.Length():
		return fmt.Sprintf("at the tip end, %s long", Reading(w.shop, hi-lo))
	}
	return fmt.Sprintf("%s to %s from the butt end", Reading(w.shop, lo), Reading(w.shop, hi))
}
