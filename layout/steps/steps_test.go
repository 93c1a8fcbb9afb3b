package steps

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"pgregory.net/rapid"

	"sawbill/layout"
	"sawbill/layout/check"
)

func TestSawyerEndsWithThePartsOfAnyPlan(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := randomPlan(t)
		wantValid(t, p)
		if err := cutAll(p); err != nil {
			for _, s := range All(p) {
				t.Log(strings.Join(lines(s), "\n"))
			}
			t.Fatal(err)
		}
	})
}

// wantValid holds a plan against the rules that steps rely on. Sizes that the shop
// would not handle are none of them.
func wantValid(t rapid.TB, p *layout.Plan) {
	rules := []string{"form", "V1", "V2", "V4", "V7", "V9"}
	for _, v := range check.Plan(p) {
		if slices.Contains(rules, v.Rule) {
			t.Fatalf("the plan is not valid: %v", v)
		}
	}
}

// Waste that is thinner than the shop rips never lies between fence and blade,
// but where the far edge has no straight wood to turn round to.
func TestThinWasteIsNeverTrapped(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := randomPlan(t)
		for _, sheet := range All(p) {
			for _, s := range sheet.Steps {
				trapped := s.Operation == Rip && s.From == Reference && s.Off == "" && s.Setting < p.Problem.Shop.MinRip
				if trapped && sheet.Board.Width == sheet.Board.TipWidth {
					t.Fatalf("step %d: %v of waste against the fence", s.Number, s.Setting)
				}
			}
		}
	})
}

// lines writes each step as one line of text.
func lines(s *Sheet) []string {
	var list []string
	for _, st := range s.Steps {
		line := fmt.Sprintf("%d %s: %s from %s %s%s -> %s", st.Number, st.Piece, st.Operation, st.From, inches(st.Setting), tilted(&st), dash(st.Off))
		if st.Off != "" {
			line += fmt.Sprintf(" %s x %s x %s", inches(st.OffSize.Length), inches(st.OffSize.Width), inches(st.OffSize.Thickness))
		}
		line += " + " + dash(st.Rest)
		for _, more := range []string{st.Part, st.Count.String(), st.OffcutColumn()} {
			if more != "" {
				line += ", " + more
			}
		}
		if st.NoCut {
			line += ", no cut"
		}
		list = append(list, line)
	}
	return list
}

// tilted says how the blade stands and which face is down, where that matters.
func tilted(s *Step) string {
	text := ""
	if s.Angle > 0 {
		text += " at " + s.Angle.String()
	}
	if s.Down != layout.Through {
		text += ", " + s.Down.String() + " down"
	}
	return text
}

func inches(l layout.Length) string {
	return strings.TrimSuffix(l.Format(layout.Inches, 64), "\"")
}

func dash(id string) string {
	if id == "" {
		return "-"
	}
	return id
}

