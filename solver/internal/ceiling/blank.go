package ceiling

import "sawbill/layout"

// unknown stands for a row that was not laid from the start at hand.
const unknown = none - 1

// start is where a blank starts: the strips laid from there so far.
type start struct {
	a      layout.Length
	laid   []int32 // rows, in the order in which they were needed
	chains []chain
}

// taken says how a state across a blank was reached: from a position, by an
// offer, or without one.
type taken struct{ prev, offer int32 }

// blank is the most that a trued blank from a to e can be worth, or a rough one
// that is ripped before it is trued:
//
//	V[j] = max(V[j-1], V[j-lo] + a strip, V[k] + an offcut between k and j).
//
// Afterwards the strips of the best way are looked at more closely; known is true
// when nothing was left to look at, otherwise the next time may give less.
func (b *Bench) blank(a, e layout.Length) (most Value, known bool) {
	s := b.startAt(a)
	b.plainAt = size(b.plainAt, len(b.plain), none)
	for i := range b.plain {
		b.plainAt[i] = b.plain[i].in(b.w, a, e)
	}
	b.rowAt = size(b.rowAt, len(b.rows), unknown)
	for i, r := range s.laid {
		b.rowAt[r] = b.in(&s.chains[i], &b.rows[r], e)
	}
	b.work += len(b.plain) + len(b.rows)/4 + 4*len(s.laid)
	most, last := b.across(a, e)
	return most, !b.lookCloser(s, e, last)
}

func (b *Bench) startAt(a layout.Length) *start {
	s, ok := b.starts[a]
	if !ok {
		s = &start{a: a}
		b.starts[a] = s
	}
	return s
}

// across fills the programme; last is the state that the best way ends in.
func (b *Bench) across(a, e layout.Length) (best Value, last int) {
	w := b.w
	first, n := w.y.down(w.near), w.y.down(w.wood.FullWidth()+max(w.stripKerf, w.restKerf))
	b.v = size(b.v, n+2, Value(0))
	b.from = size(b.from, n+2, taken{-1, none32})
	v := b.v
	kinds := b.newBlankOffcuts(a, e)
	for j := 0; j <= n; j++ {
		if j > 0 && v[j-1] >= v[j] {
			v[j], b.from[j] = v[j-1], taken{int32(j - 1), none32}
		}
		for k := range kinds {
			if s, at := kinds[k].endingAt(v, j); s > v[j] {
				v[j], b.from[j] = s, taken{int32(at), none32}
			}
		}
		if j >= first && j <= w.y.n {
			b.strips(j)
		}
	}
	best, last = v[n], n
	for k := range kinds {
		if s, at := kinds[k].last(v); s > best {
			best, last = s, at
		}
	}
	return best, last
}

// strips offers the strips that start at position j.
func (b *Bench) strips(j int) {
	v, best := b.v, Value(0)
	b.work += len(b.offers[j])
	for i := range b.offers[j] {
		o := &b.offers[j][i]
		worth := b.plainAt[o.plain]
		if worth <= best {
			continue
		}
		if len(o.rows) > 0 {
			if worth = b.worthOf(o, worth); worth <= best {
				continue
			}
		}
		best = worth
		if to := min(j+o.lo, len(v)-2); v[j]+worth > v[to] {
			v[to], b.from[to] = v[j]+worth, taken{int32(j), int32(i)}
		}
	}
}

// worthOf is what is known of a strip in whose way there is something.
func (b *Bench) worthOf(o *offer, worth Value) Value {
	for _, r := range o.rows {
		v := b.rowAt[r]
		if v == unknown {
			break
		}
		worth = min(worth, v)
	}
	return worth
}

// lookCloser lays the strips of the way that ends in a state more exactly; it
// reports false when all of them were.
func (b *Bench) lookCloser(s *start, e layout.Length, last int) bool {
	closer := false
	for j := last; j > 0; {
		f := b.from[j]
		if f.prev < 0 {
			break
		}
		if f.offer >= 0 {
			closer = b.closer(s, e, &b.offers[f.prev][f.offer]) || closer
		}
		j = int(f.prev)
	}
	return closer
}

// closer lays the next row of an offer; it reports false when all were.
func (b *Bench) closer(s *start, e layout.Length, o *offer) bool {
	for _, r := range o.rows {
		if b.rowAt[r] == unknown {
			c := b.chain(&b.rows[r], s.a)
			s.laid, s.chains = append(s.laid, r), append(s.chains, c)
			b.rowAt[r] = b.in(&c, &b.rows[r], e)
			return true
		}
	}
	return false
}

// blankOffcuts seeks the offcuts of one kind that run along a whole blank: under a
// slanting edge they are divided by how long they are.
type blankOffcuts struct {
	w      *Board
	span   layout.Span // they lie within
	sure   layout.Span // they contain
	top    layout.Length
	next   int
	most   Value
	mostAt int
}

func (b *Bench) newBlankOffcuts(a, e layout.Length) []blankOffcuts {
	w := b.w
	if w.rate == 0 || e-a < w.shop.MinOffcutLength {
		return nil
	}
	b.runs = b.runs[:0]
	if w.wood.Width == w.wood.TipWidth {
		whole := layout.Span{Lo: a, Hi: e}
		return append(b.runs, blankOffcuts{w: w, span: whole, sure: whole, top: w.wood.FullWidth(), most: none})
	}
	for i := range layout.Length(mostBands) {
		long, short := (e-a)*(i+1)/mostBands, (e-a)*i/mostBands
		if long < w.shop.MinOffcutLength {
			continue
		}
		o := blankOffcuts{w: w, span: layout.Span{Lo: a, Hi: a + long}, sure: layout.Span{Lo: a, Hi: a + short}, most: none}
		if w.wood.TipWidth > w.wood.Width {
			o.span, o.sure = layout.Span{Lo: e - long, Hi: e}, layout.Span{Lo: e - short, Hi: e}
		}
		o.sure.Hi = max(o.sure.Hi, min(o.sure.Lo+w.shop.MinOffcutLength, e))
		o.top = w.wood.FarMin(o.sure) + 2*layout.Micrometre
		b.runs = append(b.runs, o)
	}
	return b.runs
}

// endingAt is the most with an offcut that ends before position j, and where the
// offcut starts.
func (o *blankOffcuts) endingAt(v []Value, j int) (Value, int) {
	return o.ending(v, j, o.w.y.at(j+1)-o.w.restKerf)
}

// last is the most with an offcut along the far edge.
func (o *blankOffcuts) last(v []Value) (Value, int) { return o.ending(v, o.w.y.n+1, o.top) }

func (o *blankOffcuts) ending(v []Value, j int, end layout.Length) (Value, int) {
	w := o.w
	end = min(end, o.top)
	for o.next < j && w.y.at(o.next)+w.shop.MinOffcutWidth <= end {
		if o.next == 0 || v[o.next] > v[o.next-1] {
			if s := v[o.next] - Value(o.below(w.y.at(o.next))); s > o.most {
				o.most, o.mostAt = s, o.next
			}
		}
		o.next++
	}
	if o.most == none {
		return none, 0
	}
	return o.most + Value(o.below(end)) + 2, o.mostAt
}

// below is the worth of such an offcut's wood up to y.
func (o *blankOffcuts) below(y layout.Length) float64 {
	sum := float64(o.span.Len()) * float64(y)
	for _, s := range o.w.spots {
		if along := shared(s.Along(), o.sure); along > 0 && y > s.Y1 {
			sum -= float64(along) * float64(min(y, s.Y2)-s.Y1)
		}
	}
	return sum / mm2 * o.w.rate
}
