package layout

import (
	"math"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"
	"pgregory.net/rapid"
)

// millimetreShop has round figures: kerfs of 2 mm, 10 mm of trim, 1 mm of
// jointing, 5 mm of end squaring, 1 mm of skim.
func millimetreShop() *Shop {
	s := DefaultShop(Millimetres)
	s.RipKerf, s.CrosscutKerf, s.RoughRipKerf = 2*Millimetre, 2*Millimetre, 2*Millimetre
	s.EndTrim, s.EdgeJoint, s.EndSquare, s.FaceSkim = 10*Millimetre, Millimetre, 5*Millimetre, Millimetre
	s.MinOffcutLength, s.MinOffcutWidth = 50*Millimetre, 20*Millimetre
	return s
}

func rect(x1, x2, y1, y2 Length) Rect {
	return Rect{x1 * Millimetre, x2 * Millimetre, y1 * Millimetre, y2 * Millimetre}
}

// A board of 500 x 100 x 10 mm, rough all over: 500 000 mm³. One blank of 200 x
// 100 gives one strip, and that one part; beyond it an offcut of 150 x 100.
func oneOfEach() (*Board, []Part, *Node) {
	b := &Board{
		Mark: "P1", Thickness: 10 * Millimetre, Width: 100 * Millimetre, TipWidth: 100 * Millimetre,
		Length: 500 * Millimetre, Cost: 10 * Unity,
		Defects: []Defect{{Kind: Knot, Rect: rect(450, 460, 0, 30)}, {Kind: Knot, Rect: rect(455, 470, 10, 20)}},
	}
	bill := []Part{{
		Name: "rail", Thickness: 8 * Millimetre, Width: 40 * Millimetre, Length: 190 * Millimetre, Quantity: 1,
	}}
	part := &Node{Rect: rect(15, 205, 1, 41), Part: "rail"}
	strip := &Node{Rect: rect(15, 205, 1, 41), Cut: Crosscut, Children: []*Node{part}}
	blank := &Node{
		Rect: rect(10, 210, 0, 100), Trued: true, Thickness: 8 * Millimetre,
		Cut: Rip, Children: []*Node{strip},
	}
	offcut := &Node{Rect: rect(212, 362, 0, 100), Offcut: "K"}
	root := &Node{Rect: rect(0, 500, 0, 100), Cut: Crosscut, Children: []*Node{blank, offcut}}
	return b, bill, root
}

// By hand, areas in mm² times the thickness of 10 mm:
//
//	parts    190 x 40 x 8                                            60 800
//	planing  190 x 40 x 10 less the above                            15 200
//	offcuts  150 x 100 x 10                                         150 000
//	kerf     8..10, 210..212 and 362..364 across; 41..43 along 190    9 800
//	edges    trims 2 x 10 x 100 less the kerf in one, 2 x 100;
//	         ends 2 x 5 x 100; joints 2 x 190 x 1                    31 800
//	defects  10 x 30 and 15 x 10, of which 5 x 10 are in both        4 000
//	scrap    what is left of 500 000                                228 400
func TestAccountByHand(t *testing.T) {
	b, bill, root := oneOfEach()
	want := Account{
		Parts: 60_800, Planing: 15_200, Offcuts: 150_000, Kerf: 9_800,
		Edges: 31_800, Defects: 4_000, Scrap: 228_400,
	}
	got := NewAccount(millimetreShop(), b, bill, root)
	if diff := cmp.Diff(want, got, cmpopts.EquateApprox(0, 1e-6)); diff != "" {
		t.Error(diff)
	}
}

// Empty and inside-out rectangles once counted as covering the cell around them.
func TestAccountIgnoresEmptyPatches(t *testing.T) {
	b := &Board{Thickness: Millimetre, Width: 100 * Millimetre, TipWidth: 100 * Millimetre, Length: 100 * Millimetre}
	list := []patch{{rect(20, 80, 50, 50), usePart}, {rect(60, 40, 10, 90), useKerf}}
	want := [useScrap + 1]float64{useScrap: 10_000}
	if got := patchAreas(b, list); got != want {
		t.Errorf("areas %v, want %v", got, want)
	}
}

// The figures of any patches on any tapered board add up to the board, and the
// share of each use is what a fine raster of sample points finds.
func TestPatchAreasAgainstPoints(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		coord := func(name string, hi int) Length {
			return Length(rapid.IntRange(0, hi).Draw(t, name)) * Millimetre
		}
		b := &Board{
			Thickness: Millimetre, Length: 40 * Millimetre,
			Width: Millimetre + coord("width", 29), TipWidth: Millimetre + coord("tip", 29),
		}
		var list []patch
		for range rapid.IntRange(0, 6).Draw(t, "patches") {
			r := Rect{coord("x1", 40), coord("x2", 40), coord("y1", 30), coord("y2", 30)}
			list = append(list, patch{r, use(rapid.IntRange(0, int(useScrap)-1).Draw(t, "use"))})
		}
		got, want := patchAreas(b, list), sampled(b, list)
		var sum float64
		for u := range got {
			sum += got[u]
			if math.Abs(got[u]-want[u]) > 5 { // of at most 1 200 mm²; only the slanting edge is inexact
				t.Fatalf("use %d has %.3f mm², %.3f by points", u, got[u], want[u])
			}
		}
		if whole := b.Volume().MM3(); math.Abs(sum-whole) > 1e-9*whole {
			t.Fatalf("areas add up to %.9f of %.9f", sum, whole)
		}
	})
}

// sampled measures by the middle points of squares of half a millimetre.
func sampled(b *Board, list []patch) [useScrap + 1]float64 {
	var area [useScrap + 1]float64
	const step = Millimetre / 2
	for x := step / 2; x < b.Length; x += step {
		for y := step / 2; y < b.Far(x); y += step {
			at := useScrap
			for _, p := range list {
				in := p.rect.X1 <= x && x < p.rect.X2 && p.rect.Y1 <= y && y < p.rect.Y2
				if in && p.use < at {
					at = p.use
				}
			}
			area[at] += 0.25
		}
	}
	return area
}

// Of a part as thick as its planed board nothing is planed, and rounding must not make
// that less than nothing: the summary would say -0.0%.
func TestNothingToPlaneIsNoLess(t *testing.T) {
	s := millimetreShop()
	rounded := 0
	for w := 1 * SixtyFourth; w < 4*Inch; w += SixtyFourth {
		b := &Board{Mark: "P1", Thickness: 3 * Inch / 4, Width: 9 * Inch, TipWidth: 9 * Inch, Length: 50 * Inch, Faces: FacesPlaned}
		bill := []Part{{Name: "rail", Thickness: b.Thickness, Width: w, Length: 19*Inch + w}}
		root := &Node{Rect: b.Frame(), Cut: Crosscut}
		for i := range 2 {
			x := Inch + Length(i)*24*Inch
			root.Children = append(root.Children, &Node{Rect: Rect{x, x + 19*Inch + w, Inch, Inch + w}, Part: "rail"})
		}
		planing := NewAccount(s, b, bill, root).Planing
		if planing < 0 || planing > 1e-6 {
			t.Fatalf("parts %v wide: %g mm³ are planed", w, planing)
		}
		if area := patchAreas(b, patches(s, b, root)); area[usePart]*mm(b.Thickness) < 2*bill[0].Volume().MM3() {
			rounded++
		}
	}
	if rounded == 0 {
		t.Error("nothing was rounded down")
	}
}