// bench is a plan made by hand: a rough board of hornbeam, 60 x 7 x 1, in two
// blanks. The first is [1, 31] of the board and so [1-1/4, 30-3/4] x [1/8, 6-7/8]
// after truing. It gives two rails side by side, a strip with two pegs, of which
// the second is at an odd place, and an offcut. The second blank is [36, 59] and
// one thin panel.
func bench() *layout.Plan {
	const in, e = layout.Inch, layout.Inch / 8
	rect := func(x1, x2, y1, y2 layout.Length) layout.Rect { return layout.Rect{X1: x1, X2: x2, Y1: y1, Y2: y2} }
	part := func(r layout.Rect, name string) *layout.Node { return &layout.Node{Rect: r, Part: name} }
	const lo, hi = 10 * e, 246 * e // the usable length of the first blank
	first := &layout.Node{
		Rect: rect(1*in, 31*in, 0, 7*in), Cut: layout.Rip, Trued: true, Thickness: 6 * e,
		Children: []*layout.Node{
			{Rect: rect(lo, hi, 1*e, 26*e), Cut: layout.Crosscut, Children: []*layout.Node{
				{Rect: rect(lo, lo+24*in, 1*e, 26*e), Cut: layout.Rip, Children: []*layout.Node{
					part(rect(lo, lo+24*in, 1*e, 13*e), "rail"),
					part(rect(lo, lo+24*in, 14*e, 26*e), "rail"),
				}},
			}},
			{Rect: rect(lo, hi, 27*e, 35*e), Cut: layout.Crosscut, Children: []*layout.Node{
				part(rect(lo, lo+4*in, 27*e, 35*e), "peg"),
				part(rect(lo+6*in, lo+10*in, 27*e, 35*e), "peg"),
			}},
			{Rect: rect(lo, hi, 36*e, 55*e), Offcut: "?"},
		},
	}
	second := &layout.Node{
		Rect: rect(36*in, 59*in, 0, 7*in), Cut: layout.Rip, Trued: true, Thickness: 4 * e,
		Children: []*layout.Node{
			{Rect: rect(36*in+2*e, 59*in-2*e, 1*e, 55*e), Cut: layout.Crosscut, Children: []*layout.Node{
				part(rect(36*in+2*e, 56*in+2*e, 1*e, 55*e), "panel"),
			}},
		},
	}
	p := &layout.Problem{
		Shop: layout.DefaultShop(layout.Inches),
		Stock: []layout.Board{{
			Mark: "H4", Species: "hornbeam", Thickness: in, Width: 7 * in, TipWidth: 7 * in, Length: 60 * in,
			Defects: []layout.Defect{
				{Kind: layout.Metal, Rect: rect(33*in, 34*in, in, 2*in)},
				{Kind: layout.Loose, Rect: rect(57*in, 58*in, in, 2*in)},
			},
		}},
		Bill: []layout.Part{
			{Name: "rail", Species: []string{"hornbeam"}, Thickness: 6 * e, Width: 12 * e, Length: 24 * in, Quantity: 3},
			{Name: "peg", Species: []string{"hornbeam"}, Thickness: 5 * e, Width: 8 * e, Length: 4 * in, Quantity: 2},
			{Name: "panel", Species: []string{"hornbeam"}, Thickness: 4 * e, Width: 54 * e, Length: 20 * in, Quantity: 1},
		},
	}
	root := &layout.Node{Rect: rect(0, 60*in, 0, 7*in), Cut: layout.Crosscut, Children: []*layout.Node{first, second}}
	return layout.Assemble(p, []layout.BoardCut{{Board: "H4", Root: root}})
}

