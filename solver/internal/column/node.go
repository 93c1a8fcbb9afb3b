package column

import "sawbill/layout"

// nodeWork is the scratch of one trued node that may lie anywhere across a
// rough blank. v is as in ripWork, by layer: what is counted there is that the next
// strip may start at a position, if it leans as the layer says.
type nodeWork struct {
	layers layers
	v      [][]Value
	from   [][]nodeStep
	j0     int
	y1     layout.Length // of the node
	near   layout.Length // where it begins to be usable
	keep   []nodeKeep
	below  []Value     // what the wood between the reference edge and every position is worth
	long   layout.Span // where along that is
	of     *Board      // of which board
}

// nodeStep says how a state was reached: from prev in layer by a strip, or by a
// mark.
type nodeStep struct {
	prev, strip int32
	layer       int8
}

// nodeKeep is the best start of an offcut strip so far, for those that lead to one
// layer.
type nodeKeep struct {
	most      Value
	mostAt    int
	mostLayer int
	behind    int
}

// across is what the rips of a trued node are measured by.
type across struct {
	be     blankEnds
	k      int
	m      mode
	lie    *lie
	x1, x2 layout.Length // usable
	clip   layout.Length // where the far edge begins to cut in
	keeps  bool          // offcut strips are long enough
}

func (b *Bench) newAcross(be blankEnds, k int, m mode) across {
	w := b.w
	t := across{be: be, k: k, m: m, lie: &w.lies[w.lieIn(be.a, be.ends[k], m)], x1: w.x.at(be.a) + w.end, x2: w.x.at(be.ends[k]) - w.end}
	t.clip = w.wood.FarMin(layout.Span{Lo: t.x1, Hi: t.x2})
	t.keeps = w.measure.rate > 0 && t.x2-t.x1 >= w.shop.MinOffcutLength
	if t.keeps {
		b.setBelow(layout.Span{Lo: t.x1, Hi: t.x2})
	}
	return t
}

// setBelow works out what the wood below every position is worth, along a span.
func (b *Bench) setBelow(long layout.Span) {
	node, w := &b.rough.node, b.w
	if node.long == long && node.of == w {
		return
	}
	node.long, node.of = long, w
	node.below = room(node.below, w.y.n+1)
	for j := range node.below {
		node.below[j] = w.measure.worth(long.Lo, long.Hi, 0, w.y.at(j))
	}
}

// nodeRun fills the rips of a trued node that starts at y1 across.
func (b *Bench) nodeRun(t across, y1 layout.Length) {
	w, node := b.w, &b.rough.node
	node.y1, node.near = y1, w.nearOf(t.be.a, t.be.ends[t.k], y1)
	node.j0 = w.y.up(node.near)
	n := w.y.up(w.top+w.shop.RipKerf) + 1
	b.Steps += n * len(b.tried)
	b.Work += n
	b.nodeReset(n, t.m)
	b.markUseful(t.k, t.m)
	opened := node.near + w.y.unit // beyond that strips of every lean may be the first
	for _, l := range w.leans {
		opened = max(opened, node.near+l.inset()+w.y.unit)
	}
	for j := node.j0; j <= n; j++ {
		for layer := range node.v {
			v, from := node.v[layer], node.from[layer]
			if j > node.j0 && v[j-1] >= v[j] {
				v[j], from[j] = v[j-1], nodeStep{int32(j - 1), carriedStrip, int8(layer)}
			}
			if w.cfg.InnerOffcuts {
				b.nodeExtend(t, layer, j)
			}
			if v[j] <= none || j > w.y.n {
				continue
			}
			if j == node.j0 || v[j] > v[j-1] || layer == 0 && node.layers.leans > 1 && w.y.at(j) < opened {
				b.nodePush(t, layer, j, b.tried)
			} else { // starting later gains nothing where it meets the same
				b.nodePush(t, layer, j, t.lie.anew[j])
			}
		}
	}
	b.nodeKeeps()
}

// nodeKeeps forgets the starts of offcut strips; every run along the positions
// begins with none.
func (b *Bench) nodeKeeps() {
	node := &b.rough.node
	for layer := range node.keep {
		node.keep[layer] = nodeKeep{most: none, behind: node.j0 - 1}
	}
}

func (b *Bench) nodeReset(n int, m mode) {
	node := &b.rough.node
	node.layers = b.w.layersOf(m)
	count := node.layers.count()
	for len(node.v) < count {
		node.v, node.from, node.keep = append(node.v, nil), append(node.from, nil), append(node.keep, nodeKeep{})
	}
	node.v, node.from, node.keep = node.v[:count], node.from[:count], node.keep[:count]
	for layer := range node.v {
		node.v[layer] = size(node.v[layer], n+1, none)
		node.from[layer] = room(node.from[layer], n+2)
	}
	b.nodeKeeps()
	if node.j0 <= n {
		node.v[0][node.j0] = 0
	}
}

