package ceiling

import (
	"slices"

	"sawbill/layout"
)

// Cutting is a cutting of the board that holds what a way does, offcuts and all, as the
// relaxation knows it. It need not be a valid one.
func (c *Counted) Cutting(v Way) *layout.Node {
	root := &layout.Node{Rect: c.w.wood.Frame(), Cut: layout.Crosscut}
	m, n := len(c.cuts.at), c.w.wood.FullWidth()
	for i := v.state; m > 0; {
		s := c.states[m][i]
		if s.cell < 0 {
			break
		}
		switch {
		case s.kind == trued:
			was := c.states[s.cell][s.state]
			t, _ := c.n.less(s.tally, was.tally)
			root.Children = append(root.Children, c.cutBlank(c.cuts.spanOf(s.cell, m), t)...)
		case s.kind == kept:
			root.Children = append(root.Children, offcutLeaf(c.cuts.at[s.cell], c.cuts.end(m), 0, n))
		}
		m, i = s.cell, s.state
	}
	slices.Reverse(root.Children)
	return root
}

// offcutLeaf is an offcut.
func offcutLeaf(x1, x2, y1, y2 layout.Length) *layout.Node {
	return &layout.Node{Rect: layout.Rect{X1: x1, X2: x2, Y1: y1, Y2: y2}, Offcut: "keep"}
}

// cutBlank is a blank that holds a tally; none where it holds nothing.
func (c *Counted) cutBlank(s blankSpan, t tally) []*layout.Node {
	whole := layout.Rect{X1: s.a, X2: s.e, Y2: c.w.wood.FullWidth()}
	l := c.laying(s, s.e, c.n.worth(t, c.price))
	if l == nil {
		return nil
	}
	i := slices.Index(l.tallies, t)
	if i < 0 {
		return nil
	}
	var strips, rough []*layout.Node // from the far edge on
	_, j := l.whole(i)
	if o := l.lastOffcut(i); o != nil {
		strips, rough = sortOffcut(o, s, strips, rough)
	}
	for j > 0 && (l.tallies[i] != 0 || l.worth[i][j] > 0) {
		from, a, own, o := l.stepBack(i, j)
		switch {
		case a != nil:
			if strip := c.cutStrip(c.strips[a.strip], own, s); strip != nil {
				strips = append(strips, strip)
			}
			rest, _ := c.n.less(l.tallies[i], own)
			i = slices.Index(l.tallies, rest)
		case o != nil:
			strips, rough = sortOffcut(o, s, strips, rough)
		}
		j = from
	}
	slices.Reverse(strips)
	slices.Reverse(rough)
	return []*layout.Node{c.ripRough(whole, strips, rough)}
}

// sortOffcut adds an offcut to those that are ripped off rough, or to the strips.
func sortOffcut(o *foundOffcut, s blankSpan, strips, rough []*layout.Node) (_, _ []*layout.Node) {
	if o.rough {
		o.leaf.X1, o.leaf.X2 = s.a, s.e
		return strips, append(rough, o.leaf)
	}
	return append(strips, o.leaf), rough
}

// ripRough is a blank with its strips, from which some offcuts are ripped before it is trued.
func (c *Counted) ripRough(blank layout.Rect, strips, rough []*layout.Node) *layout.Node {
	if len(rough) == 0 {
		return &layout.Node{Rect: blank, Cut: layout.Rip, Trued: true, Children: strips}
	}
	n := &layout.Node{Rect: blank, Cut: layout.Rip}
	from := layout.Length(0)
	add := func(to layout.Length) {
		part := &layout.Node{Rect: blank, Cut: layout.Rip, Trued: true}
		part.Y1, part.Y2 = from, to
		for _, s := range strips {
			if s.Y1 >= from && s.Y1 < to {
				part.Children = append(part.Children, s)
			}
		}
		if len(part.Children) > 0 {
			n.Children = append(n.Children, part)
		}
	}
	for _, o := range rough {
		add(o.Y1 - c.w.shop.RoughRipKerf)
		n.Children = append(n.Children, o)
		from = o.Y2 + c.w.shop.RoughRipKerf
	}
	add(blank.Y2)
	return n
}

// foundOffcut is an offcut along a blank.
type foundOffcut struct {
	leaf  *layout.Node
	rough bool
}

// at is an offcut of a kind that starts at a position and ends at a place.
func (o *blankOffcuts) at(from int, end layout.Length) *foundOffcut {
	return &foundOffcut{offcutLeaf(o.span.Lo, o.span.Hi, o.start(from), min(end, o.top)), o.rough}
}

// lastOffcut is the offcut along the far edge with which the i-th tally is worth the most, if
// there is one.
func (l *laying) lastOffcut(i int) *foundOffcut {
	v := l.worth[i]
	most, _ := l.whole(i)
	if v[len(v)-1] == most {
		return nil
	}
	for k := range l.kinds {
		if s, at := l.kinds[k].last(v); whole(s-1) == most {
			return l.kinds[k].at(at, l.kinds[k].top)
		}
	}
	return nil
}

