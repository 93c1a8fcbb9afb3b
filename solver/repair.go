package solver

import (
	"cmp"
	"math/rand"
	"slices"

	"sawbill/layout"
	"sawbill/solver/internal/ceiling"
	"sawbill/solver/internal/column"
)

// task is a part of a plan that is planned again by itself: some boards, and
// what they are to make together.
type task struct {
	island *island
	boards []int // those that may be cut
	wanted []int // by row of the bill
	// before is what the boards were cut to; nil where not cut.
	before []*column.Cut
	// short is what is missing in the plan that the task is taken from.
	short  []int
	style  style
	rng    *rand.Rand
	appeal []float64 // of the boards of the task
	known  [][]*column.Cut
}

// answer is what came of a task.
type answer struct {
	cuts  []*column.Cut // by board of the task
	left  []int         // of what was wanted
	found []found       // cuts to remember
}

// worker is one goroutine's means of planning.
type worker struct {
	p     *layout.Problem
	quick *pricer
	fine  *pricer
	bench column.Bench
	high  ceiling.Bench
	stop  func() bool
}

const lookAhead = 3 // boards that are compared before one is cut

// repair plans a task from nothing: again and again it compares the next few
// boards and cuts the one that gives the most value for its net cost. It is nil
// when stopped.
func (w *worker) repair(t *task, values []float64) *answer {
	a := &answer{cuts: make([]*column.Cut, len(t.boards)), left: append([]int(nil), t.wanted...)}
	price := prices(w.p, shaken(values, t.rng), t.short)
	open := t.order()
	for len(open) > 0 && wants(a.left) {
		best, most := -1, 0.0
		var chosen *column.Cut
		for k := 0; k < min(lookAhead, len(open)); k++ {
			if w.stop() {
				return nil
			}
			board := t.boards[open[k]]
			c := w.bench.Within(w.quick.board(board).WithCuts(t.rng), price, a.left, 2)
			if c.Root != nil {
				a.found = append(a.found, found{board, &c})
			}
			if r := w.rate(board, &c); r > most {
				best, most, chosen = k, r, &c
			}
		}
		if best < 0 {
			open = open[min(lookAhead, len(open)):]
			continue
		}
		a.cuts[open[best]] = chosen
		for i, n := range chosen.Counts {
			a.left[i] -= n
		}
		open = append(open[:best:best], open[best+1:]...)
	}
	return a
}

// order is that in which boards are looked at: the more appealing first, with
// some chance in it.
func (t *task) order() []int {
	order := t.rng.Perm(len(t.boards))
	noise := make([]float64, len(t.boards))
	for k := range noise {
		noise[k] = t.appeal[k] * (0.9 + 0.2*t.rng.Float64())
	}
	slices.SortStableFunc(order, func(a, b int) int { return cmp.Compare(noise[b], noise[a]) })
	return order
}

// rate is how much value a cut gives for its money; 0 when it makes nothing.
func (w *worker) rate(board int, c *column.Cut) float64 {
	if c.Value <= 0 {
		return 0
	}
	net := column.FromMoney(w.p.Stock[board].Cost - c.Worth)
	return float64(c.Value) / float64(max(net, 1))
}

// cost is what cutting the boards of the task in some way costs.
func (t *task) cost(p *layout.Problem, cuts []*column.Cut) layout.Money {
	var cost layout.Money
	for k, c := range cuts {
		if c != nil {
			cost += p.Stock[t.boards[k]].Cost - c.Worth
		}
	}
	return cost
}

// leftBefore is what of the wanted pieces the boards did not make before.
func (t *task) leftBefore() []int {
	left := slices.Clone(t.wanted)
	for _, c := range t.before {
		if c != nil {
			for i, n := range c.Counts {
				left[i] -= n
			}
		}
	}
	return left
}
