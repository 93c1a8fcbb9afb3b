package render

import (
	"fmt"
	"strings"

	"sawbill/layout"
	"sawbill/layout/steps"
)

// operation says what to do and which side goes to stop, fence or tape.
func (d *boardSheet) operation(s *steps.Step) string {
	switch {
	case s.NoCut:
		return "no cut: it has its size"
	case s.Operation == steps.True:
		return d.truing(s)
	case s.Operation == steps.Plane:
		return "plane thinner"
	}
	text := string(s.Operation) + ", " + d.side(s)
	if s.Blank != "" && (s.From == steps.Tip || s.From == steps.Far) {
		text += ": turn end for end, face A up"
	}
	return text
}

// side names the edge or end that a step is measured from, as it now is: what
// the saw has left is no longer the edge that was jointed.
func (d *boardSheet) side(s *steps.Step) string {
	names := map[steps.From]string{
		steps.Butt: "butt end", steps.Tip: "tip end", steps.Reference: "reference edge", steps.Far: "far edge",
	}
	cut := d.sawnBy(s)
	switch {
	case cut == 0 || s.Blank == "":
		return names[s.From]
	case s.From == steps.Butt || s.From == steps.Tip:
		return fmt.Sprintf("end sawn in step\u00a0%d", cut)
	}
	return fmt.Sprintf("edge sawn in step\u00a0%d", cut)
}

// sawnBy is the number of the step before s whose saw left the side that s is
// measured from, 0 when none did.
func (d *boardSheet) sawnBy(s *steps.Step) int {
	number := 0
	for _, c := range d.stepsOf(s.Blank) {
		if c.Number >= s.Number || c.Kerf.Empty() || c.NoCut {
			continue
		}
		w, k := s.Wood, c.Kerf
		across := k.Y1 < w.Y2 && w.Y1 < k.Y2
		along := k.X1 < w.X2 && w.X1 < k.X2
		crosscut := c.Operation == steps.Crosscut
		if s.From == steps.Butt && crosscut && across && k.X2 == w.X1 || s.From == steps.Tip && crosscut && across && k.X1 == w.X2 ||
			s.From == steps.Reference && !crosscut && along && k.Y2 == w.Y1 || s.From == steps.Far && !crosscut && along && k.Y1 == w.Y2 {
			number = c.Number
		}
	}
	return number
}

// truing says what truing a blank takes, and how much of it goes.
func (d *boardSheet) truing(s *steps.Step) string {
	blank := d.blankOf(s.Blank)
	var todo []string
	switch {
	case d.board.Faces == layout.FacesRough:
		todo = append(todo, "flatten, plane")
	case blank.Thickness < d.board.Thickness:
		todo = append(todo, "plane")
	default:
		todo = append(todo, "leave the planed faces")
	}
	joint, square := blank.Usable.Y1-blank.Node.Y1, blank.Usable.X1-blank.Node.X1
	if joint > 0 {
		todo = append(todo, held("joint off "+d.reading(joint)))
	}
	if square > 0 {
		todo = append(todo, held("square "+d.reading(square)+" off")+" the butt")
	}
	text := "true: " + strings.Join(todo, ", ")
	switch {
	case joint == 0 && square == 0:
		text += "; leave the straight edge, the square ends"
	case joint == 0:
		text += "; leave the straight edge"
	case square == 0:
		text += "; leave the square ends"
	}
	return text
}
