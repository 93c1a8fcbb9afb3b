package column

import "sawbill/layout"

// cellKey names the cells that are worth the same at any prices.
type cellKey struct {
	profile int
	class   *class
	zone    int32
	top     layout.Length
}

// frontFrom is a front with all labels that have rest least or more.
type frontFrom struct {
	least  Value
	labels []*label
}

// cell finds the labels of a cell that have rest least or more.
func (s *limited) cell(key cellKey, least Value) []*label {
	if f, ok := s.cells[key]; ok && f.least <= least {
		return f.labels
	}
	var labels []*label
	s.merge(&labels, s.directChain(key).run(s, least))
	if p := &s.w.profiles[key.profile]; key.class.again && p.stacks(&key.class.zones[key.zone]) {
		s.merge(&labels, s.stackChain(key).run(s, least))
	}
	labels = byRest(s.holding(labels))
	s.cells[key] = frontFrom{least, labels}
	return labels
}

// holding leaves out the label that took no step.
func (s *limited) holding(front []*label) []*label {
	kept := front[:0]
	for _, l := range front {
		if l.arc != nil {
			kept = append(kept, l)
		}
	}
	return kept
}

// directChain offers the parts that fill a cell by themselves.
func (s *limited) directChain(key cellKey) *chain {
	w, p := s.w, &s.w.profiles[key.profile]
	height := w.strips[p.strip].height
	z := &key.class.zones[key.zone]
	c := newChain(levelDirect, 1, 0, 1)
	if w.y.at(p.at)+height+p.lean > key.top {
		return c
	}
	for i := range key.class.pieces {
		q := &key.class.pieces[i]
		if q.width == height && s.wanted(q) && !q.blocked(z.hit, p.hit) {
			c.step(s.partArc(q, 0, height), 0, 1)
		}
	}
	return c
}

// wanted reports whether a leaf may be cut at all.
func (s *limited) wanted(q *piece) bool { return s.relaxed[q.row] > 0 && q.layers <= s.limits[q.row] }

// partArc is a step over one part.
func (s *limited) partArc(q *piece, lo, hi layout.Length) arc {
	return arc{lo: lo, hi: hi, piece: q, bound: Value(q.layers) * s.relaxed[q.row], source: s.partSource(q), anew: true}
}

func (s *limited) partSource(q *piece) *source {
	if s.parts[q.id] == nil {
		n := Value(q.layers)
		s.parts[q.id] = sourceOf(&label{
			value: n * s.price[q.row], rest: n * s.relaxed[q.row], made: s.ledger.one[q.row].times(q.layers), parts: true,
		})
	}
	return s.parts[q.id]
}

// offcutArc is a step over an offcut.
func offcutArc(lo, hi layout.Length, worth Value) arc {
	return arc{lo: lo, hi: hi, offcut: true, bound: worth, source: sourceOf(&label{value: worth, rest: worth}), anew: true}
}

// stackChain offers the parts and offcuts of the last rip: positions count from
// the near side of the cell.
func (s *limited) stackChain(key cellKey) *chain {
	w, p := s.w, &s.w.profiles[key.profile]
	z := &key.class.zones[key.zone]
	y2 := min(w.y.at(p.at)+w.strips[p.strip].height, key.top-p.lean)
	n := max(0, w.y.up(y2+w.leans[key.class.lean].kerf)-p.at)
	c := newChain(levelStack, 1, 0, n+1)
	blocked := z.hit.meets(p.hit)
	for k := range n + 1 {
		if _, fresh := c.open(k); !fresh && !blocked {
			continue
		}
		lo := w.y.at(p.at+k) - w.y.at(p.at)
		for i := range key.class.pieces {
			q := &key.class.pieces[i]
			if !s.wanted(q) || w.y.at(p.at)+lo+q.width > y2 || blocked && q.blocked(z.hit, q.hitAt[p.lie][p.at+k]) {
				continue
			}
			a := s.partArc(q, lo, lo+q.width)
			a.anew = !blocked
			c.step(a, k, k+q.advance)
		}
		if w.cellOffcuts(key.class) && key.top > w.y.at(p.at) {
			s.stackOffcuts(c, key, k, n)
		}
	}
	return c
}

// stackOffcuts offers the offcuts across a cell that start at position k.
func (s *limited) stackOffcuts(c *chain, key cellKey, k, n int) {
	w, p := s.w, &s.w.profiles[key.profile]
	x1 := w.x.at(key.class.zones[key.zone].at)
	base := w.y.at(p.at)
	lo := w.y.at(p.at + k)
	top := min(base+w.strips[p.strip].height, key.top+p.far)
	offer := func(hi layout.Length, to int) {
		if hi <= top && lo+w.shop.MinOffcutWidth <= hi {
			c.step(offcutArc(lo-base, hi-base, w.measure.worth(x1, x1+key.class.length, lo, hi)), k, to)
		}
	}
	for to := k + 1; to <= n; to++ {
		offer(w.y.at(p.at+to)-w.shop.RipKerf, to)
	}
	offer(top, n+1)
}
