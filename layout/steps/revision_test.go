package steps_test

import (
	"testing"

	"pgregory.net/rapid"

	"sawbill/layout"
	"sawbill/layout/record"
	"sawbill/layout/steps"
)

// The step file of a revision is whole by itself, too: whoever has only its text ends
// with exactly the parts of its bill, of boards that are being cut with those that are
// done. Counts go on from what is cut, and what is done is done before all else that
// needs it.
func TestSawyerCutsFromTheStepFileOfARevision(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		plan := steps.RandomPlan(t)
		var ids []string
		for _, b := range plan.Boards {
			for _, leaf := range b.Root.Leaves() {
				if leaf.Part != "" {
					ids = append(ids, leaf.ID)
				}
			}
		}
		if len(ids) == 0 {
			return
		}
		d := record.Open(plan)
		if err := d.Cut(rapid.SampledFrom(ids).Draw(t, "cut")); err != nil {
			t.Fatal(err)
		}
		next, err := d.Complete(func(p *layout.Problem) (*layout.Plan, error) { return layout.Assemble(p, nil), nil })
		if err != nil {
			t.Fatal(err)
		}
		for _, order := range []steps.Order{steps.ByBoard, steps.BySetup} {
			if err := cutFromText(next, order); err != nil {
				t.Fatalf("by %s: %v", order, err)
			}
			wantDoneFirst(t, next, order)
		}
	})
}

func wantDoneFirst(t *rapid.T, plan *layout.Plan, order steps.Order) {
	undone := map[string]bool{} // pieces that a step makes which is not done
	for _, s := range steps.List(plan, order) {
		if s.Done && undone[s.Piece] {
			t.Fatalf("step %d is done, but not the one that gives it %s", s.Number, s.Piece)
		}
		if !s.Done {
			undone[s.Off], undone[s.Rest] = true, true
		}
	}
}
