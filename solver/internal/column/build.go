package column

import (
	"slices"

	"sawbill/layout"
)

// build makes the cut tree of the trace that ends in state n.
func (b *Bench) build(n int) *layout.Node {
	var children []child
	for n > 0 {
		b.setPieces(&b.from[n])
		f := b.from[n]
		if f.kind != childCarried {
			children = append(children, f)
		}
		n = f.prev
	}
	slices.Reverse(children)
	root := &layout.Node{Rect: b.w.wood.Frame(), Cut: layout.Crosscut}
	for _, c := range children {
		root.Children = append(root.Children, b.buildChild(c))
	}
	b.w.setShows(root)
	return root
}

// setPieces works out the pieces of a blank that is ripped rough.
func (b *Bench) setPieces(c *child) {
	if c.rough && c.pieces == nil {
		c.pieces = b.piecesOf(blankEnds{c.a, []int{c.e}})
	}
}

// piecesOf tells how a blank that nothing is known of is cut to give the most.
func (b *Bench) piecesOf(be blankEnds) []roughPiece {
	b.fillRows(be)
	_, how := b.blank(be, 0)
	return b.pieces(be, 0, how)
}

func (b *Bench) buildChild(c child) *layout.Node {
	w := b.w
	node := &layout.Node{Rect: layout.Rect{X1: w.x.at(c.a), X2: c.x2, Y1: 0, Y2: w.wood.FullWidth()}}
	if c.kind == childOffcut {
		node.Offcut = kept
		return node
	}
	if c.kind == childWhole {
		b.buildWhole(node, c.whole)
		return node
	}
	be := blankEnds{c.a, []int{c.e}}
	pieces := c.pieces
	if pieces == nil {
		pieces = b.piecesOf(be)
	}
	if len(pieces) == 1 && pieces[0].y1 == 0 && pieces[0].y2 == node.Y2 && !pieces[0].offcut {
		b.buildNode(node, be, pieces[0].lanes)
		return node
	}
	node.Cut = layout.Rip
	for _, p := range pieces {
		piece := &layout.Node{Rect: layout.Rect{X1: node.X1, X2: node.X2, Y1: p.y1, Y2: p.y2}}
		if p.offcut {
			piece.Offcut = kept
		} else {
			b.buildNode(piece, be, p.lanes)
		}
		node.Children = append(node.Children, piece)
	}
	return node
}

// kept marks an offcut until the plan gives it a name.
const kept = "keep"

// buildNode makes the trued node and its strips.
func (b *Bench) buildNode(node *layout.Node, be blankEnds, lanes []lane) {
	w := b.w
	node.Trued, node.Cut = true, layout.Rip
	for _, l := range lanes {
		strip := &layout.Node{Rect: layout.Rect{X1: node.X1 + w.end, X2: node.X2 - w.end, Y1: l.y1, Y2: l.y2}}
		if l.strip < 0 {
			strip.Offcut = kept
		} else {
			strip.Lean = w.leans[w.strips[l.strip].lean].by
			if b.fill != nil {
				b.fillStrip(strip, be, l)
			} else {
				b.layStrip(strip, be, l)
			}
		}
		node.Children = append(node.Children, strip)
	}
	w.setThickness(node)
}

func holdsPart(n *layout.Node) bool {
	return slices.ContainsFunc(n.Leaves(), func(l *layout.Node) bool { return l.Part != "" })
}

// layStrip fills a strip with its cells. A cell that is the whole strip needs
// no crosscut.
func (b *Bench) layStrip(strip *layout.Node, be blankEnds, l lane) {
	id := b.laid(l)
	cells := b.stripCells(be, id)
	if len(cells) == 1 && cells[0].x1 == strip.X1 && cells[0].x2 == strip.X2 {
		if b.buildCell(strip, id, l, cells[0]); len(strip.Children) == 0 {
			return
		}
		*strip = layout.Node{Rect: strip.Rect, Lean: strip.Lean}
	}
	strip.Cut = layout.Crosscut
	for _, c := range cells {
		cell := &layout.Node{Rect: layout.Rect{X1: c.x1, X2: c.x2, Y1: strip.Y1, Y2: strip.Y2}, Lean: strip.Lean}
		b.buildCell(cell, id, l, c)
		strip.Children = append(strip.Children, cell)
	}
}

// laid is the profile of a lane: that of the board where it is exact, otherwise
// one of its own.
func (b *Bench) laid(l lane) int {
	id := int(b.w.lies[l.lie].profileAt[l.strip][l.j])
	if b.w.profiles[id].coarse {
		b.own = b.w.newProfile(l.lie, l.strip, l.j)
		id = len(b.w.profiles)
	}
	b.setCells(id)
	return id
}

// buildCell makes an offcut, a part, or a cell that is ripped again.
func (b *Bench) buildCell(cell *layout.Node, id int, l lane, c celled) {
	w, p := b.w, b.profile(id)
	if c.class < 0 {
		cell.Offcut = kept
		return
	}
	cl := &w.classes[w.thicks[w.strips[p.strip].thick].classes[c.class]]
	z := &cl.zones[cl.zoneAt[c.i]]
	top := b.topAt(id, cl, c.i)
	direct, piece := b.cellDirect(p, cl, z, top)
	if !cl.again {
		w.setPart(cell, &cl.pieces[piece])
		return
	}
	v, last := b.cellStack(p, cl, z, top)
	if direct >= v {
		w.setPart(cell, &cl.pieces[piece])
		return
	}
	cell.Cut = layout.Rip
	cell.Children = b.stackNodes(cell.Rect, p, cl, l, last, top)
}

// topAt is the reach that the value of a cell was worked out with.
func (b *Bench) topAt(id int, c *class, x int) layout.Length {
	w, p := b.w, b.profile(id)
	if b.cells[id].span == 1 || c.reach[x]-p.far >= w.y.at(p.at)+w.strips[p.strip].height+p.lean {
		return w.top
	}
	return w.y.at(max(p.at, w.y.down(c.reach[x]-p.far)))
}

// stackNodes makes the parts and offcuts of a cell that is ripped again.
func (b *Bench) stackNodes(cell layout.Rect, p *profile, c *class, l lane, last int, top layout.Length) []*layout.Node {
	w := b.w
	lift := w.y.at(l.j) - w.y.at(p.at) // the profile stands for strips elsewhere
	var nodes []*layout.Node
	for last > 0 {
		f := b.cell.from[last]
		node := &layout.Node{Rect: cell}
		node.Y1 = w.y.at(p.at+int(f.prev)) + lift
		switch {
		case f.piece == offcut:
			node.Offcut = kept
			node.Y2 = w.y.at(p.at+last) - w.shop.RipKerf + lift
			if last == len(b.cell.from)-1 {
				node.Y2 = min(w.y.at(p.at)+w.strips[p.strip].height, top+p.far) + lift
			}
			nodes = append(nodes, node)
		case f.piece >= 0:
			q := &c.pieces[f.piece]
			node.Y2 = node.Y1 + q.width
			w.setPart(node, q)
			nodes = append(nodes, node)
		}
		last = int(f.prev)
	}
	slices.Reverse(nodes)
	return nodes
}
