package ceiling

import (
	"slices"

	"sawbill/layout"
)

// option is what something may hold: so many pieces, offcuts that are worth so much at most,
// and both together at the prices at hand.
type option struct {
	tally tally
	worth Value
	all   Value
}

// tenThousandth is a ten-thousandth of the unit of money: what an offcut is worth is rounded
// down to whole ones.
const tenThousandth Value = 100 * fineScale

// whole rounds what offcuts are worth in all down. Where all but one of them are whole, that
// one is rounded down.
func whole(v Value) Value {
	if v < 0 {
		return v
	}
	return v - v%tenThousandth
}

// cellStack is the stacks of a cell that hold some pieces.
type cellStack struct {
	tally tally
	stack
}

// cellKey is where a cell of a class starts across, and which marks it meets along; -1 where
// none matters.
type cellKey struct {
	class     *class
	hit, from int
}

// options is what a cell of a class in a strip from position j may hold, in a zone.
func (c *Counted) options(l *lane, h height, j int, k *class, z *zone) []option {
	var list []option
	if to := min(j+h.hi+c.b.extra(l), c.w.stackEnd()); k.again && to > j {
		key, at, o := cellKey{k, -1, 0}, *z, &cellOffcuts{w: c.w, length: k.length}
		if c.hinders(k, z.hit) {
			key, o.cover, o.from = cellKey{k, z.hit, j}, k.cover[z.hit], j
		} else { // it is as the one from the first position on
			at.top, to = at.top-j, to-j
			if z.reach > 0 {
				at.reach -= c.w.y.at(j)
			}
		}
		for _, s := range c.stacks(key) {
			list = c.with(list, s.tally, s.holding(o, &at, to))
		}
	}
	for i := range k.pieces {
		q := &k.pieces[i]
		if t, ok := c.n.leaf(q.row, q.layers); ok && q.standsIn(h) && j+q.advance <= z.top && !q.fails(k.hits[z.hit], q.across[j]) {
			list = c.with(list, t, 0)
		}
	}
	return list
}

// with adds an option to a list, or makes the one of its tally worth as much.
func (c *Counted) with(list []option, t tally, worth Value) []option {
	if worth < 0 {
		return list
	}
	i := slices.IndexFunc(list, func(o option) bool { return o.tally == t })
	if i < 0 {
		return append(list, option{t, worth, c.n.worth(t, c.price) + worth})
	}
	if worth > list[i].worth {
		list[i].all += worth - list[i].worth
		list[i].worth = worth
	}
	return list
}

// holding is what the offcuts of a stack with parts are worth that ends before a position in
// a zone, or along the far edge there; less than nothing where it cannot be.
func (s *stack) holding(o *cellOffcuts, z *zone, to int) Value {
	best := s.most[max(0, min(to, z.top)-o.from)]
	if s.keep == nil || z.reach <= 0 {
		return best
	}
	end := o.edge(z, to)
	if k := o.w.y.down(end-o.w.shop.MinOffcutWidth) - o.from; k >= 0 {
		if keep := s.keep[min(k, len(s.keep)-1)]; keep > none {
			best = max(best, whole(keep+o.below(end, 1)))
		}
	}
	return best
}

// stackEnd is behind the last position of a stack.
func (w *Board) stackEnd() int { return w.y.down(w.wood.FullWidth()+w.shop.RipKerf) + 1 }

// hinders reports whether marks may matter to a cell that meets them.
func (c *Counted) hinders(k *class, hit int) bool {
	for i := range k.pieces {
		if q := &k.pieces[i]; c.n.one[q.row] != 0 && q.fails(k.hits[hit], ^set(0)) {
			return true
		}
	}
	return anyOf(k.cover[hit])
}

// stacks are the stacks of a cell, as Bench.stack has them, by what they hold.
func (c *Counted) stacks(key cellKey) []cellStack {
	if s, ok := c.cells[key]; ok {
		return s
	}
	w, k := c.w, key.class
	var hit set
	var cover []layout.Length
	if key.hit >= 0 {
		hit, cover = k.hits[key.hit], k.cover[key.hit]
	}
	n := w.stackEnd() - key.from
	var list []cellStack
	q := newQueue(c.n)
	start := func(t tally) []Value {
		i, isNew := q.index(t)
		if isNew {
			list = append(list, cellStack{t, stack{most: slices.Repeat([]Value{none}, n+1)}})
		}
		return list[i].most
	}
	empty := c.b.newCellOffcuts(k, cover, key.from)
	c.addPieces(k, hit, key.from, 0, start, func(at int) Value { return aloneIn(empty, at) })
	for i := q.next(); i >= 0; i = q.next() {
		s := list[i]
		o := c.b.newCellOffcuts(k, cover, key.from)
		for t := 1; t <= n; t++ {
			s.most[t] = max(s.most[t], s.most[t-1])
			if o != nil {
				s.most[t] = max(s.most[t], whole(o.endingAt(s.most, t)-1))
			}
		}
		if o != nil && w.slants() {
			list[i].keep = slices.Repeat([]Value{none}, n+1)
			for t, v := range s.most {
				if t > 0 {
					list[i].keep[t] = list[i].keep[t-1]
				}
				if v >= 0 {
					list[i].keep[t] = max(list[i].keep[t], v-o.below(w.y.at(key.from+t), 0))
				}
			}
		}
		c.addPieces(k, hit, key.from, s.tally, start, func(at int) Value { return s.most[at] })
	}
	c.b.work += (n + 1) * len(list)
	c.cells[key] = list
	return list
}

// aloneIn is what an offcut before all parts of a stack is worth that ends before a position.
func aloneIn(o *cellOffcuts, at int) Value { return max(0, whole(o.alone(at)-1)) }

// addPieces lays every piece of a class behind stacks that hold a tally, of which before says
// what their offcuts are worth.
func (c *Counted) addPieces(k *class, hit set, from int, t tally, start func(tally) []Value, before func(at int) Value) {
	for i := range k.pieces {
		q := &k.pieces[i]
		leaf, ok := c.n.leaf(q.row, q.layers)
		if !ok {
			continue
		}
		sum, ok := c.n.sum(t, leaf)
		if !ok {
			continue
		}
		v := start(sum)
		for at := 0; at+q.advance < len(v); at++ {
			if from+at > c.w.y.n || q.fails(hit, q.across[from+at]) {
				continue
			}
			v[at+q.advance] = max(v[at+q.advance], before(at))
		}
	}
}
