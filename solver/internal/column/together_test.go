package column

import (
	"testing"

	"sawbill/layout"
	"sawbill/layout/check"
	"sawbill/solver/internal/exhaust"
)

// TestTogetherEqualsEveryPlan compares the search over several boards with the
// plans of tiny jobs, all of which are known: at prices so high that every piece
// counts for more than all boards cost, and at prices of one board.
func TestTogetherEqualsEveryPlan(t *testing.T) {
	proven := 0
	for seed := range int64(70) {
		p := exhaust.Tiny(seed)
		for _, dear := range []Value{1, 4} {
			if holdTogether(t, seed, p, dear) {
				proven++
			}
		}
	}
	if proven < 50 {
		t.Errorf("only %d plans are proven best", proven)
	}
}

// holdTogether compares one job at a price that is all costs together divided by
// share; it reports whether the result is exact.
func holdTogether(t *testing.T, seed int64, p *layout.Problem, share Value) bool {
	t.Helper()
	var all layout.Money
	for i := range p.Stock {
		all += p.Stock[i].Cost
	}
	price := make([]Value, len(p.Bill))
	for i := range price {
		price[i] = FromMoney(all)/share + Cash
	}
	together, marks := togetherOf(p, price)
	if together == nil {
		return false
	}
	want := bestOfAll(p, price)
	together.Relax(10, 0)
	s := together.Solve(0)
	value, faults := valueOfColumns(p, price, s.Columns, marks)
	for _, f := range faults {
		t.Errorf("seed %d: %v", seed, f)
	}
	switch {
	case value > want || together.Exact() && value < want:
		t.Errorf("seed %d: found %d, best is %d", seed, value, want)
	case together.Exact() && (s.Bound < want || s.Bound > want+Cash):
		t.Errorf("seed %d: bound %d, best is %d", seed, s.Bound, want)
	}
	return together.Exact()
}

// togetherOf makes the boards of a job ready; nil where none may be cut.
func togetherOf(p *layout.Problem, price []Value) (t *Together, marks []string) {
	var boards []*Board
	var costs []Value
	limits := make([]int, len(p.Bill))
	for i := range p.Bill {
		limits[i] = p.Bill[i].Quantity
	}
	for i := range p.Stock {
		if b := &p.Stock[i]; p.Takes(b) {
			boards, costs, marks = append(boards, New(p, b, Exact())), append(costs, FromMoney(b.Cost)), append(marks, b.Mark)
		}
	}
	if len(boards) == 0 {
		return nil, nil
	}
	return NewTogether(boards, costs, price, price, limits, 1<<40, nil), marks
}

// bestOfAll is the most that a plan comes to: the prices of its pieces less its
// cost.
func bestOfAll(p *layout.Problem, price []Value) Value {
	all := exhaust.New(p, exhaust.TinyUnit)
	var best Value
	missing := make([]int, len(p.Bill))
	var try func(i int, value Value)
	try = func(i int, value Value) {
		if i == len(missing) {
			if cost, ok := all.Cost(missing); ok {
				best = max(best, value-FromMoney(cost))
			}
			return
		}
		for n := 0; n <= p.Bill[i].Quantity; n++ {
			missing[i] = n
			try(i+1, value+Value(p.Bill[i].Quantity-n)*price[i])
		}
	}
	try(0, 0)
	return best
}

// valueOfColumns adds up the plan that columns make, and checks it.
func valueOfColumns(p *layout.Problem, price []Value, columns []Column, marks []string) (Value, []check.Violation) {
	var cuts []layout.BoardCut
	for i, c := range columns {
		if c.Root != nil {
			cuts = append(cuts, layout.BoardCut{Board: marks[i], Root: c.Root})
		}
	}
	plan := layout.Assemble(p, cuts)
	value := -FromMoney(plan.Totals.Cost)
	for _, b := range plan.Boards {
		for _, leaf := range b.Root.Leaves() {
			for i := range p.Bill {
				if leaf.Part == p.Bill[i].Name {
					value += price[i]
				}
			}
		}
	}
	return value, check.Plan(plan)
}
