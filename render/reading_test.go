package render

import (
	"slices"
	"strings"
	"testing"

	"sawbill/layout"
	"sawbill/layout/steps"
)

// boardText is all that is written on the sheets of the first board of a plan,
// with one space between words.
func boardText(t *testing.T, plan *layout.Plan) string {
	t.Helper()
	pages, err := Board(plan, &plan.Boards[0], Options{})
	if err != nil {
		t.Fatal(err)
	}
	var all []string
	for _, p := range pages {
		all = append(all, texts(p.Scene))
	}
	return strings.Join(all, " ")
}

func TestNumbersStayOnOneLine(t *testing.T) {
	types := newTypesetter()
	for width := 2.0; width < 60; width += 1.3 {
		lines := types.wrap("rip 24-13/16 x ~45.1 wide,behind-7/8-thick", width, strong())
		for _, number := range []string{"24-13/16", "~45.1", "7/8"} {
			if !slices.ContainsFunc(lines, func(l string) bool { return strings.Contains(l, number) }) {
				t.Errorf("at %.1f mm %s is broken: %q", width, number, lines)
			}
		}
	}
}

// Every setting of the list stands there whole, in its column.
func TestSettingsStandWholeInTheirColumn(t *testing.T) {
	for name, plan := range plans(t) {
		for i := range plan.Boards {
			pages, err := Board(plan, &plan.Boards[i], Options{})
			if err != nil {
				t.Fatal(err)
			}
			inColumn := map[string]bool{}
			for _, p := range pages {
				for _, l := range p.Scene.Labels {
					if l.Baseline.X == margin+setColumn {
						inColumn[l.Text] = true
						if l.Box.X2 > margin+offColumn {
							t.Errorf("%s: %q runs into the next column", name, l.Text)
						}
					}
				}
			}
			w := words{plan.Problem.Shop}
			for _, s := range steps.Of(plan, &plan.Boards[i]).Steps {
				if text := w.reading(s.Setting); !s.NoCut && !inColumn[text] {
					t.Errorf("%s: the setting %s of step %d is not in its column", name, text, s.Number)
				}
			}
		}
	}
}

func TestTheTapeSaysWhatItIsMeasuredFrom(t *testing.T) {
	const want = "Tape: from the squared butt end and the jointed edge of the whole blank. Set the saw by the list"
	if text := boardText(t, taper()); !strings.Contains(text, want) {
		t.Errorf("no %q in %q", want, text)
	}
}

func TestTruingSaysHowMuchGoes(t *testing.T) {
	for _, c := range []struct {
		edges layout.Edges
		faces layout.Faces
		want  string
	}{
		{layout.EdgesRough, layout.FacesRough, "true: flatten, plane, joint off 1/8, square 1/4 off the butt"},
		{layout.EdgesOne, layout.FacesRough, "true: flatten, plane; leave the straight edge, the square ends"},
		{layout.EdgesBoth, layout.FacesPlaned, "true: plane; leave the straight edge, the square ends"},
	} {
		shop := layout.DefaultShop(layout.Inches)
		b := board("B1", 6*in, 60*in)
		b.Edges, b.Faces = c.edges, c.faces
		plan := onePlan(shop, b, []layout.Part{peg("rail", in, 15*in, 90)}, grid(shop, &b, in, 59*in, "rail", in, 15*in))
		d := &boardSheet{words: words{shop}, shop: shop, work: steps.Of(plan, &plan.Boards[0]), board: &plan.Problem.Stock[0]}
		for _, s := range d.work.Steps {
			if s.Operation != steps.True {
				continue
			}
			if got := strings.ReplaceAll(d.operation(&s), string(hold), " "); got != c.want {
				t.Errorf("%v edges, %v faces: %q", c.edges, c.faces, got)
			}
		}
	}
}

