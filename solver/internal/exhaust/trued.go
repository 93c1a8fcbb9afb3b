package exhaust

import (
	"slices"

	"sawbill/layout"
)

// trued is the front of a piece that is trued, to every thickness.
func (b *board) trued(r layout.Rect) front {
	trim := b.shop.EndTrim
	if r.X1 < trim || r.X2 > b.wood.Length-trim || b.metalIn(r) {
		return nil
	}
	t := newTable(b.limits)
	for _, thick := range b.thicknesses() {
		if b.machinesTake(r, thick) {
			t.addAll(b.planedTo(r, thick))
		}
	}
	return t.take()
}

// thicknesses lists what a trued node can be planed to: what some part needs and
// the board has, and 0 for a node without parts.
func (b *board) thicknesses() []layout.Length {
	has := b.wood.Thickness
	if b.wood.Faces == layout.FacesRough {
		has -= 2 * b.shop.FaceSkim
	}
	list := []layout.Length{0}
	for _, i := range b.rows {
		need := b.p.Bill[i].CutThickness(b.shop)
		if need <= has && !slices.Contains(list, need) {
			list = append(list, need)
		}
	}
	return list
}

// jointed says which edges of a trued node are straightened: the board's rough
// ones and those that were ripped rough.
func (b *board) jointed(r layout.Rect) (near, far bool) {
	near = r.Y1 > 0 || b.wood.Edges == layout.EdgesRough
	far = r.Y2 < b.wood.FullWidth() || b.wood.Edges != layout.EdgesBoth
	return near, far
}

// machinesTake reports whether a node meets no machine, or is of a length that
// the machines take.
func (b *board) machinesTake(r layout.Rect, thick layout.Length) bool {
	near, far := b.jointed(r)
	planed := b.wood.Faces == layout.FacesRough || thick > 0 && thick < b.wood.Thickness
	if !near && !far && !planed {
		return true
	}
	return r.Length() >= b.shop.MinBlank && (b.shop.MaxBlank == 0 || r.Length() <= b.shop.MaxBlank)
}

// usable is what is left of a node when its edges are straight and its ends
// square.
func (b *board) usable(r layout.Rect) layout.Rect {
	near, far := b.jointed(r)
	if near {
		r.Y1 += b.shop.EdgeJoint
	}
	if far {
		r.Y2 -= b.shop.EdgeJoint
	}
	if b.wood.Edges == layout.EdgesRough {
		r.X1 += b.shop.EndSquare
		r.X2 -= b.shop.EndSquare
	}
	return r
}

// bedOf is what a node means for a strip of one thickness.
func (b *board) bedOf(r layout.Rect, thick layout.Length) bed {
	in := bed{thick: thick, parts: layout.Span{Hi: b.wood.Length}}
	if snipe := b.shop.Snipe; snipe > 0 {
		in.parts = layout.Span{Lo: r.X1 + snipe, Hi: r.X2 - snipe}
	}
	if _, far := b.jointed(r); far {
		in.jointed = b.shop.EdgeJoint
	}
	return in
}

// planedTo is the front of a node whose thickest part needs thick, or that has
// no parts when thick is 0. A node may be a part itself, and is not ripped then.
func (b *board) planedTo(r layout.Rect, thick layout.Length) front {
	u := b.usable(r)
	if u.Empty() {
		return nil
	}
	node := layout.Node{Rect: r, Cut: layout.Rip, Trued: true, Thickness: thick}
	t := newTable(b.limits)
	if u == r {
		t.addAll(b.truedPart(node, b.bedOf(r, thick)))
	}
	if r.Length() < b.shop.MinRipLength {
		return t.take()
	}
	for _, w := range within(node, b.rip(r, u, thick)) {
		if b.thickest(w.made) == thick {
			t.add(w)
		}
	}
	return t.take()
}

func (b *board) truedPart(node layout.Node, in bed) front {
	f := b.part(node.Rect, in)
	for i := range f {
		own := &f[i].first.node
		own.Trued, own.Thickness = true, node.Thickness
	}
	return f
}

// rip is the front of the usable wood u of a node r, ripped into strips. Strips
// may be planed thinner than the node where they are long enough for the planer.
func (b *board) rip(r, u layout.Rect, thick layout.Length) front {
	return b.sequence(u.Across(), b.shop.RipKerf, func(across layout.Span) front {
		strip := layout.Rect{X1: u.X1, X2: u.X2, Y1: across.Lo, Y2: across.Hi}
		t := newTable(b.limits)
		for _, own := range b.thicknesses() {
			if own == thick || own < thick && strip.Length() >= b.shop.MinBlank {
				t.addAll(b.strip(spot{strip, b.bedOf(r, own)}))
			}
		}
		return t.take()
	})
}

// thickest is what the thickest of some parts needs; 0 of none.
func (b *board) thickest(made counts) layout.Length {
	var most layout.Length
	for i, n := range made {
		if n > 0 {
			most = max(most, b.p.Bill[i].CutThickness(b.shop))
		}
	}
	return most
}
