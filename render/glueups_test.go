package render

import (
	"fmt"
	"strings"
	"testing"

	"sawbill/layout"
	"sawbill/layout/glueup"
	"sawbill/layout/steps"
)

// designs are the designs that every test of glue-ups looks at.
func designs(t testing.TB) map[string]*glueup.Work {
	t.Helper()
	const mm, in = layout.Millimetre, layout.Inch
	woods := map[string]string{"a": "ash", "e": "elm", "s": "sycamore"}
	of := func(units layout.Unit, length, width, thickness, trim layout.Length, p glueup.Pattern) *glueup.Work {
		d := &glueup.Design{
			Name: "Trial " + p.Name(), Units: units, Woods: woods, Thickness: thickness, Length: length, Width: width,
			Trim: trim, Flatten: 2 * mm, PanelFlatten: mm, SpareSlices: 1, Moisture: 40, Food: true, Pattern: p,
		}
		shop := layout.DefaultShop(units)
		shop.PlanerWidth = 200 * mm
		w, cs := glueup.New(d, shop)
		if w == nil {
			t.Fatal(cs)
		}
		return w
	}
	var picture []string
	for i := range 24 {
		picture = append(picture, strings.Repeat("aes"[i%3:i%3+1], i+1)+strings.Repeat("a", 30-i-1))
	}
	return map[string]*glueup.Work{
		"checker": of(layout.Inches, 0, 0, 5*in/4, in/4, &glueup.Grid{
			Rows: []string{"aeaeaeae", "eaeaeaea", "aeaeaeae", "eaeaeaea", "aeaeaeae", "eaeaeaea"}, CellWidths: []layout.Length{3 * in / 2}, RowHeights: []layout.Length{3 * in / 2},
		}),
		"picture": of(layout.Millimetres, 0, 0, 30*mm, 0, &glueup.Grid{
			Rows: picture, CellWidths: []layout.Length{15 * mm}, RowHeights: []layout.Length{15 * mm}, Join: true,
		}),
		"cubes":   of(layout.Millimetres, 400*mm, 260*mm, 35*mm, 6*mm, &glueup.Cubes{StripThickness: 26 * mm, Top: "a", Left: "e", Right: "s"}),
		"side":    of(layout.Millimetres, 310*mm, 190*mm, 28*mm, 5*mm, &glueup.Cubes{StripThickness: 35 * mm, Top: "a", Left: "e", Right: "s"}),
		"chevron": of(layout.Millimetres, 380*mm, 240*mm, 35*mm, 6*mm, &glueup.Chevron{Angle: 30 * layout.Degree, SliceWidth: 45 * mm, RowHeight: 30 * mm, Stripes: "aes", StripeWidths: []layout.Length{25 * mm}}),
		"bone":    of(layout.Inches, 14*in, 10*in, 5*in/4, in/4, &glueup.Herringbone{BlockWidth: in, BlockLength: 3 * in, Lying: "a", Standing: "es", Diagonal: true}),
	}
}

// drawGlueUps draws the face and the steps of a design.
func drawGlueUps(name string, w *glueup.Work, o Options) map[string]Page {
	pages := map[string]Page{name + "-face": Face(w, o)}
	for i, p := range GlueUps(w, o) {
		pages[fmt.Sprintf("%s-steps-%d", name, i+1)] = p
	}
	return pages
}

// Every caution and every remark of the work stands on the sheets.
func TestGlueUpsSayAll(t *testing.T) {
	for name, w := range designs(t) {
		var all string
		for _, p := range GlueUps(w, Options{}) {
			all += texts(p.Scene) + " "
		}
		want := append([]string{steps.SafetyFirst, string(steps.CautionDust)}, append(w.Notes, w.Warnings...)...)
		for _, s := range w.Steps() {
			want = append(want, s.Title)
			want = append(want, s.Lines...)
			for _, c := range s.Cautions {
				want = append(want, string(c))
			}
		}
		for _, text := range want {
			if !strings.Contains(all, text) {
				t.Errorf("%s lacks %q", name, text)
			}
		}
	}
}

// The finished face is as large on paper as the scale says.
func TestFaceIsTrueToScale(t *testing.T) {
	for name, w := range designs(t) {
		page := Face(w, Options{}).Scene
		n := 1.0
		for _, l := range page.Labels {
			if _, err := fmt.Sscanf(l.Text, "Drawn at 1 to %g:", &n); err == nil {
				break
			}
		}
		var long float64
		for _, s := range page.Shapes {
			if s.Open && s.Weight == heavyLine && s.Points[0].Y == s.Points[1].Y {
				long = max(long, abs(s.Points[1].X-s.Points[0].X))
			}
		}
		if want := paperMM(w.Face.Finished.Length()) / n; abs(long-want) > 0.05 {
			t.Errorf("%s: the trim line is %.2f mm long, want %.2f at 1 to %g", name, long, want, n)
		}
	}
}

// No two woods of a design look alike.
func TestWoodsCanBeToldApart(t *testing.T) {
	looks := woodLooks()
	if len(looks) < glueup.MaxWoods {
		t.Fatalf("%d looks for %d woods", len(looks), glueup.MaxWoods)
	}
	seen := map[string]bool{}
	for _, l := range looks {
		text := fmt.Sprint(l)
		if seen[text] {
			t.Errorf("two looks are %s", text)
		}
		seen[text] = true
	}
}
