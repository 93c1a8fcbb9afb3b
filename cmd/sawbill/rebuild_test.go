package main

import (
	"context"
	"fmt"
	"math/rand"
	"slices"
	"strings"
	"testing"

	"sawbill/layout"
	"sawbill/layout/glueup"
	"sawbill/solver"
)

const cellWidth = 30 * layout.Millimetre

// TestSlicesOfAPlanRebuildTheFace goes from random grids to a bill, to a plan and to
// the strips that it cuts. They are glued copy by copy and sliced, the slices are laid
// in their rows, and the face that comes of it is the one that was drawn.
func TestSlicesOfAPlanRebuildTheFace(t *testing.T) {
	for seed := range int64(8) {
		t.Run(fmt.Sprint("seed ", seed), func(t *testing.T) {
			rng := rand.New(rand.NewSource(seed))
			rows := randomRows(rng)
			shop := layout.DefaultShop(layout.Millimetres)
			work, cs := glueup.New(gridOf(rows, rng.Intn(2) == 0), shop)
			if work == nil {
				t.Fatal(cs)
			}
			p, cs := layout.NewProblem(shop, alderAndElm(), work.Bill, false)
			if p == nil {
				t.Fatal(cs)
			}
			plan, _, err := solver.Solve(context.Background(), p, solver.Options{Rounds: 2, Seed: seed})
			if err != nil {
				t.Fatal(err)
			}
			if len(plan.Missing) > 0 {
				t.Fatalf("missing: %v", plan.Missing)
			}
			if got := rebuilt(t, work, plan); !slices.Equal(got, rows) {
				t.Errorf("drawn:\n%s\nrebuilt:\n%s", strings.Join(rows, "\n"), strings.Join(got, "\n"))
			}
		})
	}
}

// randomRows draws rows of two woods, many of them alike.
func randomRows(rng *rand.Rand) []string {
	kinds := make([]string, 1+rng.Intn(2))
	n := 2 + rng.Intn(4)
	for i := range kinds {
		for range n {
			kinds[i] += string("ae"[rng.Intn(2)])
		}
	}
	var rows []string
	for range 6 + rng.Intn(12) {
		rows = append(rows, kinds[rng.Intn(len(kinds))])
	}
	return rows
}

func gridOf(rows []string, join bool) *glueup.Design {
	return &glueup.Design{
		Units: layout.Millimetres, Woods: map[string]string{"a": "alder", "e": "elm"},
		Thickness: 25 * layout.Millimetre, Flatten: layout.Millimetre, PanelFlatten: layout.Millimetre,
		Pattern: &glueup.Grid{
			Rows: rows, CellWidths: []layout.Length{cellWidth}, RowHeights: []layout.Length{cellWidth}, Join: join,
		},
	}
}

func alderAndElm() []layout.Board {
	var stock []layout.Board
	for i, species := range []string{"alder", "elm"} {
		for k := range 4 {
			mark := fmt.Sprint(string("AE"[i]), k+1)
			b := layout.Board{
				Mark: mark, Base: mark, Species: species, Thickness: 40 * layout.Millimetre,
				Width: 180 * layout.Millimetre, TipWidth: 180 * layout.Millimetre,
				Length: layout.Length(520+250*k) * layout.Millimetre, Cost: layout.Money(5+k) * layout.Unity,
			}
			stock = append(stock, b)
		}
	}
	return stock
}

// cutStrip is a strip as it lies on the bench.
type cutStrip struct {
	species string
	width   layout.Length
	slices  int
}

// rebuilt lays the rows of a face out of slices of the strips that a plan cuts.
func rebuilt(t *testing.T, work *glueup.Work, plan *layout.Plan) []string {
	t.Helper()
	bench := map[string][]cutStrip{}
	for _, b := range plan.Boards {
		for _, leaf := range b.Root.Leaves() {
			if leaf.Part != "" {
				bench[leaf.Part] = append(bench[leaf.Part], cutStrip{plan.Problem.Board(b.Board).Species, leaf.Width(), leaf.Slices})
			}
		}
	}
	sliced := make([][]string, len(work.Panels))
	for k, set := range plan.Problem.Sets() {
		panel := slices.IndexFunc(work.Panels, func(p glueup.Panel) bool { return p.Name == set.Name })
		for _, c := range plan.Copies(plan.Problem.Sets()[k]) {
			for range c.Count {
				face := glued(t, work.Design, &work.Panels[panel], bench, c.Slices)
				sliced[panel] = append(sliced[panel], slices.Repeat([]string{face}, c.Slices)...)
			}
		}
	}
	return laid(t, work, sliced)
}

// glued takes the strips of one copy off the bench and shows its slices, a letter for
// every cell.
func glued(t *testing.T, d *glueup.Design, p *glueup.Panel, bench map[string][]cutStrip, n int) string {
	t.Helper()
	face := ""
	for _, want := range p.Strips {
		at := slices.IndexFunc(bench[want.Part], func(s cutStrip) bool { return s.slices == n })
		if at < 0 {
			t.Fatalf("no strip of %s with %d slices is left", want.Part, n)
		}
		s := bench[want.Part][at]
		bench[want.Part] = slices.Delete(bench[want.Part], at, at+1)
		for letter, species := range d.Woods {
			if species == s.species {
				face += strings.Repeat(letter, int(s.width/cellWidth))
			}
		}
	}
	return face
}

func laid(t *testing.T, work *glueup.Work, sliced [][]string) []string {
	t.Helper()
	var face []string
	for i, row := range work.Rows {
		if len(sliced[row.Panel]) == 0 {
			t.Fatalf("no slice is left for row %d", i+1)
		}
		slice := []byte(sliced[row.Panel][0])
		sliced[row.Panel] = sliced[row.Panel][1:]
		if row.Turned {
			slices.Reverse(slice)
		}
		face = append(face, string(slice))
	}
	slices.Reverse(face) // the rows of a face begin at its near side
	return face
}
