package layout

import (
	"math/bits"
	"strings"
)

// Edges says which edges of a board are already straight.
type Edges uint8

// What the edges column can say.
const (
	EdgesRough Edges = iota
	EdgesOne         // the reference edge is straight
	EdgesBoth
)

// String gives the word of the stock file.
func (e Edges) String() string { return [...]string{"rough", "one", "both"}[e] }

// Faces says whether a board is planed.
type Faces uint8

// What the faces column can say.
const (
	FacesRough Faces = iota
	FacesPlaned
)

// String gives the word of the stock file.
func (f Faces) String() string { return [...]string{"rough", "planed"}[f] }

// Source says where a board is and whether it may be cut.
type Source uint8

// What the source column can say.
const (
	Rack Source = iota // on hand
	Yard               // could be bought
	Hold               // not to be cut
)

// String gives the word of the stock file.
func (s Source) String() string { return [...]string{"rack", "yard", "hold"}[s] }

// Board is one board of the stock, or one that the yard could sell.
type Board struct {
	// Mark is what is written on the board. Base is the mark of its row in the
	// stock file: "M4" for the boards M4.1 and M4.2 of a row with a count of 2,
	// otherwise the same as Mark.
	Mark, Base string
	Species    string
	Thickness  Length // rough, or as measured when Faces is FacesPlaned
	Width      Length // at the butt
	TipWidth   Length // at the tip
	Length     Length
	Cost       Money
	Edges      Edges
	Faces      Faces
	// The largest gap over the whole board; of a twist the lift of the fourth
	// corner.
	Bow, Crook, Cup, Twist Length
	Source                 Source
	Place, Grade, Note     string
	Defects                []Defect
}

// FullWidth is the width of the board at its wider end.
func (b *Board) FullWidth() Length { return max(b.Width, b.TipWidth) }

// Frame is the rectangle that the root of the board's cut tree must be.
func (b *Board) Frame() Rect { return Rect{0, b.Length, 0, b.FullWidth()} }

// Far is the distance of the far edge from the reference edge at x, rounded
// down to a whole nanometre. x lies within the board.
func (b *Board) Far(x Length) Length {
	if b.TipWidth >= b.Width {
		return b.Width + mulDiv(b.TipWidth-b.Width, x, b.Length)
	}
	return b.TipWidth + mulDiv(b.Width-b.TipWidth, b.Length-x, b.Length)
}

// FarMin is the least distance of the far edge over a span, rounded down.
func (b *Board) FarMin(s Span) Length { return min(b.Far(s.Lo), b.Far(s.Hi)) }

// mulDiv is floor(a*b/c) for non-negative a and b, c > 0 and a result that fits.
func mulDiv(a, b, c Length) Length {
	hi, lo := bits.Mul64(uint64(a), uint64(b))
	q, _ := bits.Div64(hi, lo, uint64(c))
	return Length(q)
}

// Volume is the rough volume of the board: thickness by mean width by length.
func (b *Board) Volume() *Volume {
	v := NewVolume(b.Length, b.Width+b.TipWidth, b.Thickness)
	v.nm3.Rsh(&v.nm3, 1) // a length of an odd number of nanometres loses half a cubic nanometre
	return v
}

// SameSpecies compares species as people write them: without regard to case
// and outer spaces.
func SameSpecies(a, b string) bool {
	return strings.EqualFold(strings.TrimSpace(a), strings.TrimSpace(b))
}
