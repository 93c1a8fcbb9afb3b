package ceiling

import (
	"slices"

	"sawbill/layout"
)

// stacks says what parts of one length, side by side across a cell of a class,
// are worth at most: of the class's pieces and offcuts between the positions from
// and to across, by
//
//	V[t] = max(V[t-1], W[t-advance] + price, V[k] + an offcut between k and t, U[t-exit])
//	U[t] = max(U[t-1], U[t-advance] + price, W[t-advance] + price)
//	W[t] = max(V[t], an offcut up to t)
//
// for a cell that holds no part is worth no more than an offcut as high as the strip, and
// where U is for pieces that lean otherwise than the strip: the first of a cell begins no
// earlier than behind a kerf, its entry, and a wedge is lost behind the last of them. Where the far edge slants, no wood is
// lost to joint it that an offcut along it could hold, so a stack up to there is worth
//
//	max(V[t], V[k] + an offcut from k to the far edge)
//
// which is told by the largest K[k] = V[k] - the worth of the wood below k.
type stacks struct {
	w     *Board
	c     *class
	n     int
	clear stack   // by number of positions, where the cell meets no mark
	hit   []stack // by hit; none where it is clear
}

// stack is the values V and K from some position on; K is nil where no offcut can be kept
// along a slanting edge.
type stack struct{ most, keep []Value }

// stacks works out what the cells of a class give when they are ripped again.
func (b *Bench) stacks(c *class) stacks {
	n := b.w.y.down(b.w.wood.FullWidth()+b.w.shop.RipKerf) + 1
	s := stacks{w: b.w, c: c, n: n, hit: make([]stack, len(c.hits))}
	if !c.again {
		return s
	}
	clear := b.stack(c, 0, nil, 0, n)
	s.clear = stack{slices.Clone(clear.most), slices.Clone(clear.keep)}
	for h, hit := range c.hits {
		if !b.hinders(c, hit) && !anyOf(c.cover[h]) {
			continue
		}
		all := &s.hit[h]
		all.most = make([]Value, 0, (n+1)*(n+2)/2)
		if clear.keep != nil {
			all.keep = make([]Value, 0, cap(all.most))
		}
		for j := 0; j <= n; j++ {
			own := b.stack(c, hit, c.cover[h], j, n)
			all.most, all.keep = append(all.most, own.most...), append(all.keep, own.keep...)
		}
	}
	return s
}

func anyOf(l []layout.Length) bool {
	for _, v := range l {
		if v > 0 {
			return true
		}
	}
	return false
}

// hinders reports whether any wanted piece may fail in a cell that meets marks.
func (b *Bench) hinders(c *class, hit set) bool {
	for i := range c.pieces {
		if q := &c.pieces[i]; b.gain(q) > 0 && q.fails(hit, ^set(0)) {
			return true
		}
	}
	return false
}

// most is the worth of the stack from one position to another of a cell in a zone.
func (s *stacks) most(z *zone, from, to int) Value {
	if s.clear.most == nil || to <= from {
		return 0
	}
	to = min(to, s.n)
	if s.hit[z.hit].most == nil { // it is as the one from the first position on
		above := *z
		above.top -= from
		if z.reach > 0 {
			above.reach -= s.w.y.at(from)
		}
		return s.clear.upTo(&cellOffcuts{w: s.w, length: s.c.length}, &above, to-from)
	}
	// Row j has n+1-j values; before it lie (n+1) + n + ... of the rows below.
	own := s.hit[z.hit].row(from*(s.n+1)-from*(from-1)/2, s.n+1-from)
	return own.upTo(&cellOffcuts{w: s.w, length: s.c.length, cover: s.c.cover[z.hit], from: from}, z, to)
}

// row is so many of the values.
func (s *stack) row(at, n int) stack {
	r := stack{most: s.most[at : at+n]}
	if s.keep != nil {
		r.keep = s.keep[at : at+n]
	}
	return r
}

// upTo is what a stack is worth that ends before a position in a zone, or along the far
// edge there.
func (s *stack) upTo(o *cellOffcuts, z *zone, to int) Value {
	best := max(0, s.most[max(0, min(to, z.top)-o.from)])
	if s.keep == nil || z.reach <= 0 {
		return best
	}
	end := o.edge(z, to)
	if k := o.w.y.down(end-o.w.shop.MinOffcutWidth) - o.from; k >= 0 {
		best = max(best, s.keep[min(k, len(s.keep)-1)]+o.below(end, 1)+1)
	}
	return best
}

// edge is where an offcut along the far edge ends in a zone, in a stack that ends before a
// position.
func (o *cellOffcuts) edge(z *zone, to int) layout.Length { return min(z.reach, o.end(to-o.from)) }

