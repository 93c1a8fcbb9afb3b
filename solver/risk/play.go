package risk

import (
	"slices"

	"sawbill/layout"
	"sawbill/solver/internal/column"
)

// play is the work on a job once, with defects at places that only cutting shows.
type play struct {
	j     *job
	bench *column.Bench
	spots [][]layout.Rect // by root; nil: none anywhere
	need  []int           // by row, what is missing; less than 0: what there is beyond
	free  pile
	cuts  []made // what was cut
	clear []int  // what was missing when all of it could last be seen to come from free wood
}

// made is a piece of wood that was cut.
type made struct {
	piled
	cut *cut
}

// run cuts the boards of the plan one after the other, makes what is missing out of the
// wood that is free, and reports whether all of the bill is made.
func (r *play) run() bool {
	r.need = slices.Clone(r.j.short)
	r.free = slices.Clone(r.j.free)
	for at, k := range r.j.turn {
		b := &r.j.planned[k]
		c := b.cut
		if wants(r.need) && !b.kept && !slices.Equal(r.need, r.clear) {
			c = r.again(at)
		}
		r.saw(piled{b.wood, k}, c)
	}
	r.fill(r.free)
	return !wants(r.need)
}

// saw cuts a piece of wood. Pieces that are spoiled are missing, of a board of the plan;
// of others the sound ones make up for what is.
func (r *play) saw(w piled, c *cut) {
	r.cuts = append(r.cuts, made{w, c})
	fromPlan := w.root < len(r.j.planned) && w.wood == r.j.planned[w.root].wood
	for _, p := range c.pieces {
		switch spoiled := r.spoils(w.root, p); {
		case fromPlan && spoiled:
			r.need[p.row] += p.n
		case !fromPlan && !spoiled:
			r.need[p.row] -= p.n
		}
	}
	r.free = r.free.with(c.left, w.root)
}

// spoils reports whether a hidden defect spoils a piece.
func (r *play) spoils(root int, p piece) bool {
	return root < len(r.spots) && slices.ContainsFunc(r.spots[root], p.touch.Overlaps)
}

// wants reports whether anything is missing.
func wants(need []int) bool {
	return slices.ContainsFunc(need, func(n int) bool { return n > 0 })
}

// wanted is what is missing, without what there is beyond.
func wanted(need []int) []int {
	n := slices.Clone(need)
	for i := range n {
		n[i] = max(0, n[i])
	}
	return n
}

// score compares what is missing: no money is spent here.
func (j *job) score(need []int) layout.Score { return layout.NewScore(j.p, wanted(need), 0) }
