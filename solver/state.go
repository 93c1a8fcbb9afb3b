package solver

import (
	"slices"

	"sawbill/layout"
	"sawbill/solver/internal/column"
)

// state is a whole plan as the search holds it: at most one cut a board.
type state struct {
	p       *layout.Problem
	cuts    []*column.Cut // by board; nil: the board is not cut
	missing []int         // by row of the bill
}

func newState(p *layout.Problem) *state {
	s := &state{p: p, cuts: make([]*column.Cut, len(p.Stock)), missing: make([]int, len(p.Bill))}
	for i := range p.Bill {
		s.missing[i] = p.Bill[i].Quantity
	}
	return s
}

// set cuts board in another way, or not at all.
func (s *state) set(board int, c *column.Cut) {
	if old := s.cuts[board]; old != nil {
		for i, n := range old.Counts {
			s.missing[i] += n
		}
	}
	s.cuts[board] = c
	if c != nil {
		for i, n := range c.Counts {
			s.missing[i] -= n
		}
	}
}

// recut cuts some boards in other ways, nil where not at all.
func (s *state) recut(boards []int, cuts []*column.Cut) {
	for _, b := range boards {
		s.set(b, nil)
	}
	for k, b := range boards {
		s.set(b, cuts[k])
	}
}

// net is what cutting a board in one way costs: the board less its offcuts.
func (s *state) net(board int, c *column.Cut) layout.Money {
	return s.p.Stock[board].Cost - c.Worth
}

func (s *state) cost() layout.Money {
	var cost layout.Money
	for i, c := range s.cuts {
		if c != nil {
			cost += s.net(i, c)
		}
	}
	return cost
}

func (s *state) score() layout.Score { return layout.NewScore(s.p, s.missing, s.cost()) }

// copy shares the cuts, which are never changed.
func (s *state) copy() *state {
	return &state{p: s.p, cuts: slices.Clone(s.cuts), missing: slices.Clone(s.missing)}
}

// used lists the boards that are cut.
func (s *state) used() []int {
	var used []int
	for i, c := range s.cuts {
		if c != nil {
			used = append(used, i)
		}
	}
	return used
}

// plan converts the state into a plan for the problem as it was asked; it shares
// nothing with it.
func (s *state) plan(asked *layout.Problem) *layout.Plan {
	var cuts []layout.BoardCut
	for i, c := range s.cuts {
		if c != nil {
			cuts = append(cuts, layout.BoardCut{Board: s.p.Stock[i].Mark, Root: c.Root.Clone()})
		}
	}
	return layout.Assemble(asked, cuts)
}

// wants reports whether anything is still wanted.
func wants(left []int) bool {
	for _, n := range left {
		if n > 0 {
			return true
		}
	}
	return false
}