func TestStepsOfAPlanMadeByHand(t *testing.T) {
	plan := bench()
	want := []string{
		// Between the blanks lie 5 in: two cuts.
		"1 H4: crosscut from butt 59 -> H4~1 59 x 7 x 1 + -",
		"2 H4~1: crosscut from butt 35-7/8 -> H4~2 35-7/8 x 7 x 1 + H4-2",
		"3 H4~2: crosscut from butt 31 -> H4~3 31 x 7 x 1 + -",
		"4 H4~3: crosscut from butt 7/8 -> - + H4-1",
		"5 H4-1: true from face 3/4 -> H4-1~1 29-1/2 x 6-3/4 x 3/4 + -",
		"6 H4-1~1: rip from reference 3-1/8 -> H4-1/1 29-1/2 x 3-1/8 x 3/4 + H4-1~2",
		"7 H4-1~2: rip from reference 1 -> H4-1/2 29-1/2 x 1 x 3/4 + H4-K1, rest:H4-K1",
		"8 H4-1/2: plane from face 5/8 -> H4-1/2~1 29-1/2 x 1 x 5/8 + -",
		"9 H4-1/1: crosscut from butt 24 -> H4-1/1~1 24 x 3-1/8 x 3/4 + -",
		// The second peg starts 2 in after the first; the kerf has taken 1/8 of it.
		"10 H4-1/2~1: crosscut from butt 4 -> H4-1c 4 x 1 x 5/8 + H4-1/2~2, peg, 1 of 2",
		"11 H4-1/2~2: crosscut from butt 1-3/4 -> - + H4-1/2~3",
		"12 H4-1/2~3: crosscut from butt 4 -> H4-1d 4 x 1 x 5/8 + -, peg, 2 of 2",
		// The kerf leaves just the second rail.
		"13 H4-1/1~1: rip from reference 1-1/2 -> H4-1a 24 x 1-1/2 x 3/4 + H4-1b~1, rail, 1 of 3",
		"14 H4-1b~1: rip from reference 1-1/2 -> H4-1b 24 x 1-1/2 x 3/4 + -, rail, 2 of 3, no cut",
		// The panel is as wide as the blank, whose far edge is still rough.
		"15 H4-2: true from face 1/2 -> H4-2~1 22-1/2 x 6-3/4 x 1/2 + -",
		"16 H4-2~1: rip from reference 6-3/4 -> H4-2~2 22-1/2 x 6-3/4 x 1/2 + -",
		"17 H4-2~2: crosscut from butt 20 -> H4-2a 20 x 6-3/4 x 1/2 + -, panel, 1 of 1",
	}
	sheet := Of(plan, &plan.Boards[0])
	if diff := cmp.Diff(want, lines(sheet)); diff != "" {
		t.Error(diff)
	}
	if err := cutAll(plan); err != nil {
		t.Error(err)
	}
}

func TestCautionsStandBesideTheirStep(t *testing.T) {
	plan := bench()
	sheet := Of(plan, &plan.Boards[0])
	want := map[int][]Caution{
		1:  {CautionShort, CautionMetal, CautionDust},
		3:  {CautionShort, CautionMetal},
		4:  {CautionShort}, // so is what falls off
		6:  {CautionPushStick},
		7:  {CautionPushStick},
		10: {CautionShort},
		14: nil, // nothing is sawn
		15: {"Here lies a loose knot, 1 to 2 from the reference edge, 21 to 22 from the butt end: " +
			"cut it out first or do not machine this face; stand aside."},
		16: nil,
	}
	for number, cautions := range want {
		if got := sheet.Steps[number-1].Cautions; !slices.Equal(got, cautions) {
			t.Errorf("step %d: got %q, want %q", number, got, cautions)
		}
	}
}

func TestThinRipsAndWarpedBoardsAreCautioned(t *testing.T) {
	plan := bench()
	plan.Problem.Shop.MinRip = 3 * layout.Inch / 2 * 2
	plan.Problem.Stock[0].Cup = layout.Inch / 8
	sheet := Of(plan, &plan.Boards[0])
	for number, want := range map[int]Caution{1: CautionSupport, 7: CautionThinBoth, 13: CautionThinBoth} {
		if !slices.Contains(sheet.Steps[number-1].Cautions, want) {
			t.Errorf("step %d says %q, not %q", number, sheet.Steps[number-1].Cautions, want)
		}
	}
}

// The fence is set for what is left of a thin strip only where that is no thin strip, too.
func TestTheCautionForAThinStripCanBeFollowed(t *testing.T) {
	for sides, want := range map[[2]bool]Caution{
		{true, false}: CautionThinWanted, {false, true}: CautionThin, {true, true}: CautionThinBoth, {}: "",
	} {
		if got := thin(sides[0], sides[1]); got != want {
			t.Errorf("thin at the fence %t, beyond the blade %t: %q", sides[0], sides[1], got)
		}
	}
}

