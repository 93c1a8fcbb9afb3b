package files

import (
	"bytes"
	"encoding/csv"
	"os"
	"path/filepath"
	"regexp"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"
)

// The plans of the three jobs embed what their files say.
func TestExamplesReadAsTheirPlans(t *testing.T) {
	for _, name := range []string{"ash", "beech-mm", "elm-and-beech"} {
		dir := filepath.Join(examples, name)
		job, err := Load(Input{
			Shop:  open(t, dir, "shop.toml"),
			Stock: open(t, dir, "stock.csv"),
			Bill:  open(t, dir, "bill.csv"),
		})
		if err != nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		plan := readPlan(t, filepath.Join(dir, "plan.json"))
		if diff := cmp.Diff(plan.Problem, *job.Problem, cmpopts.EquateEmpty()); diff != "" {
			t.Errorf("%s: (-plan +files):\n%s", name, diff)
		}
		if job.Stock.Skipped.Comments != 1 {
			t.Errorf("%s: skipped %d comments, want 1", name, job.Stock.Skipped.Comments)
		}
	}
}

// Saved another way by a spreadsheet, the tables say the same.
func TestExamplesSavedAnotherWay(t *testing.T) {
	commas := func(cell string) string { return regexp.MustCompile(`(\d)\.(\d)`).ReplaceAllString(cell, "$1,$2") }
	asIs := func(cell string) string { return cell }
	for _, test := range []struct {
		name  string
		comma rune
		cell  func(string) string
	}{
		{"tabs", '\t', asIs}, {"semicolons", ';', asIs}, {"decimal commas", ';', commas}, {"quoted", ',', asIs},
	} {
		for _, example := range []string{"ash", "beech-mm", "elm-and-beech"} {
			dir := filepath.Join(examples, example)
			job, err := Load(Input{
				Shop:  open(t, dir, "shop.toml"),
				Stock: saved(t, filepath.Join(dir, "stock.csv"), test.comma, test.cell),
				Bill:  saved(t, filepath.Join(dir, "bill.csv"), test.comma, test.cell),
			})
			if err != nil {
				t.Errorf("%s, %s: %v", example, test.name, err)
				continue
			}
			plan := readPlan(t, filepath.Join(dir, "plan.json"))
			if diff := cmp.Diff(plan.Problem, *job.Problem, cmpopts.EquateEmpty()); diff != "" {
				t.Errorf("%s, %s: (-plan +files):\n%s", example, test.name, diff)
			}
		}
	}
}

// saved writes a table again with a byte order mark, CRLF, another separator
// and an empty row and column.
func saved(t testing.TB, path string, comma rune, cell func(string) string) Source {
	t.Helper()
	data, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	in := csv.NewReader(bytes.NewReader(data))
	in.FieldsPerRecord, in.LazyQuotes = -1, true
	rows, err := in.ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	var out bytes.Buffer
	out.WriteString("\ufeff")
	w := csv.NewWriter(&out)
	w.Comma, w.UseCRLF = comma, true
	for _, row := range append(rows, nil) {
		for i := range row {
			row[i] = cell(row[i])
		}
		if err := w.Write(append(row, "", "")); err != nil {
			t.Fatal(err)
		}
	}
	w.Flush()
	return Source{filepath.Base(path), &out}
}

func open(t testing.TB, dir, name string) Source {
	t.Helper()
	f, err := os.Open(filepath.Join(dir, name))
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { f.Close() })
	return Source{name, f}
}
