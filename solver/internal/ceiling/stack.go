package ceiling

import (
	"slices"

	"sawbill/layout"
)

// stacks says what parts of one length, side by side across a cell of a class,
// are worth at most: of the class's pieces and offcuts between the positions from
// and to across, by
//
//	V[t] = max(V[t-1], V[t-advance] + price, V[k] + an offcut between k and t, U[t-exit])
//	U[t] = max(U[t-1], U[t-advance] + price, V[t-entry-advance] + price)
//
// where U is for pieces that lean otherwise than the strip: they lose a kerf before
// the first of them and a wedge behind the last.
type stacks struct {
	n      int
	clear  []Value   // by number of positions, where the cell meets no mark
	tables [][]Value // by hit; nil where it is clear
}

// stacks works out what the cells of a class give when they are ripped again.
func (b *Bench) stacks(c *class) stacks {
	n := b.w.y.down(b.w.wood.FullWidth()+b.w.shop.RipKerf) + 1
	s := stacks{n: n, tables: make([][]Value, len(c.hits))}
	if !c.again {
		return s
	}
	s.clear = slices.Clone(b.stack(c, 0, nil, 0, n))
	for h, hit := range c.hits {
		if !b.hinders(c, hit) && !anyOf(c.cover[h]) {
			continue
		}
		s.tables[h] = make([]Value, 0, (n+1)*(n+2)/2)
		for j := 0; j <= n; j++ {
			s.tables[h] = append(s.tables[h], b.stack(c, hit, c.cover[h], j, n)...)
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

// most is the worth of the stack from one position to another of a cell that
// meets the h-th of the class's hits.
func (s *stacks) most(h, from, to int) Value {
	to = min(to, s.n)
	switch {
	case s.clear == nil || to <= from:
		return 0
	case s.tables[h] == nil:
		return s.clear[to-from]
	}
	// Row j has n+1-j values; before it lie (n+1) + n + ... of the rows below.
	return s.tables[h][from*(s.n+1)-from*(from-1)/2+to-from]
}

// alone is the worth of a stack of so many positions that meets no mark.
func (s *stacks) alone(n int) Value {
	if s.clear == nil {
		return 0
	}
	return s.clear[min(n, s.n)]
}

// stack is the values V from position from on.
func (b *Bench) stack(c *class, hit set, cover []layout.Length, from, to int) []Value {
	w := b.w
	v := size(b.column, to-from+1, Value(0))
	b.column = v
	u, exit := b.foreign(c, len(v))
	o := b.newCellOffcuts(c, cover, from)
	for k := 1; k < len(v); k++ {
		v[k] = max(v[k], v[k-1])
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
				v[k] = max(v[k], v[at]+gain)
				continue
			}
			u[k] = max(u[k], u[at]+gain)
			if at >= q.entry {
				u[k] = max(u[k], v[at-q.entry]+gain)
			}
		}
		if u != nil && k >= exit {
			v[k] = max(v[k], u[k-exit])
		}
		if o != nil {
			v[k] = max(v[k], o.endingAt(v, k))
		}
	}
	return v
}

// foreign is the values U at the start, nil where no piece of a class needs them,
// and the least that is lost behind such pieces.
func (b *Bench) foreign(c *class, n int) (u []Value, exit int) {
	exit = n
	for i := range c.pieces {
		if q := &c.pieces[i]; q.entry > 0 {
			exit = min(exit, q.exit)
		}
	}
	if exit == n {
		return nil, n
	}
	b.leaning = size(b.leaning, n, none)
	return b.leaning, exit
}

// cellOffcuts seeks the offcuts of the last rip of one cell.
type cellOffcuts struct {
	w      *Board
	length layout.Length
	cover  []layout.Length
	from   int
	slack  layout.Length // what an offcut may reach beyond a part
	next   int           // position from which on no start was looked at
	most   Value         // the largest V[k] less the worth below k
}

func (b *Bench) newCellOffcuts(c *class, cover []layout.Length, from int) *cellOffcuts {
	w := b.w
	if w.rate == 0 || c.length < w.shop.MinOffcutLength {
		return nil
	}
	o := &cellOffcuts{w: w, length: c.length, cover: cover, from: from, most: none}
	if w.slants() {
		o.slack = w.far
	}
	return o
}

// end is where an offcut ends that lies before position k.
func (o *cellOffcuts) end(k int) layout.Length {
	return o.w.y.upTo(o.from+k) - o.w.shop.RipKerf + o.slack
}

// endingAt is the most with an offcut that ends before position k.
func (o *cellOffcuts) endingAt(v []Value, k int) Value {
	w := o.w
	end := o.end(k)
	for o.next < k && w.y.at(o.from+o.next)+w.shop.MinOffcutWidth <= end {
		o.most = max(o.most, v[o.next]-o.below(w.y.at(o.from+o.next), 0))
		o.next++
	}
	if o.most == none {
		return none
	}
	return o.most + o.below(end, 1) + 1
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
