package steps

import (
	"testing"

	"pgregory.net/rapid"

	"sawbill/layout"
)

// When all is done, the pieces of the bill and the offcuts lie on the bench, where
// the plan has them, and nothing else.
func TestBenchAfterAllSteps(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		plan := randomPlan(t)
		for _, sheet := range All(plan) {
			if len(sheet.Steps) == 0 {
				continue
			}
			all := make([]bool, len(sheet.Steps))
			for i := range all {
				all[i] = true
			}
			lies := map[string]Lying{}
			for _, p := range sheet.Bench(all) {
				lies[p.Name] = p
			}
			for _, leaf := range sheet.Plan.Root.Leaves() {
				if leaf.Part == "" && leaf.Offcut == "" {
					continue
				}
				for _, name := range namesOf(leaf) {
					p, found := lies[name]
					delete(lies, name)
					if !found || p.Part != leaf.Part || p.Offcut != leaf.Offcut {
						t.Fatalf("%s is not on the bench: %+v", name, p)
					}
					if leaf.Offcut != "" { // under a slanting edge more may be left than counts
						p.Wood.Y2 = min(p.Wood.Y2, leaf.Y2)
					}
					if leaf.Part != "" && p.Wood != leaf.Rect || !leaf.Rect.Contains(p.Wood) {
						t.Fatalf("%s lies at %v, not %v", p.Name, p.Wood, leaf.Rect)
					}
				}
			}
			if len(lies) > 0 {
				t.Fatalf("also on the bench: %+v", lies)
			}
		}
	})
}

// namesOf are the names of the pieces of a leaf.
func namesOf(leaf *layout.Node) []string {
	if leaf.Offcut != "" {
		return []string{leaf.Offcut}
	}
	return leaf.PieceIDs()
}

// What one piece needs leaves wood that nowhere lies twice, and the piece itself.
func TestBenchAfterTheStepsOfOnePiece(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		plan := randomPlan(t)
		for _, sheet := range All(plan) {
			for _, leaf := range sheet.Plan.Root.Leaves() {
				if leaf.Part == "" || leaf.Pieces() > 1 {
					continue
				}
				bench := sheet.Bench(sheet.Needed(map[string]bool{leaf.ID: true}))
				found := false
				for i, p := range bench {
					found = found || p.Name == leaf.ID && p.Part == leaf.Part
					for _, q := range bench[:i] {
						if p.Wood.Overlaps(q.Wood) && leaf.Lean == 0 {
							t.Fatalf("%+v and %+v are the same wood", p, q)
						}
					}
				}
				if !found {
					t.Fatalf("%s is not on the bench: %+v", leaf.ID, bench)
				}
			}
		}
	})
}

// Before anything is done the whole board lies there.
func TestBenchBeforeTheFirstStep(t *testing.T) {
	sheet := All(bench())[0]
	lies := sheet.Bench(make([]bool, len(sheet.Steps)))
	want := Lying{Name: sheet.Board.Mark, Wood: sheet.Board.Frame(), Thickness: layout.Inch}
	if len(lies) != 1 || lies[0] != want {
		t.Errorf("on the bench: %+v, want %+v", lies, want)
	}
}
