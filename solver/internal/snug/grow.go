package snug

import "sawbill/layout"

// grows reports whether a child is a rough blank that may take so much more wood in. What
// is too short to be held at the saw is better left on it; more is not worth jointing and
// planing.
func (r *row) grows(k int, by layout.Length) bool {
	c := r.n.Children[k]
	return r.root && c.Offcut == "" && c.Part == "" && by < r.b.shop.MinCrosscut
}

// grow moves the sides of an offcut, or the tip end of a blank.
func grow(n *layout.Node, cut layout.Cut, sides layout.Span) {
	switch {
	case cut == layout.Rip:
		n.Y1, n.Y2 = n.Y1+sides.Lo, n.Y2+sides.Hi
	case len(n.Children) == 0:
		n.X1, n.X2 = n.X1+sides.Lo, n.X2+sides.Hi
	default:
		lengthen(n, sides.Hi)
	}
}

// lengthen makes a node longer at its tip, and with it what is ripped out of it. What is
// crosscut stays as long as it is, but for an offcut at the tip.
func lengthen(n *layout.Node, by layout.Length) {
	end := n.X2
	n.X2 += by
	for i, c := range n.Children {
		switch {
		case n.Cut == layout.Rip && c.Part != "":
			strip := &layout.Node{Rect: c.Rect, Cut: layout.Crosscut, Lean: c.Lean, Children: []*layout.Node{c}}
			strip.X2 += by
			n.Children[i] = strip
		case n.Cut == layout.Rip, c.Offcut != "" && c.X2 == end:
			lengthen(c, by)
		}
	}
}
