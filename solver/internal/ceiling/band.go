package ceiling

import "sawbill/layout"

// band is the offcuts that reach to about the same height under the far edge.
// Where the edge slants, an offcut is as high as the board is at its narrower
// end; those that end, or begin, in one stretch of the board are taken for as high
// as the highest of them.
type band struct {
	along  layout.Span   // the offcut lies within
	height layout.Length // at the most
	sure   layout.Length // at the least
}

// mostBands is how many stretches a slanting edge is divided into.
const mostBands = 3

// bands lists the kinds of offcut of a strip that begins at low and would be tall
// without the far edge.
func (w *Board) bands(low, tall layout.Length) []band {
	b := w.wood
	whole := layout.Span{Lo: 0, Hi: b.Length}
	narrow, wide := min(b.Width, b.TipWidth)-low, b.FullWidth()-low
	if narrow >= tall {
		return []band{{whole, tall, tall}}
	}
	var bands []band
	lo, hi := max(0, narrow), min(wide, tall)
	for i := range layout.Length(mostBands) {
		from, to := lo+(hi-lo)*i/mostBands, lo+(hi-lo)*(i+1)/mostBands
		if to >= w.shop.MinOffcutWidth {
			from = max(from, w.shop.MinOffcutWidth)
			bands = append(bands, band{w.within(low + from), to, from})
		}
	}
	return bands
}

// within is the part of the board that is at least so wide, or a little more.
func (w *Board) within(y layout.Length) layout.Span {
	b := w.wood
	span := layout.Span{Lo: 0, Hi: b.Length}
	if y <= min(b.Width, b.TipWidth) {
		return span
	}
	at := layout.Length(float64(y-b.Width) / float64(b.TipWidth-b.Width) * float64(b.Length))
	if b.TipWidth < b.Width {
		span.Hi = min(span.Hi, at+w.x.unit)
	} else {
		span.Lo = max(0, at-w.x.unit)
	}
	return span
}
