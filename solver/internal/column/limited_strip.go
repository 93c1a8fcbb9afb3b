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
	c := newChain(levelStrip, 1, first, n+1)
	t := &w.thicks[w.strips[w.profiles[id].strip].thick]
	st := stripSteps{
		s: s, c: c, id: id, be: be, e: e, n: n, t: t, keep: s.b.newStripKeep(id, be.a),
		partsFrom: w.x.up(w.x.at(be.a) + max(w.end, w.shop.Snipe)),
		later:     w.profiles[id].slanted && w.wood.TipWidth > w.wood.Width,
		latest:    make([]cellSource, len(t.classes)),
	}
	for i := first; i <= n; i++ {
		_, fresh := c.open(i)
		if fresh || st.anyTime(i) {
			st.cells(i)
		}
		if fresh {
			st.offcuts(i)
		}
	}
	return c.run(s, least)
}

// stripSteps gathers the steps of one strip.
type stripSteps struct {
	s         *limited
	c         *chain
	id        int
	t         *thick
	be        blankEnds
	e, n      int
	partsFrom int
	later     bool // the board widens, so that a later cell may hold more
	keep      *stripKeep
	latest    []cellSource // by class
}

type cellSource struct {
	key    cellKey
	source *source
}

// anyTime reports whether cells at position i could gain from having waited.
func (st *stripSteps) anyTime(i int) bool {
	return st.later || i <= st.partsFrom || i > st.s.w.x.n || st.t.anew.has(i)
}

// along is where x lies in the strip.
func (st *stripSteps) along(x layout.Length) layout.Length {
	w := st.s.w
	return x - w.x.at(st.be.a) - w.end
}

// cells offers the cells that start at position i.
func (st *stripSteps) cells(i int) {
	w := st.s.w
	if i < st.partsFrom || i > w.x.n {
		return
	}
	lo, anew := st.along(w.x.at(i)), !st.anyTime(i)
	for k, ci := range st.t.classes {
		c := &w.classes[ci]
		if i+c.advance > st.n || c.zoneAt[i] < 0 {
			continue
		}
		if bound := st.s.b.cellAt(st.id, k, c, i); bound > 0 {
			st.c.step(arc{lo: lo, hi: lo + c.length, bound: bound, anew: anew, source: st.source(k, c, i)}, i, i+c.advance)
		}
	}
}

// source gives the labels of the k-th class at position i; neighbours along
// share one.
func (st *stripSteps) source(k int, c *class, i int) *source {
	key := cellKey{st.id, c, c.zoneAt[i], st.s.b.topAt(st.id, c, i)}
	if cs := &st.latest[k]; cs.source == nil || cs.key != key {
		*cs = cellSource{key, newSource(func(least Value) []*label { return st.s.cell(key, least) })}
	}
	return st.latest[k].source
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
