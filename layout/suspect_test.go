package layout

import (
	"strings"
	"testing"
)

func TestSuspicions(t *testing.T) {
	inches := DefaultShop(Inches)
	inches.Price = map[string]Money{"ash": 5 * Unity}
	metric := DefaultShop(Millimetres)
	ash := func(change func(*Board)) Board {
		b := plank("ash", Inch, 6*Inch, 8*Foot)
		b.Cost = 20 * Unity
		change(&b)
		return b
	}
	knot := Defect{Kind: Knot, Rect: Rect{0, 50 * Inch, 0, 6 * Inch}}
	tests := []struct {
		shop  *Shop
		board Board
		want  string // "" for nothing to say
	}{
		{inches, ash(func(b *Board) {}), ""},
		{inches, ash(func(b *Board) { b.Thickness = 13 * Inch / 16 }), `13/16" is an odd thickness`},
		{inches, ash(func(b *Board) { b.Thickness = 13 * Inch / 16; b.Faces = FacesPlaned }), ""},
		{inches, ash(func(b *Board) { b.Faces = FacesPlaned }), "measured after planing"},
		{inches, ash(func(b *Board) { b.Length = 16 * Foot; b.Cost = 40 * Unity }), ""},
		{inches, ash(func(b *Board) { b.Length = 17 * Foot; b.Cost = 40 * Unity }), `204" is long`},
		{inches, ash(func(b *Board) { b.Length = 14 * Inch; b.Cost = 3 * Unity }), ""},
		{inches, ash(func(b *Board) { b.Length = 13 * Inch; b.Cost = 3 * Unity }), "shorter than the shortest blank"},
		{inches, ash(func(b *Board) { b.Width, b.TipWidth, b.Length = 8*Foot, 8*Foot, 14*Inch }), "right way round"},
		{inches, ash(func(b *Board) { b.TipWidth = 9 * Inch }), ""},
		{inches, ash(func(b *Board) { b.TipWidth = 9*Inch + SixtyFourth }), "steep taper"},
		{inches, ash(func(b *Board) { b.Defects = []Defect{knot} }), "defects cover 52% of it"},
		{inches, ash(func(b *Board) { b.Cost = 10 * Unity }), ""},
		{inches, ash(func(b *Board) { b.Cost = 10*Unity - 1 }), "would be 20.00"},
		{inches, ash(func(b *Board) { b.Cost = 40*Unity + 1 }), "would be 20.00"},
		{metric, ash(func(b *Board) { b.Thickness = 27 * Millimetre }), ""},
		{metric, ash(func(b *Board) { b.Thickness = 29 * Millimetre }), "29 mm is an odd thickness"},
	}
	for _, tt := range tests {
		got := Suspicions(tt.shop, []Board{tt.board})
		switch {
		case tt.want == "" && len(got) > 0:
			t.Errorf("unexpected: %q", got)
		case tt.want != "" && (len(got) == 0 || !strings.Contains(got[0].Why, tt.want)):
			t.Errorf("%q, want one with %q", got, tt.want)
		}
	}
}

func TestSuspicionOfDefectListedTwice(t *testing.T) {
	b := plank("ash", Inch, 6*Inch, 8*Foot)
	pin := Defect{Kind: Pin, Rect: Rect{10 * Inch, 11 * Inch, Inch, 2 * Inch}}
	other := pin
	other.Face = FaceB
	b.Defects = []Defect{pin, other}
	if got := Suspicions(DefaultShop(Inches), []Board{b}); len(got) != 0 {
		t.Errorf("one on each face: %q", got)
	}
	b.Defects = append(b.Defects, pin)
	if got := Suspicions(DefaultShop(Inches), []Board{b}); len(got) != 1 || got[0].Board != "ash" {
		t.Errorf("listed twice: %q, want one suspicion of ash", got)
	}
}
