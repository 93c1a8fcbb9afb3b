package column

import "sawbill/layout"

// filling is the state of building a column within limits.
type filling struct {
	price []Value // what the pieces are worth
	left  []int   // how many are still wanted, by row
}

const fillTries = 4

// fillStrip fills one strip with what is still wanted. The strip is solved with
// the parts that are left; where it takes too many of one, again at a lower
// price for that one, and the best try counts. Pieces beyond the limit are left
// as waste.
func (b *Bench) fillStrip(strip *layout.Node, be blankEnds, l lane) {
	w, f := b.w, b.fill
	asked := make([]Value, len(f.price))
	for i, v := range f.price {
		if f.left[i] > 0 {
			asked[i] = v
		}
	}
	var best *layout.Node
	var most Value = none
	for range fillTries {
		b.setWorth(asked, f.left)
		try := &layout.Node{Rect: strip.Rect, Lean: strip.Lean}
		b.layStrip(try, be, l)
		counts := w.CountParts(try)
		if v := f.worth(counts); v > most {
			best, most = try, v
		}
		if !lower(asked, counts, f.left) {
			break
		}
	}
	*strip = *best
	w.cutSurplus(strip, f.left)
}

// worth is what the wanted among some pieces are worth.
func (f *filling) worth(counts []int) Value {
	var sum Value
	for i, n := range counts {
		sum += Value(min(n, f.left[i])) * f.price[i]
	}
	return sum
}

// cutSurplus makes waste of pieces that are not wanted and counts down the
// others.
func (w *Board) cutSurplus(n *layout.Node, left []int) {
	if n.Part != "" {
		if row := w.rows[n.Part]; left[row] >= n.Pieces() {
			left[row] -= n.Pieces()
		} else {
			*n = layout.Node{Rect: n.Rect}
		}
	}
	for _, c := range n.Children {
		w.cutSurplus(c, left)
	}
}

// setWorth works out what the leaves of every piece are worth. Leaves of more layers
// than caps are not wanted.
func (b *Bench) setWorth(price []Value, caps []int) {
	b.worth = room(b.worth, len(b.w.pieces))
	for i, q := range b.w.pieces {
		b.worth[i] = Value(q.layers) * price[q.row]
		if caps != nil && q.layers > caps[q.row] {
			b.worth[i] = 0
		}
	}
}

// setPrices works out the cells of every profile at some prices.
func (b *Bench) setPrices(price []Value) {
	b.setWorth(price, b.caps)
	for id := range b.w.profiles {
		b.setCells(id)
	}
}