// Waste is as thin or as short in the hand as what is wanted.
func TestWasteIsCautionedToo(t *testing.T) {
	plan := bench()
	first := plan.Boards[0].Root.Children[0]
	// One strip of 6-1/8, of which 24 are used: of the trued blank, 6-7/8 wide
	// with its rough far edge, 5/8 are waste; of 30 less 1/4 at the butt, 5-5/8.
	first.Children = first.Children[:1]
	strip := first.Children[0]
	strip.Y2 = 50 * layout.Inch / 8
	strip.Children[0].Y2 = strip.Y2
	sheet := Of(plan, &plan.Boards[0])
	cuts := slices.DeleteFunc(sheet.Steps, func(s Step) bool { return s.Blank != "H4-1" })
	rip, crosscut := cuts[1], cuts[2]
	if rip.RestTape.Butt != 5*layout.Inch/8 || !slices.Contains(rip.Cautions, CautionThin) {
		t.Errorf("a rip with waste of %v says %q", rip.RestTape.Butt, rip.Cautions)
	}
	if crosscut.RestTape.Length != 45*layout.Inch/8 || !slices.Contains(crosscut.Cautions, CautionShort) {
		t.Errorf("a crosscut with waste of %v says %q", crosscut.RestTape.Length, crosscut.Cautions)
	}
}

func TestACutThroughLooseWoodSaysWhereItLies(t *testing.T) {
	plan := bench()
	board := &plan.Problem.Stock[0]
	const in = layout.Inch
	rect := func(x1, x2, y1, y2 layout.Length) layout.Rect { return layout.Rect{X1: x1, X2: x2, Y1: y1, Y2: y2} }
	board.Defects = []layout.Defect{
		{Kind: layout.Loose, Rect: rect(58*in, 60*in, 2*in, 3*in)}, // the first crosscut is at 59
		{Kind: layout.Knot, Rect: rect(58*in, 60*in, 4*in, 5*in)},  // a sound one does not fly
		{Kind: layout.Shake, Rect: rect(5*in, 7*in, 3*in, 4*in)},   // the first rip is at 3-1/4
		{Kind: layout.Bark, Rect: rect(36*in, 40*in, 0, in)},
	}
	sheet := Of(plan, &plan.Boards[0])
	for number, want := range map[int]Caution{
		1: "The cut passes a loose knot, 2 to 3 from the reference edge: wedge, knock out or tape it first; stand aside.",
		// The shake is grown by an inch at each end; the blank begins at 1-1/4.
		6: "The cut passes a shake, 2-3/4 to 6-3/4 from the butt end: wedge, knock out or tape it first; stand aside.",
		5: "Here lies a shake, 3 to 4 from the reference edge, 4 to 6 from the butt end: " +
			"cut it out first or do not machine this face; stand aside.",
		15: "Here lies bark, 0 to 1 from the reference edge, at the butt end, 4 long: " +
			"cut it out first or do not machine this face; stand aside.",
	} {
		if !slices.Contains(sheet.Steps[number-1].Cautions, want) {
			t.Errorf("step %d says %q, not %q", number, sheet.Steps[number-1].Cautions, want)
		}
	}
	if n := len(sheet.Steps[7].Cautions); n != 0 {
		t.Errorf("step 8, which planes a strip away from it all, has %d cautions", n)
	}
}

// What a tape reads adds up: what comes off, the kerf and what is left make the
// piece before, rough ends and edges and all.
func TestTapesAddUp(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := randomPlan(t)
		for _, sheet := range All(p) {
			if sheet.Board.Width != sheet.Board.TipWidth {
				continue
			}
			for _, s := range sheet.Steps {
				if s.Lean > 0 || !s.WholeSection.Square() {
					continue
				}
				off, rest, kerf := s.OffTape.Length, s.RestTape.Length, p.Problem.Shop.CrosscutKerf
				whole := s.Whole.Length
				if s.Operation != Crosscut {
					off, rest, whole, kerf = s.OffTape.Butt, s.RestTape.Butt, s.Whole.Butt, p.Problem.Shop.RipKerf
				}
				if s.Kerf.Empty() || s.Operation == RoughRip {
					continue
				}
				if sum := off + kerf + rest; off != s.Setting || sum != whole && (rest > 0 || sum < whole) {
					t.Fatalf("step %d: %v off %v with a kerf of %v leaves %v", s.Number, off, whole, kerf, rest)
				}
			}
		}
	})
}

