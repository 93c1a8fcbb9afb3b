package steps

import "sawbill/layout"

// tally counts finished pieces against the bill over a whole job, those included
// that were cut from boards that the plan no longer holds. Spare pieces are not
// counted.
type tally struct {
	done, of map[string]int
	spares   map[string]bool
}

func newTally(plan *layout.Plan) tally {
	t := tally{map[string]int{}, map[string]int{}, plan.Spares()}
	for i := range plan.Problem.Bill {
		part := &plan.Problem.Bill[i]
		if part.Set == "" {
			t.of[part.Name] = part.Quantity
		}
	}
	for _, b := range plan.Boards {
		for _, leaf := range b.Root.Leaves() {
			if part := plan.Problem.Part(leaf.Part); part != nil && part.Set != "" {
				t.of[leaf.Part]++ // how many strips a set takes is the plan's choice
			}
		}
	}
	for _, c := range plan.CutElsewhere() {
		if !t.spares[c.Wood.Mark] {
			t.done[c.Part]++
			t.of[c.Part]++
		}
	}
	return t
}

func (t tally) count(s *Step) {
	switch {
	case s.Part == "":
	case t.spares[s.Off]:
		s.Count = Count{Spare: true}
	default:
		t.done[s.Part]++
		s.Count = Count{Done: t.done[s.Part], Of: t.of[s.Part]}
	}
}

// markDone marks the steps that were needed for what a record says was taken off a
// board. A step that was needed for a piece that counts no more stays done.
func (s *Sheet) markDone(r *layout.Record) {
	if r == nil {
		return
	}
	names := lying(r, s.Board.Mark)
	if len(names) == 0 {
		return
	}
	for i, needed := range s.Needed(names) {
		s.Steps[i].Done = s.Steps[i].Done || needed
	}
}
