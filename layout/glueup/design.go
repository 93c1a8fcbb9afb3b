package glueup

import "sawbill/layout"

// Design is a finished piece as its maker sees it: so large, so thick, a pattern
// of woods seen from the end of the grain.
type Design struct {
	Name string
	// Units says how lengths of this design are written for people.
	Units layout.Unit
	// Woods holds the species by the letter that stands for it in the pattern.
	Woods map[string]string
	// Thickness is finished, along the grain.
	Thickness layout.Length
	// Length and Width are the finished face. A grid has its size from its cells,
	// less the trim, and leaves them 0.
	Length, Width layout.Length
	// Trim is cut off each side of the face after the last glue-up.
	Trim layout.Length
	// Flatten is taken off each of the two faces of a slice.
	Flatten layout.Length
	// PanelFlatten is taken off a glued panel, off both faces together, before it is
	// sliced.
	PanelFlatten layout.Length
	// SpareSlices are cut of each glue-up beyond what the face needs.
	SpareSlices int
	// SpareStrips are so many more strips of each kind, each for all slices of its
	// glue-up.
	SpareStrips int
	// Food says that food will lie on the face.
	Food bool
	// Moisture is the change of moisture content to reckon with.
	Moisture Moisture
	// Frame is a frame of long grain around the face, or nil.
	Frame   *Frame
	Pattern Pattern
}

// Moisture is a change of moisture content in tenths of a percentage point.
type Moisture int

// Frame is a frame of long grain, as high as the piece is thick.
type Frame struct {
	Width layout.Length
	Wood  string // its letter
}

// Pattern is what the face shows: a *Grid, *Cubes, *Chevron or *Herringbone.
type Pattern interface {
	// Name is the word of the design file.
	Name() string
	// check complains of what cannot be laid.
	check(c *checker)
	// lay lays the blocks and says which glue-ups they come from. It is only called
	// for a pattern that passed its check.
	lay(w *Work)
}

// SliceThickness is what a slice is cut to: finished, and flattened on both faces.
func (d *Design) SliceThickness() layout.Length { return d.Thickness + 2*d.Flatten }

// sawn is the face before the trim, at least: the finished face and the trim on
// every side.
func (d *Design) sawn() layout.Rect {
	return layout.Rect{X2: d.Length, Y2: d.Width}.Grow(d.Trim, d.Trim)
}