// stepBack tells from where across a state was reached, and by which strip with what, or by
// which offcut, if by any.
func (l *laying) stepBack(i, j int) (from int, by *arc, own tally, offcut *foundOffcut) {
	c, v := l.c, l.worth[i]
	if v[j] == v[j-1] {
		return j - 1, nil, 0, nil
	}
	for _, o := range l.order {
		rest, ok := c.n.less(l.tallies[i], o)
		k := slices.Index(l.tallies, rest)
		if !ok || k < 0 {
			continue
		}
		for n := range l.arcs[o] {
			a := &l.arcs[o][n]
			if s := c.strips[a.strip]; s.to == j && l.worth[k][s.from] >= 0 && l.worth[k][s.from]+a.worth == v[j] {
				return s.from, a, o, nil
			}
		}
	}
	for m := range l.kinds {
		o := &l.kinds[m]
		o.reset()
		var s Value
		at := 0
		for k := range j + 1 {
			s, at = o.endingAt(v, k)
		}
		if whole(s-1) == v[j] {
			return at, nil, 0, o.at(at, c.w.y.at(j)-o.behind)
		}
	}
	return j - 1, nil, 0, nil
}

// cutStrip is a strip of a blank that holds a tally.
func (c *Counted) cutStrip(st strip, t tally, s blankSpan) *layout.Node {
	w, r := c.w, c.rows[st.row]
	ch := c.chain(st.row, s.a, s.e)
	strip := &layout.Node{Rect: layout.Rect{X1: s.a + w.end, X2: s.e - w.end, Y1: w.y.at(st.from), Y2: w.y.at(st.to) - r.lane.kerf}, Cut: layout.Crosscut, Lean: w.leanOf(r.lane)}
	if r.lane.bare {
		strip.Lean = 0
	}
	k := slices.IndexFunc(ch.list, func(l laid) bool { return l.tally == t })
	if k < 0 {
		return nil
	}
	offcut := func(from, to int) {
		strip.Children = append(strip.Children, offcutLeaf(max(strip.X1, w.x.at(from)), min(strip.X2, w.x.at(to)-w.shop.CrosscutKerf), strip.Y1, strip.Y2))
	}
	v := &ch.list[k].worth
	i := min(w.x.down(s.e-w.inset+w.shop.CrosscutKerf), v.first+len(v.v)-1)
	for i > v.first && (t != 0 || ch.upTo(t, i) > 0) {
		from, class, o, kept := c.cellBack(r, ch, t, i)
		switch {
		case class != nil:
			strip.Children = append(strip.Children, c.cutCell(st, class, from, o, strip))
			t, _ = c.n.less(t, o.tally)
		case kept:
			offcut(from, i)
		}
		i = from
	}
	slices.Reverse(strip.Children)
	return strip
}

// cellBack tells from which position along a state was reached, and by which cell or whether by
// an offcut, if by any.
func (c *Counted) cellBack(r *countedRow, ch *countedChain, t tally, i int) (from int, by *class, holds option, kept bool) {
	v := ch.upTo(t, i)
	if v == ch.upTo(t, i-1) {
		return i - 1, nil, option{}, false
	}
	for k := range r.cells {
		cell := &r.cells[k]
		at := i - cell.advance
		if at < 0 || at >= len(cell.zoneAt) || cell.zoneAt[at] < 0 {
			continue
		}
		for _, o := range r.options[k][cell.zoneAt[at]] {
			own := option{tally: r.tallies[o.tally], worth: o.worth}
			if rest, ok := c.n.less(t, own.tally); ok {
				if before := ch.upTo(rest, at); before >= 0 && before+o.worth == v {
					return at, cell.class, own, false
				}
			}
		}
	}
	level, edge := c.b.newStripOffcuts(&r.row, ch.bare.first)
	all := make([]Value, i+1)
	for k := range all {
		all[k] = ch.upTo(t, k)
	}
	for k := ch.bare.first; k <= i-c.w.offcutGap(); k++ {
		if all[k] < 0 {
			continue
		}
		if level != nil && whole(all[k]+level.worth(all, k, i)) == v || edge != nil && whole(all[k]+edge.worth(all, k, i)) == v {
			return k, nil, option{}, true
		}
	}
	return i - 1, nil, option{}, false
}

// upTo is what the row is worth with a tally up to a position.
func (ch *countedChain) upTo(t tally, i int) Value {
	if t == 0 {
		return ch.bare.upTo(i)
	}
	k := slices.IndexFunc(ch.list, func(l laid) bool { return l.tally == t })
	if k < 0 {
		return none
	}
	return ch.list[k].worth.upTo(i)
}

