package ceiling

import "sawbill/layout"

// band is the offcuts that are about equally high under the far edge: what defects take
// of them is told by the lowest.
type band struct {
	most   layout.Length // how high at the most
	sure   layout.Length // and at the least
	slants bool          // the far edge cuts in
}

// mostBands is into how many ranges the heights under a slanting edge are divided.
const mostBands = 3

// bands lists the kinds of offcut of a strip that begins at low and would be tall
// without the far edge, the lowest first.
func (w *Board) bands(low, tall layout.Length) []band {
	b := w.wood
	narrow, wide := min(b.Width, b.TipWidth)-low, b.FullWidth()-low
	if narrow >= tall {
		return []band{{tall, tall, false}}
	}
	var bands []band
	lo, hi := max(0, narrow), min(wide, tall)
	for i := range layout.Length(mostBands) {
		from, to := lo+(hi-lo)*i/mostBands, lo+(hi-lo)*(i+1)/mostBands
		if to >= w.shop.MinOffcutWidth {
			bands = append(bands, band{to, max(from, w.shop.MinOffcutWidth), true})
		}
	}
	return bands
}
