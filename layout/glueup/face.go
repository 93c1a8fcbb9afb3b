package glueup

import "sawbill/layout"

// Corner is a place on the face.
type Corner struct{ X, Y layout.Length }

// Block is one piece of wood that the face shows, with its end grain up: a convex
// polygon, its corners in order around it.
type Block struct {
	Corners []Corner
	Wood    string // its letter
}

// Face is the face after the last glue-up, with the blocks that trimming cuts as
// they are before.
type Face struct {
	Blocks []Block
	// Finished is the face after the trim; its near left corner is the origin.
	Finished layout.Rect
	// Sawn is what the blocks must cover: Finished and the trim around it.
	Sawn layout.Rect
}

// Bounds is the upright rectangle that a block fills, or lies in.
func (b *Block) Bounds() layout.Rect {
	first := b.Corners[0]
	r := layout.Rect{X1: first.X, X2: first.X, Y1: first.Y, Y2: first.Y}
	for _, c := range b.Corners[1:] {
		r.X1, r.X2 = min(r.X1, c.X), max(r.X2, c.X)
		r.Y1, r.Y2 = min(r.Y1, c.Y), max(r.Y2, c.Y)
	}
	return r
}

// Cut reports whether the trim cuts into a block.
func (f *Face) Cut(b *Block) bool { return !f.Finished.Contains(b.Bounds()) }

// reaches reports whether any of a block lies in a rectangle.
func (b *Block) reaches(r layout.Rect) bool {
	points := make([]vec, len(b.Corners))
	for i, c := range b.Corners {
		points[i] = vec{float64(c.X), float64(c.Y)}
	}
	return reaches(points, areaOf(r))
}
