package check

import (
	"testing"

	"sawbill/layout"
)

// Three shelves are made. Spares may be among them, but what is missing counts
// against the quantity alone.
func TestSparesAreNeitherTooManyNorMissing(t *testing.T) {
	for _, test := range []struct{ quantity, spare, missing int }{{2, 1, 0}, {3, 2, 0}, {4, 9, 1}} {
		p := goodPlan()
		p.Problem.Bill[0].Quantity, p.Problem.Bill[0].Spare = test.quantity, test.spare
		p.Missing = nil
		if test.missing > 0 {
			p.Missing = []layout.Missing{{Part: "shelf", Quantity: test.missing}}
		}
		if found := Plan(p); len(found) > 0 {
			t.Errorf("%d and %d spare: %v", test.quantity, test.spare, found)
		}
	}
}
