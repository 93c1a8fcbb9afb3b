package layout

import (
	"math/big"
	"testing"

	"pgregory.net/rapid"
)

func TestOffcutWorth(t *testing.T) {
	shop := millimetreShop() // credit 0.6
	b, _, _ := oneOfEach()   // 500 x 100 mm for 10
	for _, c := range []struct {
		name  string
		clean Rect
		want  Money
	}{
		{"all clear: 150 x 100 of 50 000 at 6", rect(212, 362, 0, 100), 18_000},
		{"less the union of two knots, 400: 9 600", rect(400, 500, 0, 100), 11_520},
		{"less what of them lies inside, 100: 3 900", rect(460, 500, 0, 100), 4_680},
		{"rounded down: 10 x 1 nm is nothing", Rect{0, 10, 0, 1}, 0},
		{"an empty rectangle", rect(300, 250, 60, 20), 0},
	} {
		if got := shop.OffcutWorth(b, c.clean); got != c.want {
			t.Errorf("%s: %v, want %v", c.name, got, c.want)
		}
	}
}

// The sound area is the number of unit squares of r in no defect, and the worth
// is the formula of section V10 over it, rounded down.
func TestOffcutWorthAgainstPoints(t *testing.T) {
	shop := millimetreShop()
	rapid.Check(t, func(t *rapid.T) {
		b := &Board{
			Length: 12, Width: Length(rapid.IntRange(1, 12).Draw(t, "width")),
			TipWidth: Length(rapid.IntRange(1, 12).Draw(t, "tip")),
			Cost:     Money(rapid.Int64Range(0, 100_000).Draw(t, "cost")),
		}
		for range rapid.IntRange(0, 5).Draw(t, "defects") {
			b.Defects = append(b.Defects, Defect{Kind: Knot, Rect: drawRect(t)})
		}
		r := drawRect(t)
		squares := soundSquares(r, b.Defects)
		if got := SoundArea(r, b.Defects).Int().Int64(); got != squares {
			t.Fatalf("sound area of %v is %d, by points %d", r, got, squares)
		}
		// 0.6 * cost / (length * mean width) * squares
		worth := big.NewRat(6*int64(b.Cost)*squares*2, 10*int64(b.Length)*int64(b.Width+b.TipWidth))
		if want := new(big.Int).Quo(worth.Num(), worth.Denom()).Int64(); int64(shop.OffcutWorth(b, r)) != want {
			t.Fatalf("worth %d, want %d", shop.OffcutWorth(b, r), want)
		}
	})
}

func drawRect(t *rapid.T) Rect {
	at := func(name string) Length { return Length(rapid.IntRange(0, 12).Draw(t, name)) }
	return Rect{at("x1"), at("x2"), at("y1"), at("y2")}
}

func soundSquares(r Rect, defects []Defect) int64 {
	var n int64
	for x := r.X1; x < r.X2; x++ {
		for y := r.Y1; y < r.Y2; y++ {
			sound := true
			for _, d := range defects {
				in := d.Rect.X1 <= x && x < d.Rect.X2 && d.Rect.Y1 <= y && y < d.Rect.Y2
				sound = sound && !in
			}
			if sound {
				n++
			}
		}
	}
	return n
}

func TestCleanOffcut(t *testing.T) {
	// From 100 mm at the butt to 80 mm at the tip, 1 000 mm long: far(x) is
	// 100 - x/50.
	b := &Board{Length: 1000 * Millimetre, Width: 100 * Millimetre, TipWidth: 80 * Millimetre}
	for _, c := range []struct{ leaf, want Rect }{
		{rect(0, 500, 0, 100), rect(0, 500, 0, 90)},
		{rect(0, 500, 20, 60), rect(0, 500, 20, 60)},
		{rect(500, 1000, 85, 100), rect(500, 1000, 85, 80)}, // no wood: empty
		{Rect{0, 1, 0, 100 * Millimetre}, Rect{0, 1, 0, 100*Millimetre - 1}},
	} {
		if got := b.CleanOffcut(c.leaf); got != c.want {
			t.Errorf("clean of %v is %v, want %v", c.leaf, got, c.want)
		}
	}
}

func TestKeeps(t *testing.T) {
	shop := millimetreShop() // 50 x 20 mm
	for _, c := range []struct {
		clean Rect
		want  bool
	}{
		{rect(0, 50, 0, 20), true},
		{rect(0, 49, 0, 20), false},
		{rect(0, 50, 0, 19), false},
		{rect(50, 0, 20, 0), false},
	} {
		if got := shop.Keeps(c.clean); got != c.want {
			t.Errorf("keeps %v: %v, want %v", c.clean, got, c.want)
		}
	}
	shop.MinOffcutLength, shop.MinOffcutWidth = 0, 0
	if shop.Keeps(rect(10, 20, 5, 5)) {
		t.Error("a shop without limits keeps an offcut without width")
	}
}
