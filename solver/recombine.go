package solver

import (
	"cmp"
	"slices"

	"sawbill/solver/internal/column"
)

// partial is a choice of remembered cuts for some of a task's boards.
type partial struct {
	chosen   []*column.Cut // by board of the task, as far as decided
	left     []int
	cost     float64
	estimate float64 // cost, and at the parts' values what is left
}

const (
	beamWidth = 40
	beamTries = 40 // remembered cuts that are tried for each board
)

// recombine plans a task out of remembered cuts alone, by a beam search over its
// boards: what is left to make is expected to cost its value. Pieces beyond what
// is wanted are left out in the end.
func (w *worker) recombine(t *task, values []float64) *answer {
	beam := []*partial{{chosen: make([]*column.Cut, len(t.boards)), left: slices.Clone(t.wanted)}}
	for _, k := range t.order() {
		if w.stop() {
			return nil
		}
		beam = w.widen(t, beam, k, values)
	}
	for _, b := range beam {
		if !wants(b.left) || wants(t.short) {
			return w.trimmed(t, b, values)
		}
	}
	return nil
}

// widen decides on the k-th board of the task.
func (w *worker) widen(t *task, beam []*partial, k int, values []float64) []*partial {
	tries := t.known[k]
	if len(tries) > beamTries {
		tries = slices.Clone(tries)
		t.rng.Shuffle(len(tries), func(i, j int) { tries[i], tries[j] = tries[j], tries[i] })
		tries = tries[:beamTries]
	}
	if t.before[k] != nil {
		tries = append(slices.Clip(tries), t.before[k])
	}
	next := slices.Clone(beam)
	for _, b := range beam {
		if !wants(b.left) {
			continue
		}
		for _, c := range tries {
			if p := w.with(t, b, k, c, values); p.estimate < b.estimate*1.2 || b.cost == 0 {
				next = append(next, p)
			}
		}
	}
	for _, b := range next {
		b.estimate = b.cost + valueOf(b.left, values)
	}
	slices.SortStableFunc(next, func(a, b *partial) int { return cmp.Compare(a.estimate, b.estimate) })
	next = slices.CompactFunc(next, func(a, b *partial) bool {
		return a.estimate == b.estimate && slices.Equal(a.left, b.left)
	})
	return next[:min(len(next), beamWidth)]
}

func valueOf(counts []int, values []float64) float64 {
	var v float64
	for i, n := range counts {
		v += float64(n) * values[i]
	}
	return v
}

// with is b with the k-th board cut.
func (w *worker) with(t *task, b *partial, k int, c *column.Cut, values []float64) *partial {
	p := &partial{left: slices.Clone(b.left), cost: b.cost + netValue(w.p, t.boards[k], c)}
	for i, n := range c.Counts {
		surplus := max(0, n-p.left[i])
		p.left[i] -= n - surplus
		p.cost -= float64(surplus) * values[i] * surplusWorth
	}
	p.chosen = slices.Clone(b.chosen)
	p.chosen[k] = c
	p.estimate = p.cost + valueOf(p.left, values)
	return p
}

// surplusWorth is the share of its value that a piece beyond what is wanted is
// guessed to return as part of an offcut.
const surplusWorth = 0.2

// trimmed turns a choice into an answer without surplus pieces.
func (w *worker) trimmed(t *task, b *partial, values []float64) *answer {
	a := &answer{cuts: make([]*column.Cut, len(t.boards)), left: slices.Clone(t.wanted)}
	price := prices(w.p, values, t.short)
	for k, c := range b.chosen {
		if c == nil {
			continue
		}
		for i, n := range c.Counts {
			if n > a.left[i] {
				cut := w.quick.board(t.boards[k]).Trim(c, price, a.left)
				c = &cut
				break
			}
		}
		if c.Value <= 0 {
			continue
		}
		a.cuts[k] = c
		for i, n := range c.Counts {
			a.left[i] -= n
		}
	}
	return a
}
