package column

import "sawbill/layout"

// ripWork is the scratch of the rips of one blank. V[j] is the most that the
// blank gives below position j when the next strip may start there.
type ripWork struct {
	v    []Value
	from []ripped
}

// ripped says how a state of the rips was reached: from prev by strip, or by a
// mark.
type ripped struct{ prev, strip int32 }

const (
	carriedStrip = -1
	offcutStrip  = -2
)

// ripFull is the most that a trued blank of the board's full width gives, from
// a to the k-th end. The trace is left in b.rip; last is where it begins.
//
//	V[j] = max(V[j-1], V[j - advance of a strip] + its worth)
//
// and at the end an offcut along the far edge.
func (b *Bench) ripFull(be blankEnds, k int, m mode) (best Value, last int) {
	w := b.w
	j0 := w.y.up(w.near)
	n := w.y.up(w.top + w.shop.RipKerf)
	if j0 > n {
		return none, 0
	}
	b.rip.v = size(b.rip.v, n+2, 0)
	b.rip.from = room(b.rip.from, n+2)
	v, from := b.rip.v, b.rip.from
	b.markUseful(k, m)
	far := b.newFarOffcut(be, k)
	best = none
	for j := j0; j <= n; j++ {
		if j > j0 && v[j-1] >= v[j] {
			v[j], from[j] = v[j-1], ripped{int32(j - 1), carriedStrip}
		}
		rises := j == j0 || v[j] > v[j-1]
		if rises && far != nil {
			if s := v[j] + far.worth(j); s > best {
				best, last = s, n+1
				from[n+1] = ripped{int32(j), offcutStrip}
			}
		}
		if j > w.y.n {
			continue
		}
		if !rises && len(w.grown) == 0 && !w.slants() {
			continue // starting later gains nothing
		}
		for _, s := range b.tried {
			id := w.profileAt[s][j]
			if id < 0 || !rises && w.profileAt[s][j-1] == id || id == w.clearOf[s] && !b.useful[s] {
				continue
			}
			worth := b.rows[id][k]
			if to := j + w.strips[s].advance; worth > 0 && v[j]+worth > v[to] {
				v[to], from[to] = v[j]+worth, ripped{int32(j), int32(s)}
			}
		}
	}
	if v[n] > best {
		return v[n], n
	}
	return best, last
}

// markUseful lists the strips to try and marks those that, where nothing
// blocks, are worth more than every lower one.
func (b *Bench) markUseful(k int, m mode) {
	w := b.w
	b.useful = size(b.useful, len(w.strips), false)
	b.tried = b.tried[:0]
	everywhere := len(w.grown) == 0 && !w.slants()
	var most Value
	for _, s := range w.byHeight {
		if id := w.clearOf[s]; id >= 0 && w.allows(m, s) && b.rows[id][k] > most {
			most, b.useful[s] = b.rows[id][k], true
		}
		if b.useful[s] || !everywhere && w.allows(m, s) {
			b.tried = append(b.tried, s)
		}
	}
}

// farOffcut is the offcut that the last rip leaves along the far edge of a
// trued blank.
type farOffcut struct {
	w          *Board
	x1, x2, y2 layout.Length
}

// newFarOffcut is nil where the blank is too short for an offcut.
func (b *Bench) newFarOffcut(be blankEnds, k int) *farOffcut {
	w := b.w
	x1, x2 := w.x.at(be.a)+w.end, w.x.at(be.ends[k])-w.end
	if w.measure.rate == 0 || x2-x1 < w.shop.MinOffcutLength {
		return nil
	}
	y2 := min(w.top, w.wood.FarMin(layout.Span{Lo: x1, Hi: x2}))
	return &farOffcut{w: w, x1: x1, x2: x2, y2: y2}
}

// worth is what the offcut is worth when it starts at position j.
func (o *farOffcut) worth(j int) Value {
	y1 := o.w.y.at(j)
	if o.y2-y1 < o.w.shop.MinOffcutWidth || o.y2 <= y1 {
		return none
	}
	return o.w.measure.worth(o.x1, o.x2, y1, o.y2)
}