// cutCell is a cell of a strip, or the part itself where that is as wide as the strip.
func (c *Counted) cutCell(st strip, k *class, at int, o option, strip *layout.Node) *layout.Node {
	w, j, h := c.w, st.from, height{st.to - st.from, st.to - st.from}
	l, z := c.rows[st.row].lane, &k.zones[k.zoneAt[at]]
	cell := &layout.Node{Rect: strip.Rect, Cut: layout.Rip}
	cell.X1 = w.x.at(at)
	cell.X2 = cell.X1 + k.length
	for i := range k.pieces {
		q := &k.pieces[i]
		if t, ok := c.n.leaf(q.row, q.layers); ok && t == o.tally && o.worth == 0 && q.standsIn(h) && j+q.advance <= z.top && !q.fails(k.hits[z.hit], q.across[j]) {
			leaf := c.b.leaf(q, j, cell.Rect)
			leaf.Lean = strip.Lean
			strip.Y2 = leaf.Y2
			return leaf
		}
	}
	key, to := cellKey{k, -1, 0}, min(j+h.hi+c.b.extra(l), w.stackEnd())
	if c.hinders(k, z.hit) {
		key = cellKey{k, z.hit, j}
	}
	list := c.stacks(key)
	n := slices.IndexFunc(list, func(s cellStack) bool { return s.tally == o.tally })
	if n < 0 {
		return cell
	}
	work := &cellOffcuts{w: w, length: k.length, from: key.from}
	if key.hit >= 0 {
		work.cover = k.cover[z.hit]
	}
	base := j - key.from // positions of the board beyond those of the stack
	offcut := func(y1, y2 layout.Length) {
		shift := w.y.at(base)
		cell.Children = append(cell.Children, offcutLeaf(cell.X1, cell.X2, y1+shift, min(y2+shift, cell.Y2)))
	}
	last := list[n].topOf(work, z, j, to, o.worth)
	if list[n].most[last] != o.worth {
		offcut(w.y.at(key.from+last), cell.Y2)
	}
	for t := o.tally; last > 0 && (t != 0 || work.alone(last) > 0); {
		if t == 0 { // one offcut below all parts
			offcut(w.y.at(key.from), work.end(last))
			break
		}
		from, q, kept := c.stackBack(list, key, work, t, last)
		switch {
		case q != nil:
			leaf, _ := c.n.leaf(q.row, q.layers)
			cell.Children = append(cell.Children, c.b.leaf(q, key.from+base+from, cell.Rect))
			t, _ = c.n.less(t, leaf)
		case kept:
			offcut(w.y.at(key.from+from), work.end(last))
		}
		last = from
	}
	slices.Reverse(cell.Children)
	return cell
}

// topOf is the position up to which a stack has parts that is worth so much from position j of
// the board on: below the offcut along the far edge if there is one.
func (s *cellStack) topOf(o *cellOffcuts, z *zone, j, to int, worth Value) int {
	top := max(0, min(to, z.top)-j)
	if s.most[top] == worth || s.keep == nil {
		return top
	}
	low := j - o.from
	end := min(z.reach, o.w.y.upTo(to)-o.w.shop.RipKerf) - o.w.y.at(low)
	for k := range s.most {
		if y := o.w.y.at(o.from + k); s.most[k] >= 0 && y+o.w.shop.MinOffcutWidth <= end && whole(s.most[k]-o.below(y, 0)+o.below(end, 1)) == worth {
			return k
		}
	}
	return top
}

// stackBack tells from which position of a stack that holds a tally a position was reached, and
// by which piece or whether by an offcut, if by any.
func (c *Counted) stackBack(list []cellStack, key cellKey, o *cellOffcuts, t tally, at int) (from int, by *piece, kept bool) {
	worth := func(t tally, at int) Value {
		if t == 0 {
			return aloneIn(o, at)
		}
		n := slices.IndexFunc(list, func(s cellStack) bool { return s.tally == t })
		if n < 0 {
			return none
		}
		return list[n].most[at]
	}
	v := worth(t, at)
	if v == worth(t, at-1) {
		return at - 1, nil, false
	}
	k := key.class
	var hit set
	if key.hit >= 0 {
		hit = k.hits[key.hit]
	}
	for i := range k.pieces {
		q := &k.pieces[i]
		leaf, ok := c.n.leaf(q.row, q.layers)
		if before := at - q.advance; ok && before >= 0 && key.from+before <= c.w.y.n && !q.fails(hit, q.across[key.from+before]) {
			if rest, ok := c.n.less(t, leaf); ok && worth(rest, before) == v {
				return before, q, false
			}
		}
	}
	for k := range at {
		low, end := o.w.y.at(o.from+k), o.end(at)
		if before := worth(t, k); before >= 0 && low+o.w.shop.MinOffcutWidth <= end && whole(before-o.below(low, 0)+o.below(end, 1)) == v {
			return k, nil, true
		}
	}
	return at - 1, nil, false
}
