package steps

import (
	"slices"
	"testing"

	"github.com/google/go-cmp/cmp"

	"sawbill/layout"
)

// warped is a board of 80 x 10 x 2 with bow 1/2, crook 1, cup 1/4 and twist 1/4.
// One blank of 40 is ripped in two before truing: the near half, 5 wide, is
// trued.
func warped() *layout.Plan {
	const e = in / 8
	b := layout.Board{Thickness: 2 * in, Width: 10 * in, Length: 80 * in, Bow: 4 * e, Crook: in, Cup: 2 * e, Twist: 2 * e}
	bill := []layout.Part{{Name: "rail", Thickness: 12 * e, Width: 2 * in, Length: 30 * in, Quantity: 1}}
	plan := single(b, rect(in, 41*in, 0, 5*in), 12*e, bill,
		&layout.Node{Rect: rect(10*e, 326*e, 3*e, 19*e), Cut: layout.Crosscut, Children: []*layout.Node{
			{Rect: rect(10*e, 250*e, 3*e, 19*e), Part: "rail"},
		}})
	root := plan.Boards[0].Root
	blank := &layout.Node{Rect: rect(in, 41*in, 0, 10*in), Cut: layout.Rip, Children: root.Children}
	root.Children = []*layout.Node{blank}
	return plan
}

// Half as long and half as wide: bow and crook cost a quarter, cup a quarter, and
// twist a quarter of its half.
func TestTruingSaysWhatItCosts(t *testing.T) {
	want := Truing{
		From: 2 * in, Finishes: 2*in - 3*in/16 - in/8 - in/16 - in/32, Hollow: in / 4,
		Faces:  layout.Flattening{Skim: 3 * in / 16, Bow: in / 8, Cup: in / 16, Twist: in / 32},
		Losses: layout.Losses{Near: in / 8, Far: in / 8, End: in / 4},
	}
	plan := warped()
	sheet := All(plan)[0]
	if diff := cmp.Diff(want, sheet.Blanks[0].Truing); diff != "" {
		t.Error(diff)
	}
	if err := cutAll(plan); err != nil {
		t.Error(err)
	}
}

func TestARoughRipComesBeforeTruing(t *testing.T) {
	sheet := All(warped())[0]
	want := []string{
		"3 H4-1: rough rip from reference 5 -> H4-1~1 40 x 5 x 2 + -",
		"4 H4-1~1: true from face 1-1/2 -> H4-1~2 39-1/2 x 4-1/2 x 1-1/2 + -",
		// The near edge of the blank was jointed 3/8 deep at its ends.
		"5 H4-1~2: rip from reference 2 -> H4-1~3 39-1/2 x 2 x 1-1/2 + -",
	}
	if diff := cmp.Diff(want, lines(sheet)[2:5]); diff != "" {
		t.Error(diff)
	}
	if got := sheet.Steps[2].Cautions; !slices.Equal(got, []Caution{CautionRoughRip, CautionSupport}) {
		t.Errorf("the rough rip says %q", got)
	}
}

// In a blank of half its length the crook of 1 in moves what is marked by 1/4.
func TestCautionsFollowTheCrook(t *testing.T) {
	for _, c := range []struct {
		y1, y2 layout.Length
		want   string
	}{
		// The rip passes 2-3/8 to 2-1/2; metal is not grown here.
		{17 * in / 8, 18 * in / 8, "The cut passes a hole, 15-3/4 to 16-3/4 from the butt end: wedge, knock out or tape it first; stand aside."},
		{15 * in / 8, 16 * in / 8, ""},
	} {
		plan := warped()
		plan.Problem.Stock[0].Defects = []layout.Defect{{Kind: layout.Hole, Rect: rect(17*in, 18*in, c.y1, c.y2)}}
		rip := All(plan)[0].Steps[4]
		if said := slices.Contains(rip.Cautions, Caution(c.want)); said == (c.want == "") {
			t.Errorf("a hole at y %v: the rip says %q", c.y1, rip.Cautions)
		}
	}
}
