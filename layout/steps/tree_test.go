package steps

import (
	"fmt"

	"pgregory.net/rapid"

	"sawbill/layout"
)

// forest draws random valid cut trees. Positions are whole sixteenths, so that
// gaps of nothing, of less than a kerf, of a kerf and of more all happen; beside
// bevels they are as near as the kerf allows, or a few sixteenths farther.
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

// leaning is one piece of a rip: its extent on face A and its bevel.
type leaning struct {
	layout.Span
	bevel layout.Angle
}

// nest draws up to most pieces of wood three quarters thick, some of them at a
// bevel, in a span whose edges lean for a bevel.
func (f *forest) nest(s layout.Span, edges layout.Angle, least layout.Length, most int) []leaning {
	in := leaning{s, edges}
	var list []leaning
	for len(list) < most {
		kid := leaning{bevel: edges}
		if f.chance(50, "another bevel") {
			kid.bevel = layout.Degree / 2 * layout.Angle(rapid.SampledFrom([]int{0, 15, 45, 60, 90}).Draw(f.t, "bevel"))
		}
		kid.Lo = f.begin(in, list, kid.bevel)
		hi := s.Hi + lean(edges) - lean(kid.bevel)
		if kid.bevel != edges {
			hi = min(s.Hi, hi) - f.room(kid.bevel, 0)
		}
		if hi-kid.Lo < least {
			return list
		}
		if kid.Hi = hi; !f.chance(25, "all") {
			kid.Hi = kid.Lo + f.length(least, hi-kid.Lo, "size")
		}
		list = append(list, kid)
	}
	return list
}

// begin is where on face A the next piece begins: right beside the one before it,
// or a little farther.
func (f *forest) begin(in leaning, before []leaning, bevel layout.Angle) layout.Length {
	lo := in.Lo
	if len(before) > 0 {
		last := before[len(before)-1]
		lo = last.Hi + max(0, lean(last.bevel)-lean(bevel)) + max(f.room(last.bevel, f.shop.RipKerf), f.room(bevel, f.shop.RipKerf))
	} else if bevel != in.bevel {
		lo += max(0, lean(in.bevel)-lean(bevel)) + f.room(bevel, 0)
	}
	if f.chance(40, "gap") {
		lo += f.length(0, layout.Inch, "gap")
	}
	return lo
}

// room is what a rip takes of a face, or square where there is no bevel.
func (f *forest) room(bevel layout.Angle, square layout.Length) layout.Length {
	if bevel == 0 {
		return square
	}
	return f.shop.BevelKerf(bevel)
}

const board = 3 * layout.Inch / 4 // what bevelled wood is planed to

func lean(bevel layout.Angle) layout.Length { return bevel.Lean(board) }

