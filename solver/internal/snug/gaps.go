package snug

import (
	"cmp"
	"slices"

	"sawbill/layout"
)

// row is the children of a node and what lies between them.
type row struct {
	b    *board
	at   int // which node it is
	n    *layout.Node
	root bool
	// spare is the wood before each child, and after the last, beyond the kerf that
	// there must be.
	spare []layout.Length
}

// closings are all changes of a tree that close a place where wood lies between
// neighbours for nothing; those last that leave more wood to joint and plane.
func (b *board) closings(root *layout.Node) []change {
	var list []change
	b.rows(root, func(r *row) {
		for k, by := range r.spare {
			if by > 0 {
				list = append(list, r.fromBeyond(k, by)...)
				list = append(list, r.fromBefore(k, by)...)
			}
		}
	})
	slices.SortStableFunc(list, func(a, b change) int { return cmp.Compare(a.planed, b.planed) })
	return list
}

// rows visits the children of all nodes, but those beside which a bevel is ripped.
func (b *board) rows(root *layout.Node, visit func(*row)) {
	at := 0
	var walk func(n *layout.Node, trued bool)
	walk = func(n *layout.Node, trued bool) {
		trued = trued || n.Trued
		if len(n.Children) > 0 && !(n.Cut == layout.Rip && leans(n)) {
			visit(b.rowOf(n, at, n == root, trued))
		}
		at++
		for _, c := range n.Children {
			walk(c, trued)
		}
	}
	walk(root, false)
}

func leans(n *layout.Node) bool {
	return n.Lean > 0 || slices.ContainsFunc(n.Children, func(c *layout.Node) bool { return c.Lean > 0 })
}

func (b *board) rowOf(n *layout.Node, at int, root, trued bool) *row {
	r := &row{b: b, at: at, n: n, root: root}
	inner := n.Rect
	if n.Trued {
		inner = b.shop.Usable(b.wood, n.Rect)
	}
	room, kerf := span(inner, n.Cut), b.shop.Kerf(n.Cut, trued)
	end := room.Lo
	for i, c := range n.Children {
		s := span(c.Rect, n.Cut)
		if i > 0 {
			end += kerf
		}
		r.spare = append(r.spare, s.Lo-end)
		end = s.Hi
	}
	r.spare = append(r.spare, room.Hi-end)
	return r
}

// span is the extent of a rectangle in the direction in which a cut divides it.
func span(r layout.Rect, c layout.Cut) layout.Span {
	if c == layout.Crosscut {
		return r.Along()
	}
	return r.Across()
}

// fromBeyond closes the place before child k: what lies beyond it comes nearer, up to
// somewhere where the wood does good or no harm.
func (r *row) fromBeyond(k int, by layout.Length) []change {
	var list []change
	kids := r.n.Children
	for j := k; j <= len(kids); j++ { // children k to j-1 move
		if j < len(kids) && kids[j].Offcut != "" {
			list = append(list, r.moved(k, j, -by, j, layout.Span{Lo: -by}))
		}
		if j > k && (j == len(kids) || r.spare[j] > 0) {
			list = append(list, r.moved(k, j, -by, -1, layout.Span{}))
		}
		if j > k && r.grows(j-1, by) {
			list = append(list, r.moved(k, j, -by, j-1, layout.Span{Hi: by}))
		}
	}
	return list
}

// fromBefore closes the place before child k: what lies before it comes nearer.
func (r *row) fromBefore(k int, by layout.Length) []change {
	var list []change
	kids := r.n.Children
	for i := k; i >= 0; i-- { // children i to k-1 move
		if i > 0 && kids[i-1].Offcut != "" {
			list = append(list, r.moved(i, k, by, i-1, layout.Span{Hi: by}))
		}
		if i < k && (i == 0 || r.spare[i] > 0) {
			list = append(list, r.moved(i, k, by, -1, layout.Span{}))
		}
		if i > 0 && r.grows(i-1, by) {
			list = append(list, r.moved(i, k, by, i-1, layout.Span{Hi: by}))
		}
	}
	return list
}

// moved shifts the children lo to hi-1, and moves the sides of one child.
func (r *row) moved(lo, hi int, by layout.Length, grown int, sides layout.Span) change {
	var planed layout.Length
	if grown >= 0 && r.n.Children[grown].Offcut == "" {
		planed = sides.Len()
	}
	return change{r.at, planed, func(n *layout.Node) {
		for _, c := range n.Children[lo:hi] {
			c.Shift(n.Cut, by)
		}
		if grown >= 0 {
			grow(n.Children[grown], n.Cut, sides)
		}
	}}
}
