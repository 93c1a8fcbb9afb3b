package record

import (
	"fmt"

	"sawbill/layout"
	"sawbill/layout/steps"
)

// Sizes are what a piece of wood really measures. What is 0 is as planned; of a
// gap Warped says whether it was measured at all.
type Sizes struct {
	Length, Width, TipWidth, Thickness layout.Length
	// Warp is nil where it was not measured.
	Warp *Warp
}

// Warp is how far a board is from flat and straight, each the largest gap over its
// length or width; of a twist the lift of the fourth corner.
type Warp struct{ Bow, Crook, Cup, Twist layout.Length }

// Measured notes that a board, a blank or a strip turned out otherwise than it was
// marked or planned, or moved after ripping. A board is planned again where its
// cuts are then no longer valid. Of a blank or a strip what still fits stays where
// it is; where nothing does its wood is stock, of the size that was measured. The
// error says that the name is not known, or that a size cannot be.
func (d *Draft) Measured(name string, sizes Sizes) error {
	at, err := d.find(name)
	if err != nil {
		return err
	}
	d.tell("measured %s", name)
	mark := at.board.Mark
	switch {
	case at.node == nil && d.started(mark):
		return fmt.Errorf("%q is being cut: measure the blank or strip of it that is in hand", mark)
	case at.node == nil:
		was := at.board.Frame()
		resize(at.board, sizes)
		if root := d.trees[mark]; root != nil {
			reframe(root, was, at.board.Frame())
		}
		d.mend(mark)
		return nil
	}
	for _, leaf := range at.node.Leaves() {
		if leaf.Part != "" && d.isCut(leaf) {
			return fmt.Errorf("%q: %s of it is cut already", name, leaf.ID)
		}
	}
	if d.taken(mark, at.origin) {
		return fmt.Errorf("%q: wood of it is a board of the stock by now; name what is left of it", name)
	}
	d.start(mark)
	d.refit(at, sizes)
	return nil
}

// resize gives a board other sizes and leaves of its defects what lies on it.
func resize(b *layout.Board, sizes Sizes) {
	if sizes.Width > 0 {
		b.TipWidth = sizes.Width
	}
	for _, s := range []struct {
		to  *layout.Length
		now layout.Length
	}{{&b.Length, sizes.Length}, {&b.Width, sizes.Width}, {&b.TipWidth, sizes.TipWidth}, {&b.Thickness, sizes.Thickness}} {
		if s.now > 0 {
			*s.to = s.now
		}
	}
	if w := sizes.Warp; w != nil {
		b.Bow, b.Crook, b.Cup, b.Twist = w.Bow, w.Crook, w.Cup, w.Twist
	}
	var left []layout.Defect
	for _, defect := range b.Defects {
		if on, some := onWood(b, defect.Rect); some {
			defect.Rect = on
			left = append(left, defect)
		}
	}
	b.Defects = left
}

// refit gives up what does not fit into a piece of its measured size.
func (d *Draft) refit(at place, sizes Sizes) {
	sheet := d.sheet(at.board.Mark)
	room, thickness := at.origin, d.lyingThickness(sheet, at.node)
	if sizes.Length > 0 {
		room.X2 = room.X1 + sizes.Length
	}
	if w := least(sizes.Width, sizes.TipWidth); w > 0 {
		room.Y2 = room.Y1 + w
	}
	if sizes.Thickness > 0 {
		thickness = sizes.Thickness
	}
	flat := sizes.Warp == nil || *sizes.Warp == Warp{}
	fits := 0
	for _, leaf := range at.node.Leaves() {
		part := d.wanted(leaf.Part)
		switch {
		case part == nil && (leaf.Offcut == "" || flat && room.Contains(leaf.Rect)):
		case part != nil && flat && d.Shop().NeedOf(leaf, part) <= thickness && room.Contains(leaning(leaf)):
			fits++
		default:
			*leaf = layout.Node{Rect: leaf.Rect}
			d.hurt[at.board.Mark] = true
		}
	}
	if fits == 0 {
		d.takeOut(at, sheet, sizes)
		return
	}
	d.tidy(d.trees[at.board.Mark])
	d.mend(at.board.Mark)
}

// reframe makes a tree one of a board that has another frame than it had. Blanks reach
// across the whole board.
func reframe(root *layout.Node, was, frame layout.Rect) {
	root.Rect = frame
	for _, blank := range root.Children {
		if blank.Y2 == was.Y2 {
			blank.Y2 = frame.Y2
		}
	}
}

func leaning(leaf *layout.Node) layout.Rect {
	r := leaf.Rect
	r.Y2 += leaf.Lean
	return r
}

func least(a, b layout.Length) layout.Length {
	if a == 0 || b == 0 {
		return max(a, b)
	}
	return min(a, b)
}

// takeOut makes a board of the stock of a piece of a board that is being cut.
func (d *Draft) takeOut(at place, sheet *steps.Sheet, sizes Sizes) {
	lying := steps.Lying{
		Name: sheet.Name(at.node), Wood: at.origin, Thickness: d.lyingThickness(sheet, at.node), Blank: blankOf(sheet, at.node),
	}
	board := *at.board
	mark := board.Mark
	d.giveUp(mark, at.node)
	if row := d.keep(&board, lying); row != nil {
		resize(row, sizes)
	}
	d.settle(mark, lying.Name)
	d.mend(mark)
}

// blankOf is the trued blank that a node is or lies in, nil of rough wood.
func blankOf(sheet *steps.Sheet, n *layout.Node) *steps.Blank {
	for i := range sheet.Blanks {
		inside := false
		sheet.Blanks[i].Node.Walk(func(m *layout.Node) { inside = inside || m == n })
		if inside {
			return &sheet.Blanks[i]
		}
	}
	return nil
}

// lyingThickness is how thick a node is planned to be when it lies on the bench.
func (d *Draft) lyingThickness(sheet *steps.Sheet, n *layout.Node) layout.Length {
	blank := blankOf(sheet, n)
	switch {
	case blank == nil:
		return sheet.Board.Thickness
	case blank.Node == n || d.need(n) == 0:
		return blank.Thickness
	}
	return d.need(n)
}
