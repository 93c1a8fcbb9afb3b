package steps_test

import (
	"os"
	"path/filepath"
	"testing"

	"sawbill/layout"
	"sawbill/layout/files"
	"sawbill/layout/steps"
)

// examplePlans were made elsewhere, without ids for their pieces.
func examplePlans(t *testing.T) map[string]*layout.Plan {
	t.Helper()
	plans := map[string]*layout.Plan{}
	for _, name := range []string{"ash", "beech-mm", "elm-and-beech"} {
		f, err := os.Open(filepath.Join("..", "..", "testdata", "examples", name, "plan.json"))
		if err != nil {
			t.Fatal(err)
		}
		defer f.Close()
		if plans[name], err = files.ReadPlan(f, name); err != nil {
			t.Fatal(err)
		}
	}
	return plans
}

func TestSawyerEndsWithThePartsOfTheExamples(t *testing.T) {
	for name, plan := range examplePlans(t) {
		for _, order := range []steps.Order{steps.ByBoard, steps.BySetup} {
			if err := cutFromText(plan, order); err != nil {
				t.Errorf("%s, by %s: %v", name, order, err)
			}
		}
	}
}

// By set-up the machines are set anew less often, and the same work is done.
func TestSetupsChangeLessOften(t *testing.T) {
	for name, plan := range examplePlans(t) {
		byBoard, bySetup := steps.List(plan, steps.ByBoard), steps.List(plan, steps.BySetup)
		if a, b := changes(byBoard), changes(bySetup); b >= a || len(byBoard) != len(bySetup) {
			t.Errorf("%s: %d changes by board, %d by set-up; %d steps and %d", name, a, b, len(byBoard), len(bySetup))
		}
	}
}

// changes counts how often a machine is set anew.
func changes(list []*steps.Step) int {
	n := 0
	var before steps.Setup
	for _, s := range list {
		if now := steps.SetupOf(s); !s.NoCut && now != before {
			n, before = n+1, now
		}
	}
	return n
}
