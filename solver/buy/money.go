package buy

import (
	"slices"

	"sawbill/layout"
)

// inYardMoney is a problem in which a plan costs what is paid at the yard for it:
// the boards of the yard take part, those of the rack are free, and no offcut has a
// worth.
func inYardMoney(p *layout.Problem) *layout.Problem {
	paid := withYard(p)
	shop := *p.Shop
	shop.OffcutCredit = 0
	paid.Shop, paid.Stock = &shop, slices.Clone(p.Stock)
	for i := range paid.Stock {
		if b := &paid.Stock[i]; b.Source == layout.Rack {
			b.Cost = 0
		}
	}
	return paid
}

// withYard is a problem in which boards of the yard take part.
func withYard(p *layout.Problem) *layout.Problem {
	q := *p
	q.Yard = true
	return &q
}

// only is a problem in which of the boards of the yard no others take part than
// these.
func only(p *layout.Problem, marks []string) *layout.Problem {
	q := withYard(p)
	q.Stock = slices.Clone(p.Stock)
	for i := range q.Stock {
		if b := &q.Stock[i]; b.Source == layout.Yard && !slices.Contains(marks, b.Mark) {
			b.Source = layout.Hold
		}
	}
	return q
}

// recut is a plan with the same cuts for a problem that differs from its own in money
// and in what takes part.
func recut(p *layout.Problem, plan *layout.Plan) *layout.Plan {
	var cuts []layout.BoardCut
	for _, b := range plan.Boards {
		cuts = append(cuts, layout.BoardCut{Board: b.Board, Root: b.Root.Clone()})
	}
	return layout.Assemble(p, cuts)
}

// bought lists the boards of the yard that a plan cuts.
func bought(p *layout.Problem, plan *layout.Plan) []string {
	var marks []string
	for _, b := range plan.Boards {
		if p.Board(b.Board).Source == layout.Yard {
			marks = append(marks, b.Board)
		}
	}
	return marks
}