func randomPlan(t *rapid.T) *layout.Plan {
	shop := layout.DefaultShop(layout.Inches)
	shop.EndTrim = 0
	if rapid.Bool().Draw(t, "no skim") {
		shop.FaceSkim = 0
	}
	if rapid.IntRange(0, 3).Draw(t, "two goes") == 0 {
		shop.ThicknessAllowance = sixteenth
	}
	f := &forest{t: t, shop: shop}
	problem := &layout.Problem{Shop: shop}
	var cuts []layout.BoardCut
	for i := range rapid.IntRange(1, 2).Draw(t, "boards") {
		b := layout.Board{
			Mark: fmt.Sprint("H", i+1), Species: "hornbeam", Thickness: 4 * layout.Inch,
			Width: f.length(3*layout.Inch, 12*layout.Inch, "width"), Length: f.length(12*layout.Inch, 60*layout.Inch, "length"),
			Edges: layout.Edges(rapid.IntRange(0, 2).Draw(t, "edges")),
		}
		b.TipWidth = b.Width
		if f.chance(40, "taper") {
			b.TipWidth = f.length(3*layout.Inch, 12*layout.Inch, "tip")
		}
		if f.chance(40, "warp") {
			b.Bow, b.Crook = f.length(0, layout.Inch/4, "bow"), f.length(0, layout.Inch, "crook")
			b.Cup, b.Twist = f.length(0, layout.Inch/4, "cup"), f.length(0, layout.Inch/4, "twist")
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
	g := grove{forest: f, board: b, loss: n.Y2 - usable.Y2}
	if f.shop.ThicknessAllowance == 0 && f.chance(40, "bevels") {
		for _, y := range f.nest(usable.Across(), 0, layout.Inch/2, 4) {
			n.Children = append(n.Children, g.strip(usable.Along(), y))
		}
	} else {
		for _, y := range f.spread(usable.Across(), f.shop.RipKerf, layout.Inch/2, 4) {
			g.draw()
			n.Children = append(n.Children, g.strip(usable.Along(), leaning{y, 0}))
		}
	}
	n.Thickness = f.planedTo(n)
}

// planedTo is the largest thickness that the parts below n need.
func (f *forest) planedTo(n *layout.Node) layout.Length {
	thick := layout.Inch / 2
	if leans(n) {
		thick = board
	}
	for _, leaf := range n.Leaves() {
		for i := range f.bill {
			if f.bill[i].Name == leaf.Part {
				thick = max(thick, f.shop.NeedOf(leaf, &f.bill[i]))
			}
		}
	}
	return thick
}

func leans(n *layout.Node) bool {
	found := false
	n.Walk(func(m *layout.Node) { found = found || m.Lean > 0 })
	return found
}

// grove draws the strips of one trued node. thick is what the parts of a strip are
// planed to, for so many layers or one; 0 where the node has bevels, so that all
// parts have its thickness.
type grove struct {
	*forest
	board  *layout.Board
	loss   layout.Length // at the far edge
	thick  layout.Length
	layers int
	layer  layout.Length // thickness of one
}

// draw chooses the thickness of the next strip.
func (g *grove) draw() {
	g.layers, g.layer = 1, board
	if g.chance(20, "thin") {
		g.layer -= layout.Inch / 8
	}
	if g.chance(30, "layers") {
		g.layers, g.layer = rapid.IntRange(2, 4).Draw(g.t, "layers"), g.length(layout.Inch/8, layout.Inch/2, "layer")
	}
	n := layout.Length(g.layers)
	g.thick = n*g.layer + (n-1)*(g.shop.ResawKerf+2*g.shop.FaceSkim)
}

func (g grove) strip(along layout.Span, y leaning) *layout.Node {
	n := node(along, y)
	if g.chance(25, "whole strip") {
		g.leaf(n, y.bevel)
		return n
	}
	n.Cut = layout.Crosscut
	for _, x := range g.spread(along, g.shop.CrosscutKerf, 2*layout.Inch, 4) {
		cell := node(x, y)
		n.Children = append(n.Children, cell)
		if g.chance(60, "whole cell") {
			g.leaf(cell, y.bevel)
			continue
		}
		cell.Cut = layout.Rip
		for _, part := range g.again(y) {
			leaf := node(x, part)
			g.leaf(leaf, part.bevel)
			cell.Children = append(cell.Children, leaf)
		}
	}
	return n
}

// again draws the pieces into which a length is ripped once more.
func (g grove) again(y leaning) []leaning {
	if g.thick == 0 {
		return g.nest(y.Span, y.bevel, layout.Inch/4, 3)
	}
	var list []leaning
	for _, s := range g.spread(y.Span, g.shop.RipKerf, layout.Inch/4, 3) {
		list = append(list, leaning{s, 0})
	}
	return list
}

func node(x layout.Span, y leaning) *layout.Node {
	return &layout.Node{Rect: layout.Rect{X1: x.Lo, X2: x.Hi, Y1: y.Lo, Y2: y.Hi}, Lean: lean(y.bevel)}
}

// leaf makes a part, an offcut or scrap; parts only where there is wood.
func (g grove) leaf(n *layout.Node, bevel layout.Angle) {
	wood := g.board.FarMin(n.Along()) - g.loss
	switch {
	case g.chance(70, "part") && n.Y2+n.Lean <= wood:
		g.part(n, bevel)
	case g.chance(60, "offcut") && n.Y1 < wood && (n.Lean == 0 || n.Y2+n.Lean <= wood):
		n.Offcut = "?"
	}
}

// part makes a part of a leaf: flat, on edge or in layers.
func (g grove) part(n *layout.Node, bevel layout.Angle) {
	g.n++
	part := layout.Part{
		Name: fmt.Sprint("lath-", g.n), Species: []string{"hornbeam"}, Quantity: 1, Grade: layout.Clear,
		Thickness: g.thick, Width: n.Width(), Length: n.Length(), Bevel: bevel,
	}
	if part.Thickness == 0 {
		part.Thickness = board
	}
	part.Thickness -= g.shop.ThicknessAllowance
	n.Part = part.Name
	if g.layers > 1 && g.chance(80, "resawn") {
		n.Layers, part.Resaw, part.Quantity, part.Thickness = g.layers, true, g.layers, g.layer-g.shop.ThicknessAllowance
	}
	if g.thick > 0 && g.chance(30, "on edge") {
		n.OnEdge, part.OnEdge = true, true
		part.Width, part.Thickness = part.Thickness, part.Width
	}
	g.bill = append(g.bill, part)
}
