package ceiling

import "sawbill/layout"

// chain is what a strip is worth from one start on, by where its blank ends.
type chain struct {
	a     layout.Length // the start
	worth ascent        // by position behind the last part
	kept  ascent        // by position behind a last offcut, where that may reach further than parts
}

// ascent is a function that only rises, from position first on.
type ascent struct {
	first int
	v     []Value
}

// upTo is the value at position i; none before the first.
func (s *ascent) upTo(i int) Value {
	if i < s.first || len(s.v) == 0 {
		return none
	}
	return s.v[min(i-s.first, len(s.v)-1)]
}

// chain lays cells and offcuts along a strip of a blank that starts at a:
//
//	V[i] = max(V[i-1], W[i-advance] + a cell, V[k] + an offcut between k and i)
//	W[i] = max(V[i], W[k] + an offcut between k and i, W[i-1])
//
// A strip that holds no part is worth no more than an offcut along the blank, but under a
// slanting edge, where it is of a lane by itself: so V is with a part, W is with or without.
func (b *Bench) chain(r *row, a layout.Length) chain {
	w := b.w
	first, parts := w.x.from(a+w.end), w.x.from(a+w.inset)
	n := w.x.down(w.to + w.shop.CrosscutKerf)
	b.v, b.bare, b.kept = room(b.v, n+1), room(b.bare, n+1), room(b.kept, n+1)
	v, bare, kept := b.v, b.bare, b.kept
	for i := first; i <= n; i++ {
		v[i] = none
	}
	b.work += (n - first) * (1 + len(r.offcuts)) * 2
	level, edge := b.newStripOffcuts(r, first)
	perPosition := w.mostKept(r)
	former, alone := none, first
	for i := first; i <= n; i++ {
		if kept[i] = none; i > first {
			v[i] = max(v[i], v[i-1])
		}
		switch {
		case level != nil:
			kept[i] = level.endingAt(v, i)
		case edge != nil:
			kept[i] = edge.parts.endingAt(v, i)
		}
		v[i] = max(v[i], kept[i])
		all := v[i]
		if r.lane.bare || all < Value(perPosition*float64(i-first))+1 { // else W is V
			for ; alone <= i; alone++ {
				b.layBare(level, edge, first, alone)
			}
			all = max(all, bare[i])
		}
		if i >= parts && i <= w.x.n && (all > former || i == parts || !r.lane.same[i]) {
			r.push(v, all, i)
		}
		former = all
	}
	if alone <= n {
		clear(bare[alone:]) // a sketch reads them, and there V is more
	}
	c := chain{a: a}
	if r.lane.bare {
		v, kept = bare, bare
	}
	c.worth = ascent{first, b.keep(max(0, n+1-first))}
	copy(c.worth.v, v[min(first, n+1):]) // it rises
	if w.inset > w.end {
		c.kept = b.ascentOf(kept, first)
	}
	return c
}

// mostKept is no less than what every position along a strip adds to offcuts alone.
func (w *Board) mostKept(r *row) float64 {
	if len(r.offcuts) == 0 {
		return 0
	}
	tallest := r.offcuts[len(r.offcuts)-1].most
	longer := 1 + float64(w.soon+w.x.slack)/float64(w.x.at(w.offcutGap())) // by as much reaches an offcut beyond its positions
	return w.rate*float64(tallest)*float64(w.x.unit)/mm2*longer + offcutRounding
}

// offcutRounding is no less than what is added to an offcut for its rounding.
const offcutRounding = 4

// layBare sets what a strip is worth up to position i without a part, which is known of all
// positions before.
func (b *Bench) layBare(level *levelOffcuts, edge *edgeOffcuts, first, i int) {
	worth := Value(0)
	if i > first {
		worth = b.bare[i-1]
	}
	switch {
	case level != nil:
		worth = max(worth, level.alone(i))
	case edge != nil:
		worth = max(worth, edge.bare.endingAt(b.bare, i))
	}
	b.bare[i] = worth
}

// ascentOf is the most of some values up to every position from first on.
func (b *Bench) ascentOf(v []Value, first int) ascent {
	s := ascent{first, b.keep(max(0, len(v)-first))}
	most := none
	for i := range s.v {
		most = max(most, v[first+i])
		s.v[i] = most
	}
	return s
}

// keep gives a slice of so many values that stays until the next board, in the memory of
// large pieces.
func (b *Bench) keep(n int) []Value {
	if b.piece < len(b.mem) && b.used+n > len(b.mem[b.piece]) {
		b.piece, b.used = b.piece+1, 0
	}
	if b.piece == len(b.mem) {
		b.mem = append(b.mem, make([]Value, max(n, 1<<16)))
	}
	if n > len(b.mem[b.piece]) {
		b.mem[b.piece] = make([]Value, n)
	}
	b.used += n
	return b.mem[b.piece][b.used-n : b.used : b.used]
}

