package steps

import (
	"fmt"

	"pgregory.net/rapid"

	"sawbill/layout"
)

// RandomPlan draws a plan that steps can be made for.
func RandomPlan(t *rapid.T) *layout.Plan { return randomPlan(t) }

// CutRows has the sawyer of these tests do what rows of a step file say, of which
// only the columns are set, and compares the wood with what the plan promises.
// What lies on the table, and whether there is anything to saw, a person sees:
// from the far edge a piece is ripped with face B down, and one that already has
// the size of the setting is not sawn.
func CutRows(plan *layout.Plan, rows []Step) error {
	s := newSawyer(&plan.Problem)
	if plan.Record != nil {
		for _, o := range plan.Record.Origins { // it comes off its board, if that still is to be cut
			if plan.Board(o.Of) != nil {
				delete(s.pieces, o.Board)
				delete(s.seen, o.Board)
			}
		}
	}
	for i := range rows {
		st := &rows[i]
		if st.Number != i+1 {
			return fmt.Errorf("step %d is numbered %d", i+1, st.Number)
		}
		st.Down = layout.FaceA
		if st.From == Far {
			st.Down = layout.FaceB
		}
		st.NoCut = s.nothingToSaw(st)
		if err := s.do(st); err != nil {
			return err
		}
	}
	return s.compare(plan)
}

func (s *sawyer) nothingToSaw(st *Step) bool {
	p := s.pieces[st.Piece]
	switch st.Operation {
	case Crosscut:
		return p.length == st.Setting
	case Resaw:
		return p.thickness == st.Setting
	case Rip, RoughRip, BevelRip:
		a := p.face(st.Down).Lo + st.Setting
		return st.From == Reference && same(a, p.A.Hi) && same(a+st.Angle.Lean(p.thickness), p.B.Hi)
	}
	return false
}
