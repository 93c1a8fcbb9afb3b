package ceiling

import (
	"encoding/binary"
	"slices"

	"sawbill/layout"
)

// countedRow is strips of a range of heights that may hold the same.
type countedRow struct {
	row
	options [][][]rowOption // by class of the row, by zone
	tallies []tally         // of the options, each once
}

// rowOption is what a cell of a row may hold: which of the tallies, and what its offcuts are
// worth.
type rowOption struct {
	tally int
	worth Value
}

// strip is a strip that a blank may hold: it starts at a position across, takes some positions
// at least, and is of a row.
type strip struct{ from, to, row int }

// setStrips lists the strips of the board, and their rows.
func (c *Counted) setStrips() {
	for i := range c.w.lanes {
		l := &c.w.lanes[i]
		known := map[string]int{}
		for _, h := range l.heights {
			if c.b.ends() {
				return
			}
			for j := range c.w.y.n + 1 {
				if !c.w.fits(l, h, j) {
					continue
				}
				r, key := c.newRow(l, h, j)
				if r == nil {
					continue
				}
				id, ok := known[key]
				if !ok {
					id = len(c.rows)
					known[key], c.rows = id, append(c.rows, r)
				}
				c.strips = append(c.strips, strip{j, j + h.lo, id})
			}
		}
	}
	slices.SortStableFunc(c.strips, func(a, b strip) int { return a.to - b.to })
}

// newRow is the row of a strip from position j, and a key that is the same for rows that are
// the same; nil where the strip holds nothing.
func (c *Counted) newRow(l *lane, h height, j int) (*countedRow, string) {
	r := &countedRow{row: row{lane: l, offcuts: c.w.offcutsOf(l, h, []int{j})}}
	var key []byte
	add := func(n int64) { key = binary.LittleEndian.AppendUint64(key, uint64(n)) }
	if l.bare && len(r.offcuts) == 0 {
		return nil, ""
	}
	for i := range l.classes {
		k := &l.classes[i]
		own := cells{k, k.advance, k.zoneAt, make([]Value, len(k.zones))}
		options, holds := make([][]rowOption, len(k.zones)), false
		add(-1)
		for z := range k.zones {
			list := c.options(l, h, j, k, &k.zones[z])
			own.worth[z] = none
			add(int64(len(list)))
			for _, o := range list {
				own.worth[z], holds = max(own.worth[z], o.all), true
				n := slices.Index(r.tallies, o.tally)
				if n < 0 {
					n = len(r.tallies)
					r.tallies = append(r.tallies, o.tally)
				}
				options[z] = append(options[z], rowOption{n, o.worth})
				add(int64(o.tally))
				add(int64(o.worth))
			}
		}
		c.b.work += stepsReady * len(k.zones)
		if holds {
			r.cells, r.options = append(r.cells, own), append(r.options, options)
		}
	}
	if len(r.cells) == 0 && !l.bare {
		return nil, ""
	}
	for i := range r.offcuts {
		m := &r.offcuts[i]
		add(int64(m.most))
		add(int64(m.sure))
		if m.slants {
			add(int64(m.low))
		}
		for _, h := range m.holes {
			add(int64(h.along.Lo))
			add(int64(h.cover))
		}
	}
	return r, string(key)
}

// chainKey is a row that is laid from a place on.
type chainKey struct {
	row int
	a   layout.Length
}

// climb is a function that only rises, in whole ten-thousandths, from position first on; less
// than nothing where there is none.
type climb struct {
	first int
	v     []int32
}

// newClimb holds what some values rise to from a position on, rounded up.
func newClimb(v []Value, first int) climb {
	s := climb{first, make([]int32, max(0, len(v)-first))}
	most := int32(-1)
	for i := range s.v {
		if w := v[first+i]; w >= 0 {
			most = max(most, int32((w+tenThousandth-1)/tenThousandth))
		}
		s.v[i] = most
	}
	return s
}

// upTo is the value at position i; none before the first.
func (s *climb) upTo(i int) Value {
	if i < s.first || len(s.v) == 0 {
		return none
	}
	v := s.v[min(i-s.first, len(s.v)-1)]
	if v < 0 {
		return none
	}
	return Value(v) * tenThousandth
}

// laid is what a row is worth from a start on, without regard to what it holds or with a tally:
// by position behind the last part, and behind a last offcut where that may reach further.
type laid struct {
	tally       tally
	price       Value // of the pieces
	worth, kept climb
}

// in is what it is worth in a blank that ends at e; none where it is not laid there.
func (l *laid) in(w *Board, e layout.Length) Value {
	best := l.worth.upTo(w.x.down(e - w.inset + w.shop.CrosscutKerf))
	if w.inset > w.end {
		best = max(best, l.kept.upTo(w.x.down(e-w.end+w.shop.CrosscutKerf)))
	}
	return best
}