// push offers the cells that start at position i, where the strip is worth all so far.
func (r *row) push(v []Value, all Value, i int) {
	for k := range r.cells {
		c := &r.cells[k]
		z := c.zoneAt[i]
		if z < 0 {
			continue
		}
		if to, worth := i+c.advance, all+c.worth[z]; to < len(v) && worth > v[to] {
			v[to] = worth
		}
	}
}

// offcutGap is the fewest positions from the start of an offcut to that of what
// lies beyond it.
func (w *Board) offcutGap() int {
	gap := w.shop.MinOffcutLength + w.shop.CrosscutKerf
	if !w.x.exact {
		gap -= w.x.slack // at(k)+least <= upTo(i)-kerf
	}
	return max(1, w.x.down(gap+w.x.unit-1))
}

// newStripOffcuts is what seeks the offcuts of a row, if it keeps any: one or the other.
func (b *Bench) newStripOffcuts(r *row, first int) (*levelOffcuts, *edgeOffcuts) {
	switch w := b.w; {
	case len(r.offcuts) == 0:
		return nil, nil
	case r.offcuts[0].slants:
		b.edge.begin(b, r.offcuts, first)
		return nil, &b.edge
	default:
		m := &r.offcuts[0]
		b.level = levelOffcuts{
			before: b.measure(0, m, first, -w.soon, 0), after: b.measure(1, m, first, w.x.slack-w.shop.CrosscutKerf, 1),
			first: first, next: first, most: none, gap: w.offcutGap(),
		}
		return &b.level, nil
	}
}

// levelOffcuts seeks offcuts as high as a strip between its cells.
type levelOffcuts struct {
	before      []Value // worth up to a position, rounded down
	after       []Value // and up to the kerf before it, rounded up
	first, next int     // no offcut starts at an earlier position; where the next may
	most        Value
	gap         int
}

// endingAt is the most with an offcut that ends before position i.
func (o *levelOffcuts) endingAt(v []Value, i int) Value {
	for ; o.next <= i-o.gap; o.next++ {
		if v[o.next] >= 0 {
			o.most = max(o.most, v[o.next]-o.before[o.next])
		}
	}
	if o.most == none {
		return none
	}
	return o.most + o.after[i]
}

// alone is one offcut from the start of the strip to position i.
func (o *levelOffcuts) alone(i int) Value {
	if i-o.first < o.gap {
		return none
	}
	return o.after[i] - o.before[o.first]
}

// worth is the offcut from position k to i.
func (o *levelOffcuts) worth(_ []Value, k, i int) Value { return o.after[i] - o.before[k] }

// measure fills the i-th of the scratch rows with the worth up to every position
// from first on and a shift beyond it, rounded towards 0; up is 1 to round it up.
func (b *Bench) measure(i int, m *stretch, first int, shift layout.Length, up Value) []Value {
	w := b.w
	for len(b.measured) <= i {
		b.measured = append(b.measured, nil)
	}
	v := room(b.measured[i], w.places()+1)
	b.measured[i] = v
	rate := w.rate / mm2
	for k := first; k < len(v); {
		x := min(max(w.x.at(k)+shift, 0), w.wood.Length)
		cross, slope, next := m.slopeAt(x)
		end := len(v)
		if x < w.wood.Length {
			end = min(end, max(k+1, w.x.down(next-shift)+1))
		}
		base, step := rate*cross, rate*slope*float64(w.x.unit)
		if w.x.at(k)+shift < 0 || x == w.wood.Length {
			end, step = k+1, 0
		}
		for n := range v[k:end] {
			v[k+n] = Value(base+step*float64(n)) + up
		}
		k = end
	}
	return v
}

// slopeAt is how much wood there is up to x, how much more of it with every step
// along there, both in square nanometres, and where that changes. Under the slanting edge
// it is what defects take alone, less than none.
func (m *stretch) slopeAt(x layout.Length) (sum, slope float64, next layout.Length) {
	sum, slope, next = float64(x)*float64(m.level()), float64(m.level()), m.w.wood.Length
	for _, h := range m.holes {
		switch {
		case x < h.along.Lo:
			next = min(next, h.along.Lo)
		case x < h.along.Hi:
			next, slope = min(next, h.along.Hi), slope-float64(h.cover)
			sum -= float64(x-h.along.Lo) * float64(h.cover)
		default:
			sum -= float64(h.along.Len()) * float64(h.cover)
		}
	}
	return sum, slope, next
}

// in is what the strip is worth in a blank that ends at e.
func (b *Bench) in(c *chain, e layout.Length) Value {
	w := b.w
	best := c.worth.upTo(w.x.down(e - w.inset + w.shop.CrosscutKerf))
	if w.inset > w.end {
		best = max(best, c.kept.upTo(w.x.down(e-w.end+w.shop.CrosscutKerf)))
	}
	return max(0, best)
}

// before is what the strip is worth up to a later start at least. As much less is it worth
// from there on, for the one may be followed by the other.
func (b *Bench) before(c *chain, a layout.Length) Value {
	if a == c.a {
		return 0
	}
	return max(0, c.worth.upTo(b.w.x.from(a+b.w.end))-rounded)
}

// rounded is more than the rounding of all offcuts of a strip makes.
const rounded = 1000
