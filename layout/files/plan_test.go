package files

import (
	"bytes"
	"os"
	"path/filepath"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"

	"sawbill/layout"
)

// examples is the folder of the three jobs that have a valid plan.
const examples = "../../testdata/examples"

// everyPlan lists the valid plans and the broken ones.
func everyPlan(t testing.TB) []string {
	t.Helper()
	good, err := filepath.Glob(examples + "/*/plan.json")
	if err != nil {
		t.Fatal(err)
	}
	broken, err := filepath.Glob(examples + "/*/broken/*-*.json")
	if err != nil {
		t.Fatal(err)
	}
	if len(good) != 3 || len(broken) != 60 {
		t.Fatalf("found %d plans and %d broken ones, want 3 and 60", len(good), len(broken))
	}
	return append(good, broken...)
}

func readPlan(t testing.TB, path string) *layout.Plan {
	t.Helper()
	f, err := os.Open(path)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	plan, err := ReadPlan(f, filepath.Base(path))
	if err != nil {
		t.Fatal(err)
	}
	return plan
}

// Broken plans are broken by the rules of the wood, not as files: all are read,
// and written back without loss.
func TestPlanRoundTrip(t *testing.T) {
	for _, path := range everyPlan(t) {
		plan := readPlan(t, path)
		var first, second bytes.Buffer
		if err := WritePlan(&first, plan); err != nil {
			t.Fatal(err)
		}
		again, err := ReadPlan(bytes.NewReader(first.Bytes()), "again")
		if err != nil {
			t.Fatalf("%s: %v", path, err)
		}
		if diff := cmp.Diff(plan, again, cmpopts.EquateEmpty()); diff != "" {
			t.Errorf("%s: lost (-first +second):\n%s", path, diff)
		}
		if err := WritePlan(&second, again); err != nil {
			t.Fatal(err)
		}
		if !bytes.Equal(first.Bytes(), second.Bytes()) {
			t.Errorf("%s: written twice, the bytes differ", path)
		}
	}
}
