package glueup

import (
	"math"
	"strings"
	"testing"

	"sawbill/layout"
)

// Three strips of the bill, each a parallelogram in section of its thickness, its
// width and its bevel, are turned about the middle of the prism one after the other.
// Each joint closes, and the last one meets the first, within a micrometre.
func TestPrismCloses(t *testing.T) {
	for _, thick := range []layout.Length{23 * mm, 7 * layout.Inch / 8, 41 * mm, 12_345_678} {
		w := worked(t, tray(&Cubes{StripThickness: thick, Top: "b", Left: "s", Right: "t"}), metric())
		if len(w.Bill) != 3 {
			t.Fatalf("%d rows in the bill, want 3", len(w.Bill))
		}
		at := 0.0 // the direction of the edge from which the next strip begins
		for _, part := range w.Bill {
			inner, outer, turn := section(part)
			for _, side := range []float64{inner, outer} {
				if math.Abs(side-inner) > 1000 {
					t.Errorf("%v: sides of %f and %f nm", thick, inner, outer)
				}
			}
			at += turn
		}
		side := float64(w.Bill[0].Width)
		if gap := side * math.Abs(at-2*math.Pi); gap > 1000 {
			t.Errorf("%v: the last joint gapes by %f nm", thick, gap)
		}
	}
}

// section gives the two sides of a strip's section that meet in the middle of the
// prism, its face and its sawn edge, and the angle between them. Face A runs from
// (0, 0) to (width, 0), and the edge leans by thickness * tan(bevel) over the
// thickness; the obtuse angle lies between them.
func section(p layout.Part) (face, edge, angle float64) {
	bevel := float64(p.Bevel) / float64(layout.Degree) * math.Pi / 180
	lean := float64(p.Thickness) * math.Tan(bevel)
	edge = math.Hypot(lean, float64(p.Thickness))
	return float64(p.Width), edge, math.Pi/2 + math.Atan2(lean, float64(p.Thickness))
}

// t = 1-1/4 in: side 1.443 in, and an error of 0.1° opens the last joint by 3 * 1.443 *
// 0.001745 = 0.0076 in = 0.19 mm.
func TestCubesSayHowExactTheBladeMustBe(t *testing.T) {
	k := &Cubes{StripThickness: 5 * layout.Inch / 4, Top: "b", Left: "s", Right: "t"}
	if side := float64(k.Side()) / float64(layout.Inch); math.Abs(side-1.4434) > 0.0001 {
		t.Errorf("side %f in", side)
	}
	notes := strings.Join(worked(t, tray(k), metric()).Notes, "\n")
	if want := "by 0.19 mm; for at most 0.1 mm the blade must be true to 0.05°"; !strings.Contains(notes, want) {
		t.Errorf("no %q in:\n%s", want, notes)
	}
}

// A face that ends where hexagons end wastes least and has nothing better near by
// half as large again in waste; a face a little larger is told of it.
func TestCubesNameSizesNearByThatWasteLess(t *testing.T) {
	k := &Cubes{StripThickness: 20 * mm, Top: "b", Left: "s", Right: "t"}
	d := tray(k)
	d.Length, d.Width = 325*mm, 205*mm
	face := layout.Rect{X2: d.Length, Y2: d.Width}
	_, now, _ := k.best(face.Grow(d.Trim, d.Trim))
	sizes := k.nearby(face, d.Trim)
	if len(sizes) == 0 {
		t.Fatal("no sizes")
	}
	for _, s := range sizes {
		other := tray(k)
		other.Length, other.Width = s.length, s.width
		w := worked(t, other, metric())
		if n := w.Panels[0].Slices; n > s.slices || k.waste(w.Face.Finished, n) >= k.waste(face, now) {
			t.Errorf("%v x %v: %d slices, said %d, %d for the face asked", s.length, s.width, n, s.slices, now)
		}
	}
}
