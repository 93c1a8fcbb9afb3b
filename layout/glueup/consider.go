package glueup

import (
	"fmt"
	"slices"

	"sawbill/layout"
)

// unlike is how many times as much as another a wood may move before gluing them
// side by side is warned of: a rule of thumb of ours. The figures that it compares
// are those for flatsawn wood.
const unlike = 1.5

// consider adds what the woods and the sizes have to say.
func (w *Work) consider() {
	known := w.knownWoods()
	w.considerMovement(known)
	w.considerUnlike(known)
	w.considerFood(known)
	w.considerDust(known)
	if w.Design.Frame != nil {
		w.Warnings = append(w.Warnings, "A frame of long grain around end grain: the frame keeps its length while the face within it swells and shrinks, and one of them cracks. Leave the frame off, or make it of end grain, as cells of the design.")
	}
	w.considerPlaner()
	w.considerFew()
}

// used lists the letters that the face, or its frame, shows.
func (w *Work) used() []string {
	var list []string
	for _, letter := range w.Design.Letters() {
		inFace := slices.ContainsFunc(w.Face.Blocks, func(b Block) bool { return b.Wood == letter })
		if inFace || w.Design.Frame != nil && w.Design.Frame.Wood == letter {
			list = append(list, letter)
		}
	}
	return list
}

// knownWoods are the woods of the design that the table holds; of the others, and of
// letters that stand nowhere, it makes a note.
func (w *Work) knownWoods() []Wood {
	var known []Wood
	used := w.used()
	for _, letter := range w.Design.Letters() {
		wood, ok := WoodOf(w.Species(letter))
		switch {
		case !slices.Contains(used, letter):
			w.Warnings = append(w.Warnings, fmt.Sprintf("%s (%s) stands in [woods] but nowhere in the face.", w.Species(letter), letter))
		case !ok:
			w.Notes = append(w.Notes, fmt.Sprintf("Of %s the table of woods knows nothing: find out how it moves, whether its pores are open and whether its dust sensitises.", w.Species(letter)))
		default:
			known = append(known, wood)
		}
	}
	return known
}

// considerMovement says how the face changes with the moisture: as little as if it
// were all of its calmest wood, quartersawn, and as much as if all of its liveliest,
// flatsawn.
func (w *Work) considerMovement(known []Wood) {
	if w.Design.Moisture == 0 {
		return
	}
	along, across := w.Face.Finished.Length(), w.Face.Finished.Width()
	var leastX, mostX, leastY, mostY layout.Length
	for i, wood := range slices.DeleteFunc(slices.Clone(known), still) {
		lx, mx := wood.Movement(along, w.Design.Moisture)
		ly, my := wood.Movement(across, w.Design.Moisture)
		if i == 0 {
			leastX, leastY = lx, ly
		}
		leastX, mostX = min(leastX, lx), max(mostX, mx)
		leastY, mostY = min(leastY, ly), max(mostY, my)
	}
	if mostX == 0 {
		return
	}
	w.Notes = append(w.Notes, fmt.Sprintf(
		"With a change of moisture by %s points the face moves %s over its length and %s over its width, and not in its thickness: fix nothing rigid across it.",
		w.Design.Moisture, w.between(leastX, mostX), w.between(leastY, mostY)))
}

// still reports whether nothing is known of how a wood moves.
func still(w Wood) bool { return w.TangentialMove == 0 }

// between is a range in tenths of a millimetre or sixty-fourths of an inch, rounded
// outward: no more is known of a board.
func (w *Work) between(least, most layout.Length) string {
	step := layout.Millimetre / 10
	if w.Design.Units == layout.Inches {
		step = layout.SixtyFourth
	}
	return w.Say(least/step*step) + " to " + w.Say((most+step-1)/step*step)
}

func (w *Work) considerUnlike(known []Wood) {
	var calm, lively Wood
	for i, wood := range slices.DeleteFunc(slices.Clone(known), still) {
		if i == 0 || wood.TangentialMove < calm.TangentialMove {
			calm = wood
		}
		if i == 0 || wood.TangentialMove > lively.TangentialMove {
			lively = wood
		}
	}
	if float64(lively.TangentialMove) >= unlike*float64(calm.TangentialMove) && calm.TangentialMove > 0 {
		w.Warnings = append(w.Warnings, fmt.Sprintf(
			"%s moves %.1f times as much as %s: the joints between them are strained with every change of moisture.",
			lively.Species, float64(lively.TangentialMove)/float64(calm.TangentialMove), calm.Species))
	}
}

func (w *Work) considerFood(known []Wood) {
	if !w.Design.Food {
		return
	}
	for _, wood := range known {
		if wood.OpenPored {
			w.Warnings = append(w.Warnings, wood.Species+" has open pores: in a face for food they are hard to keep clean.")
		}
		if wood.Sensitising {
			w.Warnings = append(w.Warnings, wood.Species+" is known to sensitise: think again before food lies on it.")
		}
	}
	w.Notes = append(w.Notes,
		"For food: a glue that resists water, cured in full; a finish that is safe for food, such as mineral oil sold for food; no void, check or loose knot in the face. Many kitchens must use hard, close-grained wood: local rules come first.")
}

func (w *Work) considerDust(known []Wood) {
	var names []string
	for _, wood := range known {
		if wood.Sensitising {
			names = append(names, wood.Species)
		}
	}
	if len(names) > 0 {
		w.Notes = append(w.Notes, "Dust of "+listOf(names)+" is known to sensitise: extraction and a mask.")
	}
}

// considerPlaner warns of strips that are wider than the planer by themselves.
func (w *Work) considerPlaner() {
	for i := range w.Panels {
		p := &w.Panels[i]
		for _, s := range p.Strips {
			if limit := w.Shop.PlanerWidth; p.Form == SideBySide && limit > 0 && s.Width > limit {
				w.Warnings = append(w.Warnings, fmt.Sprintf(
					"Panel %s has a strip %s wide, and the planer takes %s: make the cells narrower.", p.Name, w.Say(s.Width), w.Say(limit)))
				break
			}
		}
	}
}

// considerFew tells of panels that give more slices than are needed, because strips
// for fewer would be too short for the machines.
func (w *Work) considerFew() {
	least := w.LeastSlices()
	var few []string
	for i := range w.Panels {
		if p := &w.Panels[i]; p.Slices+p.Spare < least {
			few = append(few, fmt.Sprintf("%d of %s", p.Slices+p.Spare, called(p)))
		}
	}
	if len(few) > 0 {
		w.Notes = append(w.Notes, fmt.Sprintf(
			"Strips for fewer than %d slices are too short for the machines. Wanted are no more than %s: the others are left over. More rows that are alike would use them.",
			least, listOf(few)))
	}
}
