package glueup

import (
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"sawbill/layout"
)

// A design makes a bill; from the bill's strips, glued in the order of the panels,
// planed, sliced and laid row by row, the same face comes back, cell by cell.
func TestFaceComesBackFromTheBill(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		g := drawGrid(t)
		d := tray(g)
		d.Trim = 2 * mm
		d.PanelFlatten = layout.Length(rapid.IntRange(0, 3).Draw(t, "flatten")) * mm
		d.SpareSlices = rapid.IntRange(0, 2).Draw(t, "spare")
		w, cs := New(d, metric())
		if w == nil {
			t.Fatal(cs)
		}
		if diff := cmp.Diff(wanted(d, g), rebuilt(t, w)); diff != "" {
			t.Fatalf("(-design +rebuilt):\n%s", diff)
		}
	})
}

func drawGrid(t *rapid.T) *Grid {
	columns, rows := rapid.IntRange(1, 7).Draw(t, "columns"), rapid.IntRange(1, 7).Draw(t, "rows")
	sizes := func(n int, what string) (list []layout.Length) {
		for range n {
			list = append(list, layout.Length(rapid.IntRange(10, 12).Draw(t, what))*mm)
		}
		return list
	}
	g := &Grid{CellWidths: sizes(columns, "width"), RowHeights: sizes(rows, "height"), Join: rapid.Bool().Draw(t, "join")}
	for range rows {
		g.Rows = append(g.Rows, strings.Join(rapid.SliceOfN(rapid.SampledFrom([]string{"b", "s", "t"}), columns, columns).Draw(t, "row"), ""))
	}
	return g
}

// run is a stretch of one species along a row, between two heights.
type run struct {
	Species  string
	Along    layout.Span
	Near, To layout.Length
}

// wanted lists the runs of the design, straight from its letters.
func wanted(d *Design, g *Grid) []run {
	var list []run
	widths, heights := each(g.CellWidths, len(g.Rows[0])), each(g.RowHeights, len(g.Rows))
	y := -d.Trim
	for i := len(g.Rows) - 1; i >= 0; i-- {
		x := -d.Trim
		for j, letter := range g.Rows[i] {
			list = extend(list, run{d.Woods[string(letter)], layout.Span{Lo: x, Hi: x + widths[j]}, y, y + heights[i]})
			x += widths[j]
		}
		y += heights[i]
	}
	return list
}

// extend adds a run, to the last one where that goes on.
func extend(list []run, r run) []run {
	if n := len(list); n > 0 {
		if last := &list[n-1]; last.Species == r.Species && last.Near == r.Near && last.Along.Hi == r.Along.Lo {
			last.Along.Hi = r.Along.Hi
			return list
		}
	}
	return append(list, r)
}

// rebuilt lays the slices of the panels, made of the strips of the bill alone.
func rebuilt(t *rapid.T, w *Work) []run {
	bill := map[string]layout.Part{}
	for _, p := range w.Bill {
		bill[p.Name] = p
	}
	laid := make([]int, len(w.Panels))
	var list []run
	y := w.Face.Sawn.Y1
	for _, row := range w.Rows {
		panel := &w.Panels[row.Panel]
		laid[row.Panel]++
		strips := slices.Clone(panel.Strips)
		if row.Turned {
			slices.Reverse(strips)
		}
		x, height := w.Face.Sawn.X1, layout.Length(0)
		for _, s := range strips {
			part := bill[s.Part]
			height = part.Thickness - w.Design.PanelFlatten
			list = extend(list, run{part.Species[0], layout.Span{Lo: x, Hi: x + part.Width}, y, y + height})
			x += part.Width
		}
		y += height
	}
	for i := range w.Panels {
		checkCounts(t, w, &w.Panels[i], bill, laid[i])
	}
	return list
}

// checkCounts holds the numbers in the bill against the strips and slices used.
func checkCounts(t *rapid.T, w *Work, p *Panel, bill map[string]layout.Part, laid int) {
	used := map[string]int{}
	for _, s := range p.Strips {
		used[s.Part]++
	}
	for name, n := range used {
		if part := bill[name]; part.Quantity != n || part.Slices != laid+w.Design.SpareSlices || part.Set != p.Name {
			t.Fatalf("%s: %d strips for %d slices in the bill, %d strips for %d slices laid", name, part.Quantity, part.Slices, n, laid)
		}
	}
}

// Of a checker with an even number of strips one panel gives all rows, of one with
// an odd number two are needed, and that is said.
func TestCheckerNeedsAnEvenNumberOfStrips(t *testing.T) {
	for _, test := range []struct {
		rows   []string
		panels int
		turned []bool
		said   bool
	}{
		{[]string{"bsbs", "sbsb", "bsbs"}, 1, []bool{false, true, false}, false},
		{[]string{"bsb", "sbs", "bsb"}, 2, []bool{false, false, false}, true},
		{[]string{"bbs", "sbb"}, 1, []bool{false, true}, false},
		{[]string{"bst", "tss"}, 2, []bool{false, false}, false},
	} {
		w := worked(t, tray(checkerOf(test.rows...)), metric())
		var turned []bool
		for _, r := range w.Rows {
			turned = append(turned, r.Turned)
		}
		said := strings.Contains(strings.Join(w.Notes, " "), "even number of strips")
		if len(w.Panels) != test.panels || !slices.Equal(turned, test.turned) || said != test.said {
			t.Errorf("%v: %d panels, turned %v, said %v", test.rows, len(w.Panels), turned, said)
		}
	}
}

// Bricks are cells of half a brick, joined: a row that is shifted by half a brick
// is the other row turned round.
func TestStaggeredBricksShareAPanel(t *testing.T) {
	g := checkerOf("bbssbbt", "tbbssbb")
	g.Join = true
	w := worked(t, tray(g), metric())
	if len(w.Panels) != 1 || len(w.Panels[0].Strips) != 4 || w.Rows[0].Turned == w.Rows[1].Turned {
		t.Fatalf("panels %+v, rows %+v", w.Panels, w.Rows)
	}
	for i, want := range []layout.Length{32 * mm, 64 * mm, 64 * mm, 64 * mm} { // the near row, from the left
		if got := w.Panels[0].Strips[i].Width; got != want {
			t.Errorf("strip %d is %v wide, want %v", i, got, want)
		}
	}
}

func TestPanelsAreGluedInPartsForTheMachine(t *testing.T) {
	shop := metric()
	shop.PlanerWidth = 100 * mm
	w := worked(t, tray(checkerOf("bsbsbsb")), shop)
	if diff := cmp.Diff([]int{3, 3, 1}, w.Panels[0].Sections); diff != "" {
		t.Errorf("(-want +got):\n%s", diff)
	}
}
