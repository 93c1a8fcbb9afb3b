package render

import "sawbill/layout"

// waste lists the rectangles of a trued piece that are neither wanted nor lost
// to a kerf. wood is the piece as it is, within n or the usable part of n.
func waste(n *layout.Node, wood layout.Rect, shop *layout.Shop) []layout.Rect {
	if n.Part != "" || n.Offcut != "" {
		return nil
	}
	if len(n.Children) == 0 {
		return []layout.Rect{wood}
	}
	var list []layout.Rect
	lo := start(wood, n.Cut)
	for _, c := range n.Children {
		if hi := start(c.Rect, n.Cut) - kerfBeside(n, c, shop); hi > lo {
			list = append(list, slice(wood, n.Cut, lo, hi))
		}
		list = append(list, waste(c, c.Rect.Intersect(wood), shop)...)
		lo = end(c.Rect, n.Cut) + kerfBeside(n, c, shop)
	}
	if hi := end(wood, n.Cut); hi > lo {
		list = append(list, slice(wood, n.Cut, lo, hi))
	}
	return list
}

// kerfBeside is what the saw takes beside a child, or the most that it could where
// the child leans: too little waste to be worth a cross is not shown there.
func kerfBeside(n, child *layout.Node, shop *layout.Shop) layout.Length {
	if n.Cut == layout.Rip && child.Lean > 0 {
		return shop.BevelKerf(45 * layout.Degree)
	}
	return shop.Kerf(n.Cut, true)
}

// roughWaste lists what lies between the pieces of rough cuts, kerfs and all.
func roughWaste(n *layout.Node) []layout.Rect {
	if n.Trued || len(n.Children) == 0 {
		return nil
	}
	var list []layout.Rect
	lo := start(n.Rect, n.Cut)
	for _, c := range n.Children {
		if hi := start(c.Rect, n.Cut); hi > lo {
			list = append(list, slice(n.Rect, n.Cut, lo, hi))
		}
		list = append(list, roughWaste(c)...)
		lo = end(c.Rect, n.Cut)
	}
	if hi := end(n.Rect, n.Cut); hi > lo {
		list = append(list, slice(n.Rect, n.Cut, lo, hi))
	}
	return list
}

func start(r layout.Rect, c layout.Cut) layout.Length {
	if c == layout.Crosscut {
		return r.X1
	}
	return r.Y1
}

func end(r layout.Rect, c layout.Cut) layout.Length {
	if c == layout.Crosscut {
		return r.X2
	}
	return r.Y2
}

// slice is the part of r between two places in the direction of a cut.
func slice(r layout.Rect, c layout.Cut, lo, hi layout.Length) layout.Rect {
	if c == layout.Crosscut {
		r.X1, r.X2 = lo, hi
	} else {
		r.Y1, r.Y2 = lo, hi
	}
	return r
}
