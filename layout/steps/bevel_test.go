package steps

import (
	"slices"
	"testing"

	"github.com/google/go-cmp/cmp"

	"sawbill/layout"
)

const in = layout.Inch

func rect(x1, x2, y1, y2 layout.Length) layout.Rect {
	return layout.Rect{X1: x1, X2: x2, Y1: y1, Y2: y2}
}

// single is a plan for one board of hornbeam, H4, with one blank that is trued.
func single(b layout.Board, blank layout.Rect, thickness layout.Length, bill []layout.Part, strips ...*layout.Node) *layout.Plan {
	b.Mark, b.Species, b.TipWidth = "H4", "hornbeam", max(b.TipWidth, b.Width)
	for i := range bill {
		bill[i].Species, bill[i].Grade = []string{"hornbeam"}, layout.Clear
	}
	p := &layout.Problem{Shop: layout.DefaultShop(layout.Inches), Stock: []layout.Board{b}, Bill: bill}
	n := &layout.Node{Rect: blank, Cut: layout.Rip, Trued: true, Thickness: thickness, Children: strips}
	root := &layout.Node{Rect: b.Frame(), Cut: layout.Crosscut, Children: []*layout.Node{n}}
	return layout.Assemble(p, []layout.BoardCut{{Board: "H4", Root: root}})
}

// staves is a rough board, 40 x 6 x 1, planed to 3/4. At 45 degrees a strip leans
// by 3/4, and the kerf of 1/8 takes 0.177 in of a face. In its blank, [1/4, 5-7/8]
// after the trim, lie
//
//	face A  3/8..1-3/8   two more staves beside each other   and from 4-3/4 a square lath of 1/2
func staves() *layout.Plan {
	const e = in / 8
	kerf := layout.DefaultShop(layout.Inches).BevelKerf(45 * layout.Degree)
	stave := func(y layout.Length) *layout.Node {
		return &layout.Node{Rect: rect(in+2*e, 39*in-2*e, y, y+in), Part: "stave", Lean: 6 * e}
	}
	lath := &layout.Node{Rect: rect(in+2*e, 39*in-2*e, 38*e, 42*e), Part: "lath"}
	bill := []layout.Part{
		{Name: "stave", Thickness: 6 * e, Width: in, Length: 37*in + 4*e, Quantity: 3, Bevel: 45 * layout.Degree},
		{Name: "lath", Thickness: 6 * e, Width: 4 * e, Length: 37*in + 4*e, Quantity: 1},
	}
	return single(layout.Board{Thickness: in, Width: 6 * in, Length: 40 * in}, rect(in, 39*in, 0, 6*in), 6*e, bill,
		stave(3*e), stave(3*e+in+kerf), stave(3*e+2*(in+kerf)), lath)
}

// The far edge is ripped parallel where the last piece ends; from it, with face B
// down, the wedge comes off; then the staves with face A down and the edge that
// each cut leaves against the fence; last the wedge before the square lath, which
// is what remains.
func TestStavesAreRippedAtABevel(t *testing.T) {
	want := []string{
		"1 H4: crosscut from butt 39 -> H4~1 39 x 6 x 1 + -",
		"2 H4~1: crosscut from butt 7/8 -> - + H4-1",
		"3 H4-1: true from face 3/4 -> H4-1~1 37-1/2 x 5-3/4 x 3/4 + -",
		"4 H4-1~1: rip from reference 5-1/8 -> H4-1~2 37-1/2 x 5-1/8 x 3/4 + -",
		// On face B the first stave begins at 1-1/8, and the far edge is at 5-1/4.
		"5 H4-1~2: bevel rip from far 4-1/8 at 45, B down -> H4-1~3 37-1/2 x 4-1/8 x 3/4 + -",
		"6 H4-1~3: bevel rip from reference 1 at 45, A down -> H4-1a~1 37-1/2 x 1 x 3/4 + H4-1~4",
		"7 H4-1~4: bevel rip from reference 1 at 45, A down -> H4-1b~1 37-1/2 x 1 x 3/4 + H4-1~5",
		"8 H4-1~5: bevel rip from reference 1 at 45, A down -> H4-1c~1 37-1/2 x 1 x 3/4 + H4-1~6",
		"9 H4-1~6: rip from far 1/2, B down -> H4-1d~1 37-1/2 x 1/2 x 3/4 + -",
		// The tip end is still rough.
		"10 H4-1a~1: crosscut from butt 37-1/2 -> H4-1a 37-1/2 x 1 x 3/4 + -, stave, 1 of 3",
		"11 H4-1b~1: crosscut from butt 37-1/2 -> H4-1b 37-1/2 x 1 x 3/4 + -, stave, 2 of 3",
		"12 H4-1c~1: crosscut from butt 37-1/2 -> H4-1c 37-1/2 x 1 x 3/4 + -, stave, 3 of 3",
		"13 H4-1d~1: crosscut from butt 37-1/2 -> H4-1d 37-1/2 x 1/2 x 3/4 + -, lath, 1 of 1",
	}
	plan := staves()
	if diff := cmp.Diff(want, lines(All(plan)[0])); diff != "" {
		t.Error(diff)
	}
	wantValid(t, plan)
	if err := cutAll(plan); err != nil {
		t.Error(err)
	}
}

