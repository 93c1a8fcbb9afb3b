package ceiling

import (
	"slices"

	"sawbill/layout"
)

// Sketch is the cutting that the last bound was found with, as nearly as the relaxation
// knows it: blanks, their strips, the cells of these, and the parts in the cells, each
// with its size and the least place where it may lie. Offcuts are what lies between. It
// need not be a valid cutting, and is nil where there is none to tell. whole says that it
// tells all that the bound counts, if that is sharp.
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
// no parts.
func (b *Bench) sketchStrip(p *plain, j int, s blankSpan) *layout.Node {
	w, l := b.w, p.lane
	h := l.heights[p.height]
	if l.bare {
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
	strip := &layout.Node{Rect: layout.Rect{X1: s.a, X2: s.e, Y1: w.y.at(j), Y2: max(w.y.at(j), w.y.at(j+h.lo)-l.kerf)}, Cut: layout.Crosscut, Lean: w.leanOf(l)}
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

// leanOf is how far the strips of a lane lean, which the lane has rounded down.
func (w *Board) leanOf(l *lane) layout.Length {
	for i := range l.classes {
		for _, q := range l.classes[i].pieces {
			if q.native {
				return w.bill[q.row].Lean()
			}
		}
	}
	return 0
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
	first := w.x.from(s.a + w.end)
	t := trail{b: b, row: r, first: first, parts: w.x.from(s.a + w.inset)}
	if level, edge := b.newStripOffcuts(r, first); level != nil {
		t.offcut = level.worth
	} else if edge != nil {
		t.offcut = edge.worth
	}
	i := min(w.x.down(s.e-w.inset+w.shop.CrosscutKerf), len(b.v)-1)
	if i < first {
		return nil
	}
	if w.inset > w.end {
		best, last := b.v[i], i
		for n := i + 1; n <= min(w.x.down(s.e-w.end+w.shop.CrosscutKerf), len(b.v)-1); n++ {
			if b.kept[n] > best {
				best, last = b.kept[n], n
			}
		}
		if last > i {
			i = t.keptFrom(last, best)
		}
	}
	var list []cellAt
	for i > first && b.v[i] >= 0 {
		var c *class
		if i, c = t.stepBack(i); c != nil {
			list = append(list, cellAt{c, i})
			if b.v[i] < b.bare[i] {
				break // but one offcut before it
			}
		}
	}
	slices.Reverse(list)
	return list
}

// trail is the way back along a strip.
type trail struct {
	b            *Bench
	row          *row
	first, parts int
	offcut       func(v []Value, from, to int) Value // nil where none is kept
}

// stepBack tells from which position the one at hand was reached, and by a cell of which
// class, if by any.
func (t *trail) stepBack(i int) (from int, by *class) {
	v, bare := t.b.v, t.b.bare
	if v[i] == v[i-1] {
		return i - 1, nil
	}
	for k := range t.row.cells {
		c := &t.row.cells[k]
		if at := i - c.advance; at >= t.parts && at <= t.b.w.x.n && c.zoneAt[at] >= 0 && max(v[at], bare[at])+c.worth[c.zoneAt[at]] == v[i] {
			return at, c.class
		}
	}
	return t.keptFrom(i, v[i]), nil
}

// keptFrom is where the offcut starts that makes the strip worth so much up to a position.
func (t *trail) keptFrom(i int, worth Value) int {
	v := t.b.v
	if t.offcut != nil {
		for k := t.first; k <= i-t.b.w.offcutGap(); k++ {
			if v[k] >= 0 && v[k]+t.offcut(v, k, i) == worth {
				return k
			}
		}
	}
	t.b.whole = false
	return i - 1
}

// partsOf is what a cell holds that starts at position j across.
func (b *Bench) partsOf(l *lane, h height, j int, c *class, z *zone, cell layout.Rect) []*layout.Node {
	w := b.w
	top := min(j+h.hi+b.extra(l), w.y.down(w.wood.FullWidth()+w.shop.RipKerf)+1)
	o := &cellOffcuts{w: w, length: c.length, cover: c.cover[z.hit], from: j}
	var worth Value
	var s stack
	if c.again && top > j {
		s = b.stack(c, c.hits[z.hit], o.cover, j, top)
		worth = s.upTo(o, z, top)
	}
	best := worth
	var direct *piece
	for i := range c.pieces {
		q := &c.pieces[i]
		if b.gain(q) > best && q.standsIn(h) && j+q.advance <= z.top && !q.fails(c.hits[z.hit], q.across[j]) {
			direct, best = q, b.gain(q)
		}
	}
	if direct != nil {
		return []*layout.Node{b.leaf(direct, j, cell)}
	}
	var parts []*layout.Node
	leans := false
	for k := b.belowEdge(&s, o, z, top, worth); k > 0 && (leans || s.most[k] >= 0); {
		to, q := b.stepDown(c, z, s.most, j, k, &leans)
		if q != nil {
			parts = append(parts, b.leaf(q, j+k-q.advance, cell))
		}
		k = to
	}
	slices.Reverse(parts)
	return parts
}

// stepDown tells from which position the one at hand was reached across a cell, and by
// which piece, if by any. leans says whether the value at hand is U and not V, now and then.
func (b *Bench) stepDown(c *class, z *zone, v []Value, j, k int, leans *bool) (from int, by *piece) {
	u, exit := b.leaning, c.exit()
	own := v
	if *leans {
		own = u
	}
	if own[k] == own[k-1] {
		return k - 1, nil
	}
	o := b.newCellOffcuts(c, c.cover[z.hit], j)
	for i := range c.pieces {
		q := &c.pieces[i]
		at, gain := k-q.advance, b.gain(q)
		switch {
		case at < 0 || (q.entry > 0) != *leans || j+at > b.w.y.n || gain <= 0 || q.fails(c.hits[z.hit], q.across[j+at]):
		case *leans && u[at]+gain == u[k]:
			return at, q
		case !*leans && o.before(v, at)+gain == v[k]:
			return o.withParts(v, at), q
		case *leans && at >= q.entry && o.before(v, at)+gain == u[k]:
			*leans = false
			return o.withParts(v, at), q
		}
	}
	if *leans {
		b.whole = false
		return k - 1, nil
	}
	if k >= exit && u[k-exit] == v[k] {
		*leans = true
		return k - exit, nil
	}
	if o != nil {
		if at := o.start(v, k, o.end(k), v[k]); at >= 0 {
			return at, nil
		}
	}
	b.whole = false
	return k - 1, nil
}

// withParts is position k, or the start of the stack where an offcut alone is before it.
func (o *cellOffcuts) withParts(v []Value, k int) int {
	if o.alone(k) > v[k] {
		return 0
	}
	return k
}

// belowEdge is the position, of those of a stack that is worth so much in a zone, below the
// offcut along the far edge, or the last where there is no such offcut.
func (b *Bench) belowEdge(s *stack, o *cellOffcuts, z *zone, top int, worth Value) int {
	last := max(0, min(top, z.top)-o.from)
	if len(s.most) == 0 || s.most[last] == worth {
		return min(last, len(s.most)-1)
	}
	at := o.start(s.most, len(s.most), o.edge(z, top), worth)
	b.whole = b.whole && at >= 0
	return at
}

// start is before which position of a stack an offcut starts that ends at a place and makes
// it worth so much; -1 where none does.
func (o *cellOffcuts) start(v []Value, before int, end layout.Length, worth Value) int {
	for at := range before {
		low := o.w.y.at(o.from + at)
		if v[at] >= 0 && low+o.w.shop.MinOffcutWidth <= end && v[at]-o.below(low, 0)+o.below(end, 1)+1 == worth {
			return at
		}
	}
	return -1
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
