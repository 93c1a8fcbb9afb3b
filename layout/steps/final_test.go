package steps

import (
	"slices"
	"testing"

	"pgregory.net/rapid"

	"sawbill/layout"
)

// Parts with an allowance on their thickness end with the final planing, when all
// sawing is done, and it says that the wood rests before.
func TestTheFinalPlaningComesLast(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		plan := randomPlan(t)
		for _, order := range []Order{ByBoard, BySetup} {
			final := false
			for _, s := range List(plan, order) {
				switch {
				case s.Final && !slices.Contains(s.Cautions, CautionRest):
					t.Fatalf("step %d does not say that the wood rests", s.Number)
				case final && !s.Final:
					t.Fatalf("step %d saws after the final planing began", s.Number)
				case s.Part != "" && s.Final != (plan.Problem.Shop.ThicknessAllowance > 0):
					t.Fatalf("step %d finishes a part; final planing: %t", s.Number, s.Final)
				}
				final = final || s.Final
			}
		}
	})
}

// A piece that is too short for the planer is planed by hand.
func TestShortPiecesAreNotPlanedByMachine(t *testing.T) {
	plan := panels()
	plan.Problem.Shop.ThicknessAllowance = layout.Inch / 16
	plan.Problem.Shop.MinBlank = 31 * layout.Inch // the pieces are 30 long
	for _, s := range List(plan, ByBoard) {
		if s.Final && !slices.Contains(s.Cautions, CautionShortPlane) {
			t.Errorf("step %d planes %s by machine", s.Number, s.Off)
		}
	}
}
