package column

import "sawbill/layout"

// blankWorth is what the blanks from one start are worth at the relaxed prices,
// by end, without limits.
type blankWorth struct {
	be    blankEnds
	worth []Value
}

// endsAfter lists where blanks that start at a may end.
func (w *Board) endsAfter(a int) []int {
	ends := w.ends
	for len(ends) > 0 && (ends[0] <= a || w.x.at(ends[0])-w.x.at(a) < w.shop.MinRipLength) {
		ends = ends[1:]
	}
	return ends
}

// setBlanks works out what every blank is worth at the relaxed prices.
func (s *limited) setBlanks() {
	w := s.w
	s.blanks = s.blanks[:0]
	for _, a := range w.starts {
		be := blankEnds{a, w.endsAfter(a)}
		if len(w.strips) == 0 || len(be.ends) == 0 || !w.startOK[a] {
			continue
		}
		bw := blankWorth{be: be, worth: make([]Value, len(be.ends))}
		alike := w.alike() && len(s.blanks) > 0
		if !alike {
			s.fill(be)
		}
		for k, e := range be.ends {
			switch {
			case !w.endOK[e]:
				bw.worth[k] = none
			case alike: // the first blanks have ends one position apart
				bw.worth[k] = s.blanks[0].worth[k]
			default:
				bw.worth[k], _ = s.b.blank(be, k)
			}
		}
		s.blanks = append(s.blanks, bw)
	}
}

// fill has the strips of the blanks from one start ready in the bench.
func (s *limited) fill(be blankEnds) {
	if s.filled != be.a {
		s.b.fillRows(be)
		s.filled = be.a
	}
}

// boardChain offers everything that can be crosscut from the board.
func (s *limited) boardChain() *chain {
	w := s.w
	n := w.x.up(w.wood.Length + w.shop.CrosscutKerf)
	c := newChain(levelBoard, 1, 0, n)
	blanks := s.blanks
	sources := s.alikeSources()
	for i := 0; i <= min(n, w.x.n); i++ {
		c.open(i)
		if w.startOK[i] {
			s.boardOffcuts(c, i, n)
			s.boardWholes(c, i)
		}
		if len(blanks) > 0 && blanks[0].be.a == i {
			s.boardBlanks(c, &blanks[0], sources)
			blanks = blanks[1:]
		}
	}
	return c
}

// alikeSources are the labels of the blanks from the first start, which stand
// for all others of one length; nil where they do not.
func (s *limited) alikeSources() []*source {
	if !s.w.alike() || len(s.blanks) == 0 {
		return nil
	}
	sources := make([]*source, len(s.blanks[0].be.ends))
	for k := range sources {
		sources[k] = s.blankSource(s.blanks[0].be, k)
	}
	return sources
}

func (s *limited) blankSource(be blankEnds, k int) *source {
	return newSource(func(least Value) []*label {
		s.fill(be)
		return s.blank(be, k, least)
	})
}

func (s *limited) boardBlanks(c *chain, bw *blankWorth, alike []*source) {
	w := s.w
	for k, e := range bw.be.ends {
		if bw.worth[k] <= 0 {
			continue
		}
		a := arc{lo: w.x.at(bw.be.a), hi: w.x.at(e), bound: bw.worth[k]}
		if alike != nil {
			a.source, a.anew = alike[k], bw.be.a > w.starts[0]
		} else {
			a.source = s.blankSource(bw.be, k)
		}
		c.step(a, bw.be.a, w.x.up(a.hi+w.shop.CrosscutKerf))
	}
}

// boardOffcuts offers the rough pieces that start at i and are kept.
func (s *limited) boardOffcuts(c *chain, i, n int) {
	w := s.w
	if w.measure.rate == 0 {
		return
	}
	if w.exact() {
		for e := i + 1; e <= w.x.n; e++ {
			if w.endOK[e] && w.x.at(e) < w.wood.Length {
				s.boardOffcut(c, i, w.x.up(w.x.at(e)+w.shop.CrosscutKerf), w.x.at(e))
			}
		}
	} else {
		for _, at := range w.starts {
			if at > i {
				s.boardOffcut(c, i, at, w.x.at(at)-w.shop.CrosscutKerf)
			}
		}
	}
	s.boardOffcut(c, i, n, w.wood.Length)
}

func (s *limited) boardOffcut(c *chain, i, next int, x2 layout.Length) {
	w := s.w
	clean := w.wood.CleanOffcutIn(x2-w.x.at(i), layout.Rect{X1: w.x.at(i), X2: x2, Y1: 0, Y2: w.wood.FullWidth()})
	if !w.shop.Keeps(clean) {
		return
	}
	a := offcutArc(w.x.at(i), x2, w.measure.worth(clean.X1, clean.X2, clean.Y1, clean.Y2))
	a.anew = !w.exact()
	c.step(a, i, next)
}
