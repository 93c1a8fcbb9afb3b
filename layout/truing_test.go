package layout

import (
	"math/big"
	"testing"

	"pgregory.net/rapid"
)

// Joints take 3 mm and ends 6; the crook of 12 mm over 2000 takes 3 in a blank of
// 1000.
func TestUsable(t *testing.T) {
	shop := DefaultShop(Millimetres)
	for _, c := range []struct {
		what  string
		edges Edges
		crook Length
		blank Rect
		want  Rect
	}{
		{"rough", EdgesRough, 0, rect(100, 1100, 0, 200), rect(106, 1094, 3, 197)},
		{"one edge", EdgesOne, 0, rect(100, 1100, 0, 200), rect(100, 1100, 0, 197)},
		{"both edges", EdgesBoth, 0, rect(100, 1100, 0, 200), rect(100, 1100, 0, 200)},
		{"rough and crooked", EdgesRough, 12, rect(100, 1100, 0, 200), rect(106, 1094, 6, 197)},
		{"one edge, crooked: not spared", EdgesOne, 12, rect(100, 1100, 0, 200), rect(106, 1094, 6, 197)},
		{"both edges, crooked: the far one is spared", EdgesBoth, 12, rect(100, 1100, 0, 200), rect(106, 1094, 6, 200)},
		{"the far part of a rough rip", EdgesBoth, 0, rect(100, 1100, 103, 200), rect(100, 1100, 106, 200)},
		{"the near part of a rough rip", EdgesBoth, 0, rect(100, 1100, 0, 100), rect(100, 1100, 0, 97)},
		{"a rough rip inside the hollow", EdgesRough, 12, rect(100, 1100, 2, 100), rect(106, 1094, 6, 97)},
		{"a rough rip beyond the hollow", EdgesRough, 12, rect(100, 1100, 103, 200), rect(106, 1094, 106, 197)},
		{"shorter blanks lose less", EdgesRough, 12, rect(100, 600, 0, 200), Rect{106 * Millimetre, 594 * Millimetre, 3_750_000, 197 * Millimetre}},
	} {
		b := &Board{
			Width: 200 * Millimetre, TipWidth: 200 * Millimetre, Length: 2000 * Millimetre,
			Edges: c.edges, Crook: c.crook * Millimetre,
		}
		if got := shop.Usable(b, c.blank); got != c.want {
			t.Errorf("%s: %v, want %v", c.what, got, c.want)
		}
	}
}

// The shift is the least whole number of nanometres that is no less than
// crook * (l/L)^2, however large the numbers.
func TestShiftIsRoundedUp(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		size := func(what string, hi Length) Length { return Length(rapid.Int64Range(1, int64(hi)).Draw(t, what)) }
		b := &Board{Length: size("length", MaxLength), Crook: size("crook", Foot)}
		l := min(size("blank", MaxLength), b.Length)
		share := big.NewRat(int64(l), int64(b.Length))
		want := new(big.Rat).SetInt64(int64(b.Crook))
		want.Mul(want, share).Mul(want, share)
		got := b.Shift(l)
		if at := new(big.Rat).SetInt64(int64(got)); at.Cmp(want) < 0 || at.Sub(at, big.NewRat(1, 1)).Cmp(want) >= 0 {
			t.Fatalf("a crook of %v over %v shifts a blank of %v by %v", b.Crook, b.Length, l, got)
		}
	})
}
