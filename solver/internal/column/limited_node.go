package column

import "sawbill/layout"

// node finds the labels of a trued node from y1 to y2 across that have rest
// least or more. Its layers are those of the rips (lean.go).
func (s *limited) node(t across, y1, y2 layout.Length, least Value) []*label {
	w := s.w
	top := y2 - w.shop.EdgeJoint
	if y2 == w.wood.FullWidth() {
		top = w.top
	}
	near := w.nearOf(t.be.a, t.be.ends[t.k], y1)
	first, n := w.y.up(near), w.y.down(top+w.shop.RipKerf)
	if n < first {
		return nil
	}
	ls := w.layersOf(t.m)
	c := newChain(levelNode, ls.count(), first, n+1)
	steps := nodeSteps{s: s, c: c, t: t, layers: ls, y1: y1, near: near, n: n, end: min(top, t.clip), sources: make([]*source, len(w.profiles))}
	clear := len(w.grown) == 0 && !w.slants() && ls.leans == 1
	for j := first; j <= n; j++ {
		if any, fresh := c.open(j); !any || clear && !fresh {
			continue
		}
		for layer := range c.layers {
			steps.strips(j, layer)
			steps.offcuts(j, layer)
		}
	}
	return s.holding(c.run(s, least))
}

// nodeSteps gathers the steps of one trued node.
type nodeSteps struct {
	s       *limited
	c       *chain
	t       across
	layers  layers
	y1, end layout.Length
	near    layout.Length // where it begins to be usable
	n       int
	sources []*source // by profile
}

// strips offers the strips that start at position j.
func (ns *nodeSteps) strips(j, layer int) {
	w := ns.s.w
	if j > w.y.n {
		return
	}
	next, held := ns.layers.next(layer)
	for s := range w.strips {
		st := &w.strips[s]
		id := ns.t.lie.profileAt[s][j]
		if id < 0 || j+st.advance > ns.n || !w.allows(ns.t.m, s) || ns.s.b.rows[id][ns.t.k] <= 0 || !w.opens(next, st.lean, j, ns.near) {
			continue
		}
		lo := w.y.at(j) - ns.y1
		a := arc{
			lo: lo, hi: lo + st.height, bound: ns.s.b.rows[id][ns.t.k], source: ns.source(id),
			anew: next != anyLean && j > ns.c.first && ns.t.lie.profileAt[s][j-1] == id, strip: int32(s),
		}
		ns.follow(a, j, layer, held)
		if ns.layers.must && !held && w.thicks[st.thick].thickness == ns.t.m.must {
			a.filled = true
			ns.follow(a, j, layer, true)
		}
	}
}

// follow adds a strip from position j on, to where the next strip of every lean may
// start.
func (ns *nodeSteps) follow(a arc, j, layer int, held bool) {
	w := ns.s.w
	st := &w.strips[a.strip]
	for i, next := range w.next {
		if to := j + st.advance + w.afters[st.lean][i]; to <= ns.n {
			ns.c.stepAcross(a, j, to, layer, ns.layers.of(held, next))
		}
	}
}

func (ns *nodeSteps) source(id int32) *source {
	if ns.sources[id] == nil {
		ns.sources[id] = newSource(func(least Value) []*label {
			return ns.s.strip(int(id), ns.t.be, ns.t.k, least)
		})
	}
	return ns.sources[id]
}

// offcuts offers the offcut strips that start at position j.
func (ns *nodeSteps) offcuts(j, layer int) {
	w := ns.s.w
	next, held := ns.layers.next(layer)
	if !ns.t.keeps || next != 0 && next != anyLean {
		return
	}
	if w.cfg.InnerOffcuts {
		for to := j + 1; to <= ns.n; to++ {
			for _, after := range w.next {
				ns.offcut(j, to, layer, ns.layers.of(held, after), w.y.at(to)-w.leans[max(after, 0)].kerf)
			}
		}
	}
	ns.offcut(j, ns.n+1, layer, ns.layers.of(held, atEnd), ns.end)
}

func (ns *nodeSteps) offcut(j, to, layer, after int, end layout.Length) {
	w := ns.s.w
	at := w.y.at(j)
	if end > ns.end || at+w.shop.MinOffcutWidth > end {
		return
	}
	worth := w.measure.worth(ns.t.x1, ns.t.x2, at, end)
	ns.c.stepAcross(offcutArc(at-ns.y1, end-ns.y1, worth), j, to, layer, after)
}
