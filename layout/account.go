package layout

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
	acc.Planing = max(0, area[usePart]*thick-acc.Parts) // of nothing to plane rounding may leave less than nothing
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
		if bill[i].Name == leaf.Part && leaf.Slices > 0 {
			return bill[i].StripVolume(leaf.Slices).MM3() * float64(leaf.Pieces())
		}
		if bill[i].Name == leaf.Part {
			return bill[i].Volume().MM3() * float64(leaf.Pieces())
		}
	}
	return 0
}

// patches lists what becomes of the board's wood, except scrap. A part has the wood
// under its rectangle on face A; what a bevelled one has beyond it on face B is as
// much as it lacks on the other side.
func patches(s *Shop, b *Board, root *Node) []patch {
	list := []patch{
		{Rect{0, s.EndTrim, 0, b.FullWidth()}, useEdge},
		{Rect{b.Length - s.EndTrim, b.Length, 0, b.FullWidth()}, useEdge},
	}
	for _, d := range b.Defects {
		list = append(list, patch{d.Rect, useDefect})
	}
	var visit func(blank Length, n *Node, trued bool)
	visit = func(blank Length, n *Node, trued bool) {
		inner := n.Rect
		switch {
		case n.Part != "":
			list = append(list, patch{n.Rect, usePart})
		case n.Offcut != "":
			list = append(list, patch{b.CleanOffcutIn(blank, n.Rect), useOffcut})
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
			below := blank
			if n == root {
				below = c.Length()
			}
			visit(below, c, trued)
		}
	}
	visit(root.Length(), root, false)
	return list
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
