package layout

import (
	"math"
	"testing"
)

func plank(species string, thickness, width, length Length) Board {
	return Board{Mark: species, Species: species, Thickness: thickness, Width: width, TipWidth: width, Length: length}
}

func TestTradeFeet(t *testing.T) {
	ash := func(thickness, width, length Length) *Board {
		b := plank("ash", thickness, width, length)
		return &b
	}
	tapered := ash(Inch, 9*Inch, 8*Foot)
	tapered.TipWidth = 6 * Inch
	tests := []struct {
		name   string
		boards []*Board
		want   int64
	}{
		{"nothing", nil, 0},
		// 6-7/16 x 10 / 12 = 5.36: the nine inches of length are dropped.
		{"length in whole feet", []*Board{ash(Inch, 103*Inch/16, 10*Foot+9*Inch)}, 5},
		{"rounds to the nearest", []*Board{ash(Inch, 7*Inch, 8*Foot)}, 5}, // 4.67
		// 6 x 9 / 12 = 4.5 each: 5, 4 and 5.
		{"halves go up and down in turn", []*Board{ash(Inch, 6*Inch, 9*Foot), ash(Inch, 6*Inch, 9*Foot), ash(Inch, 6*Inch, 9*Foot)}, 14},
		{"others do not take a turn", []*Board{ash(Inch, 6*Inch, 9*Foot), ash(Inch, 6*Inch, 8*Foot), ash(Inch, 6*Inch, 9*Foot)}, 13},
		{"thick wood is multiplied", []*Board{ash(2*Inch, 6*Inch, 8*Foot)}, 8},
		{"and then rounded", []*Board{ash(5*Inch/4, 6*Inch, 10*Foot)}, 6}, // 5 x 1.25 = 6.25
		{"thin wood is charged as an inch", []*Board{ash(13*Inch/16, 6*Inch, 8*Foot)}, 4},
		// A third from the narrow end it is 7 wide: 7 x 8 / 12 = 4.67.
		{"taper", []*Board{tapered}, 5},
		{"shorter than a foot", []*Board{ash(Inch, 6*Inch, 11*Inch)}, 0},
	}
	for _, tt := range tests {
		if got := TradeFeet(tt.boards); got != tt.want {
			t.Errorf("%s: %v board feet, want %v", tt.name, got, tt.want)
		}
	}
}

func TestTallyGroups(t *testing.T) {
	elm := plank("Elm", Inch, 6*Inch, 8*Foot)
	elm.Cost = 20 * Unity
	same := plank(" elm ", Inch, 3*Inch, 8*Foot)
	same.Cost = 10 * Unity
	planed := plank("elm", Inch, 6*Inch, 4*Foot)
	planed.Faces = FacesPlaned
	thick := plank("elm", 2*Inch, 6*Inch, 4*Foot)
	alder := plank("alder", Inch, 6*Inch, 4*Foot)

	groups := Tally(DefaultShop(Inches), []Board{elm, thick, planed, same, alder})

	want := []struct {
		species  string
		boards   int
		finishes Length
		feet     float64
		worth    Money
	}{
		{"alder", 1, 13 * Inch / 16, 2, 0},
		{"Elm", 2, 13 * Inch / 16, 6, 30 * Unity},
		{"elm", 1, Inch, 2, 0},
		{"elm", 1, 29 * Inch / 16, 4, 0},
	}
	if len(groups) != len(want) {
		t.Fatalf("%d groups, want %d", len(groups), len(want))
	}
	for i, w := range want {
		g := groups[i]
		if g.Species != w.species || len(g.Boards) != w.boards || g.Finishes != w.finishes || g.Worth != w.worth {
			t.Errorf("group %d: %q, %d boards, finishes %d, worth %s; want %v", i, g.Species, len(g.Boards), g.Finishes, g.Worth, w)
		}
		if math.Abs(g.Volume.BoardFeet()-w.feet) > 1e-9 {
			t.Errorf("group %d: %v board feet, want %v", i, g.Volume.BoardFeet(), w.feet)
		}
	}
}

func TestClearArea(t *testing.T) {
	shop := DefaultShop(Millimetres)
	shop.EndTrim = 50 * Millimetre
	board := plank("ash", 27*Millimetre, 100*Millimetre, 1000*Millimetre)
	tapered := board
	tapered.TipWidth = 50 * Millimetre
	with := func(list ...Defect) Board {
		b := board
		b.Defects = list
		return b
	}
	mark := func(kind Kind, face Face, x1, x2, y1, y2 Length) Defect {
		return Defect{Kind: kind, Face: face, Rect: Rect{x1 * Millimetre, x2 * Millimetre, y1 * Millimetre, y2 * Millimetre}}
	}
	tests := []struct {
		name  string
		board Board
		want  float64
	}{
		{"sound wood between the trims", board, 900 * 100},
		{"taper", tapered, 900 * 75},
		{"a knot", with(mark(Knot, Through, 200, 220, 40, 60)), 90000 - 20*20},
		{"on one face it counts as well", with(mark(Knot, FaceB, 200, 220, 40, 60)), 90000 - 20*20},
		{"two that overlap count once", with(mark(Knot, FaceA, 200, 220, 40, 60), mark(Sap, FaceB, 210, 230, 40, 60)), 90000 - 30*20},
		// A check reaches 25 further than its mark: 50..125 of the part between the trims.
		{"a check", with(mark(Check, Through, 0, 100, 0, 100)), 90000 - 75*100},
	}
	for _, tt := range tests {
		if got := ClearArea(shop, &tt.board); math.Abs(got-tt.want) > 1e-6 {
			t.Errorf("%s: %v mm², want %v", tt.name, got, tt.want)
		}
	}
}
