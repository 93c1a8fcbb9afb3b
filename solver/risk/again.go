package risk

import "slices"

// again is how a board of the plan that nobody has touched is cut while something is
// missing: as planned where the free wood gives that, or where another cut leaves no
// less missing. Whoever plans reckons with sound wood.
func (r *play) again(k int) *cut {
	b := &r.j.planned[k]
	short := r.outlook(k, b.cut)
	if !wants(short) || !r.couldHelp(b.wood, short) {
		return b.cut
	}
	limits := make([]int, len(short))
	for i := range limits {
		limits[i] = max(0, b.cut.counts[i]+short[i])
	}
	for i, matched := range r.j.matched {
		if matched {
			limits[i] = 0
		}
	}
	c := b.wood.cutFor(r.j, r.bench, limits)
	if c == nil {
		return b.cut
	}
	if r.j.score(r.outlook(k, c)).Compare(r.j.score(short)) >= 0 {
		return b.cut
	}
	for i := range r.need {
		r.need[i] += b.cut.counts[i] - c.counts[i]
	}
	return c
}

// couldHelp reports whether wood could give something that is missing.
func (r *play) couldHelp(w *wood, short []int) bool {
	for i, n := range short {
		if n > 0 && w.most[i] > 0 && !r.j.matched[i] {
			return true
		}
	}
	return false
}

// outlook is what will be missing as far as one can see, if the k-th board is cut in
// some way and those after it as planned.
func (r *play) outlook(k int, c *cut) []int {
	ahead := &play{j: r.j, bench: r.bench, need: slices.Clone(r.need)}
	for i := range ahead.need {
		ahead.need[i] += r.j.planned[k].cut.counts[i] - c.counts[i]
	}
	wood := slices.Clone(r.free)
	for _, left := range c.left {
		wood = append(wood, piled{left, k})
	}
	for n := k + 1; n < len(r.j.planned); n++ {
		for _, left := range r.j.planned[n].cut.left {
			wood = append(wood, piled{left, n})
		}
	}
	ahead.fill(wood)
	return ahead.need
}
