package ceiling

import (
	"math"
	"slices"

	"sawbill/layout"
)

// unknown stands for a row of which nothing is known in the blank at hand, unread
// for one that was laid but not read there.
const (
	unknown = none - 1
	unread  = none - 2
)

// start is where a blank starts, and the rows that were laid from there or from an
// earlier start: by row the chain, or none32.
type start struct {
	a    layout.Length
	laid []int32
	news int    // how often a row was laid
	told *start // the start before it, of which it knows everything as of so many of its news
	upTo int
}

// taken says how a state across a blank was reached: from a position, by an
// offer, or without one.
type taken struct{ prev, offer int32 }

// blank is the most that a trued blank from a to e and no shorter than short can be
// worth, or a rough one that is ripped before it is trued:
//
//	V[j] = max(V[j-1], V[j-lo] + a strip, V[k] + an offcut between k and j).
//
// The strips of the best way are looked at more closely, and the best way is
// sought anew, until nothing is left to look at; then known is true. It ends
// earlier when the blank is worth no more than enough, or the work is used up.
func (b *Bench) blank(a, e, short layout.Length, enough Value) (most Value, known bool) {
	s := b.startAt(a)
	b.plainAt = size(b.plainAt, len(b.plain), none)
	b.groupAt = size(b.groupAt, len(b.plain)>>groupBits+1, none)
	for i := range b.plain {
		if p := &b.plain[i]; short <= p.lane.longest {
			b.plainAt[i] = p.in(b.w, a, e)
			b.groupAt[i>>groupBits] = max(b.groupAt[i>>groupBits], b.plainAt[i])
		}
	}
	shift := b.w.shift(short)
	b.first = b.w.y.down(shift + b.w.near)
	b.rowAt = size(b.rowAt, len(b.rows), unread)
	b.work += len(b.plain) + len(b.rows)/8
	kinds := b.newBlankOffcuts(a, e, shift)
	for from := 0; ; {
		var last int
		most, last = b.across(s, e, kinds, from)
		b.last = last
		if most <= enough || b.ends() {
			return most, false
		}
		if from = b.lookCloser(s, e, last); from == len(b.up) {
			return most, true
		}
	}
}

// startAt is the start at a. What was laid from the start before it holds there,
// too: a strip that starts earlier is worth no less.
func (b *Bench) startAt(a layout.Length) *start {
	i, ok := slices.BinarySearchFunc(b.starts, a, func(s *start, a layout.Length) int { return int(min(max(s.a-a, -1), 1)) })
	if !ok {
		b.starts = slices.Insert(b.starts, i, &start{a: a, laid: size[int32](nil, len(b.rows), none32)})
	}
	s := b.starts[i]
	if i > 0 {
		s.learn(b, b.starts[i-1])
	}
	return s
}

// learn takes over what was laid from the start before it, if that is news.
func (s *start) learn(b *Bench, before *start) {
	if s.told == before && s.upTo == before.news {
		return
	}
	s.told, s.upTo = before, before.news
	for r, c := range before.laid {
		if c >= 0 && (s.laid[r] < 0 || b.chains[s.laid[r]].a < b.chains[c].a) {
			s.laid[r] = c
			s.news++
		}
	}
}

// across fills the programme from a position on; last is the state that the best
// way ends in.
func (b *Bench) across(s *start, e layout.Length, kinds []blankOffcuts, begin int) (best Value, last int) {
	n := b.top()
	if begin == 0 {
		b.up, b.from = size(b.up, n+1, Value(0)), size(b.from, n+1, taken{-1, none32})
	}
	for k := range kinds {
		kinds[k].reset()
	}
	v := b.up
	for j := begin; j <= n; j++ {
		v[j], b.from[j] = 0, taken{-1, none32}
		if j > 0 {
			v[j], b.from[j] = v[j-1], taken{int32(j - 1), none32}
		}
		for k := range kinds {
			if s, at := kinds[k].endingAt(v, j); s > v[j] {
				v[j], b.from[j] = s, taken{int32(at), none32}
			}
		}
		b.strips(s, e, j)
	}
	best, last = v[n], n
	for k := range kinds {
		if s, at := kinds[k].last(v); s > best {
			best, last = s, at
		}
	}
	return best, last
}

// top is the last position across: behind the far edge.
func (b *Bench) top() int {
	w := b.w
	return w.y.down(w.wood.FullWidth() + max(w.stripKerf, w.restKerf))
}

