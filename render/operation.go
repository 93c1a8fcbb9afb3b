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
		return d.planing(s)
	case s.Operation == steps.Resaw:
		return "resaw, planed face to the fence"
	case s.Operation == steps.RoughRip:
		return "rough rip, snapped line, from the " + d.roughSide(s)
	case s.Down != layout.Through:
		return d.tableRip(s)
	}
	text := string(s.Operation) + ", " + d.side(s)
	if s.Blank != "" && (s.From == steps.Tip || s.From == steps.Far) {
		text += ": turn end for end, face A up"
	}
	return text
}

// planing says why a piece goes through the planer, or over the jointer.
func (d *boardSheet) planing(s *steps.Step) string {
	switch {
	case s.Final:
		return "final planing, after a rest"
	case s.Jointed:
		return "joint the sawn face flat" + d.takes()
	case s.Resawn != "":
		return "plane the sawn face" + d.takes()
	}
	return "plane thinner"
}

func (d *boardSheet) takes() string { return held(", " + d.reading(d.shop.FaceSkim) + " off") }

// roughSide is the edge that a rough rip is marked from. The corners of a hollow
// edge stand on the line that everything across is measured from.
func (d *boardSheet) roughSide(s *steps.Step) string {
	if d.board.Crook > 0 && s.From == steps.Reference {
		return "corners of the hollow edge"
	}
	return d.side(s)
}

// tableRip is a rip for which it matters how the piece lies on the table.
func (d *boardSheet) tableRip(s *steps.Step) string {
	text := "rip square"
	if s.Angle > 0 {
		text = held("bevel rip " + degrees(s.Angle))
	}
	text += ", " + held("face "+s.Down.String()+" down") + ", " + d.side(s)
	if s.From == steps.Reference && leaning(s) {
		text += ", fence without a gap"
	}
	return text
}

// leaning reports whether the edge that lies against the fence leans.
func leaning(s *steps.Step) bool { return s.WholeSection.A.Lo != s.WholeSection.B.Lo }

// degrees is an angle of the blade from square.
func degrees(a layout.Angle) string { return a.String() + "°" }

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
	switch hollow := blank.Truing.Hollow; {
	case hollow > 0:
		todo = append(todo, fmt.Sprintf("joint the hollow reference edge straight, %s off its ends and %s off its middle",
			d.reading(d.up(joint)), d.reading(blank.Truing.Losses.Near)))
	case joint > 0:
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
