package layout

import "slices"

// use says what one patch of a board's wood becomes, in the order in which the
// account counts it: wood that is two of these is the first of them.
type use uint8

const (
	usePart use = iota
	useOffcut
	useKerf
	useEdge
	useDefect
	useScrap
)

// patch is a rectangle put to one use.
type patch struct {
	rect Rect
	use  use
}

// NewAccount splits the rough volume of a board that is cut by root. Figures
// are cubic millimetres; they are sums of exact patches in floating point, good
// to about twelve digits.
func NewAccount(s *Shop, b *Board, bill []Part, root *Node) Account {
	var acc Account
	area := patchAreas(b, patches(s, b, root))
	thick := mm(b.Thickness)
	for _, leaf := range root.Leaves() {
		if leaf.Part != "" {
			acc.Parts += finishedVolume(bill, leaf)
		}
	}
	acc.Planing = area[usePart]*thick - acc.Parts
	acc.Offcuts = area[useOffcut] * thick
	acc.Kerf = area[useKerf] * thick
	acc.Edges = area[useEdge] * thick
	acc.Defects = area[useDefect] * thick
	acc.Scrap = area[useScrap] * thick
	return acc
}

func mm(l Length) float64 { return float64(l) / float64(Millimetre) }

// finishedVolume is the finished volume of the pieces of one part leaf.
func finishedVolume(bill []Part, leaf *Node) float64 {
	for i := range bill {
		if bill[i].Name == leaf.Part {
			return bill[i].Volume().MM3() * float64(leaf.Pieces())
		}
	}
	return 0
}

// patches lists what becomes of the board's wood, except scrap.
func patches(s *Shop, b *Board, root *Node) []patch {
	list := []patch{
		{Rect{0, s.EndTrim, 0, b.FullWidth()}, useEdge},
		{Rect{b.Length - s.EndTrim, b.Length, 0, b.FullWidth()}, useEdge},
	}
	for _, d := range b.Defects {
		list = append(list, patch{d.Rect, useDefect})
	}
	var visit func(n *Node, trued bool)
	visit = func(n *Node, trued bool) {
		inner := n.Rect
		switch {
		case n.Part != "":
			list = append(list, patch{n.Rect, usePart})
		case n.Offcut != "":
			list = append(list, patch{b.CleanOffcut(n.Rect), useOffcut})
		case n.Trued:
			inner = s.Usable(b, n.Rect)
			for _, r := range frameOf(n.Rect, inner) {
				list = append(list, patch{r, useEdge})
			}
		}
		trued = trued || n.Trued
		for _, c := range n.Children {
			for _, r := range kerfsBeside(c.Rect, inner, n.Cut, s.Kerf(n.Cut, trued)) {
				list = append(list, patch{r, useKerf})
			}
			visit(c, trued)
		}
	}
	visit(root, false)
	return list
}

// Kerf is the width of a cut, rough before truing.
func (s *Shop) Kerf(c Cut, trued bool) Length {
	switch {
	case c == Crosscut:
		return s.CrosscutKerf
	case trued:
		return s.RipKerf
	}
	return s.RoughRipKerf
}

// Usable is the rectangle of a trued node, on a board without warp, from which
// its children can be cut: its own less the edge and end losses.
func (s *Shop) Usable(b *Board, r Rect) Rect {
	near := b.Edges == EdgesRough || r.Y1 > 0
	far := b.Edges != EdgesBoth || r.Y2 < b.FullWidth()
	if near {
		r.Y1 += s.EdgeJoint
	}
	if far {
		r.Y2 -= s.EdgeJoint
	}
	if b.Edges == EdgesRough {
		r.X1 += s.EndSquare
		r.X2 -= s.EndSquare
	}
	return r
}

// frameOf is what surrounds inner in outer.
func frameOf(outer, inner Rect) []Rect {
	return []Rect{
		{outer.X1, inner.X1, outer.Y1, outer.Y2},
		{inner.X2, outer.X2, outer.Y1, outer.Y2},
		{inner.X1, inner.X2, outer.Y1, inner.Y1},
		{inner.X1, inner.X2, inner.Y2, outer.Y2},
	}
}

// kerfsBeside are the kerfs on both sides of a child, as far as they lie inside
// its parent's usable rectangle.
func kerfsBeside(child, parent Rect, c Cut, kerf Length) []Rect {
	before, after := child, child
	if c == Crosscut {
		before.X1, before.X2 = child.X1-kerf, child.X1
		after.X1, after.X2 = child.X2, child.X2+kerf
	} else {
		before.Y1, before.Y2 = child.Y1-kerf, child.Y1
		after.Y1, after.Y2 = child.Y2, child.Y2+kerf
	}
	return []Rect{before.Intersect(parent), after.Intersect(parent)}
}

// patchAreas measures, in square millimetres, the wood that goes to each use.
// The board is cut into slabs at every patch's ends, each slab into cells at
// every patch's edges; a cell goes to the first use that covers it.
func patchAreas(b *Board, list []patch) [useScrap + 1]float64 {
	xs := []Length{0, b.Length}
	ys := []Length{0, b.FullWidth()}
	for _, p := range list {
		r := p.rect.Intersect(b.Frame())
		if !r.Empty() {
			xs = append(xs, r.X1, r.X2)
			ys = append(ys, r.Y1, r.Y2)
		}
	}
	slices.Sort(xs)
	slices.Sort(ys)
	xs, ys = slices.Compact(xs), slices.Compact(ys)
	var area [useScrap + 1]float64
	for i := range xs[1:] {
		slab := patchesIn(list, Span{xs[i], xs[i+1]})
		for j := range ys[1:] {
			cell := Rect{xs[i], xs[i+1], ys[j], ys[j+1]}
			if wood := woodArea(b, cell); wood > 0 {
				area[firstUse(slab, cell)] += wood
			}
		}
	}
	return area
}

func patchesIn(list []patch, slab Span) []patch {
	var in []patch
	for _, p := range list {
		if p.rect.Along().Overlaps(slab) {
			in = append(in, p)
		}
	}
	return in
}

func firstUse(list []patch, cell Rect) use {
	first := useScrap
	for _, p := range list {
		if p.use < first && p.rect.Overlaps(cell) {
			first = p.use
		}
	}
	return first
}

// woodArea is the area of a cell under the far edge, in square millimetres.
func woodArea(b *Board, cell Rect) float64 {
	if b.Width == b.TipWidth {
		return mm(cell.Length()) * mm(cell.Width())
	}
	slope := (mm(b.TipWidth) - mm(b.Width)) / mm(b.Length)
	h1 := mm(b.Width) + slope*mm(cell.X1) - mm(cell.Y1) // height of the wood over the cell's near side
	h2 := mm(b.Width) + slope*mm(cell.X2) - mm(cell.Y1)
	return meanClamped(h1, h2, mm(cell.Width())) * mm(cell.Length())
}

// meanClamped is the mean of a quantity that runs linearly from h1 to h2 and is
// held between 0 and top.
func meanClamped(h1, h2, top float64) float64 {
	above := func(level float64) float64 { // mean of max(0, h - level)
		a, c := h1-level, h2-level
		switch {
		case a <= 0 && c <= 0:
			return 0
		case a >= 0 && c >= 0:
			return (a + c) / 2
		}
		up := max(a, c)
		return up * up / (max(a, c) - min(a, c)) / 2
	}
	return above(0) - above(top)
}
