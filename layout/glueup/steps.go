package glueup

import (
	"fmt"

	"sawbill/layout"
	"sawbill/layout/steps"
)

// Step is one step of the work between the rips and the finish.
type Step struct {
	Title string
	// Lines say what to do, one thing each.
	Lines    []string
	Cautions []steps.Caution
	Picture  Picture
	Panel    int // the panel that the picture shows
}

// Picture is what a step needs drawn.
type Picture uint8

// The pictures.
const (
	NoPicture   Picture = iota
	StripEnds           // the strips of a panel side by side, or of a prism, end on
	RowsLaid            // the face with its rows numbered
	SlabCut             // the slab with its slanted cuts
	PlacesLaid          // the face with its slices or blocks
	TrimmedFace         // the face with the trim line
)

// The cautions that only end grain and glue-ups need; the others are those of
// package steps.
const (
	CautionEndGrain steps.Caution = "End grain: never through a thickness planer. Router sled or drum sander; break the edges first."
	CautionSlab     steps.Caution = "End-grain slab: clamp it to a sled with a fence behind the cut; no hand near the blade; no length stop that traps the slice."
)

// clamping is how glue-ups are pressed.
const clamping = "Spread glue on one side of every joint, clamp with cauls above and below, a clamp every 150 mm (6 in) and evenly; leave it as long as the glue says."

// Steps are the steps of the work, in order.
func (w *Work) Steps() []Step {
	var list []Step
	for i := range w.Panels {
		list = append(list, w.ripping(i))
		if w.Panels[i].Form != Alone {
			list = append(list, w.gluing(i))
		}
		list = append(list, w.slicing(i))
	}
	switch {
	case w.Slab != nil:
		list = append(list, w.slab(), w.slanting())
	case w.Rows != nil:
		list = append(list, w.rows())
	default:
		list = append(list, w.places())
	}
	return append(list, w.flattening(), w.trimming())
}

// called is a panel as a sentence names it.
func called(p *Panel) string {
	switch p.Form {
	case Hexagon:
		return "the prism"
	case Alone:
		return "strip " + p.Name
	}
	return "panel " + p.Name
}

func (w *Work) ripping(i int) Step {
	p := &w.Panels[i]
	s := Step{Title: "Strips for " + called(p), Panel: i}
	for _, part := range w.Bill {
		if part.Set != p.Name && !w.spareOf(&part, p) {
			continue
		}
		line := fmt.Sprintf("%s: %d x, planed to %s, ripped to %s", part.Name, part.Quantity, w.Say(part.Thickness), w.Fine(part.Width))
		if part.Bevel > 0 {
			line += fmt.Sprintf(" across the face at %s°", part.Bevel)
		}
		s.Lines = append(s.Lines, line+".")
		s.warn(part.Bevel > 0, steps.CautionBevel)
		s.warn(part.Width < pushStick, steps.CautionPushStick)
		s.warn(part.Width < w.Shop.MinRip, steps.CautionThinWanted)
	}
	if p.Form == Hexagon {
		s.Lines = append(s.Lines, "Both edges of a strip lean the same way: never turn it end for end between its cuts.")
	}
	s.Lines = append(s.Lines, "The plan says how long: "+w.lengths(p)+".")
	return s
}

// pushStick is the width of a rip below which hands stay off the wood.
const pushStick = 6 * layout.Inch

func (s *Step) warn(when bool, c steps.Caution) {
	for _, said := range s.Cautions {
		when = when && said != c
	}
	if when {
		s.Cautions = append(s.Cautions, c)
	}
}

// spareOf reports whether a row of the bill is a spare strip of a panel.
func (w *Work) spareOf(part *layout.Part, p *Panel) bool {
	for _, s := range p.Strips {
		if part.Name == s.Part+" spare" {
			return true
		}
	}
	return false
}

// lengths says what so many slices need: one more slice is one thickness and one
// kerf more.
func (w *Work) lengths(p *Panel) string {
	all := p.Slices + p.Spare
	least := w.LeastSlices()
	text := fmt.Sprintf("%s for %d slices", w.Say(w.StripLength(least)), least)
	switch {
	case least < all:
		return fmt.Sprintf("%s, %s more for each further one, %s for all %d", text,
			w.Say(w.StripLength(2)-w.StripLength(1)), w.Say(w.StripLength(all)), all)
	case least > all:
		return text + ", for shorter strips are too short for the machines"
	}
	return text
}

// LeastSlices is the least number of slices for which a strip is long enough for
// the machines (model section 8): at least 1.
func (w *Work) LeastSlices() int {
	more, step := w.Shop.MinBlank-w.StripLength(1), w.StripLength(2)-w.StripLength(1)
	return 1 + int((max(more, 0)+step-1)/step)
}

func (w *Work) gluing(i int) Step {
	p := &w.Panels[i]
	s := Step{Title: "Glue " + called(p), Picture: StripEnds, Panel: i}
	if p.Form == Hexagon {
		s.Lines = []string{
			"Butt ends together, the three angles of 120° in the middle; mark one flank along its whole length, so that every slice shows which way it lay.",
			"Try it dry: the last joint must close without force. Spread glue, press with bands or tape along the whole length, and check that the ends stay flush.",
		}
		return s
	}
	s.Lines = []string{"Butt ends to one side, in the order of the picture. Draw a triangle across all strips.", clamping}
	if len(p.Sections) > 1 {
		s.Lines = append(s.Lines, fmt.Sprintf(
			"Wider than the planer: glue and plane it in %d parts of %s strips, all to one thickness, and then glue these together with their faces flush.",
			len(p.Sections), counts(p.Sections)))
	}
	s.Lines = append(s.Lines, fmt.Sprintf("Plane it flat to %s, the same for its whole width: this is how high a slice stands in the face.", w.Say(p.Height)))
	return s
}

