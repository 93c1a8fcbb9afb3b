package ceiling

import "sawbill/layout"

// blank is the most that a trued blank from a to e can be worth, or a rough one
// that is ripped before it is trued:
//
//	V[j] = max(V[j-1], V[j-lo] + a strip, V[k] + an offcut between k and j).
func (b *Bench) blank(a, e layout.Length) Value {
	w := b.w
	b.Blanks++
	chains := b.chainsFrom(a)
	b.rowAt = size(b.rowAt, len(b.rows), none)
	for i := range b.rows {
		b.rowAt[i] = b.in(&chains[i], &b.rows[i], e)
	}
	first, n := w.y.down(w.near), w.y.down(w.wood.FullWidth()+max(w.stripKerf, w.restKerf))
	b.v = size(b.v, n+2, Value(0))
	v := b.v
	o := b.newBlankOffcuts(a, e)
	for j := 0; j <= n; j++ {
		if j > 0 {
			v[j] = max(v[j], v[j-1])
		}
		if o != nil {
			v[j] = max(v[j], o.endingAt(v, j))
		}
		if j >= first && j <= w.y.n {
			b.strips(v, j, j == first || v[j] > v[j-1])
		}
	}
	if o != nil {
		return max(v[n], o.last(v))
	}
	return v[n]
}

// strips offers the strips that start at position j.
func (b *Bench) strips(v []Value, j int, rises bool) {
	var best Value
	for _, o := range b.offers[j] {
		worth := b.rowAt[o.row]
		if worth <= best {
			continue
		}
		best = worth
		if to := min(j+o.lo, len(v)-1); v[j]+worth > v[to] {
			v[to] = v[j] + worth
		}
	}
}

// chainsFrom are the strips of blanks that start at a.
func (b *Bench) chainsFrom(a layout.Length) []chain {
	if chains, ok := b.chains[a]; ok {
		return chains
	}
	b.Starts++
	chains := make([]chain, len(b.rows))
	for i := range b.rows {
		chains[i] = b.chain(&b.rows[i], a)
	}
	b.chains[a] = chains
	return chains
}

// blankOffcuts seeks the offcuts that run along a whole blank.
type blankOffcuts struct {
	w    *Board
	a, e layout.Length
	next int
	most Value
}

func (b *Bench) newBlankOffcuts(a, e layout.Length) *blankOffcuts {
	if b.w.rate == 0 || e-a < b.w.shop.MinOffcutLength {
		return nil
	}
	return &blankOffcuts{w: b.w, a: a, e: e, most: none}
}

// endingAt is the most with an offcut that ends before position j.
func (o *blankOffcuts) endingAt(v []Value, j int) Value {
	return o.ending(v, j, o.w.y.at(j+1)-o.w.restKerf)
}

// last is the most with an offcut along the far edge.
func (o *blankOffcuts) last(v []Value) Value {
	return o.ending(v, o.w.y.n+1, o.w.wood.FullWidth())
}

func (o *blankOffcuts) ending(v []Value, j int, end layout.Length) Value {
	w := o.w
	for o.next < j && w.y.at(o.next)+w.shop.MinOffcutWidth <= end {
		if o.next == 0 || v[o.next] > v[o.next-1] {
			o.most = max(o.most, v[o.next]-Value(o.below(w.y.at(o.next))))
		}
		o.next++
	}
	if o.most == none {
		return none
	}
	return o.most + Value(o.below(end)) + 2
}

// below is the worth of the blank's wood up to y.
func (o *blankOffcuts) below(y layout.Length) float64 {
	a := o.w.newArea(0, y, func(spot layout.Rect) layout.Length {
		return max(0, min(y, spot.Y2)-spot.Y1)
	})
	return (a.upTo(o.e) - a.upTo(o.a)) * o.w.rate
}
