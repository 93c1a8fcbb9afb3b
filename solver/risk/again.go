package risk

import "slices"

// again is how a board of the plan that nobody has touched, whose turn it is, is cut
// while something is missing: as planned where the free wood gives that, or where
// another cut leaves no less missing: the best for all that it could give, or the best
// for what is missing, whatever else then has to come from elsewhere. Whoever plans
// reckons with sound wood.
func (r *play) again(at int) *cut {
	b := &r.j.planned[r.j.turn[at]]
	short := r.outlook(at, b.cut)
	if !wants(short) {
		r.clear = slices.Clone(r.need)
		return b.cut
	}
	if !r.couldHelp(b.wood, short) {
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
	best, least := b.cut, r.j.score(short)
	for _, urgent := range [][]int{nil, short} {
		c := b.wood.cutFor(r.j, r.bench, limits, urgent)
		if c == nil {
			continue
		}
		if score := r.j.score(r.outlook(at, c)); score.Compare(least) < 0 {
			best, least = c, score
		}
	}
	for i := range r.need {
		r.need[i] += b.cut.counts[i] - best.counts[i]
	}
	return best
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

// outlook is what will be missing as far as one can see, if the board whose turn it is
// is cut in some way and those after it as planned.
func (r *play) outlook(at int, c *cut) []int {
	then := &play{j: r.j, bench: r.bench, need: slices.Clone(r.need)}
	wood := slices.Clone(r.free)
	for n, k := range r.j.turn[at:] {
		planned := r.j.planned[k].cut
		if n > 0 {
			wood = wood.with(planned.left, k)
			continue
		}
		wood = wood.with(c.left, k)
		for i := range then.need {
			then.need[i] += planned.counts[i] - c.counts[i]
		}
	}
	need, _ := then.ahead(wood)
	return need
}
