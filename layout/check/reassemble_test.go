package check

import (
	"testing"

	"sawbill/layout"
)

// reassembled is the plan that its own trees give again.
func reassembled(p *layout.Plan) *layout.Plan {
	var cuts []layout.BoardCut
	for _, b := range p.Boards {
		cuts = append(cuts, layout.BoardCut{Board: b.Board, Root: b.Root})
	}
	return layout.Assemble(&p.Problem, cuts)
}

// checkReassembled wants an accepted plan to stay accepted, at the same cost and
// with the same parts missing, when it is assembled again from its trees. Its
// account is then ours, so that nothing is let through.
func checkReassembled(t *testing.T, p *layout.Plan) {
	t.Helper()
	again := reassembled(p)
	for _, v := range Plan(again) {
		t.Error(v)
	}
	if c := again.Score().Compare(p.Score()); c != 0 {
		t.Errorf("assembled again it costs %v, not %v, or lacks other parts", again.Totals.Cost, p.Totals.Cost)
	}
}

func TestGoodPlanReassembled(t *testing.T) { checkReassembled(t, goodPlan()) }
