package glueup

import (
	"fmt"
	"math"

	"sawbill/layout"
)

// Cubes is a face of rhombi with angles of 60 and 120 degrees in three woods, which
// looks like stacked cubes. Three strips make a hexagonal prism, and the face is
// laid from slices of it.
type Cubes struct {
	// StripThickness is what the strips are planed to: half a hexagon across its flats.
	StripThickness layout.Length
	// Top, Left and Right are the letters of the three woods, seen with a corner of
	// the hexagon away from you.
	Top, Left, Right string
}

// cubeBevel is the tilt of the blade from square for rhombi of 60 and 120 degrees.
const cubeBevel = 30 * layout.Degree

// Name is the word of the design file.
func (k *Cubes) Name() string { return "cubes" }

// Side is the side of a rhombus, and the width of a strip across its face:
//
//	side = thickness / cos 30°
//
// rounded to the nearest nanometre.
func (k *Cubes) Side() layout.Length { return round(k.side()) }

func (k *Cubes) side() float64 { return 2 * float64(k.StripThickness) / math.Sqrt(3) }

func (k *Cubes) check(c *checker) {
	c.letter("cubes.top", k.Top)
	c.letter("cubes.left", k.Left)
	c.letter("cubes.right", k.Right)
	if c.size("cubes.strip_thickness", k.StripThickness) && c.face() {
		c.pieces("cubes.strip_thickness", k.StripThickness)
	}
}

// lay covers the face with the fewest hexagons, their corners away from you or to
// the side, whichever takes fewer.
func (k *Cubes) lay(w *Work) {
	w.Face.Finished = layout.Rect{X2: w.Design.Length, Y2: w.Design.Width}
	w.Face.Sawn = w.Design.sawn()
	a, slices, sideways := k.best(w.Face.Sawn)
	w.Face.Blocks = a.blocks()
	if sideways {
		turn(w.Face.Blocks, w.Face.Sawn.X1+w.Face.Sawn.X2)
	}
	prism := Panel{Name: "prism", Form: Hexagon, Height: 2 * k.StripThickness, Slices: slices}
	for _, wood := range []string{k.Top, k.Right, k.Left} {
		prism.Strips = append(prism.Strips, Strip{Wood: wood, Thickness: k.StripThickness, Width: k.Side(), Bevel: cubeBevel})
	}
	w.Panels = []Panel{prism}
	k.note(w, slices, sideways)
}

// cover is a tiling laid over an area.
type cover struct {
	tiling tiling
	origin vec
	tiles  []tile
	over   area
}

func (c cover) blocks() []Block { return blocks(c.tiling, c.origin, c.tiles, c.over) }

// best is the better of the two ways in which hexagons cover a rectangle; sideways,
// the cover is of the rectangle with its length and width exchanged.
func (k *Cubes) best(r layout.Rect) (c cover, slices int, sideways bool) {
	up, side := k.over(r), k.over(exchanged(r))
	if len(side.tiles) < len(up.tiles) {
		return side, len(side.tiles), true
	}
	return up, len(up.tiles), false
}

func exchanged(r layout.Rect) layout.Rect { return layout.Rect{X1: r.Y1, X2: r.Y2, Y1: r.X1, Y2: r.X2} }

func (k *Cubes) hexagons() hexagons { return hexagons{float64(k.StripThickness), k.side(), k} }

func (k *Cubes) over(r layout.Rect) cover {
	c := cover{tiling: k.hexagons(), over: areaOf(r)}
	c.origin, c.tiles = fewest(c.tiling, c.over)
	return c
}

// turn turns blocks by a right angle, so that what lay along y lies along x from the
// right to the left; sum is that of the two ends of the face along x. A turn, unlike
// an exchange of x and y, leaves the woods of a prism in their order.
func turn(blocks []Block, sum layout.Length) {
	for _, b := range blocks {
		for i, c := range b.Corners {
			b.Corners[i] = Corner{sum - c.Y, c.X}
		}
	}
}

func (k *Cubes) note(w *Work, slices int, sideways bool) {
	stand := "a corner away from you"
	if sideways {
		stand = "a corner to the side"
	}
	w.Notes = append(w.Notes,
		fmt.Sprintf("The hexagons lie with %s: so %d slices of the prism cover the face, and the trim takes %.0f%% of them.",
			stand, slices, 100*k.waste(w.Face.Finished, slices)),
		fmt.Sprintf("Rip at %s°, %s across the face between the edges. An error of the blade of 0.1° on every edge opens the last joint of a prism by %.2f mm; for at most 0.1 mm the blade must be true to %.2f°: set it with a digital gauge and try it on waste.",
			cubeBevel, w.Fine(k.Side()), k.gap(0.1), 0.1*0.1/k.gap(0.1)))
	for _, s := range k.nearby(w.Face.Finished, w.Design.Trim) {
		w.Notes = append(w.Notes, fmt.Sprintf("A face of %s x %s would take %d slices and waste %.0f%%.",
			w.Say(s.length), w.Say(s.width), s.slices, 100*s.waste))
	}
}

// gap is how far, in millimetres, the last joint of a prism opens when every edge
// is off by so many degrees: six edges of length side turn the last one by six times
// half the error, so about 3 * side * error, the error in radians.
func (k *Cubes) gap(degrees float64) float64 {
	return 3 * k.side() / float64(layout.Millimetre) * degrees * math.Pi / 180
}

// waste is the share of so many hexagons that a face does not use. A hexagon has an
// area of 2 * sqrt(3) * thickness².
func (k *Cubes) waste(face layout.Rect, slices int) float64 {
	t := float64(k.StripThickness)
	return 1 - float64(face.Length())*float64(face.Width())/(float64(slices)*2*math.Sqrt(3)*t*t)
}
