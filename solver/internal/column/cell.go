package column

import (
	"sawbill/layout"
)

// cellValues are what the cells of one profile are worth: by class of its
// thickness, by zone of that class. On a slanted profile each of these is a row
// of values by how far across the cell reaches, worked out when first asked
// for.
type cellValues struct {
	zones [][]Value
	span  int    // values in a row of a slanted profile; 1 elsewhere
	lines []line // the classes that are of use
}

const unknown = none - 1

// cellWork is the scratch of the last rip. V[k] is the most that the cell gives
// below its k-th position from the bottom when the next piece may start there.
type cellWork struct {
	v    []Value
	from []placed
}

// placed says how a state was reached: from position prev by the piece of that
// index, or by an offcut.
type placed struct{ prev, piece int32 }

const (
	carried = -1
	offcut  = -2
)

// setCells works out what the cells of a profile are worth.
func (b *Bench) setCells(id int) {
	w, p := b.w, b.profile(id)
	t := &w.thicks[w.strips[p.strip].thick]
	cv := &b.cells[id]
	cv.span = 1
	if p.slanted && w.exact() {
		cv.span = w.y.up(w.strips[p.strip].height+p.lean) + 2
	}
	cv.zones = room(cv.zones, len(t.classes))
	for i, ci := range t.classes {
		c := &w.classes[ci]
		cv.zones[i] = size(cv.zones[i], len(c.zones)*cv.span, unknown)
		if cv.span > 1 {
			continue
		}
		plain := unknown
		for z := range c.zones {
			alone := !c.zones[z].hit.meets(p.hit)
			if alone && plain == unknown {
				plain = b.cellBest(p, c, &c.zones[z], w.top)
			}
			if alone {
				cv.zones[i][z] = plain
			} else {
				cv.zones[i][z] = b.cellBest(p, c, &c.zones[z], w.top)
			}
		}
	}
	b.setLines(id)
}

// cellAt is what a cell of the i-th class of profile id is worth at position x;
// not more than 0 where nothing fits.
func (b *Bench) cellAt(id, i int, c *class, x int) Value {
	z := c.zoneAt[x]
	if z < 0 {
		return none
	}
	cv, p := &b.cells[id], b.profile(id)
	full := b.w.y.at(p.at) + b.w.strips[p.strip].height + p.lean
	if cv.span == 1 {
		if p.slanted && c.reach[x]-p.far < full {
			return none
		}
		return cv.zones[i][z]
	}
	k := cv.span - 1
	if c.reach[x]-p.far < full {
		k = min(max(0, b.w.y.down(c.reach[x]-p.far)-p.at), cv.span-2)
	}
	v := &cv.zones[i][int(z)*cv.span+k]
	if *v == unknown {
		*v = b.cellBest(p, c, &c.zones[z], b.cellTop(p, k, cv.span))
	}
	return *v
}

// cellTop is the reach that the k-th value of a row stands for.
func (b *Bench) cellTop(p *profile, k, span int) layout.Length {
	if k == span-1 {
		return b.w.top
	}
	return b.w.y.at(p.at + k)
}

// cellBest is the most that a cell of class c can be worth in zone z of the
// profile's strip when parts may reach as far across as top.
func (b *Bench) cellBest(p *profile, c *class, z *zone, top layout.Length) Value {
	best, _ := b.cellDirect(p, c, z, top)
	if c.again && p.stacks(z) {
		v, _ := b.cellStack(p, c, z, top)
		best = max(best, v)
	}
	return best
}

// cellDirect is the best part that fills the strip's height by itself, needing
// no further rip.
func (b *Bench) cellDirect(p *profile, c *class, z *zone, top layout.Length) (best Value, piece int) {
	height := b.w.strips[p.strip].height
	best, piece = none, -1
	if b.w.y.at(p.at)+height+p.lean > top {
		return best, piece
	}
	for i := range c.pieces {
		q := &c.pieces[i]
		if v := b.worth[q.id]; q.width == height && v > best && v > 0 && !q.blocked(z.hit, p.hit) {
			best, piece = v, i
		}
	}
	return best, piece
}

