package check

import (
	"testing"

	"sawbill/layout"
)

// warpedPlan cuts one stile of 18 mm from half of P1 without its taper. The
// board is 30 thick, finishes to 25, is 2000 by 200 and has a crook of 4: in a
// blank of 1000 the wood starts at 4 x (1/2)^2 = 1, and 3 more are jointed.
func warpedPlan() *layout.Plan {
	p := goodJob()
	p.Stock = p.Stock[:1]
	b := &p.Stock[0]
	b.TipWidth, b.Crook, b.Defects = b.Width, 4*millimetre, nil
	p.Bill = p.Bill[2:3]
	p.Bill[0].Thickness, p.Bill[0].Quantity = 18*millimetre, 1
	blank := trued(box(25, 1025, 0, 200), 18, crosscut(box(31, 1019, 4, 44), leaf(box(31, 481, 4, 44), "stile")))
	return layout.Assemble(&p, []layout.BoardCut{{Board: "P1", Root: crosscut(box(0, 2000, 0, 200), blank)}})
}

func warped(p *layout.Plan) *layout.Board { return &p.Problem.Stock[0] }

func TestWarpedPlanPasses(t *testing.T) {
	for _, v := range Plan(warpedPlan()) {
		t.Error(v)
	}
}

// An offcut that reaches to the reference edge counts from where the wood of its
// blank begins, 1 mm in.
func TestOffcutOfACrookedBoard(t *testing.T) {
	p := warpedPlan()
	root := p.Boards[0].Root
	root.Children = append(root.Children, keep(box(1028, 1828, 0, 200)))
	again := reassembled(p)
	for _, v := range Plan(again) {
		t.Error(v)
	}
	// 0.6 x 38 x 800 x (200 - 0.64) / (2000 x 200), with 4 x (8/20)^2 = 0.64.
	if got := again.Totals.Cost; got != 380_000-90_908 {
		t.Errorf("cost %v", got)
	}
}

func TestCrook(t *testing.T) {
	for _, c := range []struct {
		what string
		by   layout.Length
		ok   bool
	}{
		{"half a micrometre into the hollow", -500, true},
		{"two micrometres", -2000, false},
	} {
		p := warpedPlan()
		move(down(p, 0, 0, 0), c.by)
		for _, rule := range []string{"V2", "V7"} {
			if got := finds(Plan(p), rule, ""); got == c.ok {
				t.Errorf("%s: %s reported: %v", c.what, rule, got)
			}
		}
	}
}

// With one straight edge nothing is jointed or squared there, unless the board
// is crooked.
func TestCrookedReferenceEdgeIsNotSpared(t *testing.T) {
	p := warpedPlan()
	warped(p).Edges = layout.EdgesBoth
	wantOnly(t, p, "V2") // still x 31..1019
	move(down(p, 0, 0, 0), -3*millimetre)
	wantViolation(t, p, "V7", "sound edge to work from is at 4 mm")
}

// A defect of a crooked board reaches up by the crook of its blank, 1, and not
// down: the part lies at 4..44.
func TestDefectInACrookedBlank(t *testing.T) {
	for _, c := range []struct {
		y1, y2 layout.Length
		ok     bool
	}{
		{0, 3, true}, // reaches to 4, where the part starts
		{0, 4, false},
		{44, 50, true},
	} {
		p := warpedPlan()
		warped(p).Defects = []layout.Defect{{Kind: layout.Rot, Rect: box(100, 110, c.y1, c.y2)}}
		if got := finds(Plan(p), "V8", ""); got == c.ok {
			t.Errorf("rot at y %d..%d: V8 reported: %v", c.y1, c.y2, got)
		}
	}
}

// The blank is half the board's length and all its width: available is
// 25 - bow/4 - cup - twist/4.
func TestAvailableThickness(t *testing.T) {
	const mm = millimetre
	for _, c := range []struct {
		what            string
		bow, cup, twist layout.Length
		ok              bool
	}{
		{"bow takes 7", 28 * mm, 0, 0, true},
		{"bow takes 7.25", 29 * mm, 0, 0, false},
		{"cup takes 7", 0, 7 * mm, 0, true},
		{"cup takes 7.002", 0, 7*mm + 2000, 0, false},
		{"cup takes 7.0005", 0, 7*mm + 500, 0, true},
		{"twist takes 7", 0, 0, 28 * mm, true},
		{"twist takes 7.25", 0, 0, 29 * mm, false},
		{"2 + 3 + 2", 8 * mm, 3 * mm, 8 * mm, true},
		{"2 + 3 + 2.25", 8 * mm, 3 * mm, 9 * mm, false},
	} {
		p := warpedPlan()
		b := warped(p)
		b.Bow, b.Cup, b.Twist = c.bow, c.cup, c.twist
		if got := finds(Plan(p), "V5", "cleans up to"); got == c.ok {
			t.Errorf("%s: V5 reported: %v", c.what, got)
		}
	}
}

// The far edge falls from 200 to 180: under the second stile, at x 934, it is at
// 190.66, and 3 are jointed off.
func TestTaperAllowsAMicrometre(t *testing.T) {
	for _, c := range []struct {
		beyond layout.Length
		ok     bool
	}{
		{0, true}, {1000, true}, {1001, false},
	} {
		p := goodPlan()
		strip := down(p, 0, 0, 1)
		move(strip, 187_660_000+c.beyond-strip.Y2)
		if got := finds(Plan(p), "V7", "the far edge"); got == c.ok {
			t.Errorf("%d nm beyond: V7 reported: %v", c.beyond, got)
		}
	}
}
