package solver

import (
	"math/rand"
	"slices"

	"sawbill/layout"
	"sawbill/solver/internal/column"
)

// plan answers a task by column generation on its boards alone: prices that fit
// what these boards are to make, cuts that are good at them, and then the best
// choice among all cuts known. It is nil when stopped.
func (w *worker) plan(t *task, values []float64) *answer {
	r := newRestricted(w.p, t.boards, t.wanted, t.penalty)
	for k, known := range t.known {
		if t.before[k] != nil {
			r.offer(k, t.before[k])
		}
		for _, c := range known {
			if c != t.before[k] {
				r.offer(k, c)
			}
		}
	}
	a := &answer{}
	w.generate(r, t, a, values)
	if w.stop() {
		return nil
	}
	w.cut(a, t, r.best(t.before, t.nodes), values)
	return a
}

// generate adds cuts to a restricted master until none is attractive, or for as
// many rounds as the task allows.
func (w *worker) generate(r *restricted, t *task, a *answer, values []float64) {
	if t.pricing == 0 {
		return
	}
	w.price(r, t, a, shaken(values, t.rng), nil)
	for range t.pricing {
		parts, boards, ok := r.prices()
		if !ok || w.price(r, t, a, parts, boards) == 0 {
			return
		}
	}
}

// price seeks a cut for every board of a task at some values of the parts, and
// offers those that are worth more than the board's share in the programme; it
// reports how many.
func (w *worker) price(r *restricted, t *task, a *answer, parts, boards []float64) int {
	added := 0
	price := make([]column.Value, len(parts))
	for i, v := range parts {
		price[i] = column.Value(v) + 1
	}
	for k, b := range t.boards {
		if w.stop() {
			return 0
		}
		c := w.bench.Within(elsewhere(t.pricer.board(b), t.sketches[k], t.rng), price, t.wanted, 1)
		if c.Root == nil || boards != nil && netValue(w.p, b, &c)-valueOf(c.Counts, parts) >= boards[k]-minGain {
			continue
		}
		r.offer(k, &c)
		a.found = append(a.found, found{b, &c})
		added++
	}
	return added
}

// cut takes cuts for the boards of a task, without the pieces that are beyond what
// is wanted.
func (w *worker) cut(a *answer, t *task, chosen []*column.Cut, values []float64) {
	a.cuts, a.left = make([]*column.Cut, len(t.boards)), slices.Clone(t.wanted)
	price := prices(w.p, values, t.short)
	for k, c := range chosen {
		if c == nil {
			continue
		}
		if beyond(c.Counts, a.left) {
			trimmed := w.quick.board(t.boards[k]).Trim(c, price, a.left)
			c = &trimmed
			a.found = append(a.found, found{t.boards[k], c})
		}
		if c.Value <= 0 {
			continue
		}
		a.cuts[k] = c
		for i, n := range c.Counts {
			a.left[i] -= n
		}
	}
}

// beyond reports whether counts are more than limits anywhere.
func beyond(counts, limits []int) bool {
	for i, n := range counts {
		if n > limits[i] {
			return true
		}
	}
	return false
}

// elsewhere is a board with blanks that start elsewhere: by chance, or as in a sketch.
func elsewhere(board *column.Board, sketches []*layout.Node, rng *rand.Rand) *column.Board {
	if len(sketches) > 0 && rng.Intn(2) == 0 {
		return board.Along(sketches[rng.Intn(len(sketches))])
	}
	return board.WithCuts(rng)
}
