package column

import "sawbill/layout"

// blank finds the labels of a crosscut piece of the board that have rest least
// or more: trued whole, or ripped rough.
func (s *limited) blank(be blankEnds, k int, least Value) []*label {
	w := s.w
	var front []*label
	whole := layout.Rect{X1: w.x.at(be.a), X2: w.x.at(be.ends[k]), Y1: 0, Y2: w.wood.FullWidth()}
	metal := len(w.metal) > 0 && w.hasMetal(whole)
	if !metal {
		for _, m := range w.modes(be.a, be.ends[k], w.jointed()) {
			s.merge(&front, s.node(s.b.newAcross(be, k, m), 0, whole.Y2, least))
		}
	}
	if metal || w.roughHelps() {
		s.merge(&front, s.rough(be, k, least))
	}
	return byRest(front)
}

// rough finds the labels of a crosscut piece that is ripped before it is trued.
func (s *limited) rough(be blankEnds, k int, least Value) []*label {
	w := s.w
	if w.x.at(be.ends[k])-w.x.at(be.a) < w.shop.MinRipLength {
		return nil
	}
	n := w.y.up(w.wood.FullWidth() + w.shop.RoughRipKerf)
	c := newChain(levelRough, 1, 0, n)
	for j := 0; j <= min(n, w.y.n); j++ {
		c.open(j)
		if j > 0 && !s.b.roughKerfOK(be, k, w.y.at(j)-w.shop.RoughRipKerf) {
			continue
		}
		s.roughOffcuts(c, be, k, j)
		for _, m := range w.modes(be.a, be.ends[k], true) {
			s.roughNodes(c, s.b.newAcross(be, k, m), j)
		}
	}
	return s.holding(c.run(s, least))
}

// roughStep adds a step over y1..y2 of a crosscut piece.
func (s *limited) roughStep(c *chain, a arc, j int, y1, y2 layout.Length) {
	a.lo, a.hi, a.anew = y1, y2, false
	c.step(a, j, s.w.y.up(y2+s.w.shop.RoughRipKerf))
}

func (s *limited) roughOffcuts(c *chain, be blankEnds, k, j int) {
	w := s.w
	x1, x2, y1 := w.x.at(be.a), w.x.at(be.ends[k]), w.y.at(j)
	if w.measure.rate == 0 || x2-x1 < w.shop.MinOffcutLength {
		return
	}
	clip := w.wood.FarMin(layout.Span{Lo: x1, Hi: x2})
	for _, y2 := range s.b.roughEnds(y1) {
		if y2 <= clip && y2-y1 >= w.shop.MinOffcutWidth && (y2 == w.wood.FullWidth() || s.b.roughKerfOK(be, k, y2)) {
			s.roughStep(c, offcutArc(0, 0, w.measure.worth(x1, x2, y1, y2)), j, y1, y2)
		}
	}
}

func (s *limited) roughNodes(c *chain, t across, j int) {
	w, b := s.w, s.b
	y1 := w.y.at(j)
	b.nodeRun(t, y1)
	for _, y2 := range b.roughEnds(y1) {
		if w.hasMetal(layout.Rect{X1: w.x.at(t.be.a), X2: w.x.at(t.be.ends[t.k]), Y1: y1, Y2: y2}) {
			return
		}
		if y2 < w.wood.FullWidth() && !b.roughKerfOK(t.be, t.k, y2) {
			continue
		}
		if v, _ := b.nodeEnd(t, y2); v > 0 {
			find := func(least Value) []*label { return s.node(t, y1, y2, least) }
			s.roughStep(c, arc{bound: v, source: newSource(find)}, j, y1, y2)
		}
	}
}
