package glueup

import (
	"fmt"
	"math"
	"slices"

	"sawbill/layout"
)

// Chevron is a face of zigzag stripes. A slab of straight stripes is glued from
// slices, end grain up; it is cut at an angle into slanted slices, and every other
// one of them is turned over.
type Chevron struct {
	// Angle is that of the blade from square across the stripes, and so that of the
	// stripes in the face from its length.
	Angle layout.Angle
	// SliceWidth is the width of a slanted slice: half a zigzag.
	SliceWidth layout.Length
	// RowHeight is the thickness of the planed panel: how high a slice stands in the
	// slab.
	RowHeight layout.Length
	// Stripes are the letters of the stripes, over and over from the near side on;
	// StripeWidths are their widths, one for all or one for each letter.
	Stripes      string
	StripeWidths []layout.Length
}

// The angles at which slanted slices can be cut and glued.
const (
	minChevron = 5 * layout.Degree
	maxChevron = 45 * layout.Degree
)

// Name is the word of the design file.
func (v *Chevron) Name() string { return "chevron" }

func (v *Chevron) check(c *checker) {
	if v.Angle < minChevron || v.Angle > maxChevron {
		c.fault("chevron.angle", v.Angle.String(), "want degrees from 5 to 45")
	}
	letters := c.letters("chevron.stripes", v.Stripes)
	good := c.size("chevron.slice_width", v.SliceWidth) && c.size("chevron.row_height", v.RowHeight)
	if n := len([]rune(v.Stripes)); len(v.StripeWidths) > 1 && len(v.StripeWidths) != n {
		c.fault("chevron.stripe_width", fmt.Sprintf("%d lengths", len(v.StripeWidths)), fmt.Sprintf("want one for all, or %d", n))
		return
	}
	if c.sizes("chevron.stripe_width", v.StripeWidths) && c.face() && good && letters {
		c.pieces("chevron.slice_width", v.SliceWidth)
		c.pieces("chevron.row_height", v.RowHeight)
		c.pieces("chevron.stripe_width", slices.Min(v.StripeWidths))
	}
}

func (v *Chevron) radians() float64 { return float64(v.Angle) / float64(layout.Degree) * math.Pi / 180 }

// strips are as many stripes as a column needs: of width X across the stripes it is
// X / cos(angle) long, and its slanted ends take SliceWidth * tan(angle) of that.
func (v *Chevron) strips(w *Work) []Strip {
	need := (float64(w.Face.Sawn.Width()) + float64(v.SliceWidth)*math.Tan(v.radians())) * math.Cos(v.radians())
	letters := []rune(v.Stripes)
	widths := each(v.StripeWidths, len(letters))
	var strips []Strip
	var got layout.Length
	for i := 0; float64(got) < need-touch; i++ {
		n := i % len(letters)
		strips = append(strips, Strip{Wood: string(letters[n]), Thickness: v.RowHeight + w.Design.PanelFlatten, Width: widths[n]})
		got += widths[n]
	}
	return strips
}

// lay cuts the slab of which the slanted slices give the face.
//
//	lost   = X * tan(angle)         the corners of a slab X wide
//	pitch  = (slice + kerf) / cos(angle)
//	length = lost + slices * pitch - kerf / cos(angle)
func (v *Chevron) lay(w *Work) {
	w.Face.Finished = layout.Rect{X2: w.Design.Length, Y2: w.Design.Width}
	w.Face.Sawn = w.Design.sawn()
	panel := Panel{Name: "A", Strips: v.strips(w), Height: v.RowHeight}
	pieces := int((w.Face.Sawn.Length() + v.SliceWidth - 1) / v.SliceWidth)
	cos, kerf := math.Cos(v.radians()), float64(w.Shop.CrosscutKerf)
	lost := float64(panel.Width()) * math.Tan(v.radians())
	pitch := (float64(v.SliceWidth) + kerf) / cos
	long := lost + float64(pieces)*pitch - kerf/cos
	panel.Slices = int(math.Ceil((long - touch) / float64(v.RowHeight)))
	for range panel.Slices {
		w.Rows = append(w.Rows, Row{})
	}
	w.Slab = &Slab{
		Width: panel.Width(), Length: layout.Length(math.Ceil(long)), Rows: panel.Slices, Angle: v.Angle,
		Pieces: pieces, PieceWidth: v.SliceWidth, Pitch: round(pitch), Lost: layout.Length(math.Ceil(lost)),
	}
	w.Panels = []Panel{panel}
	w.Face.Blocks = v.blocks(w, panel.Strips, pieces)
	w.Notes = append(w.Notes, fmt.Sprintf(
		"The slab is %s wide and at least %s long; its slanted ends leave %s of that as waste: the wider the face, the more.",
		w.Say(w.Slab.Width), w.sayUp(w.Slab.Length), w.sayUp(w.Slab.Lost)))
}

// blocks are the stripes of every column that reach into the sawn face. What the
// slices cover beyond it lies evenly on either side. Stripe m meets the boundary of
// column i at a height that is computed once for both columns.
func (v *Chevron) blocks(w *Work, strips []Strip, pieces int) []Block {
	sawn := w.Face.Sawn
	left := sawn.X1 - (layout.Length(pieces)*v.SliceWidth-sawn.Length())/2
	rise := round(float64(v.SliceWidth) * math.Tan(v.radians()))
	cos := math.Cos(v.radians())
	bounds := []layout.Length{0}
	var across layout.Length
	for _, s := range strips {
		across += s.Width
		bounds = append(bounds, round(float64(across)/cos))
	}
	// The lowest point that every column covers lies one rise above the first bound.
	low := sawn.Y1 - rise - (bounds[len(strips)]-rise-sawn.Width())/2
	var list []Block
	for i := range pieces {
		x := left + layout.Length(i)*v.SliceWidth
		near, far := low+layout.Length(i%2)*rise, low+layout.Length((i+1)%2)*rise
		for m, s := range strips {
			b := Block{Wood: s.Wood, Corners: []Corner{
				{x, near + bounds[m]}, {x + v.SliceWidth, far + bounds[m]},
				{x + v.SliceWidth, far + bounds[m+1]}, {x, near + bounds[m+1]},
			}}
			if b.reaches(sawn) {
				list = append(list, b)
			}
		}
	}
	return list
}
