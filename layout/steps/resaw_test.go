package steps

import (
	"slices"
	"testing"

	"github.com/google/go-cmp/cmp"

	"sawbill/layout"
)

// panels is a rough board, 40 x 5 x 2, planed to 1-5/16: three panels of 1/4 and
// two resaws of 1/16 + 2 x 3/32, 3 x 1/4 + 2 x 1/4 = 1-1/4; and beside them a slip
// on edge, 1-5/16 x 3/8, which is cut 3/8 wide.
func panels() *layout.Plan {
	const e = in / 8
	strip := func(y1, y2 layout.Length, leaf *layout.Node) *layout.Node {
		leaf.Rect = rect(in+2*e, 31*in+2*e, y1, y2)
		return &layout.Node{Rect: rect(in+2*e, 39*in-2*e, y1, y2), Cut: layout.Crosscut, Children: []*layout.Node{leaf}}
	}
	bill := []layout.Part{
		{Name: "panel", Thickness: 2 * e, Width: 3 * in, Length: 30 * in, Quantity: 3, Resaw: true},
		{Name: "slip", Thickness: 3 * e, Width: in + 5*in/16, Length: 30 * in, Quantity: 1, OnEdge: true},
	}
	return single(layout.Board{Thickness: 2 * in, Width: 5 * in, Length: 40 * in}, rect(in, 39*in, 0, 5*in), in+5*in/16, bill,
		strip(e, 25*e, &layout.Node{Part: "panel", Layers: 3}), strip(26*e, 29*e, &layout.Node{Part: "slip", OnEdge: true}))
}

// The strip of the panels is planed first. Each slice is resawn 3/32 too thick,
// with the planed face against the fence; the sawn face of what is left is jointed
// before the next one; at last all slices are planed.
func TestPanelsAreResawn(t *testing.T) {
	plan := panels()
	want := []string{
		"6 H4-1/1: plane from face 1-1/4 -> H4-1/1~1 37-1/2 x 3 x 1-1/4 + -",
		"7 H4-1/1~1: crosscut from butt 30 -> H4-1a~1 30 x 3 x 1-1/4 + -",
		"8 H4-1/2: crosscut from butt 30 -> H4-1b 30 x 3/8 x 1-5/16 + -, slip, 1 of 1",
		"9 H4-1a~1: resaw from face 11/32 -> H4-1a1~1 30 x 3 x 11/32 + H4-1a~2",
		"10 H4-1a~2: plane from face 3/4 -> H4-1a~3 30 x 3 x 3/4 + -",
		"11 H4-1a~3: resaw from face 11/32 -> H4-1a2~1 30 x 3 x 11/32 + H4-1a3~1",
		"12 H4-1a1~1: plane from face 1/4 -> H4-1a1 30 x 3 x 1/4 + -, panel, 1 of 3",
		"13 H4-1a2~1: plane from face 1/4 -> H4-1a2 30 x 3 x 1/4 + -, panel, 2 of 3",
		"14 H4-1a3~1: plane from face 1/4 -> H4-1a3 30 x 3 x 1/4 + -, panel, 3 of 3",
	}
	sheet := All(plan)[0]
	if diff := cmp.Diff(want, lines(sheet)[5:]); diff != "" {
		t.Error(diff)
	}
	if err := cutAll(plan); err != nil {
		t.Error(err)
	}
	if !sheet.Steps[9].Jointed || sheet.Steps[11].Jointed {
		t.Error("what lies against the fence next is jointed, a slice is planed")
	}
	if !sheet.Steps[7].OnEdge {
		t.Error("the slip does not say that it stands on edge")
	}
}

// Without skim nothing is planed: the last piece is what the last resaw leaves.
func TestResawnWithoutSkim(t *testing.T) {
	plan := panels()
	plan.Problem.Shop.FaceSkim = 0
	part := &plan.Problem.Bill[0]
	part.Thickness = (in + in/8) / 3 // 3 x 3/8 + 2 x 1/16 = 1-1/4
	want := []string{
		"9 H4-1a~1: resaw from face 3/8 -> H4-1a1 30 x 3 x 3/8 + H4-1a~2, panel, 1 of 3",
		"10 H4-1a~2: resaw from face 3/8 -> H4-1a2 30 x 3 x 3/8 + H4-1a3~1, panel, 2 of 3",
		"11 H4-1a3~1: resaw from face 3/8 -> H4-1a3 30 x 3 x 3/8 + -, panel, 3 of 3, no cut",
	}
	if diff := cmp.Diff(want, lines(All(plan)[0])[8:]); diff != "" {
		t.Error(diff)
	}
	if err := cutAll(plan); err != nil {
		t.Error(err)
	}
}

func TestResawsAndThinWoodAreCautioned(t *testing.T) {
	plan := panels()
	sheet := All(plan)[0]
	if got := sheet.Steps[8].Cautions; !slices.Equal(got, []Caution{CautionResaw}) {
		t.Errorf("the resaw says %q", got)
	}
	if got := sheet.Steps[11].Cautions; len(got) != 0 {
		t.Errorf("planing to 1/4 says %q", got)
	}
	plan.Problem.Bill[0].Thickness = in / 8
	if got := All(plan)[0].Steps[11].Cautions; !slices.Equal(got, []Caution{CautionThinPlane}) {
		t.Errorf("planing to 1/8 says %q", got)
	}
}