// nodePush adds those strips of a list that may start at position j and lean as the
// layer says. What follows may start at once, or where it leans otherwise, a little
// later.
func (b *Bench) nodePush(t across, layer, j int, list []int32) {
	w, node := b.w, &b.rough.node
	lean, held := node.layers.next(layer)
	b.Work += len(list)
	for _, s := range list {
		st := &w.strips[s]
		id := t.lie.profileAt[s][j]
		if id < 0 || !w.allows(t.m, int(s)) || id == w.clearOf[s] && !b.useful[s] {
			continue
		}
		if b.rows[id][t.k] <= 0 || !w.opens(lean, st.lean, j, node.near) {
			continue
		}
		sum := node.v[layer][j] + b.rows[id][t.k]
		holds := held || node.layers.must && w.thicks[st.thick].thickness == t.m.must && b.rows[id][t.k] > b.bare(t, int(id))
		for i, next := range w.next {
			to, at := node.layers.of(holds, next), j+st.advance+w.afters[st.lean][i]
			if at < len(node.v[to]) && sum > node.v[to][at] {
				node.v[to][at], node.from[to][at] = sum, nodeStep{int32(j), s, int8(layer)}
			}
		}
	}
}

// bare is what a strip is worth when it is one offcut and holds no part.
func (b *Bench) bare(t across, id int) Value {
	keep := b.newStripKeep(id, t.be.a)
	if keep == nil {
		return 0
	}
	x1, x2 := max(t.x1, keep.lo), min(t.x2, keep.hi)
	if x2-x1 < b.w.shop.MinOffcutLength {
		return 0
	}
	return keep.before(x2) - keep.before(x1)
}

// nodeReach moves on to the positions at which an offcut strip that ends at y and
// leads to a layer may start.
func (b *Bench) nodeReach(t across, layer int, y layout.Length, limit int) *nodeKeep {
	w, node := b.w, &b.rough.node
	k := &node.keep[layer]
	_, held := node.layers.next(layer)
	square := node.layers.of(held, 0)
	for k.behind < limit && w.y.at(k.behind+1)+w.shop.MinOffcutWidth <= y {
		k.behind++
		b.nodeOffer(k, square)
		if square > 0 && !held && node.layers.leans > 1 {
			b.nodeOffer(k, 0)
		}
	}
	return k
}

// nodeOffer lets an offcut strip start where k has come to, in a layer.
func (b *Bench) nodeOffer(k *nodeKeep, layer int) {
	v := b.rough.node.v[layer][k.behind]
	if v <= none {
		return
	}
	if v -= b.rough.node.below[k.behind]; v > k.most {
		k.most, k.mostAt, k.mostLayer = v, k.behind, layer
	}
}

// nodeKerf is what lies between the end of an offcut strip and the position of a
// layer at which the next strip may start.
func (b *Bench) nodeKerf(layer int) layout.Length {
	next, _ := b.rough.node.layers.next(layer)
	return b.w.leans[max(next, 0)].kerf
}

// nodeExtend lets an offcut strip end one kerf before position j.
func (b *Bench) nodeExtend(t across, layer, j int) {
	w, node := b.w, &b.rough.node
	end := w.y.at(j) - b.nodeKerf(layer)
	if next, _ := node.layers.next(layer); !t.keeps || next == anyLean || end > t.clip || end > w.top || j == node.j0 {
		return
	}
	k := b.nodeReach(t, layer, end, j-1)
	if k.most == none {
		return
	}
	if v := k.most + w.measure.worth(t.x1, t.x2, 0, end); v > node.v[layer][j] {
		node.v[layer][j] = v
		node.from[layer][j] = nodeStep{int32(k.mostAt), offcutStrip, int8(k.mostLayer)}
	}
}

// nodeEnd is the most that the node gives when it ends at y2 across, which is
// asked for in ascending order; an offcut strip at its far side may be the last
// of it, and then last is negative: -1 less the position where it starts, in the
// layer.
func (b *Bench) nodeEnd(t across, y2 layout.Length) (best Value, last, layer int) {
	w, node := b.w, &b.rough.node
	top := y2 - w.shop.EdgeJoint
	if y2 == w.wood.FullWidth() {
		top = w.top
	}
	j := w.y.down(top + w.shop.RipKerf)
	if j < node.j0 {
		return none, 0, 0
	}
	layer = len(node.v) - 1
	best, last = node.v[layer][j], j
	if end := min(top, t.clip); t.keeps {
		if k := b.nodeReach(t, layer, end, j); k.most > none {
			if v := k.most + w.measure.worth(t.x1, t.x2, 0, end); v > best {
				return v, -1 - k.mostAt, k.mostLayer
			}
		}
	}
	return best, last, layer
}
