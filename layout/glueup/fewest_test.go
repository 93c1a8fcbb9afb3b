package glueup

import (
	"testing"

	"pgregory.net/rapid"

	"sawbill/layout"
)

// No origin takes fewer tiles than the one found: held against a fine net of
// origins over a whole period, counted by the areas that tiles have in the face.
func TestFewestIsLeastOfAllOrigins(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		size := rapid.Float64Range(12e6, 40e6).Draw(t, "size")
		face := area{vec{}, vec{rapid.Float64Range(40e6, 120e6).Draw(t, "length"), rapid.Float64Range(30e6, 110e6).Draw(t, "width")}}
		tiling := drawTiling(t, size)
		_, found := fewest(tiling, face)
		const net = 9
		box := tiling.period()
		for i := range net {
			for j := range net {
				o := vec{box.x * (float64(i) + 0.31) / net, box.y * (float64(j) + 0.77) / net}
				if n := covering(tiling, o, face); n < len(found) {
					t.Fatalf("%d tiles with the origin at %v, %d found", n, o, len(found))
				}
			}
		}
	})
}

func drawTiling(t *rapid.T, size float64) tiling {
	switch rapid.IntRange(0, 2).Draw(t, "tiling") {
	case 0:
		k := &Cubes{StripThickness: layout.Length(size)}
		return k.hexagons()
	case 1:
		return courses{unit: size, ratio: 2, of: &Herringbone{Lying: "b", Standing: "s"}}
	}
	return courses{unit: size, ratio: 3, of: &Herringbone{Lying: "b", Standing: "s", Diagonal: true}}
}

// covering counts the tiles that have area in a face.
func covering(t tiling, origin vec, a area) int {
	n := 0
	for _, tile := range t.around(origin, a) {
		p := places(nil, t, origin, t.outline(nil, tile))
		if areaIn(clipTo(p, a.corners())) > 1e4 {
			n++
		}
	}
	return n
}

// A face of three rows of hexagons, each row two or three: by hand. With t = 10 the
// hexagons are 20 across and 23.09 from corner to corner, rows are 17.32 apart. A
// face 40 by 34.6 takes two rows of hexagons and half of a third.
func TestFewestByHand(t *testing.T) {
	k := &Cubes{StripThickness: 10 * mm}
	for _, test := range []struct {
		length, width layout.Length
		want          int
	}{
		{20 * mm, 11 * mm, 1}, // between the upper and lower corners a hexagon is 11.547 high
		{40 * mm, 11 * mm, 2},
		{10 * mm, 28 * mm, 2}, // two rows are (1.5*2 - 0.5) * s = 28.87 high, flush
		{30 * mm, 28 * mm, 4}, // each row with half a hexagon beyond an end, 2 + 2
	} {
		_, n, _ := k.best(layout.Rect{X2: test.length, Y2: test.width})
		if n != test.want {
			t.Errorf("%v x %v takes %d hexagons, want %d", test.length, test.width, n, test.want)
		}
	}
}

// The cubes of the tests lie both ways.
func TestCubesLieBothWays(t *testing.T) {
	for name, want := range map[string]bool{"cubes": false, "sideways": true} {
		k := patterns()[name].(*Cubes)
		if _, _, sideways := k.best(tray(k).sawn()); sideways != want {
			t.Errorf("%s: sideways %v", name, sideways)
		}
	}
}
