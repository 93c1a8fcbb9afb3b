package bound

import (
	"testing"

	"pgregory.net/rapid"

	"sawbill/layout"
)

func TestAxisIsAsFineAsTheBoardAllows(t *testing.T) {
	inches, millimetres := layout.DefaultShop(layout.Inches), layout.DefaultShop(layout.Millimetres)
	for _, tc := range []struct {
		shop *layout.Shop
		size layout.Length
		most int
		want layout.Length
	}{
		{inches, 8 * layout.Inch, 512, layout.Inch / 64},
		{inches, 9 * layout.Inch, 512, layout.Inch / 32},
		{inches, 144 * layout.Inch, 2048, layout.Inch / 8}, // 2304 sixteenths are too many
		{millimetres, 256 * layout.Millimetre, 512, layout.Millimetre / 2},
		{millimetres, 2440 * layout.Millimetre, 2048, 2 * layout.Millimetre},
	} {
		if got := newAxis(tc.shop, tc.size, tc.most).unit; got != tc.want {
			t.Errorf("%v with %d positions: unit %v, want %v", tc.size, tc.most, got, tc.want)
		}
	}
}

func TestCoarserAxisLosesNothing(t *testing.T) {
	g := axis{unit: layout.Inch / 64}
	for _, tc := range []struct {
		steps []layout.Length
		least layout.Length
		want  layout.Length
	}{
		{[]layout.Length{3 * layout.Inch / 8, layout.Inch}, 2 * layout.Inch, layout.Inch / 8},
		{[]layout.Length{layout.Inch, 3 * layout.Millimetre}, 2 * layout.Inch, layout.Inch / 64},
		{[]layout.Length{layout.Inch}, layout.Inch / 4, layout.Inch / 4},
		{nil, layout.Inch, layout.Inch},
	} {
		if got := g.coarser(tc.steps, tc.least).unit; got != tc.want {
			t.Errorf("%v, no more than %v: unit %v, want %v", tc.steps, tc.least, got, tc.want)
		}
	}
}

// Positions of sums are at least the sums of positions: the reason why what fits
// on a board fits on its grid.
func TestDownIsSuperadditive(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		g := axis{unit: layout.Length(rapid.Int64Range(1, 1000).Draw(t, "unit"))}
		a := layout.Length(rapid.Int64Range(-5000, 5000).Draw(t, "a"))
		b := layout.Length(rapid.Int64Range(-5000, 5000).Draw(t, "b"))
		if g.down(a)+g.down(b) > g.down(a+b) {
			t.Fatalf("%d + %d > %d", g.down(a), g.down(b), g.down(a+b))
		}
		if i := g.down(a); a < g.at(i) || a > g.last(i) {
			t.Fatalf("position %d stands for %d to %d, not for %d", i, g.at(i), g.last(i), a)
		}
	})
}

// An axis is doubled until no more positions lie on a size than may; then a position
// stands for more than one place, even where it stood for one before.
func TestWithinDoublesTheUnit(t *testing.T) {
	g := axis{unit: layout.Inch / 8, sole: true}
	if same := g.within(50*layout.Inch, 400); same != g {
		t.Errorf("400 positions are made %v", same)
	}
	if got, want := g.within(51*layout.Inch, 400), (axis{unit: layout.Inch / 4}); got != want {
		t.Errorf("408 positions are made %v, want %v", got, want)
	}
}
