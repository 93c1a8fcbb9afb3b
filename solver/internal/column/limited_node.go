package column

import "sawbill/layout"

// node finds the labels of a trued node from y1 to y2 across that have rest
// least or more. Where the mode demands a thickness, the second layer is of the
// rips that hold a part of it.
func (s *limited) node(t across, y1, y2 layout.Length, least Value) []*label {
	w := s.w
	top := y2 - w.shop.EdgeJoint
	if y2 == w.wood.FullWidth() {
		top = w.top
	}
	first, n := w.y.up(w.nearOf(t.be.a, t.be.ends[t.k], y1)), w.y.down(top+w.shop.RipKerf)
	if n < first {
		return nil
	}
	layers := 1
	if t.m.must >= 0 {
		layers = 2
	}
	c := newChain(levelNode, layers, first, n+1)
	steps := nodeSteps{s: s, c: c, t: t, y1: y1, n: n, end: min(top, t.clip), sources: make([]*source, len(w.profiles))}
	clear := len(w.grown) == 0 && !w.slants()
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
	y1, end layout.Length
	n       int
	sources []*source // by profile
}

// strips offers the strips that start at position j.
func (ns *nodeSteps) strips(j, layer int) {
	w := ns.s.w
	if j > w.y.n {
		return
	}
	for st := range w.strips {
		id := ns.t.at[st][j]
		if id < 0 || j+w.strips[st].advance > ns.n || !w.allows(ns.t.m, st) || ns.s.b.rows[id][ns.t.k] <= 0 {
			continue
		}
		lo := w.y.at(j) - ns.y1
		a := arc{
			lo: lo, hi: lo + w.strips[st].height, bound: ns.s.b.rows[id][ns.t.k], source: ns.source(id),
			anew: j > ns.c.first && ns.t.at[st][j-1] == id, strip: int32(st),
		}
		to := j + w.strips[st].advance
		ns.c.stepAcross(a, j, to, layer, layer)
		if ns.c.layers == 2 && layer == 0 && w.strips[st].thick == ns.t.m.must {
			a.filled = true
			ns.c.stepAcross(a, j, to, 0, 1)
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
	if !ns.t.keeps {
		return
	}
	if w.cfg.InnerOffcuts {
		for to := j + 1; to <= ns.n; to++ {
			ns.offcut(j, to, layer, w.y.at(to)-w.shop.RipKerf)
		}
	}
	ns.offcut(j, ns.n+1, layer, ns.end)
}

func (ns *nodeSteps) offcut(j, to, layer int, end layout.Length) {
	w := ns.s.w
	at := w.y.at(j)
	if end > ns.end || at+w.shop.MinOffcutWidth > end {
		return
	}
	worth := w.measure.worth(ns.t.x1, ns.t.x2, at, end)
	ns.c.stepAcross(offcutArc(at-ns.y1, end-ns.y1, worth), j, to, layer, layer)
}
