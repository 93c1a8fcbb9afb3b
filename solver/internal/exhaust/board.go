package exhaust

import (
	"slices"

	"sawbill/layout"
)

// board is one board that is being tried in every way.
type board struct {
	p      *layout.Problem
	shop   *layout.Shop
	wood   *layout.Board
	unit   layout.Length
	rows   []int // of the bill: parts that may come from the board
	limits counts

	grown  []layout.Rect // the defects, with their clearance
	strips map[spot]front
	cells  map[spot]front
	leaves map[spot]front
}

// spot is a rectangle below a trued node, with all that its front depends on.
type spot struct {
	layout.Rect
	bed
}

// bed is what a trued node means for the parts below it.
type bed struct {
	thick   layout.Length // the thickness of the strip; 0: no parts
	parts   layout.Span   // where they may lie along the board
	jointed layout.Length // lost below the board's far edge
}

func newBoard(p *layout.Problem, wood *layout.Board, unit layout.Length) *board {
	b := &board{
		p: p, shop: p.Shop, wood: wood, unit: unit, limits: limitsOf(p),
		strips: map[spot]front{}, cells: map[spot]front{}, leaves: map[spot]front{},
	}
	for i := range p.Bill {
		if p.Allows(&p.Bill[i], wood) {
			b.rows = append(b.rows, i)
		}
	}
	for _, d := range wood.Defects {
		c := p.Shop.Clearance[d.Kind]
		b.grown = append(b.grown, d.Rect.Grow(c.Along, c.Across))
	}
	return b
}

// limitsOf are the quantities of the bill.
func limitsOf(p *layout.Problem) counts {
	var c counts
	for i := range p.Bill {
		c[i] = int8(p.Bill[i].Quantity)
	}
	return c
}

// whole is the front of the board, crosscut into blanks.
func (b *board) whole() front {
	f := b.sequence(layout.Span{Hi: b.wood.Length}, b.shop.CrosscutKerf, b.blank)
	return within(layout.Node{Rect: b.wood.Frame(), Cut: layout.Crosscut}, f)
}

// blank is the front of one rough crosscut piece.
func (b *board) blank(along layout.Span) front {
	r := b.wood.Frame()
	r.X1, r.X2 = along.Lo, along.Hi
	before, after := r, r
	before.X1, before.X2 = r.X1-b.shop.CrosscutKerf, r.X1
	after.X1, after.X2 = r.X2, r.X2+b.shop.CrosscutKerf
	if b.sawsMetal(b.wood.Frame(), before, after) {
		return nil
	}
	t := newTable(b.limits)
	t.addAll(b.offcut(r))
	t.addAll(b.trued(r))
	t.addAll(b.roughRipped(r))
	return t.take()
}

// roughRipped is the front of a blank that is ripped before it is trued.
func (b *board) roughRipped(r layout.Rect) front {
	if r.Length() < b.shop.MinRipLength {
		return nil
	}
	f := b.sequence(r.Across(), b.shop.RoughRipKerf, func(across layout.Span) front {
		return b.roughPiece(r, layout.Rect{X1: r.X1, X2: r.X2, Y1: across.Lo, Y2: across.Hi})
	})
	return within(layout.Node{Rect: r, Cut: layout.Rip}, f)
}

// roughPiece is the front of what a rough rip takes off a blank.
func (b *board) roughPiece(blank, r layout.Rect) front {
	before, after := r, r
	before.Y1, before.Y2 = r.Y1-b.shop.RoughRipKerf, r.Y1
	after.Y1, after.Y2 = r.Y2, r.Y2+b.shop.RoughRipKerf
	if b.sawsMetal(blank, before, after) {
		return nil
	}
	t := newTable(b.limits)
	t.addAll(b.offcut(r))
	t.addAll(b.trued(r))
	return t.take()
}

// sawsMetal reports whether one of the kerfs before and after a piece of parent
// meets metal inside parent. Where kerfs take nothing, a blade still passes.
func (b *board) sawsMetal(parent, before, after layout.Rect) bool {
	starts := before.X2 == parent.X1 || before.Y2 == parent.Y1 // with no cut before it
	ends := after.X1 == parent.X2 || after.Y1 == parent.Y2
	return !starts && b.metalIn(before.Intersect(parent)) || !ends && b.metalIn(after.Intersect(parent))
}

// metalIn reports whether a rectangle or a line meets metal.
func (b *board) metalIn(r layout.Rect) bool {
	for i, d := range b.wood.Defects {
		if d.Kind == layout.Metal && b.grown[i].Overlaps(r) {
			return true
		}
	}
	return false
}

// offcut is the front of a leaf that is kept, if the shop keeps its like.
func (b *board) offcut(r layout.Rect) front {
	clean := r
	clean.Y2 = min(r.Y2, b.wood.Far(r.X1), b.wood.Far(r.X2))
	if clean.Empty() || clean.Length() < b.shop.MinOffcutLength || clean.Width() < b.shop.MinOffcutWidth {
		return nil
	}
	worth := b.shop.OffcutWorth(b.wood, clean)
	if worth == 0 {
		return nil
	}
	return leaf(layout.Node{Rect: r, Offcut: kept}, counts{}, worth)
}

// kept marks an offcut until the plan gives it a name.
const kept = "keep"

// accepts reports whether a part that covers r meets its grade with face show up.
func (b *board) accepts(g layout.Grade, show, back layout.Face, r layout.Rect) bool {
	for i, d := range b.wood.Defects {
		if !b.grown[i].Overlaps(r) {
			continue
		}
		if d.On(show) && !slices.Contains(g.Show, d.Kind) || d.On(back) && !slices.Contains(g.Back, d.Kind) {
			return false
		}
	}
	return true
}