func TestBevelsAreCautioned(t *testing.T) {
	sheet := All(staves())[0]
	for number, want := range map[int][]Caution{
		4: {CautionPushStick, CautionThin},
		5: {CautionBevel, CautionPushStick},
		6: {CautionBevel, CautionPushStick},
		9: {CautionPushStick, CautionThinBoth},
	} {
		if got := sheet.Steps[number-1].Cautions; !slices.Equal(got, want) {
			t.Errorf("step %d says %q, not %q", number, got, want)
		}
	}
}

// A section of what is in hand and of what the blade makes of it: the wedge is
// wider on face B.
func TestSectionsOfABevelRip(t *testing.T) {
	s := All(staves())[0].Steps[4]
	kerf := layout.DefaultShop(layout.Inches).BevelKerf(45 * layout.Degree)
	span := func(lo, hi layout.Length) layout.Span { return layout.Span{Lo: lo, Hi: hi} }
	want := []Section{
		{span(in/8, 42*in/8), span(in/8, 42*in/8)},
		{span(3*in/8, 42*in/8), span(9*in/8, 42*in/8)},
		{span(in/8, 3*in/8-kerf), span(in/8, 9*in/8-kerf)},
	}
	if diff := cmp.Diff(want, []Section{s.WholeSection, s.OffSection, s.RestSection}); diff != "" {
		t.Error(diff)
	}
}

// Beyond a bevel two leftovers of a tapered board have no straight far edge: they
// wait together, under a name of their own, until the bevels are ripped.
func TestLeftoversBeyondABevelWait(t *testing.T) {
	const e = in / 8
	strip := func(y1, y2 layout.Length) *layout.Node { return &layout.Node{Rect: rect(in+2*e, 39*in-2*e, y1, y2)} }
	stave, near, far := strip(3*e, 11*e), strip(20*e, 78*e), strip(79*e, 95*e)
	stave.Part, stave.Lean, near.Offcut, far.Offcut = "stave", 6*e, "?", "?"
	bill := []layout.Part{{Name: "stave", Thickness: 6 * e, Width: in, Length: 37*in + 4*e, Quantity: 1, Bevel: 45 * layout.Degree}}
	b := layout.Board{Thickness: in, Width: 4 * in, TipWidth: 12 * in, Length: 40 * in}
	plan := single(b, rect(in, 39*in, 0, 12*in), 6*e, bill, stave, near, far)
	want := []string{
		"4 H4-1~1: rip from reference 2-1/4 -> H4-1~2 37-1/2 x 2-1/4 x 3/4 + H4-1/far",
		"5 H4-1~2: bevel rip from far 1-1/4 at 45, B down -> H4-1~4 37-1/2 x 1-1/4 x 3/4 + -",
		"6 H4-1~4: bevel rip from reference 1 at 45, A down -> H4-1a~1 37-1/2 x 1 x 3/4 + -",
	}
	if diff := cmp.Diff(want, lines(All(plan)[0])[3:6]); diff != "" {
		t.Error(diff)
	}
	if err := cutAll(plan); err != nil {
		t.Error(err)
	}
}

// A length of a square strip is ripped again into a square lath and two leaning staves: the
// wedges come off the length, not off the strip.
func TestLeaningPartsOfASquareStrip(t *testing.T) {
	const e = in / 8
	kerf := layout.DefaultShop(layout.Inches).BevelKerf(45 * layout.Degree)
	high := 4*e + kerf + in + kerf + in + 6*e + kerf
	left, right := rect(in+2*e, 19*in, e, e+high), rect(19*in+e, 37*in+e, e, e+high)
	part := func(name string, y1, y2, lean layout.Length) *layout.Node {
		n := &layout.Node{Rect: left, Part: name, Lean: lean}
		n.Y1, n.Y2 = y1, y2
		return n
	}
	first := 5*e + kerf
	strip := &layout.Node{Rect: rect(in+2*e, 39*in-2*e, e, e+high), Cut: layout.Crosscut, Children: []*layout.Node{
		{Rect: left, Cut: layout.Rip, Children: []*layout.Node{
			part("lath", e, 5*e, 0), part("stave", first, first+in, 6*e), part("stave", first+in+kerf, first+2*in+kerf, 6*e),
		}},
		{Rect: right, Part: "panel"},
	}}
	bill := []layout.Part{
		{Name: "lath", Thickness: 6 * e, Width: 4 * e, Length: left.Length(), Quantity: 1},
		{Name: "stave", Thickness: 6 * e, Width: in, Length: left.Length(), Quantity: 2, Bevel: 45 * layout.Degree},
		{Name: "panel", Thickness: 6 * e, Width: high, Length: right.Length(), Quantity: 1},
	}
	plan := single(layout.Board{Thickness: in, Width: 6 * in, Length: 40 * in}, rect(in, 39*in, 0, 6*in), 6*e, bill, strip)
	wantValid(t, plan)
	if err := cutAll(plan); err != nil {
		t.Error(err)
	}
	bevels := 0
	for _, s := range All(plan)[0].Steps {
		if s.Operation == BevelRip {
			bevels++
			if !slices.Contains(s.Cautions, CautionBevel) {
				t.Errorf("step %d is ripped at a bevel without a caution", s.Number)
			}
		}
	}
	if bevels < 3 {
		t.Errorf("%d rips at a bevel, want the wedge and both staves", bevels)
	}
}