// strips offers the strips that end at position j, first the one that was best
// there the last time: few others are better, which is soon seen.
func (b *Bench) strips(s *start, e layout.Length, j int) {
	v, best, from := b.up, b.up[j], int32(none32)
	offers := b.offers[j]
	b.work += len(offers) / 2
	if i := b.former[j]; i >= 0 && int(offers[i].from) >= b.first {
		o := &offers[i]
		if worth := v[o.from] + b.worthOf(s, e, o, none); worth > best {
			best, from = worth, i
		}
	}
	for k := range b.groups[j] {
		g := &b.groups[j][k]
		if v[g.from]+b.groupAt[g.id] <= best {
			continue
		}
		for i := g.first; i < g.end; i++ {
			o := &offers[i]
			before := v[o.from]
			if before+b.plainAt[o.plain] <= best || int(o.from) < b.first {
				continue
			}
			if worth := before + b.worthOf(s, e, o, best-before); worth > best {
				best, from = worth, i
			}
		}
	}
	if from >= 0 {
		v[j], b.from[j], b.former[j] = best, taken{offers[from].from, from}, from
	}
}

// worthOf is what is known of a strip, or something between that and enough.
func (b *Bench) worthOf(s *start, e layout.Length, o *offer, enough Value) Value {
	worth := b.plainAt[o.plain]
	for _, r := range o.rows {
		if r < 0 || worth <= enough {
			break
		}
		v := b.rowAt[r]
		if v == unread {
			v = b.read(s, e, r)
		}
		if v != unknown {
			worth = min(worth, v)
		}
	}
	return worth
}

// read looks up what is known of a row.
func (b *Bench) read(s *start, e layout.Length, r int32) Value {
	v := unknown
	if c := s.laid[r]; c >= 0 {
		b.work += 4
		v = b.in(&b.chains[c], e) - b.before(&b.chains[c], s.a)
	}
	b.rowAt[r] = v
	return v
}

// lookCloser lays the strips of the way that ends in a state more exactly, each until it is
// found to be worth less or nothing more can be known of it. It gives the first position
// that may change, one behind the last when none may.
func (b *Bench) lookCloser(s *start, e layout.Length, last int) int {
	changed := len(b.up)
	for j := last; j > 0; {
		f := b.from[j]
		if f.prev < 0 {
			break
		}
		if f.offer >= 0 {
			o := &b.offers[j][f.offer]
			worth := b.up[j] - b.up[f.prev]
			for r := b.closer(s, o); r >= 0; r = b.closer(s, o) {
				b.lay(s, r)
				if b.read(s, e, r) < worth {
					changed = min(changed, b.rows[r].first)
					break
				}
			}
		}
		j = int(f.prev)
	}
	return changed
}

// lay lays a row from a start.
func (b *Bench) lay(s *start, r int32) {
	s.laid[r] = int32(len(b.chains))
	s.news++
	b.chains = append(b.chains, b.chain(&b.rows[r], s.a))
	b.rowAt[r] = unread
}

// closer is the row of an offer that is to be laid next, none32 when all were.
func (b *Bench) closer(s *start, o *offer) int32 {
	next := o.rows[0]
	for _, r := range o.rows {
		if r < 0 {
			break
		}
		if s.laid[r] >= 0 {
			if next = none32; b.chains[s.laid[r]].a < s.a {
				next = r
			}
		} else if next < 0 {
			next = r
		}
	}
	return next
}

// blankOffcuts seeks the offcuts of one kind that run along a whole blank: those
// ripped off it rough, or those ripped off it once it is trued. Under a slanting
// edge they are divided by how long they are.
type blankOffcuts struct {
	w      *Board
	span   layout.Span   // they lie within
	sure   layout.Span   // they contain
	low    layout.Length // none starts lower
	top    layout.Length // none reaches higher
	apart  layout.Length // the least to the strip before one, beyond the kerf of a strip
	behind layout.Length // the least to what lies beyond one
	rough  bool          // it comes off before the blank is trued
	first  int           // the position across where one may start at least
	next   int
	most   Value
	mostAt int
}

// newBlankOffcuts lists the kinds of a blank from a to e. An offcut that comes off
// before the blank is trued is as long as it is and reaches to the edges of the
// board, but what lies beside it is jointed; one that comes off afterwards loses what
// the blank loses to its edges and ends.
func (b *Bench) newBlankOffcuts(a, e, shift layout.Length) []blankOffcuts {
	w := b.w
	b.runs = b.runs[:0]
	if w.rate == 0 {
		return nil
	}
	jointed := w.shop.RoughRipKerf + w.shop.EdgeJoint
	b.addRuns(a, e, blankOffcuts{low: shift, top: w.wood.FullWidth(), apart: jointed - w.stripKerf, behind: jointed, rough: true})
	b.addRuns(a+w.end, e-w.end, blankOffcuts{low: shift + w.near, top: w.wood.FullWidth() - w.far, behind: w.stripKerf})
	return b.runs
}

