package record

import (
	"math/big"

	"sawbill/layout"
	"sawbill/layout/steps"
)

// Wood is a piece of a board as a board of its own: its true size, its faces and
// edges as they now are, what it is worth, and the defects that it carries, in
// its own frame.
//
// Rough wood keeps what its length leaves of the board's warp: of bow and crook the
// share (l/L)^2, of cup (w/W)^2, of twist (l/L)(w/W), rounded up; see model section
// 6. Trued wood is flat and planed, and its reference edge is straight.
func Wood(shop *layout.Shop, b *layout.Board, lying steps.Lying) layout.Board {
	r := lying.Wood
	width := func(x layout.Length) layout.Length {
		if b.Width == b.TipWidth {
			return min(b.Far(x), r.Y2) - r.Y1
		}
		return readable(shop, min(b.Far(x), r.Y2)-r.Y1) // along a taper no rule shows the exact width
	}
	row := layout.Board{
		Mark: lying.Name, Base: lying.Name, Species: b.Species, Thickness: lying.Thickness,
		Length: r.Length(), Width: width(r.X1), TipWidth: width(r.X2),
		Edges: b.Edges, Faces: b.Faces, Source: b.Source, Place: b.Place, Grade: b.Grade, Note: b.Note,
	}
	if lying.Blank == nil {
		roughen(&row, b, r)
	} else {
		smooth(&row, b, lying)
	}
	row.Width, row.TipWidth = max(1, row.Width), max(1, row.TipWidth)
	row.Cost = cost(shop, b, &row)
	row.Defects = carried(b, &row, r)
	if row.Source == layout.Yard {
		row.Source = layout.Rack // what is cut has been bought
	}
	return row
}

// roughen gives rough wood its warp and its edges.
func roughen(row, b *layout.Board, r layout.Rect) {
	l, w := r.Length(), min(r.Width(), b.FullWidth())
	row.Bow = part(b.Bow, l, l, b.Length, b.Length)
	row.Crook = part(b.Crook, l, l, b.Length, b.Length)
	row.Cup = part(b.Cup, w, w, b.FullWidth(), b.FullWidth())
	row.Twist = part(b.Twist, l, w, b.Length, b.FullWidth())
	switch {
	case r.Y1 > 0:
		row.Edges = layout.EdgesRough
	case r.Y2 < b.FullWidth() && b.Edges == layout.EdgesBoth:
		row.Edges = layout.EdgesOne
	}
}

// smooth gives trued wood its planed faces and straight edges. Its far edge is
// straight where it was sawn, and true all along where the wood reaches so far.
func smooth(row, b *layout.Board, lying steps.Lying) {
	row.Faces, row.Edges = layout.FacesPlaned, layout.EdgesBoth
	if blank := lying.Blank; blank.OpenFar && lying.Wood.Y2 >= blank.Usable.Y2 {
		row.Edges = layout.EdgesOne
	} else if row.Width != row.TipWidth {
		row.Edges = layout.EdgesOne
	}
}

// part is gap * a/A * b/B, rounded up.
func part(gap, a, b, wholeA, wholeB layout.Length) layout.Length {
	n := new(big.Int).Mul(big.NewInt(int64(gap)), big.NewInt(int64(a)))
	n.Mul(n, big.NewInt(int64(b)))
	d := new(big.Int).Mul(big.NewInt(int64(wholeA)), big.NewInt(int64(wholeB)))
	q, rest := n.DivMod(n, d, new(big.Int))
	if rest.Sign() > 0 {
		return layout.Length(q.Int64()) + 1
	}
	return layout.Length(q.Int64())
}

// cost is what a piece of a board is worth: by the shop's prices where the board's
// cost is by them, otherwise its share of that.
func cost(shop *layout.Shop, b, row *layout.Board) layout.Money {
	if usual, ok := shop.DefaultCost(b); ok && usual == b.Cost {
		worth, _ := shop.DefaultCost(row)
		return worth
	}
	return share(b, row)
}

// readable is a length rounded down to a 64th of an inch or a tenth of a
// millimetre.
func readable(shop *layout.Shop, l layout.Length) layout.Length {
	if shop.Units == layout.Inches {
		return l - l%layout.SixtyFourth
	}
	return l - l%(layout.Millimetre/10)
}

// share is the share of a board's cost that a piece of it has by its area,
// rounded down.
func share(b, row *layout.Board) layout.Money {
	n := new(big.Int).Mul(big.NewInt(int64(row.Length)), big.NewInt(int64(row.Width+row.TipWidth)))
	n.Mul(n, big.NewInt(int64(b.Cost)))
	d := new(big.Int).Mul(big.NewInt(int64(b.Length)), big.NewInt(int64(b.Width+b.TipWidth)))
	return layout.Money(n.Div(n, d).Int64())
}

// carried are the defects of a board that reach into a piece of it, in the frame of
// the piece. In crooked wood they may lie up to its shift further from the edge, see
// model section 6, and are marked so wide.
func carried(b, row *layout.Board, r layout.Rect) []layout.Defect {
	var list []layout.Defect
	for _, d := range b.Defects {
		if r.Y1 > 0 {
			d.Rect.Y2 += b.Shift(b.Length)
		}
		d.Rect = layout.Rect{
			X1: d.Rect.X1 - r.X1, X2: d.Rect.X2 - r.X1, Y1: d.Rect.Y1 - r.Y1, Y2: d.Rect.Y2 - r.Y1,
		}
		if on, some := onWood(row, d.Rect); some {
			d.Rect = on
			list = append(list, d)
		}
	}
	return list
}

// onWood is what of a place lies in the frame of a board, and whether any of that is
// on its wood: it may lie beyond the far edge where the board tapers.
func onWood(b *layout.Board, place layout.Rect) (on layout.Rect, some bool) {
	on = place.Intersect(b.Frame())
	return on, !on.Empty() && on.Y1 < max(b.Far(on.X1), b.Far(on.X2))
}
