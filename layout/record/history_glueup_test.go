package record_test

import (
	"slices"

	"pgregory.net/rapid"

	"sawbill/layout"
	"sawbill/layout/steps"
)

// wantAllSlices counts strips by themselves: each that is yet to be cut belongs to a
// copy that is whole in the end, and slices that these do not give are missing.
func wantAllSlices(t *rapid.T, plan *layout.Plan) {
	type kind struct {
		row    string
		slices int
	}
	strips, planned := map[kind]int{}, map[kind]int{}
	most := 0
	for _, c := range plan.Record.Cut {
		strips[kind{c.Part, c.Slices}]++
		most = max(most, c.Slices)
	}
	for _, b := range plan.Boards {
		for _, leaf := range b.Root.Leaves() {
			if leaf.Slices > 0 && !plan.Record.IsCut(leaf.ID) {
				strips[kind{leaf.Part, leaf.Slices}]++
				planned[kind{leaf.Part, leaf.Slices}]++
				most = max(most, leaf.Slices)
			}
		}
	}
	wanted, made := 0, 0
	var rows []layout.Part
	for _, p := range plan.Record.Wanted {
		if p.Set != "" {
			rows = append(rows, p)
			wanted = p.Slices
		}
	}
	if len(rows) == 0 {
		return
	}
	for k := 1; k <= most; k++ {
		copies := strips[kind{rows[0].Name, k}] / rows[0].Quantity
		for _, p := range rows {
			copies = min(copies, strips[kind{p.Name, k}]/p.Quantity)
		}
		made += k * copies
		for _, p := range rows {
			if n := planned[kind{p.Name, k}]; n > 0 && strips[kind{p.Name, k}] > copies*p.Quantity+len(plan.Record.Cut) {
				t.Errorf("%d strips of %s with %d slices are to be cut for nothing", n, p.Name, k)
			}
		}
	}
	missing := 0
	for _, m := range plan.Missing {
		if m.Part == "tray" {
			missing = m.Quantity
		}
	}
	if missing != max(0, wanted-made) {
		t.Errorf("%d slices of %d are made, %d missing", made, wanted, missing)
	}
}

// wantTrueSteps holds the steps of boards that are being cut against what lies on the
// bench after those that were done as they were first planned: what is taken in hand
// next lies there, as large as it is taken for.
func wantTrueSteps(t *rapid.T, plan *layout.Plan) {
	for i := range plan.Boards {
		bp := &plan.Boards[i]
		if !plan.Record.IsStarted(bp.Board) {
			continue
		}
		begun := steps.Begun(plan, bp)
		bench := begun.Bench(begun.Reached())
		made := map[string]bool{} // by steps that are yet to be done
		for _, s := range steps.Of(plan, bp).Steps {
			if s.Done {
				continue
			}
			lies := func(l steps.Lying) bool {
				same := l.Wood
				if b := plan.Problem.Board(bp.Board); b.Width != b.TipWidth { // the box around it may be tighter
					same.Y2 = min(same.Y2, s.Wood.Y2)
				}
				return l.Name == steps.Chalk(s.Piece) && same == s.Wood
			}
			if !made[s.Piece] && !slices.ContainsFunc(bench, lies) {
				t.Errorf("step %d takes %s at %v in hand; on the bench there is %v", s.Number, s.Piece, s.Wood, bench)
			}
			made[s.Off], made[s.Rest] = true, true
		}
	}
}
