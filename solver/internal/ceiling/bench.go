package ceiling

import (
	"slices"
)

// Bench is where one goroutine bounds boards: scratch that is used again from
// one board to the next. The zero Bench is ready to use.
type Bench struct {
	w     *Board
	price []Value

	rows   []row
	plain  []plain   // by height of every lane
	offers [][]offer // by position across at which they end
	groups [][]group // of these
	starts []*start  // in order along
	chains []chain

	worth    []Value // of the cells of a strip, by class and zone
	column   []Value // a stack across
	keeps    []Value // the same less the worth of the wood below
	leaning  []Value // the same where its last piece leans otherwise than the strip
	first    int     // the position across at which the first strip of the blank at hand may start
	v        []Value // along a strip, with a part
	bare     []Value // the same without one
	kept     []Value // the same as v, with an offcut as the last
	up       []Value // across a blank
	from     []taken
	former   []int32   // by position across, the offer that was the best the last time
	plainAt  []Value   // by plain strip, what it is worth in the blank at hand
	groupAt  []Value   // by group of these, the most that any is worth there
	rowAt    []Value   // by row, the same; unknown where it was not laid from this start
	measured [][]Value // scratch: worth of offcuts up to every position
	level    levelOffcuts
	edge     edgeOffcuts
	runs     []blankOffcuts
	mem      [][]Value // of chains, in large pieces
	piece    int       // which of these is in use
	used     int       // how much of it
	spare    [][]Value // rows that may be used again

	cuts  *cuts // of the last bound; nil where it was found without
	last  int   // the state that the best way across the last blank ends in
	whole bool  // the sketch at hand tells everything

	work, most int // steps made for the bound at hand, and how many may be
	ready      int // steps made before, to make ready for it
	stop       func() bool
}

// row is strips that are worth the same at the prices at hand, wherever a blank
// starts and ends.
type row struct {
	lane    *lane
	cells   []cells
	offcuts offcuts // nil where it keeps none
	first   int     // the first position across at which a strip of it ends
}

// cells is what a class gives in a row.
type cells struct {
	class   *class
	advance int
	zoneAt  []int16
	worth   []Value // by zone
}

// offer is a strip from a position across to the one of which it is an offer. What it is worth is known in steps, each no more than the one
// before: as if nothing were in its way, and then by rows: as the best of the
// strips that meet the same marks; as the best of those near by; by itself.
type offer struct {
	from, plain int32
	rows        [3]int32 // none32 behind the last; none where nothing is in its way
}

const none32 = -1

// Work is how many steps the last bound took.
func (b *Bench) Work() int { return b.ready + b.work }

// size gives a slice of n values, all v, in the memory of s.
func size[T any](s []T, n int, v T) []T {
	s = slices.Grow(s[:0], n)[:n]
	for i := range s {
		s[i] = v
	}
	return s
}

// ends reports whether the work is used up, or it is time to stop.
func (b *Bench) ends() bool { return b.work >= b.most || b.stopped() }

func (b *Bench) stopped() bool { return b.stop != nil && b.stop() }

// keptPieces is the most pieces of memory, of half a megabyte each, that are kept for the next
// board.
const keptPieces = 64

// prepare works out what everything up to a cell is worth; it reports false when
// it was stopped.
func (b *Bench) prepare(w *Board, price []Value) bool {
	b.w, b.price = w, price
	b.rows, b.plain = b.rows[:0], b.plain[:0]
	b.offers = slices.Grow(b.offers[:0], b.top()+1)[:b.top()+1]
	for j := range b.offers {
		b.offers[j] = b.offers[j][:0]
	}
	b.starts, b.chains = b.starts[:0], b.chains[:0]
	b.piece, b.used = 0, 0
	if len(b.mem) > keptPieces {
		clear(b.mem[keptPieces:])
		b.mem = b.mem[:keptPieces]
	}
	b.former = size[int32](b.former, b.top()+1, none32)
	b.work, b.ready = 0, 0
	for i := range w.lanes {
		b.addLane(&w.lanes[i])
	}
	b.setFirst()
	b.setGroups()
	return !b.stopped()
}

// groupBits is the logarithm of how many plain strips make a group: where the best of a group
// falls short, none of it need be looked at.
const groupBits = 3

// group is neighbouring offers of strips of a lane of nearly the same height.
type group struct {
	from       int32 // where the first of them starts across, the furthest from the reference edge
	id         int32
	first, end int32 // of the offers
}

// setGroups divides the offers into groups. In one lane they go on from low strips to high
// ones, so the first of a group starts the furthest from the reference edge.
func (b *Bench) setGroups() {
	b.groups = slices.Grow(b.groups[:0], len(b.offers))[:len(b.offers)]
	for j, offers := range b.offers {
		list := b.groups[j][:0]
		for i := range offers {
			o, n := &offers[i], len(list)-1
			if id := o.plain >> groupBits; n < 0 || id != list[n].id || o.from > offers[i-1].from {
				list = append(list, group{from: o.from, id: id, first: int32(i)})
				n++
			}
			list[n].end = int32(i + 1)
		}
		b.groups[j] = list
	}
}

// setFirst finds where the strips of every row end first.
func (b *Bench) setFirst() {
	for i := range b.rows {
		b.rows[i].first = len(b.offers)
	}
	for j := range b.offers {
		for _, o := range b.offers[j] {
			for _, r := range o.rows {
				if r >= 0 {
					b.rows[r].first = min(b.rows[r].first, j)
				}
			}
		}
	}
}

// cellClear is the most that a cell of a class is worth where nothing is in the
// way.
func (b *Bench) cellClear(l *lane, h height, c *class, s *stacks) Value {
	best := s.alone(h.hi + b.extra(l))
	for i := range c.pieces {
		if q := &c.pieces[i]; b.gain(q) > best && q.standsIn(h) {
			best = b.gain(q)
		}
	}
	return best
}

// gain is what a leaf of a piece is worth.
func (b *Bench) gain(q *piece) Value { return b.price[q.row] * Value(q.layers) }

// standsIn reports whether a strip of its width has one of a range of heights.
func (q *piece) standsIn(h height) bool {
	return q.native && q.alone <= h.hi && q.aloneMost >= h.lo
}

// room gives a slice of n values of any content, in the memory of s.
func room[T any](s []T, n int) []T { return slices.Grow(s[:0], n)[:n] }

// extra is how many positions a stack may reach beyond its strip, for the kerf
// above it may be wider than that of the strip.
func (b *Bench) extra(l *lane) int {
	w := b.w
	return int((max(0, w.shop.RipKerf-l.kerf) + w.y.unit - 1) / w.y.unit)
}

// cell is the most that a cell of a class is worth in a zone of a strip.
func (b *Bench) cell(l *lane, h height, j int, c *class, s *stacks, z *zone) Value {
	best := s.most(z, j, j+h.hi+b.extra(l))
	for i := range c.pieces {
		q := &c.pieces[i]
		if b.gain(q) > best && q.standsIn(h) && j+q.advance <= z.top && !q.fails(c.hits[z.hit], q.across[j]) {
			best = b.gain(q)
		}
	}
	return best
}
