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
		for range rapid.IntRange(1, 4).Draw(t, "changes") {
			happen(t, d, ids)
		}
		next, err := d.Complete(func(p *layout.Problem, _ bool) (*layout.Plan, error) { return layout.Assemble(p, nil), nil })
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

// happen lets something happen at the saw; what is refused did not.
func happen(t *rapid.T, d *record.Draft, ids []string) {
	id := rapid.SampledFrom(ids).Draw(t, "id")
	var err error
	switch rapid.IntRange(0, 3).Draw(t, "what") {
	case 0, 1:
		err = d.Cut(id)
	case 2:
		err = d.Spoiled(id)
	case 3:
		frame, unknown := d.Frame(id)
		if unknown != nil {
			return
		}
		err = d.Found(id, []layout.Defect{{Kind: layout.Rot, Rect: layout.Rect{X2: frame.X2 / 4, Y2: frame.Y2 / 3}}})
	}
	if err != nil {
		t.Log("refused:", err)
	}
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
