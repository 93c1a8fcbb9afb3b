package quote

import (
	"math/big"
	"slices"

	"sawbill/layout"
)

// group is a board as it was before the job, with all that comes out of it.
type group struct {
	Board
	takes []take
}

// take is what one piece takes of the face of a board.
type take struct {
	part  string
	spare bool
	area  *big.Rat // in square nanometres
}

// groupsOf sorts the wood of a job by the boards that it came from: those that are all
// cut first, then those of the plan.
func groupsOf(plan *layout.Plan) []*group {
	s := &sorter{plan: plan, spares: plan.Spares(), by: map[string]*group{}}
	var unknown layout.Money
	if r := plan.Record; r != nil {
		unknown = r.Spent
		for i := range r.Used {
			unknown -= r.Used[i].Cost
			s.open(&r.Used[i])
		}
	}
	if unknown > 0 {
		s.add(&group{Board: Board{Cost: unknown}})
	}
	for i := range plan.Boards {
		s.open(plan.Problem.Board(plan.Boards[i].Board))
	}
	for i := range plan.Boards {
		s.planned(&plan.Boards[i])
	}
	if plan.Record != nil {
		s.cut()
		s.back()
	}
	return s.groups
}

// sorter puts the wood of a plan into groups.
type sorter struct {
	plan   *layout.Plan
	spares map[string]bool
	groups []*group
	by     map[string]*group // by the mark of the first board
}

func (s *sorter) add(g *group) {
	s.groups = append(s.groups, g)
	s.by[g.Mark] = g
}

// open begins the group of a board, unless it was cut out of another one.
func (s *sorter) open(b *layout.Board) {
	if s.first(b.Mark) == b.Mark && s.by[b.Mark] == nil {
		s.add(&group{Board: Board{Mark: b.Mark, Species: b.Species, Bought: b.Source == layout.Yard, Cost: b.Cost}})
	}
}

// first is the mark of the board that a board was cut out of in the end. A file may hold
// origins that go round in a circle; of those any will do.
func (s *sorter) first(mark string) string {
	if s.plan.Record == nil {
		return mark
	}
	origins := s.plan.Record.Origins
	for range origins {
		i := slices.IndexFunc(origins, func(o layout.Origin) bool { return o.Board == mark })
		if i < 0 {
			break
		}
		mark = origins[i].Of
	}
	return mark
}

// of is the group that a board belongs to; all boards that are not known by mark are in
// one.
func (s *sorter) of(mark string) *group {
	if g := s.by[s.first(mark)]; g != nil {
		return g
	}
	if s.by[""] == nil {
		s.add(new(group))
	}
	return s.by[""]
}

// planned adds what a board of the plan gives.
func (s *sorter) planned(bp *layout.BoardPlan) {
	b, g := s.plan.Problem.Board(bp.Board), s.of(bp.Board)
	bp.Root.LeavesByBlank(func(blank, leaf *layout.Node) {
		switch {
		case leaf.Part != "":
			for _, id := range leaf.PieceIDs() {
				g.takes = append(g.takes, take{leaf.Part, s.spares[id], share(leaf.Rect, leaf.Pieces())})
			}
		case leaf.Offcut != "":
			g.give(s.plan.Problem.Shop.OffcutWorth(b, b.CleanOffcutIn(blank.Length(), leaf.Rect)))
		}
	})
}

// give takes the worth of something that is left off a board, unless it was bought for
// the job.
func (g *group) give(worth layout.Money) {
	if !g.Bought {
		g.Returned += worth
	}
}

// cut adds the finished pieces that no tree of the plan holds.
func (s *sorter) cut() {
	for _, c := range s.plan.CutElsewhere() {
		layers := 0 // pieces resawn from one lie in the same place
		for _, other := range s.plan.Record.Cut {
			if other.Board == c.Board && other.Lay == c.Lay {
				layers++
			}
		}
		g := s.of(c.Board)
		g.takes = append(g.takes, take{c.Part, s.spares[c.Wood.Mark], share(c.Lay, layers)})
	}
}

// back takes off what wood on the rack is worth that came out of boards of the job and
// that the plan does not cut.
func (s *sorter) back() {
	p := &s.plan.Problem
	for i := range p.Stock {
		b := &p.Stock[i]
		if s.first(b.Mark) != b.Mark && s.plan.Board(b.Mark) == nil {
			worth := new(big.Int).Mul(big.NewInt(int64(b.Cost)), big.NewInt(int64(p.Shop.OffcutCredit)))
			s.of(b.Mark).give(layout.Money(worth.Div(worth, big.NewInt(int64(layout.CreditUnity))).Int64()))
		}
	}
}

// share is one of so many shares of the area of a rectangle.
func share(r layout.Rect, of int) *big.Rat {
	area := new(big.Int).Mul(big.NewInt(int64(r.Length())), big.NewInt(int64(r.Width())))
	return new(big.Rat).SetFrac(area, big.NewInt(int64(of)))
}