// countedChain is a row laid from a start on, by what it holds.
type countedChain struct {
	a     layout.Length
	reach layout.Length // no blank from there that matters ends later
	list  []laid
	free  *laid // with any number of pieces
	slack Value // by so much less than that is worth what was left out
	bare  climb // what offcuts alone are worth
}

// byStart orders chains along.
func byStart(ch *countedChain, a layout.Length) int { return int(min(max(ch.a-a, -1), 1)) }

// relaxed is a row laid from a place on where any number of pieces counts.
func (c *Counted) relaxed(r int, a layout.Length) *laid {
	key := chainKey{r, a}
	l, ok := c.free[key]
	if !ok {
		l = layFree(&c.b, c.rows[r], a)
		c.keepFree(key, l)
	}
	return l
}

func (c *Counted) keepFree(key chainKey, l *laid) {
	c.free[key] = l
	c.kept += len(l.worth.v) + len(l.kept.v)
}

func layFree(b *Bench, r *countedRow, a layout.Length) *laid {
	piece, used := b.piece, b.used
	ch := b.chain(&r.row, a)
	b.piece, b.used = piece, used
	l := &laid{worth: newClimb(ch.worth.v, 0), kept: newClimb(ch.kept.v, 0)}
	l.worth.first, l.kept.first = ch.worth.first, ch.kept.first
	return l
}

// most is no less than what a row is worth from a place on, limits and all: as much as it is
// from an earlier place where that is known.
func (c *Counted) most(id int, a, e layout.Length) (most Value) {
	list := c.laid[id]
	at, same := slices.BinarySearchFunc(list, a, byStart)
	if !same {
		at--
	}
	if at < 0 || list[at].reach < e {
		return max(0, c.relaxed(id, a).in(c.w, e))
	}
	ch := list[at]
	if !same {
		most = ch.free.in(c.w, e) - ch.slack
	}
	for k := range ch.list {
		most = max(most, ch.list[k].price+ch.list[k].in(c.w, e))
	}
	return max(0, most)
}

// along is the state of laying one row by what it holds.
type along struct {
	b       *Bench
	n       *counter
	price   []Value
	r       *countedRow
	first   int
	parts   int // no part starts before this position
	last    int // position
	queue   *queue
	tallies []tally
	rows    [][]Value // by tally, by position
	free    *laid
	slack   Value
}

// chain is a row laid from a place on, as Bench.chain does, by what it holds, for blanks that
// end at reach or before.
func (c *Counted) chain(id int, a, reach layout.Length) *countedChain {
	if ch, ok := c.chains[chainKey{id, a}]; ok && ch.reach >= reach {
		return ch
	}
	ch := c.layCounted(&c.b, id, c.relaxed(id, a), a, reach)
	c.keepChain(id, ch)
	return ch
}

func (c *Counted) keepChain(id int, ch *countedChain) {
	at, known := slices.BinarySearchFunc(c.laid[id], ch.a, byStart)
	if known {
		c.laid[id][at] = ch
	} else {
		c.laid[id] = slices.Insert(c.laid[id], at, ch)
	}
	c.chains[chainKey{id, ch.a}] = ch
	for i := range ch.list {
		c.kept += len(ch.list[i].worth.v) + len(ch.list[i].kept.v)
	}
}

// chainAll lays all rows of some strips from a place on, side by side.
func (c *Counted) chainAll(strips []int, a, reach layout.Length) {
	var ids []int
	seen := map[int]bool{}
	for _, i := range strips {
		id := c.strips[i].row
		if ch, ok := c.chains[chainKey{id, a}]; !seen[id] && (!ok || ch.reach < reach) {
			ids = append(ids, id)
		}
		seen[id] = true
	}
	lots := min(len(ids), mostLots)
	for len(c.helpers) < lots {
		c.helpers = append(c.helpers, &Bench{w: c.w, price: c.price})
	}
	free, chains := make([]*laid, len(ids)), make([]*countedChain, len(ids))
	if lots == 0 {
		return
	}
	c.each(lots, func(lot int) {
		b := c.helpers[lot]
		for k := lot; k < len(ids) && !c.b.stopped(); k += lots {
			if free[k] = c.free[chainKey{ids[k], a}]; free[k] == nil {
				free[k] = layFree(b, c.rows[ids[k]], a)
			}
			chains[k] = c.layCounted(b, ids[k], free[k], a, reach)
		}
	})
	for _, b := range c.helpers {
		c.b.work += b.work
		b.work = 0
	}
	if c.b.stopped() {
		return
	}
	for k, id := range ids {
		if c.free[chainKey{id, a}] == nil {
			c.keepFree(chainKey{id, a}, free[k])
		}
		c.keepChain(id, chains[k])
	}
}

