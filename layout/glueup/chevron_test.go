package glueup

import (
	"math"
	"testing"

	"sawbill/layout"
)

// A face 96 long and 60 wide with a blade at 45°, slices 12 wide, kerf 3, by hand: a
// column needs (60 + 12) / sqrt 2 = 50.9 across the stripes, so three of 20, X = 60.
// Eight slices: length = 60 + 8 * 15 * sqrt 2 - 3 * sqrt 2 = 225.5, which takes
// 23 rows of 10.
func TestSlabByHand(t *testing.T) {
	v := &Chevron{
		Angle: 45 * layout.Degree, SliceWidth: 12 * mm, RowHeight: 10 * mm, Stripes: "bs",
		StripeWidths: []layout.Length{20 * mm},
	}
	d := tray(v)
	d.Trim, d.Length, d.Width = 0, 96*mm, 60*mm
	w := worked(t, d, metric())
	b := w.Slab
	if b.Width != 60*mm || b.Pieces != 8 || b.Rows != 23 || w.Panels[0].Slices != 23 {
		t.Errorf("%+v", *b)
	}
	if want := 60 + 117*math.Sqrt2; math.Abs(float64(b.Length)/1e6-want) > 1e-5 {
		t.Errorf("length %v, want %f mm", b.Length, want)
	}
	if b.Lost < 60*mm || b.Lost > 60*mm+layout.Micrometre {
		t.Errorf("lost %v, want 60 mm", b.Lost)
	}
}

// Slanted slices, cut one by one out of the slab as drawn, all come out whole: the
// last corner of the last one still lies on the slab.
func TestSlantedSlicesLieOnTheSlab(t *testing.T) {
	for _, angle := range []layout.Angle{8 * layout.Degree, 30 * layout.Degree, 45 * layout.Degree} {
		w := worked(t, tray(zigzag(angle)), metric())
		b := w.Slab
		tan := math.Tan(float64(angle) / 1e6 * math.Pi / 180)
		last := float64(b.Lost) + float64(b.Pieces-1)*float64(b.Pitch) + float64(b.PieceWidth)*math.Sqrt(1+tan*tan)
		if have := float64(b.Rows) * 27e6; last > have {
			t.Errorf("%v: %f mm are cut out of %f mm", angle, last/1e6, have/1e6)
		}
	}
}

// At every joint between two slices the stripes meet: the same species on both
// sides.
func TestStripesMeetAtTheJoints(t *testing.T) {
	face := worked(t, tray(zigzag(30*layout.Degree)), metric()).Face
	type edge struct{ from, to Corner }
	wood := map[edge]string{}
	for _, b := range face.Blocks {
		c := b.Corners // near left, near right, far right, far left
		wood[edge{c[1], c[2]}] = b.Wood
	}
	met := 0
	for _, b := range face.Blocks {
		if left, ok := wood[edge{b.Corners[0], b.Corners[3]}]; ok {
			met++
			if left != b.Wood {
				t.Errorf("%q meets %q at %v", left, b.Wood, b.Corners[0])
			}
		}
	}
	if met < 10 {
		t.Errorf("only %d stripes meet", met)
	}
}