// cellStack is the best stack of parts of one length across the strip, by
//
//	V[k] = max(V[k-1], V[k-advance] + price, V[k'] + worth of an offcut between).
//
// The trace that leads there is left in b.cell; last is where it begins.
func (b *Bench) cellStack(p *profile, c *class, z *zone, top layout.Length) (best Value, last int) {
	w, kerf := b.w, b.w.leans[c.lean].kerf
	y2 := min(w.y.at(p.at)+w.strips[p.strip].height, top-p.lean)
	n := max(0, w.y.up(y2+kerf)-p.at)
	b.cell.v = size(b.cell.v, n+1, 0)
	b.cell.from = room(b.cell.from, n+1)
	keep := b.newCellKeep(p, c, z, top)
	blocked := z.hit.meets(p.hit)
	v := b.cell.v
	for k := 0; k <= n; k++ {
		if k > 0 && v[k-1] >= v[k] {
			v[k], b.cell.from[k] = v[k-1], placed{int32(k - 1), carried}
		}
		if keep != nil {
			keep.extend(k)
		}
		if k > 0 && v[k] == v[k-1] && !blocked {
			continue // starting later gains nothing
		}
		for i := range c.pieces {
			q := &c.pieces[i]
			j := k + q.advance
			if w.y.at(p.at+k)+q.width > y2 || v[k]+b.worth[q.id] <= v[j] {
				continue
			}
			if blocked && q.blocked(z.hit, q.hitAt[p.lie][p.at+k]) {
				continue
			}
			v[j] = v[k] + b.worth[q.id]
			b.cell.from[j] = placed{int32(k), int32(i)}
		}
	}
	if keep != nil {
		return keep.finish(n)
	}
	return v[n], n
}

// cellKeep seeks offcuts in the last rip of one cell.
type cellKeep struct {
	b              *Bench
	x1, x2, y2     layout.Length
	at             int
	most           Value // the largest V[k] - worth below k, over the k that are far enough back
	mostAt, behind int
}

// newCellKeep is nil where no offcut of the last rip is sought.
func (b *Bench) newCellKeep(p *profile, c *class, z *zone, top layout.Length) *cellKeep {
	w := b.w
	if !w.cellOffcuts(c) || top <= w.y.at(p.at) { // below that reach there may be no wood
		return nil
	}
	x1 := w.x.at(z.at)
	y2 := min(w.y.at(p.at)+w.strips[p.strip].height, top+p.far)
	return &cellKeep{b: b, x1: x1, x2: x1 + c.length, y2: y2, at: p.at, most: none, behind: -1}
}

// below is the worth of the cell's wood up to y.
func (o *cellKeep) below(y layout.Length) Value { return o.b.w.measure.worth(o.x1, o.x2, 0, y) }

// reach moves on to the positions at which an offcut that ends at y may start.
func (o *cellKeep) reach(y layout.Length, n int) {
	w := o.b.w
	for o.behind < n && w.y.at(o.at+o.behind+1)+w.shop.MinOffcutWidth <= y {
		o.behind++
		if v := o.b.cell.v[o.behind] - o.below(w.y.at(o.at+o.behind)); v > o.most {
			o.most, o.mostAt = v, o.behind
		}
	}
}

func (o *cellKeep) extend(k int) {
	end := o.b.w.y.at(o.at+k) - o.b.w.shop.RipKerf
	if end > o.y2 {
		return
	}
	o.reach(end, k-1)
	if o.most == none {
		return
	}
	if v := o.most + o.below(end); v > o.b.cell.v[k] {
		o.b.cell.v[k] = v
		o.b.cell.from[k] = placed{int32(o.mostAt), offcut}
	}
}

// finish adds an offcut that ends at the top of the cell.
func (o *cellKeep) finish(n int) (Value, int) {
	o.reach(o.y2, n)
	if o.most != none {
		if v := o.most + o.below(o.y2); v > o.b.cell.v[n] {
			o.b.cell.from = append(o.b.cell.from, placed{int32(o.mostAt), offcut})
			return v, n + 1
		}
	}
	return o.b.cell.v[n], n
}
