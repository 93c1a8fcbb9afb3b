package exhaust

import (
	"fmt"

	"sawbill/layout"
)

// Job is a tiny job of which every plan on the grid is known, as far as it
// matters: for each vector of counts the plan that costs the least.
type Job struct {
	p     *layout.Problem
	plans front // one piece a board; the worth of a plan is what it costs, less than nothing
}

// New tries every plan for p whose positions lie on a grid of unit. A job of
// three boards of 12 by 8 units and three kinds of part takes about two seconds. It
// panics where p asks for what the package does not know.
func New(p *layout.Problem, unit layout.Length) *Job {
	refuse(p)
	t := newTable(limitsOf(p))
	plans := waste()
	for i := len(p.Stock) - 1; i >= 0; i-- {
		t.join(boardFront(p, &p.Stock[i], unit), plans)
		plans = t.take()
	}
	return &Job{p, plans}
}

// boardFront holds the ways to cut a board, each with what the board costs, and
// the way that leaves it alone.
func boardFront(p *layout.Problem, b *layout.Board, unit layout.Length) front {
	f := waste()
	if !p.Takes(b) {
		return f
	}
	for _, w := range newBoard(p, b, unit).whole() {
		w.worth -= b.Cost
		f = append(f, w)
	}
	return f
}

// Best is a plan with the best score (layout.Score) of all.
func (j *Job) Best() *layout.Plan {
	best := &j.plans[0]
	for i := range j.plans {
		if j.score(&j.plans[i]).Compare(j.score(best)) < 0 {
			best = &j.plans[i]
		}
	}
	return j.plan(best)
}

func (j *Job) score(w *way) layout.Score {
	missing := make([]int, len(j.p.Bill))
	for i := range missing {
		missing[i] = j.p.Bill[i].Quantity - int(w.made[i])
	}
	return layout.NewScore(j.p, missing, -w.worth)
}

// plan assembles a plan from one piece a board.
func (j *Job) plan(w *way) *layout.Plan {
	var cuts []layout.BoardCut
	for i := range j.p.Stock {
		if w.first != nil {
			cuts = append(cuts, layout.BoardCut{Board: j.p.Stock[i].Mark, Root: w.first.tree()})
		}
		w = w.rest
	}
	return layout.Assemble(j.p, cuts)
}

// Cost is the least that a plan costs that leaves at most missing[i] pieces of
// the i-th row of the bill unmade; ok is false where there is no such plan. Making
// more never costs less, but for planed boards of which a thick part spares a long
// blank the machines.
func (j *Job) Cost(missing []int) (cost layout.Money, ok bool) {
	for i := range j.plans {
		w := &j.plans[i]
		if j.leaves(w, missing) && (!ok || -w.worth < cost) {
			cost, ok = -w.worth, true
		}
	}
	return cost, ok
}

func (j *Job) leaves(w *way, most []int) bool {
	for i := range j.p.Bill {
		if j.p.Bill[i].Quantity-int(w.made[i]) > most[i] {
			return false
		}
	}
	return true
}

// refuse panics where a job has anything that the package does not know.
func refuse(p *layout.Problem) {
	if len(p.Bill) > maxRows || p.Shop.JointerWidth > 0 || p.Shop.PlanerWidth > 0 {
		panic(fmt.Sprintf("exhaust: want at most %d kinds of part and machines of any width", maxRows))
	}
	for _, b := range p.Stock {
		if b.Bow != 0 || b.Crook != 0 || b.Cup != 0 || b.Twist != 0 {
			panic("exhaust: board " + b.Mark + " is warped")
		}
	}
	for _, q := range p.Bill {
		if q.Bevel != 0 || q.OnEdge || q.Resaw || q.Match != "" || q.Set != "" || q.Quantity > 100 {
			panic("exhaust: part " + q.Name + " is not a plain one")
		}
	}
}
