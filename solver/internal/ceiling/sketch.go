package ceiling

import (
	"slices"

	"sawbill/layout"
)

// Sketch is the cutting that the last bound was found with, as nearly as the relaxation
// knows it: blanks, their strips, the cells of these, and the parts in the cells, each
// with its size and the least place where it may lie. Offcuts are what lies between. It
// need not be a valid cutting, and is nil where there is none to tell. whole says that it
// tells all that the bound counts, if that is sharp; strips that lean are left out.
func (b *Bench) Sketch() (root *layout.Node, whole bool) {
	c := b.cuts
	if c == nil {
		return nil, false
	}
	b.whole = true
	root = &layout.Node{Rect: b.w.wood.Frame(), Cut: layout.Crosscut}
	c.steps(func(k, m int, kind stepKind) {
		if kind == trued {
			if blank := c.sketch(k, m); blank != nil {
				root.Children = append(root.Children, blank)
			}
		}
	})
	slices.Reverse(root.Children)
	return root, b.whole
}

// sketch is the blank that starts in cell k when the next piece starts in cell m.
func (c *cuts) sketch(k, m int) *layout.Node {
	b, w := c.b, c.b.w
	s := c.spanOf(k, m)
	b.blank(s.a, s.e, s.short, none)
	blank := &layout.Node{Rect: layout.Rect{X1: s.a, X2: s.e, Y2: w.wood.FullWidth()}, Cut: layout.Rip, Trued: true}
	for j := b.last; j > 0; {
		f := b.from[j]
		if f.prev < 0 {
			break
		}
		if f.offer >= 0 {
			o := &b.offers[j][f.offer]
			if strip := b.sketchStrip(&b.plain[o.plain], int(o.from), s); strip != nil {
				blank.Children = append(blank.Children, strip)
			}
		}
		j = int(f.prev)
	}
	slices.Reverse(blank.Children)
	if len(blank.Children) == 0 {
		return nil
	}
	return blank
}

// sketchStrip is a strip of a blank that starts at position j across; nil where it holds
// no parts, or parts that lean.
func (b *Bench) sketchStrip(p *plain, j int, s blankSpan) *layout.Node {
	w, l := b.w, p.lane
	h := l.heights[p.height]
	if l.bare || l.lean.by > 0 {
		b.whole = b.whole && l.bare
		return nil
	}
	b.worth = b.worth[:0]
	for i := range l.classes {
		c := &l.classes[i]
		for z := range c.zones {
			b.worth = append(b.worth, b.cell(l, h, j, c, &p.stacks[i], &c.zones[z]))
		}
	}
	r := newRow(l, w.offcutsOf(l, h, []int{j}), slices.Clone(b.worth))
	strip := &layout.Node{Rect: layout.Rect{X1: s.a, X2: s.e, Y1: w.y.at(j), Y2: max(w.y.at(j), w.y.at(j+h.lo)-l.kerf)}, Cut: layout.Crosscut}
	for _, at := range b.cellsOf(&r, s) {
		c := at.class
		cell := &layout.Node{Rect: strip.Rect, Cut: layout.Rip}
		cell.X1 = w.x.at(at.i)
		cell.X2 = cell.X1 + c.length
		if cell.Children = b.partsOf(l, h, j, c, &c.zones[c.zoneAt[at.i]], cell.Rect); len(cell.Children) > 0 {
			strip.Children = append(strip.Children, cell)
		}
	}
	if len(strip.Children) == 0 {
		return nil
	}
	return strip
}

// cellAt is a cell of a class that starts at a position along.
type cellAt struct {
	class *class
	i     int
}

