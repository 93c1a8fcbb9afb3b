package solver

import (
	"slices"

	"sawbill/layout"
	"sawbill/solver/internal/choose"
	"sawbill/solver/internal/column"
	"sawbill/solver/internal/lp"
)

// restricted is the master problem of some boards alone: at most one of its cuts
// a board, to make what is wanted at the least net cost, where a piece that stays
// missing costs its penalty. As a linear programme it gives prices at which
// further cuts are sought (Dantzig & Wolfe 1960); as an integer programme a plan
// of the boards (restricted master heuristic: Joncour, Michel, Sadykov, Sverdlov
// & Vanderbeck 2010).
type restricted struct {
	p       *layout.Problem
	boards  []int
	wanted  []int
	penalty []float64 // of one missing piece by row, as a value
	columns []choice
	gone    []bool // by column: it may no longer be chosen
	prog    *lp.Program
	steps   int                       // of one solve of the programme, at most
	extra   func(*column.Cut) float64 // what a cut is taken to cost beyond its money; nil: nothing
}

// choice is one cut of the at-th board.
type choice struct {
	at  int
	cut *column.Cut
}

// newRestricted begins with shortages alone. The rows of the programme are the
// boards, then the rows of the bill; its first columns are the shortages.
func newRestricted(p *layout.Problem, boards, wanted []int, penalty []float64) *restricted {
	r := &restricted{p: p, boards: boards, wanted: slices.Clone(wanted), penalty: penalty, steps: restrictedSteps}
	var senses []lp.Sense
	var rhs []float64
	for range boards {
		senses, rhs = append(senses, lp.AtMost), append(rhs, 1)
	}
	for _, n := range wanted {
		senses, rhs = append(senses, lp.AtLeast), append(rhs, float64(n))
	}
	r.prog = lp.New(senses, rhs)
	for i := range wanted {
		r.prog.Add(penalty[i]/perMoney, []lp.Entry{{Row: len(boards) + i, Coef: 1}})
	}
	return r
}

// offer adds a cut of the at-th board. Pieces beyond what is wanted count for
// nothing.
func (r *restricted) offer(at int, c *column.Cut) {
	entries := []lp.Entry{{Row: at, Coef: 1}}
	for i, n := range c.Counts {
		if n = min(n, r.wanted[i]); n > 0 {
			entries = append(entries, lp.Entry{Row: len(r.boards) + i, Coef: float64(n)})
		}
	}
	if len(entries) > 1 {
		r.columns, r.gone = append(r.columns, choice{at, c}), append(r.gone, false)
		r.prog.Add(r.net(choice{at, c})/perMoney, entries)
	}
}

// net is what a column is taken to cost, as a value.
func (r *restricted) net(c choice) float64 {
	net := netValue(r.p, r.boards[c.at], c.cut)
	if r.extra != nil {
		net += r.extra(c.cut)
	}
	return net
}

// forbid takes a column out.
func (r *restricted) forbid(k int) {
	r.gone[k] = true
	r.prog.Forbid(len(r.wanted) + k)
}

// restrictedSteps bounds the work of one solve of the programme of a few boards.
const restrictedSteps = 2000

// prices solves the programme for the values of the parts and of the boards; ok
// is false when it ran out of steps.
func (r *restricted) prices() (parts, boards []float64, ok bool) {
	if r.prog.Solve(r.steps) != lp.Optimal {
		return nil, nil, false
	}
	y := r.prog.Dual()
	for i := range y {
		y[i] *= perMoney
	}
	boards, parts = y[:len(r.boards)], y[len(r.boards):]
	for i := range parts {
		parts[i] = max(0, parts[i])
	}
	return parts, boards, true
}

// best chooses cuts in whole numbers, beginning with those before; nodes bounds
// the work.
func (r *restricted) best(before []*column.Cut, nodes int) []*column.Cut {
	unit := r.unit()
	columns := make([]choose.Column, len(r.columns))
	start := make([]int, len(r.boards))
	for at := range start {
		start[at] = -1
	}
	for k, c := range r.columns {
		net := r.net(c)
		columns[k] = choose.Column{Group: c.at, Cost: int64(net / unit), Counts: c.cut.Counts}
		if c.cut == before[c.at] {
			start[c.at] = k
		}
	}
	penalty := make([]int64, len(r.penalty))
	for i, v := range r.penalty {
		penalty[i] = int64(v / unit)
	}
	chosen, _, _ := choose.Best(len(r.boards), r.wanted, penalty, columns, start, nodes)
	cuts := make([]*column.Cut, len(r.boards))
	for at, k := range chosen {
		if k >= 0 {
			cuts[at] = r.columns[k].cut
		}
	}
	return cuts
}

// mostChosen is the most that all costs and penalties of a choice may come to.
const mostChosen = 1 << 58

// unit is the value of one unit of cost in a choice: a ten-thousandth, or more
// where sums of so small units could be too large.
func (r *restricted) unit() float64 {
	sum := valueOf(r.wanted, r.penalty)
	for _, b := range r.boards {
		sum += float64(column.FromMoney(r.p.Stock[b].Cost))
	}
	unit := float64(column.Cash)
	for sum/unit > mostChosen {
		unit *= 2
	}
	return unit
}

// valueOf is what some pieces are worth.
func valueOf(counts []int, values []float64) float64 {
	var v float64
	for i, n := range counts {
		v += float64(n) * values[i]
	}
	return v
}