func TestReadingsAreThoseOfARule(t *testing.T) {
	inch, mm := layout.DefaultShop(layout.Inches), layout.DefaultShop(layout.Millimetres)
	for _, c := range []struct {
		shop *layout.Shop
		l    layout.Length
		want string
	}{
		{inch, 24*layout.Inch + 13*layout.Inch/16, "24-13/16"},
		{inch, 45055084, "~1-25/32"},
		{mm, 45055084, "~45.1"},
		{mm, 45100000, "45.1"},
		{mm, 45 * layout.Millimetre, "45"},
	} {
		if got := Reading(c.shop, c.l); got != c.want {
			t.Errorf("%v reads %q, not %q", c.l, got, c.want)
		}
	}
}

// A gap of less than a kerf before a piece cannot be measured from its own side:
// the piece is cut wide, then trimmed from the fresh cut.
func TestASliverIsTrimmedFromTheOtherSide(t *testing.T) {
	plan := bench()
	strip := plan.Boards[0].Root.Children[0].Children[1]
	strip.Children[1].X1 -= 29 * layout.Inch / 16 // leaves 3/16 after the first peg
	strip.Children[1].X2 -= 29 * layout.Inch / 16
	got := lines(Of(plan, &plan.Boards[0]))[9:12]
	want := []string{
		"10 H4-1/2~1: crosscut from butt 4 -> H4-1c 4 x 1 x 5/8 + H4-1/2~2, peg, 1 of 2",
		"11 H4-1/2~2: crosscut from butt 4-1/16 -> H4-1d~1 4-1/16 x 1 x 5/8 + -",
		"12 H4-1d~1: crosscut from tip 4 -> H4-1d 4 x 1 x 5/8 + -, peg, 2 of 2",
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Error(diff)
	}
}

// A piece that ends where its blank has a square end is cut with that at the stop, and
// not left over by a cut whose setting the length of the blank would have to be right
// for.
func TestTheLastPieceIsCutFromItsSquareEnd(t *testing.T) {
	const e = in / 8
	strip := &layout.Node{Rect: rect(in, 39*in, 0, 3*in), Cut: layout.Crosscut, Children: []*layout.Node{
		{Rect: rect(9*in, 39*in, 0, 3*in), Part: "rail"},
	}}
	plan := single(layout.Board{Thickness: in, Width: 5 * in, Length: 40 * in, Edges: layout.EdgesOne}, rect(in, 39*in, 0, 5*in), 6*e,
		[]layout.Part{{Name: "rail", Thickness: 6 * e, Width: 3 * in, Length: 30 * in, Quantity: 1}}, strip)
	want := []string{"5 H4-1~2: crosscut from tip 30 -> H4-1a 30 x 3 x 3/4 + -, rail, 1 of 1"}
	if diff := cmp.Diff(want, lines(All(plan)[0])[4:]); diff != "" {
		t.Error(diff)
	}
	if err := cutAll(plan); err != nil {
		t.Error(err)
	}
}

func TestCheckWordFollowsThePlan(t *testing.T) {
	word := CheckWord(bench())
	if again := CheckWord(bench()); again != word {
		t.Errorf("the same plan gives %q and %q", word, again)
	}
	moved := bench()
	moved.Boards[0].Root.Children[0].X2 += layout.Nanometre
	kerf := bench()
	kerf.Problem.Shop.RipKerf++
	bowed := bench()
	bowed.Problem.Stock[0].Bow++
	for _, other := range []*layout.Plan{moved, kerf, bowed} {
		if got := CheckWord(other); got == word {
			t.Errorf("another plan has the same word %q", got)
		}
	}
}
