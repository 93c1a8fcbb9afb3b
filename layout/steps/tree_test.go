package steps

import (
	"fmt"

	"pgregory.net/rapid"

	"sawbill/layout"
)

// forest draws random valid cut trees. Positions are whole sixteenths, so that
// gaps of nothing, of less than a kerf, of a kerf and of more all happen.
type forest struct {
	t    *rapid.T
	shop *layout.Shop
	bill []layout.Part
	n    int
}

const sixteenth = layout.Inch / 16

func (f *forest) length(lo, hi layout.Length, what string) layout.Length {
	return sixteenth * layout.Length(rapid.Int64Range(int64(lo/sixteenth), int64(hi/sixteenth)).Draw(f.t, what))
}

func (f *forest) chance(percent int, what string) bool {
	return rapid.IntRange(1, 100).Draw(f.t, what) <= percent
}

// spread draws up to most children in a span, at least a kerf apart and at least
// least long.
func (f *forest) spread(s layout.Span, kerf, least layout.Length, most int) []layout.Span {
	var list []layout.Span
	for lo := s.Lo; len(list) < most; {
		if f.chance(40, "gap") {
			lo += f.length(0, layout.Inch, "gap")
		}
		if s.Hi-lo < least {
			return list
		}
		hi := s.Hi
		if !f.chance(25, "all") {
			hi = lo + f.length(least, s.Hi-lo, "size")
		}
		list = append(list, layout.Span{Lo: lo, Hi: hi})
		lo = hi + kerf
	}
	return list
}

func randomPlan(t *rapid.T) *layout.Plan {
	shop := layout.DefaultShop(layout.Inches)
	shop.EndTrim = 0
	f := &forest{t: t, shop: shop}
	problem := &layout.Problem{Shop: shop}
	var cuts []layout.BoardCut
	for i := range rapid.IntRange(1, 2).Draw(t, "boards") {
		b := layout.Board{
			Mark: fmt.Sprint("H", i+1), Species: "hornbeam", Thickness: layout.Inch,
			Width: f.length(3*layout.Inch, 12*layout.Inch, "width"), Length: f.length(12*layout.Inch, 60*layout.Inch, "length"),
			Edges: layout.Edges(rapid.IntRange(0, 2).Draw(t, "edges")),
		}
		b.TipWidth = b.Width
		if f.chance(40, "taper") {
			b.TipWidth = f.length(3*layout.Inch, 12*layout.Inch, "tip")
		}
		problem.Stock = append(problem.Stock, b)
		cuts = append(cuts, layout.BoardCut{Board: b.Mark, Root: f.root(&b)})
	}
	problem.Bill = f.bill
	return layout.Assemble(problem, cuts)
}

func (f *forest) root(b *layout.Board) *layout.Node {
	root := &layout.Node{Rect: b.Frame(), Cut: layout.Crosscut}
	trim := f.length(0, 2*layout.Inch, "trim")
	for _, s := range f.spread(layout.Span{Lo: trim, Hi: b.Length}, f.shop.CrosscutKerf, 3*layout.Inch, 3) {
		blank := &layout.Node{Rect: layout.Rect{X1: s.Lo, X2: s.Hi, Y2: b.FullWidth()}}
		switch {
		case f.chance(10, "offcut blank"):
			blank.Offcut = "?"
		case f.chance(20, "rough rip"):
			blank.Cut = layout.Rip
			for _, y := range f.spread(blank.Across(), f.shop.RoughRipKerf, layout.Inch, 2) {
				n := &layout.Node{Rect: layout.Rect{X1: s.Lo, X2: s.Hi, Y1: y.Lo, Y2: y.Hi}}
				f.truedNode(b, n)
				blank.Children = append(blank.Children, n)
			}
		default:
			f.truedNode(b, blank)
		}
		root.Children = append(root.Children, blank)
	}
	return root
}

func (f *forest) truedNode(b *layout.Board, n *layout.Node) {
	usable := f.shop.Usable(b, n.Rect)
	if usable.Empty() {
		return
	}
	n.Trued, n.Cut = true, layout.Rip
	loss := n.Y2 - usable.Y2
	for _, y := range f.spread(usable.Across(), f.shop.RipKerf, layout.Inch/2, 4) {
		strip := &layout.Node{Rect: layout.Rect{X1: usable.X1, X2: usable.X2, Y1: y.Lo, Y2: y.Hi}}
		thick := 3 * layout.Inch / 4
		if f.chance(20, "thin") {
			thick -= layout.Inch / 8
		}
		f.strip(b, strip, thick, loss)
		n.Children = append(n.Children, strip)
	}
	n.Thickness = f.planedTo(n)
}

// planedTo is the largest thickness of the parts below n.
func (f *forest) planedTo(n *layout.Node) layout.Length {
	thick := layout.Inch / 2
	for _, leaf := range n.Leaves() {
		for _, part := range f.bill {
			if part.Name == leaf.Part {
				thick = max(thick, part.Thickness)
			}
		}
	}
	return thick
}

func (f *forest) strip(b *layout.Board, n *layout.Node, thick, loss layout.Length) {
	if f.chance(25, "whole strip") {
		f.leaf(b, n, thick, loss)
		return
	}
	n.Cut = layout.Crosscut
	for _, x := range f.spread(n.Along(), f.shop.CrosscutKerf, 2*layout.Inch, 4) {
		cell := &layout.Node{Rect: layout.Rect{X1: x.Lo, X2: x.Hi, Y1: n.Y1, Y2: n.Y2}}
		n.Children = append(n.Children, cell)
		if f.chance(60, "whole cell") {
			f.leaf(b, cell, thick, loss)
			continue
		}
		cell.Cut = layout.Rip
		for _, y := range f.spread(n.Across(), f.shop.RipKerf, layout.Inch/4, 3) {
			leaf := &layout.Node{Rect: layout.Rect{X1: x.Lo, X2: x.Hi, Y1: y.Lo, Y2: y.Hi}}
			f.leaf(b, leaf, thick, loss)
			cell.Children = append(cell.Children, leaf)
		}
	}
}

// leaf makes a part, an offcut or scrap; parts only where there is wood.
func (f *forest) leaf(b *layout.Board, n *layout.Node, thick, loss layout.Length) {
	wood := b.FarMin(n.Along()) - loss
	switch {
	case f.chance(70, "part") && n.Y2 <= wood:
		f.n++
		name := fmt.Sprint("lath-", f.n)
		f.bill = append(f.bill, layout.Part{
			Name: name, Species: []string{"hornbeam"}, Quantity: 1, Grade: layout.Clear,
			Thickness: thick, Width: n.Width(), Length: n.Length(),
		})
		n.Part = name
	case f.chance(60, "offcut") && n.Y1 < wood:
		n.Offcut = "?"
	}
}
