package files

import (
	"testing"

	"github.com/google/go-cmp/cmp"

	"sawbill/layout"
)

// plank is 100 by 8 inches.
var plank = layout.Rect{X2: 100 * layout.Inch, Y2: 8 * layout.Inch}

// at is a rectangle in sixteenths of an inch.
func at(x1, x2, y1, y2 layout.Length) layout.Rect {
	const unit = layout.Inch / 16
	return layout.Rect{X1: x1 * unit, X2: x2 * unit, Y1: y1 * unit, Y2: y2 * unit}
}

func TestParseDefect(t *testing.T) {
	for _, test := range []struct {
		text string
		want layout.Defect
	}{
		{"knot 31..33 x 1-1/2..3", layout.Defect{Kind: layout.Knot, Rect: at(496, 528, 24, 48)}},
		{"check 0..4", layout.Defect{Kind: layout.Check, Rect: at(0, 64, 0, 128)}},
		{"wane .. x 5-1/2..6", layout.Defect{Kind: layout.Wane, Rect: at(0, 1600, 88, 96)}},
		{"pin 50 x 2 d1/4 /B", layout.Defect{Kind: layout.Pin, Face: layout.FaceB, Rect: at(798, 802, 30, 34)}},
		{"knot@31..33,1-1/2..3/B", layout.Defect{Kind: layout.Knot, Face: layout.FaceB, Rect: at(496, 528, 24, 48)}},
		{"knot@31..33", layout.Defect{Kind: layout.Knot, Rect: at(496, 528, 0, 128)}},
		{"pin@50,2d1/4/a", layout.Defect{Kind: layout.Pin, Face: layout.FaceA, Rect: at(798, 802, 30, 34)}},
		{"Sap 24-5/8\" to 51-1/8 x 0\"–3/4 /B", layout.Defect{Kind: layout.Sap, Face: layout.FaceB, Rect: at(394, 818, 0, 12)}},
		{"stain 2–4-1/4 × 2-1/2in..3-5/8\"", layout.Defect{Kind: layout.Stain, Rect: at(32, 68, 40, 58)}},
		{"knot 3 3/8–4", layout.Defect{Kind: layout.Knot, Rect: at(54, 64, 0, 128)}},
		{"hole 1–1/2..3 x 2", layout.Defect{}}, // the across part is no range
		{"split 90..", layout.Defect{Kind: layout.Split, Rect: at(1440, 1600, 0, 128)}},
		{"split to 3 x ..2", layout.Defect{Kind: layout.Split, Rect: at(0, 48, 0, 32)}},
		{"worm-hole2 0..1x0..1", layout.Defect{Kind: "worm-hole2", Rect: at(0, 16, 0, 16)}},
		{"rot 8' .. 8' 2\" x 1…2", layout.Defect{Kind: layout.Rot, Rect: at(1536, 1568, 16, 32)}},
		// Reaching over the board is not for the reader to judge.
		{"pin 0 x 0 d1", layout.Defect{Kind: layout.Pin, Rect: at(-8, 8, -8, 8)}},
		{"knot 99..102 x 7..9", layout.Defect{Kind: layout.Knot, Rect: at(1584, 1632, 112, 144)}},
	} {
		got, want := parseDefect(test.text, plank, layout.Inches)
		if test.want.Kind == "" {
			if want == "" {
				t.Errorf("%q is read as %v, want a complaint", test.text, got)
			}
			continue
		}
		if diff := cmp.Diff(test.want, got); want != "" || diff != "" {
			t.Errorf("%q: %s (-want +got):\n%s", test.text, want, diff)
		}
	}
}

// Half of an odd diameter goes outward.
func TestOddDiameter(t *testing.T) {
	got, want := parseDefect("pin 10 x 10 d0.000003", plank, layout.Millimetres)
	const ten = 10 * layout.Millimetre
	if want != "" || got.Rect != (layout.Rect{X1: ten - 2, X2: ten + 2, Y1: ten - 2, Y2: ten + 2}) {
		t.Errorf("got %v, %s", got.Rect, want)
	}
}

func TestParseDefectRefuses(t *testing.T) {
	for _, test := range []struct{ text, want string }{
		{"knot", wantDefect},
		{"31..33", wantDefect},
		{"@3..4", wantDefect},
		{"knot 3..4 x", wantDefect},
		{"knot 31", wantRange},
		{"knot 31-33", wantRange},
		{"knot 31..33 x 2", wantRange},
		{"knot 50 d2", wantRound},
		{"knot 3..4 /C", wantFace},
		{"knot 3..4 /top", wantFace},
		{"knot 4..3", wantOrder},
		{"knot 3..3 x 1..2", wantOrder},
		{"knot 101..", "which lies wholly off the board"},
		{"knot 50 x 2 d0", "want a diameter of more than 0"},
		{"knot a..4", `which has no length in "a": want a length such as 5-7/8, 5-7/8", 8' 2-1/2" or 149.5mm`},
		{"knot 3..4 x -1..2", `which has no length in "-1": want a length that is not negative`},
	} {
		if got, want := parseDefect(test.text, plank, layout.Inches); want != test.want {
			t.Errorf("%q is read as %v, %q; want %q", test.text, got, want, test.want)
		}
	}
}

// Whatever is read has some length and width.
func FuzzParseDefect(f *testing.F) {
	for _, text := range []string{
		"knot 31..33 x 1-1/2..3", "check 0..4", "wane .. x 5-1/2..6", "pin 50 x 2 d1/4 /B", "kind@1..2,3..4/A",
		"sap 0–3/4 to 5' 1\" x ½…2", "knot 4..3",
	} {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		d, want := parseDefect(text, plank, layout.Inches)
		if want == "" && (d.Rect.Empty() || d.Kind == "") {
			t.Fatalf("%q is read as %v", text, d)
		}
	})
}
