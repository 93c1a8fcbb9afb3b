package render

import (
	"flag"
	"fmt"
	"maps"
	"os"
	"path/filepath"
	"strconv"
	"testing"

	"sawbill/layout"
	"sawbill/layout/files"
)

var sheetsDir = flag.String("sheets", "", "write every sheet of the test plans as PNG to this directory")

func example(t testing.TB, name string) *layout.Plan {
	t.Helper()
	f, err := os.Open(filepath.Join("..", "testdata", "examples", name, "plan.json"))
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	plan, err := files.ReadPlan(f, name)
	if err != nil {
		t.Fatal(err)
	}
	return plan
}

// drawAll draws every board of a plan, its job sheet and what else is in its booklet.
func drawAll(t testing.TB, name string, plan *layout.Plan, o Options) map[string]Page {
	t.Helper()
	sheets := map[string]Page{}
	add := func(what string, pages []Page, err error) {
		if err != nil {
			t.Fatal(err)
		}
		for i, p := range pages {
			sheets[fmt.Sprintf("%s-%s-%d", name, what, i+1)] = p
		}
	}
	for i := range plan.Boards {
		pages, err := Board(plan, &plan.Boards[i], o)
		add(plan.Boards[i].Board, pages, err)
	}
	pages, err := Job(plan, o)
	add("job", pages, err)
	book := newBooklet(plan, o)
	add("cover", book.cover(), nil)
	add("labels", book.labels(), nil)
	add("sections", book.templates(), nil)
	return sheets
}

// plans are the plans that every drawing test looks at.
func plans(t testing.TB) map[string]*layout.Plan {
	list := crowdedPlans()
	maps.Copy(list, unevenPlans())
	list["glued"] = gluedPlan()
	for _, name := range []string{"ash", "beech-mm", "elm-and-beech"} {
		list[name] = example(t, name)
	}
	return list
}

func itoa(n int) string { return strconv.Itoa(n) }

// TestWriteSheets is how a person looks at the sheets: with the flag it writes
// them all.
func TestWriteSheets(t *testing.T) {
	for name, plan := range plans(t) {
		writeSheets(t, drawAll(t, name, plan, Options{}))
	}
	for name, work := range designs(t) {
		writeSheets(t, drawGlueUps(name, work, Options{}))
	}
}

func writeSheets(t *testing.T, sheets map[string]Page) {
	t.Helper()
	for sheet, page := range sheets {
		if *sheetsDir == "" {
			continue
		}
		f, err := os.Create(filepath.Join(*sheetsDir, sheet+".png"))
		if err != nil {
			t.Fatal(err)
		}
		if err := page.WritePNG(f); err != nil {
			t.Error(err)
		}
		if err := f.Close(); err != nil {
			t.Error(err)
		}
	}
}