func counts(list []int) string {
	var words []string
	for _, n := range list {
		words = append(words, fmt.Sprint(n))
	}
	return listOf(words)
}

func (w *Work) slicing(i int) Step {
	p := &w.Panels[i]
	s := Step{Title: "Slice " + called(p), Panel: i}
	s.Lines = []string{
		fmt.Sprintf("Cut %s off the butt end to square it, then slices %s thick: %s.", w.Say(w.Shop.PanelSquare), w.Say(w.Design.SliceThickness()), spares(p)),
		"Check blade and fence for square on waste first: a slice that leans costs its thickness in flattening. Number the slices on the end that was toward the butt, and glue them the same day.",
	}
	s.warn(w.Design.SliceThickness() < w.Shop.MinCrosscut, steps.CautionShort)
	return s
}

// spares says how many slices to cut.
func spares(p *Panel) string {
	if p.Spare == 0 {
		return fmt.Sprintf("%d", p.Slices)
	}
	return fmt.Sprintf("%d, and %d to spare", p.Slices, p.Spare)
}

func (w *Work) rows() Step {
	s := Step{Title: "Lay and glue the face", Picture: RowsLaid}
	s.Lines = []string{
		"Turn all slices end grain up, the numbers on top, in the order of the picture from the near side on.",
	}
	for _, r := range w.Rows {
		if r.Turned {
			s.Lines = append(s.Lines, "Turned: give the slice half a turn as it lies, end grain still up, so that its left end comes to the right.")
			break
		}
	}
	s.Lines = append(s.Lines, clamping+" A fence along one side keeps the rows in line; glue in stages if the glue is quick.")
	return s
}

func (w *Work) slab() Step {
	return Step{Title: "Glue the slab", Lines: []string{
		fmt.Sprintf("%d slices end grain up, none turned, so that the stripes run on: %s wide and at least %s long.",
			w.Slab.Rows, w.Say(w.Slab.Width), w.sayUp(w.Slab.Length)),
		clamping,
		"Flatten both faces just enough that the slab lies flat either way up.",
	}, Cautions: []steps.Caution{CautionEndGrain}}
}

func (w *Work) slanting() Step {
	b := w.Slab
	return Step{Title: "Cut the slab at an angle and glue the face", Picture: SlabCut, Lines: []string{
		fmt.Sprintf("Set the fence of the sled to %s° from square across the stripes. Cut off the first corner, then %d slices %s wide, measured at right angles to the cut: %s from one to the next along the edge of the slab.",
			b.Angle, b.Pieces, w.Say(b.PieceWidth), w.Fine(b.Pitch)),
		fmt.Sprintf("The two corners together take %s of the length and stay as waste.", w.sayUp(b.Lost)),
		"Turn every other slice over, face down, and slide it along until its stripes meet those of its neighbour at the joint.",
		clamping,
	}, Cautions: []steps.Caution{CautionSlab}}
}

func (w *Work) places() Step {
	s := Step{Title: "Lay and glue the face", Picture: PlacesLaid}
	if w.Panels[0].Form == Hexagon {
		s.Lines = []string{
			"All slices end grain up and the same end up, each with its mark to the same side, as in the picture.",
			"Glue them to rows first, then the rows to the face, on a flat board with wax or paper. What stands out beyond the trim stays until the end.",
		}
		return s
	}
	s.Lines = []string{
		"All blocks end grain up, as in the picture, from one corner on.",
		"Glue a few blocks at a time against two fences at a right angle, on a flat board with wax or paper.",
	}
	return s
}

func (w *Work) flattening() Step {
	return Step{Title: "Flatten both faces", Lines: []string{
		fmt.Sprintf("From %s down to %s: at most %s off each face, in light passes.",
			w.Say(w.Design.SliceThickness()), w.Say(w.Design.Thickness), w.Say(w.Design.Flatten)),
	}, Cautions: []steps.Caution{CautionEndGrain}}
}

func (w *Work) trimming() Step {
	f := w.Face.Finished
	cut := 0
	for i := range w.Face.Blocks {
		if w.Face.Cut(&w.Face.Blocks[i]) {
			cut++
		}
	}
	s := Step{Title: "Trim the face", Picture: TrimmedFace, Lines: []string{
		fmt.Sprintf("To %s x %s, square. The trim line cuts %d of %d blocks.", w.Say(f.Length()), w.Say(f.Width()), cut, len(w.Face.Blocks)),
	}, Cautions: []steps.Caution{CautionSlab}}
	if d := w.Design; d.Frame != nil {
		s.Lines = append(s.Lines, fmt.Sprintf("Frame: two pieces %s long and two %s long, %s wide.",
			w.Say(f.Length()+2*d.Frame.Width), w.Say(f.Width()), w.Say(d.Frame.Width)))
	}
	return s
}
