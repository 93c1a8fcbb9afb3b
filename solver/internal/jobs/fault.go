package jobs

import (
	"math/rand"

	"sawbill/layout"
)

// fault draws a defect that begins about x: mostly knots as large as a thumb, now
// and then a check at the butt, or wane, sapwood or a stain. Measures are whole
// steps. The board is nowhere wider than at its butt.
func fault(rng *rand.Rand, b *layout.Board, x, step layout.Length) layout.Defect {
	steps := func(lo, hi int) layout.Length { return layout.Length(lo+rng.Intn(hi-lo+1)) * step }
	far := b.Far(x) / step * step
	across := layout.Length(rng.Intn(int(far/step))) * step
	d := layout.Defect{Kind: layout.Knot, Rect: layout.Rect{X1: x, X2: x + steps(6, 16), Y1: across, Y2: across + steps(6, 14)}}
	switch rng.Intn(10) {
	case 0:
		d.Kind, d.Rect = layout.Check, layout.Rect{X1: 0, X2: steps(8, 40), Y1: 0, Y2: b.FullWidth()}
	case 1:
		d.Kind, d.Rect.X2, d.Rect.Y1, d.Rect.Y2 = layout.Wane, x+steps(60, 200), far-steps(2, 6), far
	case 2:
		d.Kind, d.Rect.X2, d.Rect.Y1, d.Rect.Y2 = layout.Sap, x+steps(80, 300), far-steps(4, 10), far
	case 3:
		d.Kind, d.Face, d.Rect.X2 = layout.Stain, layout.FaceB, x+steps(16, 60)
	case 4, 5:
		d.Kind = layout.Loose
	case 6:
		d.Kind, d.Face, d.Rect.X2, d.Rect.Y2 = layout.Pin, layout.FaceA, x+steps(2, 3), across+steps(2, 3)
	}
	d.Rect = d.Rect.Intersect(b.Frame())
	return d
}
