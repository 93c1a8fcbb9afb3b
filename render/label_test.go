package render

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"golang.org/x/image/font"

	"sawbill/layout"
	"sawbill/layout/steps"
)

// everySheet calls check with every sheet of every plan, for both papers.
func everySheet(t *testing.T, check func(t *testing.T, s *Scene)) {
	t.Helper()
	for name, plan := range plans(t) {
		for _, paper := range []Paper{Letter, A4} {
			for sheet, page := range drawAll(t, name, plan, Options{Paper: paper}) {
				t.Run(sheet, func(t *testing.T) { check(t, page.Scene) })
			}
		}
	}
	for name, work := range designs(t) {
		for _, paper := range []Paper{Letter, A4} {
			for sheet, page := range drawGlueUps(name, work, Options{Paper: paper}) {
				t.Run(sheet, func(t *testing.T) { check(t, page.Scene) })
			}
		}
	}
	for _, paper := range []Paper{Letter, A4} {
		for sheet, page := range chances(t, Options{Paper: paper}) {
			t.Run(sheet, func(t *testing.T) { check(t, page.Scene) })
		}
	}
	form, err := RackForm(Options{})
	if err != nil {
		t.Fatal(err)
	}
	t.Run("form", func(t *testing.T) { check(t, form[0].Scene) })
}

func TestNoLabelTouchesAnotherOrLeavesThePage(t *testing.T) {
	everySheet(t, func(t *testing.T, s *Scene) {
		page := Box{margin - 2, margin - 2, s.Width - margin + 2, s.Height - margin + 2}
		for i, l := range s.Labels {
			if !page.Contains(l.Box) {
				t.Errorf("%q at %.1f leaves the page", l.Text, l.Box)
			}
			for _, m := range s.Labels[:i] {
				if l.Box.Overlaps(m.Box) {
					t.Errorf("%q at %.1f and %q at %.1f overlap", l.Text, l.Box, m.Text, m.Box)
				}
			}
		}
	})
}

func TestNoLeaderRunsThroughALabel(t *testing.T) {
	everySheet(t, func(t *testing.T, s *Scene) {
		for _, l := range s.Labels {
			for _, leader := range s.Leaders {
				if !l.Framed && l.Box.Overlaps(leader) {
					t.Errorf("a leader at %.1f runs through %q at %.1f", leader, l.Text, l.Box)
				}
			}
		}
	})
}

// Text is measured as it is painted: the bounds of a capital and a digit in the
// face that the painter uses.
func TestNoTextIsTooSmall(t *testing.T) {
	types := newTypesetter()
	heights := map[style]float64{}
	everySheet(t, func(t *testing.T, s *Scene) {
		for _, l := range s.Labels {
			look := style{l.Cap, l.Bold}
			if _, known := heights[look]; !known {
				heights[look] = painted(types, look)
			}
			if heights[look] < MinText-0.02 { // half a pixel is 0.04 mm
				t.Errorf("%q is %.2f mm high", l.Text, heights[look])
			}
		}
	})
}

// painted is the height of an H or of an 8, whichever is lower, in millimetres.
func painted(types *typesetter, s style) float64 {
	low := 1e9
	for _, r := range "H8" {
		b, _ := font.BoundString(types.of(s).face, string(r))
		low = min(low, toFloat(b.Max.Y-b.Min.Y)/1000*types.em(s))
	}
	return low
}

// Printed in black and white, tones that lie side by side must differ, and text
// must stand out from all of them.
func TestTonesCanBeToldApart(t *testing.T) {
	const least = 25 // of 255; paper and toner lose less
	tones := []Ink{White, OffcutTone, WasteTone, Black}
	for i, a := range tones {
		for _, b := range tones[:i] {
			if d := int(a.Grey()) - int(b.Grey()); d > -least && d < least {
				t.Errorf("tones %d and %d differ by %d", a, b, d)
			}
		}
	}
	for _, ground := range []Ink{OffcutTone, White} {
		if ground.Grey() < 200 {
			t.Errorf("text stands on a grey of %d", ground.Grey())
		}
	}
}

// Every kind has a hatch of its own: no two agree in angles, pitch and dash.
func TestHatchesCanBeToldApart(t *testing.T) {
	kinds := append(layout.SoundKinds(), layout.UnsoundKinds()...)
	kinds = append(kinds, "a kind of the shop")
	for i, a := range kinds {
		for _, b := range kinds[:i] {
			if cmp.Equal(hatchOf(a), hatchOf(b), cmp.AllowUnexported(hatch{})) {
				t.Errorf("%s and %s look alike", a, b)
			}
		}
	}
}

// Each step is in the list once and its number is in a drawing too: as a badge
// beside its cut or in its piece.
func TestEveryStepIsDrawnAndListed(t *testing.T) {
	for name, plan := range plans(t) {
		for i := range plan.Boards {
			pages, err := Board(plan, &plan.Boards[i], Options{})
			if err != nil {
				t.Fatal(err)
			}
			seen := map[string]int{}
			for _, p := range pages {
				for _, l := range p.Scene.Labels {
					if l.Framed {
						seen[l.Text]++
					}
				}
			}
			for _, s := range steps.Of(plan, &plan.Boards[i]).Steps {
				if n := seen[itoa(s.Number)]; n < 2 {
					t.Errorf("%s %s: step %d (%s) stands on paper %d times", name, plan.Boards[i].Board, s.Number, s.Operation, n)
				}
			}
		}
	}
}

func TestEverySheetPutsSafetyFirstAndNamesThePlan(t *testing.T) {
	for name, plan := range plans(t) {
		for sheet, page := range drawAll(t, name, plan, Options{}) {
			text := texts(page.Scene)
			for _, want := range []string{steps.SafetyFirst, steps.CheckWord(plan)} {
				if !strings.Contains(text, want) {
					t.Errorf("%s does not say %q", sheet, want)
				}
			}
		}
	}
}

// The cautions of a board all stand on its sheets.
func TestCautionsStandOnPaper(t *testing.T) {
	for name, plan := range plans(t) {
		for i := range plan.Boards {
			pages, err := Board(plan, &plan.Boards[i], Options{})
			if err != nil {
				t.Fatal(err)
			}
			var all string
			for _, p := range pages {
				all += texts(p.Scene) + " "
			}
			for _, s := range steps.Of(plan, &plan.Boards[i]).Steps {
				for _, c := range s.Cautions {
					if !strings.Contains(all, string(c)) {
						t.Errorf("%s %s: step %d lacks %q", name, plan.Boards[i].Board, s.Number, c)
					}
				}
			}
		}
	}
}

func texts(s *Scene) string {
	var words []string
	for _, l := range s.Labels {
		words = append(words, l.Text)
	}
	return strings.Join(words, " ")
}
