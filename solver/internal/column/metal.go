package column

import (
	"slices"

	"sawbill/layout"
)

// metalIn reports whether a kerf right across the board would meet metal.
func (w *Board) metalIn(along layout.Span) bool {
	along.Lo, along.Hi = max(along.Lo, 0), min(along.Hi, w.wood.Length)
	return slices.ContainsFunc(w.metal, func(m layout.Rect) bool { return m.Along().Overlaps(along) })
}

// metalAfter reports whether the crosscut behind x would meet metal.
func (w *Board) metalAfter(x layout.Length) bool {
	return x < w.wood.Length && w.metalIn(layout.Span{Lo: x, Hi: x + w.shop.CrosscutKerf})
}

// hasMetal reports whether a piece of the board that is as long as its rough
// crosscut blank holds metal.
func (w *Board) hasMetal(r layout.Rect) bool {
	if len(w.metal) == 0 {
		return false
	}
	shift := w.wood.Shift(r.Length())
	return slices.ContainsFunc(w.metal, func(m layout.Rect) bool {
		m.Y2 += shift
		return m.Overlaps(r)
	})
}

// roughKerfOK reports whether a rough rip whose kerf starts at y meets no metal.
func (b *Bench) roughKerfOK(be blankEnds, k int, y layout.Length) bool {
	w := b.w
	return len(w.metal) == 0 || !w.hasMetal(layout.Rect{
		X1: w.x.at(be.a), X2: w.x.at(be.ends[k]), Y1: max(0, y), Y2: min(y+w.shop.RoughRipKerf, w.wood.FullWidth()),
	})
}
