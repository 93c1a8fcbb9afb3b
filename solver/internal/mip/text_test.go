package mip

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"sawbill/layout"
)

// One bar of 1000 mm that costs 3, a kerf of 4 and trims of 10: two pieces of
// 486 take 2 * 490 of 1000 - 20 + 4 = 984.
func TestBarsAsText(t *testing.T) {
	const mm = layout.Millimetre
	p := &layout.Problem{
		Shop:  &layout.Shop{CrosscutKerf: 4 * mm, EndTrim: 10 * mm},
		Stock: []layout.Board{{Length: 1000 * mm, Cost: 3}},
		Bill:  []layout.Part{{Length: 486 * mm, Quantity: 2}},
	}
	var got strings.Builder
	if err := Bars(p).write(&got); err != nil {
		t.Fatal(err)
	}
	want := `Minimize
 cost: +3 x0 +0 x1
Subject To
 r0: +984 x0 -490 x1 >= 0
 r1: +1 x1 >= 2
Bounds
 0 <= x0 <= 1
 0 <= x1 <= 2
General
 x0
 x1
End
`
	if diff := cmp.Diff(want, got.String()); diff != "" {
		t.Error(diff)
	}
}

// A board of 100 by 50 and one part of 100 by 24 with a kerf of 2. The only
// length is 100, the widths are 24 and 24 + 2 + 24 = 50.
func TestPanelsCountRectangles(t *testing.T) {
	const mm = layout.Millimetre
	p := &layout.Problem{
		Shop:  &layout.Shop{CrosscutKerf: 2 * mm, RipKerf: 2 * mm, RipAgain: true},
		Stock: []layout.Board{{Length: 100 * mm, Width: 50 * mm, Cost: 3}},
		Bill:  []layout.Part{{Length: 100 * mm, Width: 24 * mm, Quantity: 2}},
	}
	m := Panels(p)
	// Rectangles: the board; blanks 50 and 24 wide; strips and cells likewise.
	if got, want := m.Rows(), 7+1; got != want {
		t.Errorf("%d rows, want %d", got, want)
	}
	// The board; one blank; a strip of 24 or of 50 off the blank of 50, one off
	// that of 24; one cell off each strip; one part off each cell.
	if got, want := m.Variables(), 1+1+3+2+2; got != want {
		t.Errorf("%d variables, want %d", got, want)
	}
}

func TestAnswersAreRead(t *testing.T) {
	for _, tc := range []struct {
		line   string
		read   func(string) (float64, bool, bool)
		value  float64
		proven bool
		ok     bool
	}{
		{"Optimal - objective value 41.00000000", cbcAnswer, 41, true, true},
		{"Stopped on time - objective value 42.5", cbcAnswer, 42.5, false, true},
		{"Infeasible - objective value 0.0", cbcAnswer, 0, false, false},
		{"s mip 12 34 o 41", glpsolAnswer, 41, true, true},
		{"s mip 12 34 f 42", glpsolAnswer, 42, false, true},
		{"s mip 12 34 u 0", glpsolAnswer, 0, false, false},
		{"c Problem:", glpsolAnswer, 0, false, false},
	} {
		value, proven, ok := tc.read(tc.line)
		if ok != tc.ok || ok && (value != tc.value || proven != tc.proven) {
			t.Errorf("%q: %v, %v, %v", tc.line, value, proven, ok)
		}
	}
}