// addRuns adds the offcuts of a kind that lie between two places.
func (b *Bench) addRuns(lo, hi layout.Length, o blankOffcuts) {
	w := b.w
	within := layout.Span{Lo: max(0, lo-w.soon), Hi: min(hi+w.late, w.wood.Length)}
	long := within.Len()
	if long < w.shop.MinOffcutLength {
		return
	}
	o.w, o.first, o.most = w, w.y.down(o.low), none
	if w.wood.Width == w.wood.TipWidth {
		o.span, o.sure = within, within
		b.runs = append(b.runs, o)
		return
	}
	top, bands := o.top, layout.Length(mostBands)
	switch full := w.wood.FarMin(within) + 2*layout.Micrometre; {
	case !w.fine():
	case w.falls(long) <= w.shop.MinOffcutWidth && !w.spotted(within):
		// The longest is worth the most where it is high enough, for it is higher than the edge
		// falls along it, and no shorter one leaves out a defect. Others lie above what is left of
		// its height then.
		o.span, o.sure, o.top = within, within, min(top, full)
		b.runs = append(b.runs, o)
		o.low = max(o.low, full-w.shop.MinOffcutWidth)
	default:
		bands = fineBands
	}
	for i := range bands {
		most, least := long*(i+1)/bands, long*i/bands
		if most < w.shop.MinOffcutLength {
			continue
		}
		o.span, o.sure = layout.Span{Lo: within.Lo, Hi: within.Lo + most}, layout.Span{Lo: within.Lo, Hi: within.Lo + least}
		if w.wood.TipWidth > w.wood.Width {
			o.span, o.sure = layout.Span{Lo: within.Hi - most, Hi: within.Hi}, layout.Span{Lo: within.Hi - least, Hi: within.Hi}
		}
		o.sure.Hi = max(o.sure.Hi, min(o.sure.Lo+w.shop.MinOffcutLength, within.Hi))
		if o.top = min(top, w.wood.FarMin(o.sure)+2*layout.Micrometre); o.top-o.low >= w.shop.MinOffcutWidth || !w.fine() {
			b.runs = append(b.runs, o)
		}
	}
}

// spotted reports whether a defect lies somewhere along a span.
func (w *Board) spotted(along layout.Span) bool {
	return slices.ContainsFunc(w.spots, func(r layout.Rect) bool { return shared(r.Along(), along) > 0 })
}

// falls is by how much the far edge comes nearer to the reference edge, or goes away from it,
// over a length.
func (w *Board) falls(long layout.Length) layout.Length {
	slope := math.Abs(float64(w.wood.Width-w.wood.TipWidth)) / float64(w.wood.Length)
	return layout.Length(math.Ceil(slope * float64(long)))
}

// fineBands is into how many ranges the lengths of offcuts under a slanting edge are divided
// where nothing is taken together.
const fineBands = 24

// reset begins anew.
func (o *blankOffcuts) reset() { o.next, o.most, o.mostAt = o.first, none, 0 }

// endingAt is the most with an offcut that ends before position j, and where the
// offcut starts.
func (o *blankOffcuts) endingAt(v []Value, j int) (Value, int) {
	return o.ending(v, j, o.w.y.upTo(j)-o.behind)
}

// last is the most with an offcut along the far edge.
func (o *blankOffcuts) last(v []Value) (Value, int) { return o.ending(v, o.w.y.n+1, o.top) }

func (o *blankOffcuts) ending(v []Value, j int, end layout.Length) (Value, int) {
	w := o.w
	end = min(end, o.top)
	for o.next < j && o.start(o.next)+w.shop.MinOffcutWidth <= end {
		if o.next == o.first || v[o.next] > v[o.next-1] {
			if s := v[o.next] - Value(o.below(o.start(o.next))); s > o.most {
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

// start is where an offcut at a position starts at the least: behind a strip, or
// where no strip can be before it, at the reference edge.
func (o *blankOffcuts) start(at int) layout.Length {
	y := o.w.y.at(at)
	if at > o.first {
		y += o.apart
	}
	return max(o.low, y)
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
