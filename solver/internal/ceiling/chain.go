package ceiling

import (
	"slices"
	"sort"

	"sawbill/layout"
)

// chain is what a strip is worth from one start on, by where its blank ends:
// steps of a staircase.
type chain struct {
	worth staircase // by position behind the last part
	rest  staircase // by position where a last offcut may start: less the worth before it
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
	k := sort.Search(len(s.at), func(k int) bool { return int(s.at[k]) > i })
	if k == 0 {
		return none
	}
	return s.v[k-1]
}

// chain lays cells and offcuts along a strip of a blank that starts at a:
//
//	V[i] = max(V[i-1], V[i-advance] + a cell, V[k] + an offcut between k and i).
func (b *Bench) chain(r *row, a layout.Length) chain {
	w := b.w
	first, parts := w.x.down(a+w.end), w.x.down(a+w.inset)
	n := min(w.x.down(w.to+w.shop.CrosscutKerf), w.x.n+1)
	b.v = size(b.v, n+1, Value(0))
	v := b.v
	c := chain{staircase{b.room32(), b.room64()}, staircase{}}
	o := stripOffcuts{row: r, next: first, most: none, gap: w.offcutGap()}
	for i := first; i <= n; i++ {
		best := v[i]
		if i > first {
			best = max(best, v[i-1])
		}
		if r.offcuts != nil {
			best = max(best, o.endingAt(v, i))
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
	if r.offcuts != nil {
		c.rest = staircase{b.room32(), b.room64()}
		c.setRest(r)
		b.keep(&c.rest)
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

// setRest lists where a last offcut may start.
func (c *chain) setRest(r *row) {
	most := none
	for k, i := range c.worth.at {
		if v := c.worth.v[k] - r.before[i]; v > most {
			most = v
			c.rest.add(int(i), v)
		}
	}
}

// offcutGap is the fewest positions from the start of an offcut to that of what
// lies beyond it.
func (w *Board) offcutGap() int {
	gap := w.shop.MinOffcutLength + w.shop.CrosscutKerf - w.x.unit // at(k)+least <= at(i+1)-kerf
	return max(1, w.x.down(gap+w.x.unit-1))
}

// stripOffcuts seeks offcuts between the cells of a strip.
type stripOffcuts struct {
	row  *row
	next int
	most Value
	gap  int
}

// endingAt is the most with an offcut that ends before position i.
func (o *stripOffcuts) endingAt(v []Value, i int) Value {
	for ; o.next <= i-o.gap; o.next++ {
		o.most = max(o.most, v[o.next]-o.row.before[o.next])
	}
	if o.most == none {
		return none
	}
	return o.most + o.row.after[i]
}

// in is what the strip is worth in a blank that ends at e.
func (b *Bench) in(c *chain, r *row, e layout.Length) Value {
	w := b.w
	best := c.worth.upTo(w.x.down(e - w.inset + w.shop.CrosscutKerf))
	if r.offcuts == nil {
		return best
	}
	if s := c.rest.upTo(w.x.down(e - w.end - w.shop.MinOffcutLength)); s != none {
		best = max(best, s+r.offcuts.after(e-w.end))
	}
	return best
}