// cellsOf lays a row anew in a blank and tells its cells.
func (b *Bench) cellsOf(r *row, s blankSpan) []cellAt {
	w := b.w
	b.chain(r, s.a)
	first, parts := w.x.from(s.a+w.end), w.x.from(s.a+w.inset)
	i := min(w.x.down(s.e-w.inset+w.shop.CrosscutKerf), len(b.v)-1)
	if i < first {
		return nil
	}
	best := b.v[i]
	for k := range r.offcuts {
		o, end := &b.kinds[k], min(s.e-w.end+w.late, r.offcuts[k].along.Hi)
		for n := o.first; n < len(b.v) && w.x.at(n)+w.shop.MinOffcutLength <= end; n++ {
			if v := b.v[n] - o.before[n] + r.offcuts[k].after(end); v > best {
				best, i = v, n
			}
		}
	}
	var list []cellAt
	for i > first {
		to, c := b.stepBack(r, i, parts)
		if c != nil {
			list = append(list, cellAt{c, to})
		}
		i = to
	}
	slices.Reverse(list)
	return list
}

// stepBack tells from which position the one at hand was reached along a strip, and by a
// cell of which class, if by any.
func (b *Bench) stepBack(r *row, i, parts int) (from int, by *class) {
	v := b.v
	if v[i] == v[i-1] {
		return i - 1, nil
	}
	for k := range r.cells {
		c := &r.cells[k]
		if at := i - c.advance; at >= parts && at <= b.w.x.n && c.zoneAt[at] >= 0 && v[at]+c.worth[c.zoneAt[at]] == v[i] {
			return at, c.class
		}
	}
	for k := range r.offcuts {
		o := &b.kinds[k]
		for at := o.first; i <= o.end && at <= i-o.gap; at++ {
			if v[at]-o.before[at]+o.after[i] == v[i] {
				return at, nil
			}
		}
	}
	b.whole = false
	return i - 1, nil
}

// partsOf is what a cell holds that starts at position j across.
func (b *Bench) partsOf(l *lane, h height, j int, c *class, z *zone, cell layout.Rect) []*layout.Node {
	w := b.w
	top := min(j+h.hi+b.extra(l), z.top)
	n := w.y.down(w.wood.FullWidth()+w.shop.RipKerf) + 1
	var stacked Value
	var v []Value
	if c.again && min(top, n) > j {
		v = b.stack(c, c.hits[z.hit], c.cover[z.hit], j, min(top, n))
		stacked = v[len(v)-1]
	}
	var direct *piece
	for i := range c.pieces {
		q := &c.pieces[i]
		if b.gain(q) > stacked && q.standsIn(h) && j+q.advance <= z.top && !q.fails(c.hits[z.hit], q.across[j]) {
			direct, stacked = q, b.gain(q)
		}
	}
	if direct != nil {
		return []*layout.Node{b.leaf(direct, j, cell)}
	}
	var parts []*layout.Node
	for k := len(v) - 1; k > 0; {
		to, q := b.stepDown(c, z, v, j, k)
		if q != nil {
			parts = append(parts, b.leaf(q, j+to, cell))
		}
		k = to
	}
	slices.Reverse(parts)
	return parts
}

// stepDown tells from which position the one at hand was reached across a cell, and by
// which piece, if by any.
func (b *Bench) stepDown(c *class, z *zone, v []Value, j, k int) (from int, by *piece) {
	if v[k] == v[k-1] {
		return k - 1, nil
	}
	for i := range c.pieces {
		q := &c.pieces[i]
		if at := k - q.advance; at >= 0 && q.entry == 0 && j+at <= b.w.y.n && b.gain(q) > 0 && v[at]+b.gain(q) == v[k] && !q.fails(c.hits[z.hit], q.across[j+at]) {
			return at, q
		}
	}
	if o := b.newCellOffcuts(c, c.cover[z.hit], j); o != nil {
		for at := range k {
			if b.w.y.at(j+at)+b.w.shop.MinOffcutWidth <= o.end(k) && v[at]-o.below(b.w.y.at(j+at), 0)+o.below(o.end(k), 1)+1 == v[k] {
				return at, nil
			}
		}
	}
	b.whole = false
	return k - 1, nil
}

func (b *Bench) leaf(q *piece, j int, cell layout.Rect) *layout.Node {
	leaf := &layout.Node{Rect: cell, Part: b.w.bill[q.row].Name, OnEdge: q.onEdge}
	leaf.Y1 = b.w.y.at(j)
	leaf.Y2 = leaf.Y1 + q.width
	if q.layers > 1 {
		leaf.Layers = q.layers
	}
	return leaf
}
