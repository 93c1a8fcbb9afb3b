package column

import "sawbill/layout"

// whole is a part that a trued node is by itself: it has the full width of the
// board and truing takes nothing off it, so it needs no rip and may be shorter
// than what can be ripped.
type whole struct {
	class *class
	piece *piece
}

// setWholes lists the parts that may be a whole blank. Longer ones than these are
// found among the blanks that are ripped.
func (w *Board) setWholes() {
	if w.near > 0 || w.far > 0 || w.end > 0 || w.shop.Snipe > 0 || w.slants() || w.wood.Crook > 0 || w.tooWide(w.wood.Frame()) {
		return
	}
	for i := range w.classes {
		c := &w.classes[i]
		if c.lean > 0 || c.length >= w.shop.MinRipLength || !w.maybeTrued(c.length, w.jointed(), c.thick) {
			continue
		}
		for k := range c.pieces {
			if p := &c.pieces[k]; p.width == w.wood.FullWidth() {
				w.wholes = append(w.wholes, whole{c, p})
			}
		}
	}
}

// maybeTrued reports whether a trued node of a length, planed to a thickness, is
// of a length that the machines take or meets none of them.
func (w *Board) maybeTrued(l layout.Length, jointed bool, thickness layout.Length) bool {
	blank := layout.Rect{X2: l, Y2: w.wood.FullWidth()}
	if w.availableIn(blank) < thickness {
		return false
	}
	if w.machinesTake(l) {
		return true
	}
	return !jointed && w.wood.Faces == layout.FacesPlaned && thickness == w.wood.Thickness
}

// machinesTake reports whether a blank of a length may go over the machines.
func (w *Board) machinesTake(l layout.Length) bool {
	return l >= w.shop.MinBlank && (w.shop.MaxBlank == 0 || l <= w.shop.MaxBlank)
}

// wholesFrom calls offer with every part that may be a whole blank from position
// i on.
func (w *Board) wholesFrom(i int, offer func(c child, p *piece)) {
	if i < w.first() {
		return
	}
	for _, h := range w.wholes {
		x2 := w.x.at(i) + h.class.length
		r := layout.Rect{X1: w.x.at(i), X2: x2, Y1: 0, Y2: w.wood.FullWidth()}
		if x2 > w.wood.Length-w.shop.EndTrim || w.hasMetal(r) || w.metalAfter(x2) || h.piece.blockedBy(w.under(&layout.Node{Rect: r}, h.class.length)) {
			continue
		}
		offer(child{prev: i, a: i, x2: x2, kind: childWhole, whole: h.piece}, h.piece)
	}
}

// blockedBy reports whether a piece that meets some defects fails its grade with
// either face showing.
func (p *piece) blockedBy(hit set) bool { return p.blockA.meets(hit) && p.blockB.meets(hit) }

// boardWholes offers the whole blanks that start at position i.
func (b *Bench) boardWholes(i int) {
	b.w.wholesFrom(i, func(c child, p *piece) {
		b.push(c, b.w.x.up(c.x2+b.w.shop.CrosscutKerf), b.worth[p.id])
	})
}

// boardWholes offers the whole blanks that start at position i.
func (s *limited) boardWholes(c *chain, i int) {
	s.w.wholesFrom(i, func(h child, p *piece) {
		if s.wanted(p) {
			a := s.partArc(p, s.w.x.at(i), h.x2)
			a.anew = false
			c.step(a, i, s.w.x.up(h.x2+s.w.shop.CrosscutKerf))
		}
	})
}

// buildWhole makes a node a part, if it is still wanted.
func (b *Bench) buildWhole(node *layout.Node, p *piece) {
	if b.fill != nil {
		if b.fill.left[p.row] < p.layers {
			return
		}
		b.fill.left[p.row] -= p.layers
	}
	b.w.setWhole(node, p)
}

// setWhole makes a trued node a part.
func (w *Board) setWhole(node *layout.Node, p *piece) {
	w.setPart(node, p)
	node.Trued = true
	w.setThickness(node)
}
