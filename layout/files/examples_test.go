package files

import (
	"os"
	"path/filepath"
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

func open(t testing.TB, dir, name string) Source {
	t.Helper()
	f, err := os.Open(filepath.Join(dir, name))
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { f.Close() })
	return Source{name, f}
}
