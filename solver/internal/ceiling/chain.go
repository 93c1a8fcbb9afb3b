package ceiling

import (
	"slices"

	"sawbill/layout"
)

// chain is what a strip is worth from one start on, by where its blank ends:
// steps of a staircase.
type chain struct {
	a     layout.Length // the start
	worth staircase     // by position behind the last part
	rest  []staircase   // by kind of offcut, by position where a last one may start: less the worth before it
}

// staircase is a function that only rises: from position at[i] on it is v[i].
type staircase struct {
	at []int32
	v  []Value
}

func (s *staircase) add(i int, v Value) {
	s.at, s.v = append(s.at, int32(i)), append(s.v, v)
}

// upTo is the value at position i; none before the first step.
func (s *staircase) upTo(i int) Value {
	if len(s.at) == 0 || i < int(s.at[0]) {
		return none
	}
	// Steps lie at least one position apart, so the k-th is no nearer than k.
	lo, hi := 0, min(i-int(s.at[0]), len(s.at)-1)
	for at := int32(min(i, 1<<30)); lo < hi && s.at[hi] > at; {
		if mid := (lo + hi) / 2; s.at[mid] > at {
			hi = mid - 1
		} else {
			lo, hi = mid, hi-1
		}
	}
	return s.v[hi]
}

// chain lays cells and offcuts along a strip of a blank that starts at a:
//
//	V[i] = max(V[i-1], V[i-advance] + a cell, V[k] + an offcut between k and i).
func (b *Bench) chain(r *row, a layout.Length) chain {
	w := b.w
	first, parts := w.x.from(a+w.end), w.x.from(a+w.inset)
	n := w.x.down(w.to + w.shop.CrosscutKerf)
	b.v = size(b.v, n+1, Value(0))
	v := b.v
	b.work += (n - first) * (1 + len(r.offcuts)) * 2
	c := chain{a: a, worth: staircase{b.room32(), b.room64()}}
	kinds := b.newStripOffcuts(r, first)
	for i := first; i <= n; i++ {
		best := v[i]
		if i > first {
			best = max(best, v[i-1])
		}
		for k := range kinds {
			best = max(best, kinds[k].endingAt(v, i))
		}
		v[i] = best
		rises := i == first || best > v[i-1]
		if rises {
			c.worth.add(i, best)
		}
		if i >= parts && i <= w.x.n && (rises || i == parts || !r.lane.same[i]) {
			r.push(v, i)
		}
	}
	b.keep(&c.worth)
	for k := range r.offcuts {
		c.rest = append(c.rest, staircase{b.room32(), b.room64()})
		c.setRest(w, &kinds[k], r.offcuts[k].along.Lo, &c.rest[k])
		b.keep(&c.rest[k])
	}
	return c
}

// room32 and room64 are what is left of large pieces of memory, for the next
// staircase; keep takes off what it needed.
func (b *Bench) room32() []int32 {
	if cap(b.mem32)-len(b.mem32) < 4096 {
		b.mem32 = make([]int32, 0, 1<<16)
	}
	return b.mem32[len(b.mem32):]
}

func (b *Bench) room64() []Value {
	if cap(b.mem64)-len(b.mem64) < 4096 {
		b.mem64 = make([]Value, 0, 1<<16)
	}
	return b.mem64[len(b.mem64):]
}

func (b *Bench) keep(s *staircase) {
	b.mem32, b.mem64 = b.mem32[:len(b.mem32)+len(s.at)], b.mem64[:len(b.mem64)+len(s.v)]
	s.at, s.v = slices.Clip(s.at), slices.Clip(s.v)
}

// push offers the cells that start at position i.
func (r *row) push(v []Value, i int) {
	for k := range r.cells {
		c := &r.cells[k]
		z := c.zoneAt[i]
		if z < 0 {
			continue
		}
		if to, worth := i+c.advance, v[i]+c.worth[z]; to < len(v) && worth > v[to] {
			v[to] = worth
		}
	}
}

// setRest lists where a last offcut of a kind may start.
func (c *chain) setRest(w *Board, o *stripOffcuts, from layout.Length, rest *staircase) {
	most := none
	for k, i := range c.worth.at {
		if w.x.at(int(i)) < from-w.x.unit {
			continue
		}
		if v := c.worth.v[k] - o.before[i]; v > most {
			most = v
			rest.add(int(i), v)
		}
	}
}

// offcutGap is the fewest positions from the start of an offcut to that of what
// lies beyond it.
func (w *Board) offcutGap() int {
	gap := w.shop.MinOffcutLength + w.shop.CrosscutKerf - w.x.slack // at(k)+least <= upTo(i)-kerf
	return max(1, w.x.down(gap+w.x.unit-1))
}

// stripOffcuts seeks offcuts of one kind between the cells of a strip.
type stripOffcuts struct {
	before []Value // worth up to a position, rounded down
	after  []Value // and up to the kerf before it, rounded up
	first  int     // no offcut starts at an earlier position
	next   int
	end    int // no offcut ends before a later position
	most   Value
	gap    int
}

func (b *Bench) newStripOffcuts(r *row, first int) []stripOffcuts {
	w := b.w
	b.kinds = b.kinds[:0]
	for k := range r.offcuts {
		m := &r.offcuts[k]
		b.kinds = append(b.kinds, stripOffcuts{
			before: b.measure(2*k, m, first, -w.soon, 0), after: b.measure(2*k+1, m, first, w.x.slack-w.shop.CrosscutKerf, 1),
			first: max(first, w.x.down(m.along.Lo)), most: none, gap: w.offcutGap(),
			end: w.x.down(m.along.Hi + w.shop.CrosscutKerf),
		})
		b.kinds[k].next = b.kinds[k].first
	}
	return b.kinds
}

// measure fills the i-th of the scratch rows with the worth up to every position
// from first on and a shift beyond it; up is 1 to round it up.
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
// along there, both in square nanometres, and where that changes.
func (m *stretch) slopeAt(x layout.Length) (sum, slope float64, next layout.Length) {
	sum, slope, next = float64(x)*float64(m.height), float64(m.height), m.w.wood.Length
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

// endingAt is the most with an offcut that ends before position i.
func (o *stripOffcuts) endingAt(v []Value, i int) Value {
	if i > o.end {
		return none
	}
	for ; o.next <= i-o.gap; o.next++ {
		o.most = max(o.most, v[o.next]-o.before[o.next])
	}
	if o.most == none {
		return none
	}
	return o.most + o.after[i]
}

// after is the worth up to x, rounded up.
func (m *stretch) after(x layout.Length) Value {
	sum := float64(x) * float64(m.height)
	for _, h := range m.holes {
		if x > h.along.Lo {
			sum -= float64(min(x, h.along.Hi)-h.along.Lo) * float64(h.cover)
		}
	}
	return Value(sum/mm2*m.w.rate) + 1
}

// in is what the strip is worth in a blank that ends at e.
func (b *Bench) in(c *chain, r *row, e layout.Length) Value {
	w := b.w
	best := c.worth.upTo(w.x.down(e - w.inset + w.shop.CrosscutKerf))
	for k := range r.offcuts {
		m := &r.offcuts[k]
		end := min(e-w.end+w.late, m.along.Hi)
		if s := c.rest[k].upTo(w.x.down(end - w.shop.MinOffcutLength)); s != none {
			best = max(best, s+m.after(end))
		}
	}
	return best
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
