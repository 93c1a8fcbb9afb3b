package steps

import (
	"os"
	"path/filepath"
	"testing"

	"sawbill/layout/files"
)

// The example plans were made elsewhere, without ids for their pieces.
func TestSawyerEndsWithThePartsOfTheExamples(t *testing.T) {
	for _, name := range []string{"ash", "beech-mm", "elm-and-beech"} {
		f, err := os.Open(filepath.Join("..", "..", "testdata", "examples", name, "plan.json"))
		if err != nil {
			t.Fatal(err)
		}
		defer f.Close()
		plan, err := files.ReadPlan(f, name)
		if err != nil {
			t.Fatal(err)
		}
		if err := cutAll(plan); err != nil {
			t.Errorf("%s: %v", name, err)
		}
	}
}
