package solver

import (
	"cmp"
	"fmt"
	"slices"

	"sawbill/layout"
	"sawbill/layout/check"
	"sawbill/solver/internal/column"
)

// Spare pieces are cut only where they cost nothing. They are laid into the scrap of
// the plan that was found: no other piece moves for them, and no offcut that is kept
// becomes smaller, so that cost and missing parts stay as they are.
//
// Nor does what is proven change. The bound is one on every plan with the same parts
// missing, and holds for those with spares as well: a spare taken out of a plan leaves
// scrap in its place, and a blank that held nothing else is left uncut, so that there
// is a valid plan without spares that costs no more.

// spares is a plan into which spare pieces are laid.
type spares struct {
	asked  *layout.Problem
	p      layout.Problem // of the rows that may be spare
	left   []int          // by row of p: how many more are wanted
	marks  []string       // of the boards that are cut
	scraps []*column.Scrap
}

// withSpares is a plan with the spare pieces that are free, one of every part before
// the second of any, those first that the bill serves first. An error is a fault of
// ours.
func withSpares(asked *layout.Problem, plan *layout.Plan, seed int64) (*layout.Plan, error) {
	s := newSpares(asked, plan)
	if !s.layAll() {
		return plan, nil
	}
	var cuts []layout.BoardCut
	for i, scrap := range s.scraps {
		cuts = append(cuts, layout.BoardCut{Board: s.marks[i], Root: scrap.Root()})
	}
	next := layout.Assemble(asked, cuts)
	proven := plan.Totals
	proven.Cost, proven.Yield = next.Totals.Cost, next.Totals.Yield
	next.Totals = proven
	if faults := check.Plan(next); len(faults) > 0 {
		return nil, fmt.Errorf("solver: seed %d laid spare pieces into a plan so that it fails its check: %v", seed, faults[0])
	}
	return next, nil
}

func newSpares(asked *layout.Problem, plan *layout.Plan) *spares {
	s := &spares{asked: asked, p: *asked}
	s.p.Bill = nil
	homes := homesOf(plan)
	for _, part := range asked.Bill {
		short := slices.ContainsFunc(plan.Missing, func(m layout.Missing) bool { return m.Part == part.Name })
		if part.Spare == 0 || short {
			continue
		}
		if home := homes[part.Match]; part.Match != "" && home != "" {
			if len(part.From) > 0 && !slices.Contains(part.From, home) {
				continue
			}
			part.From = []string{home}
		}
		part.Quantity = part.Spare
		s.p.Bill = append(s.p.Bill, part)
	}
	slices.SortStableFunc(s.p.Bill, func(a, b layout.Part) int { return cmp.Compare(a.Rank(), b.Rank()) })
	s.left = wanted(&s.p)
	if len(s.left) == 0 {
		return s
	}
	for _, b := range plan.Boards {
		s.marks = append(s.marks, b.Board)
		s.scraps = append(s.scraps, column.NewScrap(&s.p, s.p.Board(b.Board), b.Root.Clone(), s.need))
	}
	return s
}

// homesOf tells by match word the board that its pieces come from.
func homesOf(plan *layout.Plan) map[string]string {
	homes := map[string]string{}
	for _, b := range plan.Boards {
		for _, leaf := range b.Root.Leaves() {
			if part := plan.Problem.Part(leaf.Part); part != nil && part.Match != "" {
				homes[part.Match] = b.Board
			}
		}
	}
	return homes
}

// need is the thickness that a leaf of any part needs.
func (s *spares) need(leaf *layout.Node) layout.Length {
	return s.asked.Shop.NeedOf(leaf, s.asked.Part(leaf.Part))
}

// layAll lays spares until there is no more room or no more are wanted, and reports
// whether it laid any.
func (s *spares) layAll() bool {
	for laid := false; ; laid = true {
		more := false
		for row := range s.left {
			more = s.layOne(row) || more
		}
		if !more {
			return laid
		}
	}
}

// layOne lays one leaf of a row.
func (s *spares) layOne(row int) bool {
	for at := range column.Places {
		for _, scrap := range s.scraps {
			if n := scrap.Lay(row, s.left[row], at); n > 0 {
				s.left[row] -= n
				return true
			}
		}
	}
	return false
}
