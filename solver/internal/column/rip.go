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
// with an offcut along the reference edge, one along the far edge, or both.
func (b *Bench) ripFull(be blankEnds, k int, m mode) (best Value, last int) {
	w := b.w
	near, lie := w.nearOf(be.a, be.ends[k], 0), w.lieOf(be.a, be.ends[k])
	at := lie.profileAt
	j0 := w.y.up(near)
	n := w.y.up(w.top + w.shop.RipKerf)
	if j0 > n {
		return none, 0
	}
	b.rip.v = size(b.rip.v, n+2, 0)
	b.rip.from = room(b.rip.from, n+2)
	v, from := b.rip.v, b.rip.from
	b.markUseful(k, m)
	edge := b.newEdgeOffcut(be, k)
	best = none
	for j := j0; j <= n; j++ {
		if j > j0 && v[j-1] >= v[j] {
			v[j], from[j] = v[j-1], ripped{int32(j - 1), carriedStrip}
		}
		if edge != nil {
			if s := edge.worth(near, w.y.at(j)-w.shop.RipKerf); s > v[j] {
				v[j], from[j] = s, ripped{int32(j0), offcutStrip}
			}
		}
		rises := j == j0 || v[j] > v[j-1]
		if rises && edge != nil {
			if s := edge.worth(w.y.at(j), edge.top); s >= 0 && v[j]+s > best {
				best, last = v[j]+s, n+1
				from[n+1] = ripped{int32(j), offcutStrip}
			}
		}
		if j > w.y.n {
			continue
		}
		list := b.tried
		if !rises { // starting later gains nothing where it meets the same
			list = lie.anew[j]
		}
		for _, s := range list {
			id := at[s][j]
			if id < 0 || !w.allows(m, int(s)) || id == w.clearOf[s] && !b.useful[s] {
				continue
			}
			worth := b.rows[id][k]
			if to := j + w.strips[s].advance; worth > 0 && v[j]+worth > v[to] {
				v[to], from[to] = v[j]+worth, ripped{int32(j), s}
			}
		}
	}
	if v[n] > best {
		return v[n], n
	}
	return best, last
}

// markUseful lists the strips to try and marks those that, where nothing
// blocks, are worth more than every lower one; all of them where a strip of some
// thickness must be there or strips lean.
func (b *Bench) markUseful(k int, m mode) {
	w := b.w
	b.useful = size(b.useful, len(w.strips), false)
	b.tried = b.tried[:0]
	everywhere := len(w.grown) == 0 && !w.slants()
	all := m.must > 0 || len(w.leans) > 1
	var most Value
	for _, s := range w.byHeight {
		if all && w.allows(m, s) {
			b.useful[s] = true
		} else if id := w.clearOf[s]; id >= 0 && w.allows(m, s) && b.rows[id][k] > most {
			most, b.useful[s] = b.rows[id][k], true
		}
		if b.useful[s] || !everywhere && w.allows(m, s) {
			b.tried = append(b.tried, int32(s))
		}
	}
}

// edgeOffcut is an offcut that the rips of a trued blank leave along an edge, as
// long as the blank.
type edgeOffcut struct {
	w      *Board
	x1, x2 layout.Length
	top    layout.Length // as far across as an offcut can reach
}

// newEdgeOffcut is nil where the blank is too short for an offcut.
func (b *Bench) newEdgeOffcut(be blankEnds, k int) *edgeOffcut {
	w := b.w
	x1, x2 := w.x.at(be.a)+w.end, w.x.at(be.ends[k])-w.end
	if w.measure.rate == 0 || x2-x1 < w.shop.MinOffcutLength {
		return nil
	}
	return &edgeOffcut{w, x1, x2, min(w.top, w.wood.FarMin(layout.Span{Lo: x1, Hi: x2}))}
}

// worth is what the offcut between y1 and y2 across is worth; none where it is
// too narrow.
func (o *edgeOffcut) worth(y1, y2 layout.Length) Value {
	if y2-y1 < o.w.shop.MinOffcutWidth || y2 <= y1 || y2 > o.top {
		return none
	}
	return o.w.measure.worth(o.x1, o.x2, y1, y2)
}
