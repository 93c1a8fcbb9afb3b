package column

import "sawbill/layout"

// blank finds the labels of a crosscut piece of the board that have rest least
// or more: trued whole, or ripped rough.
func (s *limited) blank(be blankEnds, k int, least Value) []*label {
	w := s.w
	var front []*label
	whole := layout.Rect{X1: w.x.at(be.a), X2: w.x.at(be.ends[k]), Y1: 0, Y2: w.wood.FullWidth()}
	fits := w.trueable(whole)
	if fits {
		for _, m := range w.modes(whole, w.jointed()) {
			s.merge(&front, s.node(s.b.newAcross(be, k, m), 0, whole.Y2, least))
		}
	}
	if !fits || w.roughHelps() || w.cupped(whole) {
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
	ends := s.b.roughLines(be, k)
	for j := 0; j <= min(n, w.y.n); j++ {
		c.open(j)
		if !ends.starts(j) || j > 0 && !s.b.roughKerfOK(be, k, w.y.at(j)-w.shop.RoughRipKerf) {
			continue
		}
		s.roughOffcuts(c, be, k, j, ends)
		s.roughNodes(c, be, k, j, ends)
	}
	return s.holding(c.run(s, least))
}

// roughStep adds a step over y1..y2 of a crosscut piece.
func (s *limited) roughStep(c *chain, a arc, j int, y1, y2 layout.Length) {
	a.lo, a.hi, a.anew = y1, y2, false
	c.step(a, j, s.w.y.up(y2+s.w.shop.RoughRipKerf))
}

func (s *limited) roughOffcuts(c *chain, be blankEnds, k, j int, ends *roughLines) {
	s.b.eachRoughOffcut(be, k, j, ends, func(y2 layout.Length, worth Value) {
		s.roughStep(c, offcutArc(0, 0, worth), j, s.w.y.at(j), y2)
	})
}

func (s *limited) roughNodes(c *chain, be blankEnds, k, j int, ends *roughLines) {
	y1 := s.w.y.at(j)
	s.b.eachRoughNode(be, k, j, ends, func(t across, y2 layout.Length, v Value) {
		find := func(least Value) []*label { return s.node(t, y1, y2, least) }
		s.roughStep(c, arc{bound: v, source: newSource(find)}, j, y1, y2)
	})
}
