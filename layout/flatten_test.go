package layout

import (
	"math/big"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"
)

// warpedBoard is 2000 x 200 x 30 mm, rough, with faces that lose 5 mm together.
func warpedBoard() *Board {
	return &Board{
		Thickness: 30 * Millimetre, Width: 200 * Millimetre, TipWidth: 200 * Millimetre, Length: 2000 * Millimetre,
		Bow: 8 * Millimetre, Cup: 4 * Millimetre, Twist: 6 * Millimetre, Crook: 12 * Millimetre,
	}
}

func TestFlatteningByHand(t *testing.T) {
	shop := DefaultShop(Millimetres)
	const mm = Millimetre
	for _, c := range []struct {
		what      string
		blank     Rect
		want      Flattening
		available Length
	}{
		{"all of it", rect(0, 2000, 0, 200), Flattening{5 * mm, 8 * mm, 4 * mm, 3 * mm}, 10 * mm},
		{"half as long", rect(0, 1000, 0, 200), Flattening{5 * mm, 2 * mm, 4 * mm, 3 * mm / 2}, 35 * mm / 2},
		{"half as wide", rect(0, 2000, 100, 200), Flattening{5 * mm, 8 * mm, mm, 3 * mm / 2}, 29 * mm / 2},
		{"a quarter of both", rect(500, 1000, 50, 100), Flattening{5 * mm, mm / 2, mm / 4, 3 * mm / 16}, 385 * mm / 16},
	} {
		b := warpedBoard()
		if diff := cmp.Diff(c.want, shop.FlatteningOf(b, c.blank)); diff != "" {
			t.Errorf("%s: %s", c.what, diff)
		}
		if got := shop.AvailableIn(b, c.blank); got != c.available {
			t.Errorf("%s: finishes to %v, want %v", c.what, got, c.available)
		}
	}
}

// A planed board loses no skim, and the width that counts is that of the wood.
func TestFlatteningOfPlanedAndTaperedBoards(t *testing.T) {
	shop := DefaultShop(Millimetres)
	b := warpedBoard()
	b.Faces, b.TipWidth, b.Bow, b.Twist = FacesPlaned, 100*Millimetre, 0, 0
	// Far from 150 at 1000 to 100 at 2000: the wood is 150 wide, 4 x (3/4)^2.
	want := Flattening{Cup: 9 * Millimetre / 4}
	if diff := cmp.Diff(want, shop.FlatteningOf(b, rect(1000, 2000, 0, 200))); diff != "" {
		t.Error(diff)
	}
}

// What is available is the formula in exact fractions, rounded down.
func TestAvailableAgainstFractions(t *testing.T) {
	shop := DefaultShop(Inches)
	rapid.Check(t, func(t *rapid.T) {
		size := func(what string, lo, hi Length) Length {
			return Length(rapid.Int64Range(int64(lo), int64(hi)).Draw(t, what))
		}
		b := &Board{
			Thickness: size("thick", Inch, 4*Inch), Length: size("length", Metre, MaxLength), Faces: Faces(size("faces", 0, 1)),
			Bow: size("bow", 0, Inch), Cup: size("cup", 0, Inch), Twist: size("twist", 0, Inch),
		}
		b.Width = size("width", Inch, 2*Foot)
		b.TipWidth = b.Width
		x, y := size("x", 0, b.Length-1), size("y", 0, b.Width-1)
		blank := Rect{x, size("x2", x+1, b.Length), y, size("y2", y+1, b.Width)}
		along, across := big.NewRat(int64(blank.Length()), int64(b.Length)), big.NewRat(int64(blank.Width()), int64(b.Width))
		want := new(big.Rat).SetInt64(int64(shop.Available(b)))
		take := func(gap Length, p, q *big.Rat, share int64) {
			g := big.NewRat(int64(gap), share)
			want.Sub(want, g.Mul(g, p).Mul(g, q))
		}
		take(b.Bow, along, along, 1)
		take(b.Cup, across, across, 1)
		take(b.Twist, along, across, 2)
		floor := new(big.Int).Div(want.Num(), want.Denom())
		if got := shop.AvailableIn(b, blank); int64(got) != floor.Int64() {
			t.Fatalf("available %d, want %s", got, floor)
		}
		f := shop.FlatteningOf(b, blank)
		if parts := b.Thickness - f.Skim - f.Bow - f.Cup - f.Twist; parts > shop.AvailableIn(b, blank) {
			t.Fatalf("the parts of the loss leave %v, all of it %v", parts, shop.AvailableIn(b, blank))
		}
	})
}

func TestMachineWidth(t *testing.T) {
	for _, c := range []struct{ jointer, planer, want Length }{
		{0, 0, 0}, {8, 0, 8}, {0, 12, 12}, {8, 12, 8}, {12, 8, 8},
	} {
		shop := DefaultShop(Inches)
		shop.JointerWidth, shop.PlanerWidth = c.jointer, c.planer
		if got := shop.MachineWidth(); got != c.want {
			t.Errorf("%v and %v: %v", c.jointer, c.planer, got)
		}
	}
}
