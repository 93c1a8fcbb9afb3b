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

// byArea sorts wood, small pieces first: what a small one gives leaves the large ones
// whole.
func (p pile) byArea() {
	slices.SortStableFunc(p, func(a, b piled) int { return cmp.Compare(a.wood.area, b.wood.area) })
}

// fill makes what is missing out of wood, small pieces before large ones, as long as
// that gives anything, and sets down in free what is left of it. Matched pieces come
// last, all of a word out of one piece of wood.
func (r *play) fill(wood pile) {
	wood = slices.Clone(wood)
	wood.byArea()
	var passed pile
	for len(wood) > 0 && wants(r.need) {
		w := wood[0]
		wood = wood[1:]
		c := w.wood.cutFor(r.j, r.bench, r.unmatched())
		if c == nil {
			passed = append(passed, w)
			continue
		}
		r.free = nil
		r.saw(w, c)
		if len(r.free) > 0 {
			wood = append(r.free, wood...)
			wood.byArea()
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
		c := w.wood.cutFor(r.j, r.bench, limits)
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
