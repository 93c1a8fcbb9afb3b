package record_test

import (
	"sawbill/layout"
	"sawbill/layout/record"
)

// always plans every problem alike.
func always(solve func(*layout.Problem) (*layout.Plan, error)) record.Solve {
	return func(p *layout.Problem, _ bool) (*layout.Plan, error) { return solve(p) }
}

// plainly plans a problem in one blank a board, without any thought of cost: part
// after part a strip, in the strip piece after piece past the defects, and whatever
// is left is kept where it is large enough. It stands in for the solver, which would
// take most of the time of these tests.
func plainly(p *layout.Problem) (*layout.Plan, error) {
	if sets := p.Sets(); len(sets) > 0 {
		return plainSets(p, sets)
	}
	need := map[string]int{}
	for _, part := range p.Bill {
		need[part.Name] = part.Quantity + part.Spare
	}
	var cuts []layout.BoardCut
	for i := range p.Stock {
		c := &cutter{p: p, b: &p.Stock[i], need: need}
		if root := c.root(); root != nil {
			c.settle(root)
			cuts = append(cuts, layout.BoardCut{Board: c.b.Mark, Root: root})
		}
	}
	return layout.Assemble(p, cuts), nil
}

// settle lets words that are matched here match nowhere else.
func (c *cutter) settle(root *layout.Node) {
	for _, leaf := range root.Leaves() {
		part := c.p.Part(leaf.Part)
		for i := range c.p.Bill {
			if other := &c.p.Bill[i]; part != nil && part.Match != "" && other.Match == part.Match {
				c.need[other.Name] = 0
			}
		}
	}
}

type cutter struct {
	p    *layout.Problem
	b    *layout.Board
	need map[string]int
	room layout.Rect // what is left of the blank across
}

func (c *cutter) root() *layout.Node {
	shop := c.p.Shop
	blank := &layout.Node{Rect: layout.Rect{X1: shop.EndTrim, X2: c.b.Length - shop.EndTrim, Y2: c.b.FullWidth()}, Cut: layout.Rip, Trued: true}
	if blank.Length() < max(shop.MinBlank, shop.MinRipLength)+2*shop.EndSquare || c.blocked(blank.Rect, true) {
		return nil
	}
	c.room = shop.Usable(c.b, blank.Rect)
	c.room.Y2 = c.b.FarMin(c.room.Along()) - (blank.Y2 - c.room.Y2)
	for i := range c.p.Bill {
		part := &c.p.Bill[i]
		if part.Thickness > shop.AvailableIn(c.b, blank.Rect) || !c.p.Allows(part, c.b) {
			continue
		}
		if strip := c.strip(part); strip != nil {
			blank.Children = append(blank.Children, strip)
			blank.Thickness = max(blank.Thickness, part.Thickness)
		}
	}
	if len(blank.Children) == 0 {
		return nil
	}
	if shop.Keeps(c.room) {
		blank.Children = append(blank.Children, &layout.Node{Rect: c.room, Offcut: "?"})
	}
	return &layout.Node{Rect: c.b.Frame(), Cut: layout.Crosscut, Children: []*layout.Node{blank}}
}

func (c *cutter) strip(part *layout.Part) *layout.Node {
	strip := &layout.Node{Rect: c.room, Cut: layout.Crosscut}
	strip.Y2 = strip.Y1 + part.Width
	x := strip.X1
	for strip.Y2 <= c.room.Y2 && c.need[part.Name] > 0 && x+part.Length <= strip.X2 {
		piece := layout.Rect{X1: x, X2: x + part.Length, Y1: strip.Y1, Y2: strip.Y2}
		if c.blocked(piece, false) {
			x += layout.Inch
			continue
		}
		strip.Children = append(strip.Children, &layout.Node{Rect: piece, Part: part.Name})
		c.need[part.Name]--
		x = piece.X2 + c.p.Shop.CrosscutKerf
	}
	if len(strip.Children) == 0 {
		return nil
	}
	if left := (layout.Rect{X1: x, X2: strip.X2, Y1: strip.Y1, Y2: strip.Y2}); c.p.Shop.Keeps(left) {
		strip.Children = append(strip.Children, &layout.Node{Rect: left, Offcut: "?"})
	}
	c.room.Y1 = strip.Y2 + c.p.Shop.RipKerf
	return strip
}

// blocked reports whether a defect, or only one of metal, reaches into wood.
func (c *cutter) blocked(wood layout.Rect, metalOnly bool) bool {
	if metalOnly { // nor may a kerf beside it meet metal
		wood = wood.Grow(c.p.Shop.CrosscutKerf, 0)
	}
	for _, d := range c.b.Defects {
		grown := c.p.Shop.Clearance[d.Kind]
		if (!metalOnly || d.Kind == layout.Metal) && d.Rect.Grow(grown.Along, grown.Across).Overlaps(wood) {
			return true
		}
	}
	return false
}

// plainSets plans a problem with glue-ups in copies of one length each.
func plainSets(p *layout.Problem, sets []layout.Set) (*layout.Plan, error) {
	strips, rows := *p, map[string]*layout.Part{}
	strips.Bill = nil
	for i := range p.Bill {
		if p.Bill[i].Set == "" {
			strips.Bill = append(strips.Bill, p.Bill[i])
		}
	}
	k := 0
	for _, set := range sets {
		for _, i := range set.Rows {
			row := &p.Bill[i]
			k = p.Shop.LeastSlices(row)
			strip := p.Shop.Strip(row, k)
			strip.Quantity = row.Quantity * ((set.Slices + k - 1) / k)
			rows[strip.Name] = row
			strips.Bill = append(strips.Bill, strip)
		}
	}
	plan, err := plainly(&strips)
	if err != nil {
		return nil, err
	}
	left := map[string]int{}
	for _, set := range sets {
		copies := set.Slices
		for _, i := range set.Rows {
			copies = min(copies, made(plan, p.Shop.Strip(&p.Bill[i], k).Name)/p.Bill[i].Quantity)
		}
		for _, i := range set.Rows {
			left[p.Bill[i].Name] = copies * p.Bill[i].Quantity
		}
	}
	var cuts []layout.BoardCut
	for _, b := range plan.Boards {
		parts := 0
		for _, leaf := range b.Root.Leaves() {
			switch row := rows[leaf.Part]; {
			case row == nil:
			case left[row.Name] > 0:
				leaf.Part, leaf.Slices = row.Name, k
				left[row.Name]--
			default:
				*leaf = layout.Node{Rect: leaf.Rect}
			}
			if leaf.Part != "" {
				parts++
			}
		}
		if parts > 0 {
			planeAgain(p, b.Root)
			cuts = append(cuts, layout.BoardCut{Board: b.Board, Root: b.Root})
		}
	}
	return layout.Assemble(p, cuts), nil
}

// planeAgain planes blanks to what their parts need.
func planeAgain(p *layout.Problem, root *layout.Node) {
	for _, blank := range root.Children {
		blank.Thickness = 0
		for _, leaf := range blank.Leaves() {
			if part := p.Part(leaf.Part); part != nil {
				blank.Thickness = max(blank.Thickness, part.Thickness)
			}
		}
	}
}

func made(plan *layout.Plan, part string) int {
	n := 0
	for _, b := range plan.Boards {
		for _, leaf := range b.Root.Leaves() {
			if leaf.Part == part {
				n++
			}
		}
	}
	return n
}