// alone is the worth of a stack of so many positions that meets no mark.
func (s *stacks) alone(n int) Value {
	if s.clear.most == nil {
		return 0
	}
	return max(0, s.clear.most[min(n, s.n)])
}

// stack is the values V and K from position from on.
func (b *Bench) stack(c *class, hit set, cover []layout.Length, from, to int) stack {
	w := b.w
	v := size(b.column, to-from+1, none)
	b.column = v
	u, exit := b.foreign(c, len(v))
	o := b.newCellOffcuts(c, cover, from)
	var keep []Value
	if o != nil && w.slants() {
		b.keeps = size(b.keeps, len(v), none)
		keep = b.keeps
	}
	for k := 1; k < len(v); k++ {
		v[k] = v[k-1]
		if u != nil {
			u[k] = u[k-1]
		}
		for i := range c.pieces {
			q := &c.pieces[i]
			at, gain := k-q.advance, b.gain(q)
			if gain <= 0 || at < 0 || from+at > w.y.n || q.fails(hit, q.across[from+at]) {
				continue
			}
			if q.entry == 0 {
				v[k] = max(v[k], o.before(v, at)+gain)
				continue
			}
			u[k] = max(u[k], u[at]+gain)
			if at >= q.entry {
				u[k] = max(u[k], o.before(v, at)+gain)
			}
		}
		if u != nil && k >= exit {
			v[k] = max(v[k], u[k-exit])
		}
		if o != nil {
			v[k] = max(v[k], o.endingAt(v, k))
		}
		if keep != nil && v[k] >= 0 {
			keep[k] = max(keep[k-1], v[k]-o.below(w.y.at(from+k), 0))
		}
	}
	return stack{v, keep}
}

// foreign is the values U at the start, nil where no piece of a class needs them, and the
// least that is lost behind such pieces.
func (b *Bench) foreign(c *class, n int) (u []Value, exit int) {
	if exit = c.exit(); exit == noExit {
		return nil, exit
	}
	b.leaning = size(b.leaning, n, none)
	return b.leaning, exit
}

const noExit = 1 << 30

// exit is the least that is lost behind pieces that lean otherwise than their strip.
func (c *class) exit() int {
	exit := noExit
	for i := range c.pieces {
		if q := &c.pieces[i]; q.entry > 0 {
			exit = min(exit, q.exit)
		}
	}
	return exit
}

// cellOffcuts seeks the offcuts of the last rip of one cell.
type cellOffcuts struct {
	w      *Board
	length layout.Length
	cover  []layout.Length
	from   int
	next   int   // position from which on no start was looked at
	most   Value // the largest V[k] less the worth below k
}

func (b *Bench) newCellOffcuts(c *class, cover []layout.Length, from int) *cellOffcuts {
	w := b.w
	if w.rate == 0 || c.length < w.shop.MinOffcutLength {
		return nil
	}
	return &cellOffcuts{w: w, length: c.length, cover: cover, from: from, most: none}
}

// end is where an offcut ends that lies before position k.
func (o *cellOffcuts) end(k int) layout.Length {
	return o.w.y.upTo(o.from+k) - o.w.shop.RipKerf
}

// endingAt is the most with an offcut that ends before position k.
func (o *cellOffcuts) endingAt(v []Value, k int) Value {
	w := o.w
	end := o.end(k)
	for o.next < k && w.y.at(o.from+o.next)+w.shop.MinOffcutWidth <= end {
		if v[o.next] >= 0 {
			o.most = max(o.most, v[o.next]-o.below(w.y.at(o.from+o.next), 0))
		}
		o.next++
	}
	if o.most == none {
		return none
	}
	return o.most + o.below(end, 1) + 1
}

// before is the most before a part that starts in position k: with parts, or an offcut alone.
func (o *cellOffcuts) before(v []Value, k int) Value { return max(v[k], o.alone(k)) }

// alone is an offcut from the start of the cell to position k; 0 where none is kept.
func (o *cellOffcuts) alone(k int) Value {
	if o == nil || k <= 0 {
		return 0
	}
	low, end := o.w.y.at(o.from), o.end(k)
	if low+o.w.shop.MinOffcutWidth > end {
		return 0
	}
	return max(0, o.below(end, 1)+1-o.below(low, 0))
}

// below is the worth of the cell's wood up to y, up is 1 to round it up.
func (o *cellOffcuts) below(y layout.Length, up Value) Value {
	area := float64(o.length) * float64(y)
	for i, c := range o.cover {
		if s := o.w.spots[i]; c > 0 && y > s.Y1 {
			area -= float64(c) * float64(min(y, s.Y2)-s.Y1)
		}
	}
	return Value(area/mm2*o.w.rate) + up
}