// Once the first strip has left with the reference edge, the next one lies with
// a sawn edge against the fence.
func TestASawnEdgeIsCalledThat(t *testing.T) {
	plan := fortyPegs()
	d := &boardSheet{words: words{plan.Problem.Shop}, shop: plan.Problem.Shop, work: steps.Of(plan, &plan.Boards[0]), board: &plan.Problem.Stock[0]}
	var rips []string
	for _, s := range d.work.Steps {
		if s.Operation == steps.Rip {
			rips = append(rips, strings.ReplaceAll(d.operation(&s), string(hold), " "))
		}
	}
	// Steps 1 and 2 trim the ends, 3 trues.
	if want := []string{"rip, reference edge", "rip, edge sawn in step 4"}; !slices.Equal(rips, want) {
		t.Errorf("%q, not %q", rips, want)
	}
}

func TestLaterSheetsNameTheirBlank(t *testing.T) {
	plan := twelveDefects()
	pages, err := Board(plan, &plan.Boards[0], Options{})
	if err != nil {
		t.Fatal(err)
	}
	for i, p := range pages[1:] {
		text := texts(p.Scene)
		if !strings.Contains(text, "lank D12-") || !strings.Contains(text, "ref. edge below") {
			t.Errorf("sheet %d does not say which blank it is about and how it lies: %.200q", i+2, text)
		}
	}
}

// A loose knot in the wood that is squared off the butt is drawn all the same.
func TestLooseWoodThatTruingTakesIsDrawn(t *testing.T) {
	plan := taper()
	plan.Problem.Stock[0].Defects = []layout.Defect{{Kind: layout.Loose, Rect: box(in, in+in/8, 2*in, 3*in)}}
	text := boardText(t, plan)
	for _, want := range []string{
		"loose knot, in the wood that truing takes",
		"Here lies a loose knot, 2 to 3 from the reference edge, at the butt end, 1/8 long",
	} {
		if !strings.Contains(text, want) {
			t.Errorf("no %q in %q", want, text)
		}
	}
}

// Every reading of a blank's tape carries the number of its step, and says how
// many more share it.
func TestEveryReadingOfATapeHasItsStep(t *testing.T) {
	plan := fortyPegs()
	work := steps.Of(plan, &plan.Boards[0])
	d := &boardSheet{words: words{plan.Problem.Shop}, shop: plan.Problem.Shop, work: work, board: work.Board}
	blank := &work.Blanks[0]
	v := &blankView{boardSheet: d, blank: blank, list: d.stepsOf(blank.Name), wood: blank.Usable}
	var cuts, numbered int
	for _, s := range v.list {
		if s.Operation == steps.Crosscut && !s.NoCut {
			cuts++
		}
	}
	for _, g := range v.tape(newFrame(blank.Usable, Box{0, 0, 200, 40})) {
		switch {
		case g.number > 0:
			numbered += 1 + g.more
		case g.text != "0":
			t.Errorf("the reading %s has no step", g.text)
		}
	}
	if numbered != cuts || cuts == 0 {
		t.Errorf("%d of %d crosscuts stand on the tape", numbered, cuts)
	}
}

// The second rail is what the first one leaves: it stands in the same row, with
// its own step number.
func TestAPieceThatIsLeftStandsInTheSameRow(t *testing.T) {
	before := steps.Step{Operation: steps.Rip, Rest: "B1-1b~1"}
	for _, c := range []struct {
		what string
		next steps.Step
		want bool
	}{
		{"the rest is named", steps.Step{NoCut: true, Part: "rail", Piece: "B1-1b~1"}, true},
		{"another piece is named", steps.Step{NoCut: true, Part: "rail", Piece: "B1-1c~1"}, false},
		{"the rest is sawn", steps.Step{Part: "rail", Piece: "B1-1b~1"}, false},
		{"the rest needs a caution", steps.Step{NoCut: true, Part: "rail", Piece: "B1-1b~1", Cautions: []steps.Caution{steps.CautionDust}}, false},
	} {
		if got := folds(&before, &c.next); got != c.want {
			t.Errorf("%s: %t", c.what, got)
		}
	}
}