// mostLots is in how many lots rows are laid side by side.
const mostLots = 4

// layCounted lays a row by what it holds.
func (c *Counted) layCounted(b *Bench, id int, free *laid, a, reach layout.Length) *countedChain {
	w, r := c.w, c.rows[id]
	ch := &countedChain{a: a, reach: reach, free: free, slack: c.slack}
	l := &along{
		b: b, n: c.n, price: c.price, r: r, first: w.x.from(a + w.end), parts: w.x.from(a + w.inset),
		last: w.x.down(min(w.to, reach-w.end) + w.shop.CrosscutKerf), queue: newQueue(c.n), free: free, slack: c.slack,
	}
	if l.first > l.last {
		return ch
	}
	b.bare, b.kept = room(b.bare, l.last+1), room(b.kept, l.last+1)
	level, edge := b.newStripOffcuts(&r.row, l.first)
	for i := l.first; i <= l.last; i++ {
		b.layBare(level, edge, l.first, i)
		b.bare[i] = whole(b.bare[i])
	}
	ch.bare = newClimb(b.bare, l.first)
	if r.lane.bare {
		l.keep(ch, 0, b.bare, nil)
		return ch
	}
	l.push(0, b.bare, 0, false)
	for k := l.queue.next(); k >= 0; k = l.queue.next() {
		v, kept := l.rows[k], b.kept
		if level != nil {
			level.next, level.most = l.first, none
		} else if edge != nil {
			edge.parts.begin(edge)
		}
		b.work += 2 * (l.last - l.first)
		for i := l.first; i <= l.last; i++ {
			if kept[i] = none; i > l.first {
				v[i] = max(v[i], v[i-1])
			}
			switch {
			case level != nil:
				kept[i] = whole(level.endingAt(v, i))
			case edge != nil:
				kept[i] = whole(edge.parts.endingAt(v, i))
			}
			v[i] = max(v[i], kept[i])
		}
		if l.push(l.tallies[k], v, l.n.worth(l.tallies[k], l.price), true) {
			l.keep(ch, l.tallies[k], v, kept)
		}
	}
	b.spare = append(b.spare, l.rows...)
	return ch
}

// row is room for values by position, all none.
func (l *along) row() []Value {
	var v []Value
	if n := len(l.b.spare); n > 0 {
		v, l.b.spare = l.b.spare[n-1], l.b.spare[:n-1]
	}
	return size(v, l.last+1, none)
}

// keep keeps what a row is worth with a tally, by position.
func (l *along) keep(ch *countedChain, t tally, v, kept []Value) {
	own := laid{tally: t, price: l.n.worth(t, l.price), worth: newClimb(v, l.first)}
	if w := l.b.w; w.inset > w.end && kept != nil {
		own.kept = newClimb(kept, l.first)
	}
	ch.list = append(ch.list, own)
}

const unasked = none32 - 1

// push lays another cell behind strips that hold a tally, where they are not worth so much less
// than others that nothing of it matters. It reports whether there is such a place.
func (l *along) push(t tally, v []Value, price Value, bounded bool) (matters bool) {
	w := l.b.w
	to := slices.Repeat([]int{unasked}, len(l.r.tallies)) // by tally of an option, the row that it leads to
	lead := func(n int) int {
		if to[n] == unasked {
			to[n] = none32
			if sum, ok := l.n.sum(t, l.r.tallies[n]); ok {
				k, isNew := l.queue.index(sum)
				if isNew {
					l.tallies, l.rows = append(l.tallies, sum), append(l.rows, l.row())
				}
				to[n] = k
			}
		}
		return to[n]
	}
	former := none
	for i := l.first; i <= l.last; i++ {
		if v[i] < 0 || bounded && v[i]+price < l.free.worth.upTo(i)-l.slack {
			continue
		}
		matters = true
		if i < l.parts || i > w.x.n || v[i] == former && i > l.parts && l.r.lane.same[i] {
			continue
		}
		former = v[i]
		for k := range l.r.cells {
			cell := &l.r.cells[k]
			z := cell.zoneAt[i]
			next := i + cell.advance
			if z < 0 || next > l.last {
				continue
			}
			for _, o := range l.r.options[k][z] {
				if at := lead(o.tally); at >= 0 {
					l.rows[at][next] = max(l.rows[at][next], v[i]+o.worth)
				}
			}
		}
	}
	l.b.work += (l.last - l.first) * (1 + len(l.r.cells))
	return matters
}
