package column

import "sawbill/layout"

// stripKey names one strip.
type stripKey struct{ profile, a, e int }

// strip finds the labels of the strip of a profile in the blank from be.a to the
// k-th end that have rest least or more.
func (s *limited) strip(id int, be blankEnds, k int, least Value) []*label {
	key := stripKey{id, be.a, be.ends[k]}
	if f, ok := s.strips[key]; ok && f.least <= least {
		return f.labels
	}
	labels := s.holding(s.stripRun(id, be, key.e, least))
	s.strips[key] = frontFrom{least, labels}
	return labels
}

func (s *limited) stripRun(id int, be blankEnds, e int, least Value) []*label {
	w := s.w
	n := w.x.down(w.x.at(e) - max(w.end, w.shop.Snipe) + w.shop.CrosscutKerf)
	first := w.x.up(w.x.at(be.a) + w.end)
	if n < first {
		return nil
	}
	c := newChain(levelStrip, first, n+1)
	st := stripSteps{s: s, c: c, id: id, be: be, e: e, n: n, sources: map[cellKey]*source{}}
	st.keep = s.b.newStripKeep(id, be.a)
	for i := first; i <= n; i++ {
		st.cells(i)
		st.offcuts(i)
	}
	return c.run(s, least)
}

// stripSteps gathers the steps of one strip.
type stripSteps struct {
	s       *limited
	c       *chain
	id      int
	be      blankEnds
	e, n    int
	keep    *stripKeep
	sources map[cellKey]*source
}

// along is where x lies in the strip.
func (st *stripSteps) along(x layout.Length) layout.Length {
	w := st.s.w
	return x - w.x.at(st.be.a) - w.end
}

// cells offers the cells that start at position i.
func (st *stripSteps) cells(i int) {
	w, p := st.s.w, &st.s.w.profiles[st.id]
	t := &w.thicks[w.strips[p.strip].thick]
	partsFrom := w.x.up(w.x.at(st.be.a) + max(w.end, w.shop.Snipe))
	if i < partsFrom || i > w.x.n {
		return
	}
	later := p.slanted && w.wood.TipWidth > w.wood.Width
	lo := st.along(w.x.at(i))
	for k, ci := range t.classes {
		c := &w.classes[ci]
		z := c.zoneAt[i]
		if i+c.advance > st.n || z < 0 {
			continue
		}
		bound := st.s.b.cellAt(st.id, k, c, i)
		if bound <= 0 {
			continue
		}
		st.c.step(arc{
			lo: lo, hi: lo + c.length, bound: bound, anew: !later && i > partsFrom && t.same[i],
			source: st.source(cellKey{st.id, c, z, st.s.b.topAt(st.id, c, i)}),
		}, i, i+c.advance)
	}
}

func (st *stripSteps) source(key cellKey) *source {
	if st.sources[key] == nil {
		st.sources[key] = newSource(func(least Value) []*label { return st.s.cell(key, least) })
	}
	return st.sources[key]
}

// offcuts offers the offcuts that start at position i: up to the end of the
// strip, and, where they are sought between parts, up to every other position.
func (st *stripSteps) offcuts(i int) {
	w := st.s.w
	if st.keep == nil || w.x.at(i) < st.keep.lo {
		return
	}
	if w.cfg.InnerOffcuts {
		for j := i + 1; j <= st.n; j++ {
			st.offcut(i, j, w.x.at(j)-w.shop.CrosscutKerf)
		}
	}
	st.offcut(i, st.n+1, min(w.x.at(st.e)-w.end, st.keep.hi))
}

func (st *stripSteps) offcut(i, j int, end layout.Length) {
	at := st.s.w.x.at(i)
	if end > st.keep.hi || at+st.s.w.shop.MinOffcutLength > end {
		return
	}
	worth := st.keep.before(end) - st.keep.before(at)
	st.c.step(offcutArc(st.along(at), st.along(end), worth), i, j)
}
