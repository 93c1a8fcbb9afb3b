package glueup

import (
	"math"
	"testing"
)

// The blocks cover the sawn face without a gap: clipped to it, their areas add up.
// They do not overlap either: no two of them share any area. Only laid diagonally do
// corners lie within a neighbour's edge, where rounding leaves slivers less than a
// nanometre wide.
func TestBlocksTileTheFace(t *testing.T) {
	for name, p := range patterns() {
		t.Run(name, func(t *testing.T) {
			sliver := 1.0
			if h, ok := p.(*Herringbone); ok && h.Diagonal {
				sliver = float64(h.BlockLength)
			}
			face := worked(t, tray(p), metric()).Face
			sawn := areaOf(face.Sawn)
			var sum float64
			polygons := make([][]vec, len(face.Blocks))
			for i := range face.Blocks {
				polygons[i] = clipTo(vecs(&face.Blocks[i]), sawn.corners())
				if areaIn(polygons[i]) <= 0 {
					t.Errorf("block %v lies beyond the trim", face.Blocks[i].Corners)
				}
				sum += areaIn(polygons[i])
				for j := range i {
					if a := areaIn(clipTo(polygons[i], polygons[j])); a > sliver {
						t.Errorf("blocks %d and %d overlap by %g nm²", i, j, a)
					}
				}
			}
			want := areaIn(sawn.corners())
			if math.Abs(sum-want) > want*1e-12+sliver*float64(len(face.Blocks)) {
				t.Errorf("blocks cover %.0f nm² of %.0f", sum, want)
			}
		})
	}
}

func vecs(b *Block) []vec {
	var list []vec
	for _, c := range b.Corners {
		list = append(list, vec{float64(c.X), float64(c.Y)})
	}
	return list
}

// clipTo is the part of a polygon in a convex one whose corners run
// counter-clockwise (Sutherland & Hodgman 1974).
func clipTo(p, convex []vec) []vec {
	for i, a := range convex {
		b := convex[(i+1)%len(convex)]
		side := func(q vec) float64 { return (b.x-a.x)*(q.y-a.y) - (b.y-a.y)*(q.x-a.x) }
		var kept []vec
		for j, q := range p {
			r := p[(j+1)%len(p)]
			if side(q) >= 0 {
				kept = append(kept, q)
			}
			if side(q)*side(r) < 0 {
				s := side(q) / (side(q) - side(r))
				kept = append(kept, vec{q.x + s*(r.x-q.x), q.y + s*(r.y-q.y)})
			}
		}
		p = kept
	}
	return p
}

// areaIn is the area of a polygon whose corners run counter-clockwise, by the
// shoelace formula.
func areaIn(p []vec) float64 {
	var twice float64
	for i := range p {
		// From a corner of the polygon, so that large coordinates cancel first.
		a, b := p[i], p[(i+1)%len(p)]
		twice += (a.x-p[0].x)*(b.y-p[0].y) - (a.y-p[0].y)*(b.x-p[0].x)
	}
	return twice / 2
}

// Corners that several blocks share are the same to the nanometre: every corner
// inside the face is one of at least two blocks, or lies within an edge of a
// neighbour.
func TestCubesShareTheirCornersExactly(t *testing.T) {
	face := worked(t, tray(patterns()["cubes"]), metric()).Face
	seen := map[Corner]int{}
	for _, b := range face.Blocks {
		for _, c := range b.Corners {
			seen[c]++
		}
	}
	for c, n := range seen {
		inside := c.X > face.Sawn.X1 && c.X < face.Sawn.X2 && c.Y > face.Sawn.Y1 && c.Y < face.Sawn.Y2
		if inside && n != 3 && n != 6 { // three angles of 120°, or six of 60°
			t.Errorf("%d blocks meet at %v", n, c)
		}
	}
}
