package risk

import (
	"cmp"
	"slices"
)

// piled is a piece of wood with the board of the stock that it comes from: its place
// among the roots.
type piled struct {
	wood *wood
	root int
}

// pile is wood that is free.
type pile []piled

// with is a pile and what is left of a board.
func (p pile) with(left []*wood, root int) pile {
	for _, w := range left {
		p = append(p, piled{w, root})
	}
	return p
}

// order is in which order wood is taken.
type order int

// Small pieces first, what they give leaves the large ones whole; large ones first, they
// give several parts that fit no small one together.
const (
	smallFirst order = 1
	largeFirst order = -1
)

func (p pile) sort(o order) {
	slices.SortStableFunc(p, func(a, b piled) int { return int(o) * cmp.Compare(a.wood.area, b.wood.area) })
}

// fill makes what is missing out of wood, in the order that leaves least missing as far
// as one can see, and sets down in free what is left of it.
func (r *play) fill(wood pile) {
	_, best := r.ahead(wood)
	r.fillIn(wood, best)
}

// ahead is what is missing once wood is taken in the better of the two orders, if all of
// it is sound.
func (r *play) ahead(wood pile) (need []int, best order) {
	for _, o := range []order{smallFirst, largeFirst} {
		try := &play{j: r.j, bench: r.bench, need: slices.Clone(r.need)}
		try.fillIn(wood, o)
		if need == nil || r.j.score(try.need).Compare(r.j.score(need)) < 0 {
			need, best = try.need, o
		}
		if !wants(need) {
			break
		}
	}
	return need, best
}

// fillIn takes wood in an order as long as that gives anything. Matched pieces come
// last, all of a word out of one piece of wood.
func (r *play) fillIn(wood pile, o order) {
	wood = slices.Clone(wood)
	wood.sort(o)
	var passed pile
	for len(wood) > 0 && wants(r.need) {
		w := wood[0]
		wood = wood[1:]
		c := w.wood.cutFor(r.j, r.bench, r.unmatched(), nil)
		if c == nil {
			passed = append(passed, w)
			continue
		}
		r.free = nil
		r.saw(w, c)
		if len(r.free) > 0 {
			wood = append(r.free, wood...)
			wood.sort(o)
		}
	}
	r.free = append(passed, wood...)
	for _, rows := range r.j.groups {
		r.fillGroup(rows)
	}
}

// unmatched is what is missing of parts that may come from anywhere.
func (r *play) unmatched() []int {
	n := wanted(r.need)
	for i := range n {
		if r.j.matched[i] {
			n[i] = 0
		}
	}
	return n
}

// fillGroup makes all pieces of a match word anew if any of them is missing.
func (r *play) fillGroup(rows []int) {
	limits := make([]int, len(r.need))
	missing := false
	for _, i := range rows {
		limits[i] = r.j.p.Bill[i].Quantity
		missing = missing || r.need[i] > 0
	}
	for k := 0; missing && k < len(r.free); k++ {
		w := r.free[k]
		c := w.wood.cutFor(r.j, r.bench, limits, nil)
		if c == nil || !slices.Equal(c.counts, limits) {
			continue
		}
		r.free = slices.Delete(slices.Clone(r.free), k, k+1)
		k--
		before := slices.Clone(r.need)
		for _, i := range rows {
			r.need[i] = limits[i] // the pieces that there are do not match these
		}
		r.saw(w, c)
		if missing = slices.ContainsFunc(rows, func(i int) bool { return r.need[i] > 0 }); missing {
			copy(r.need, before)
		}
	}
}
