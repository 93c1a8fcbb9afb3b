package ceiling

import (
	"slices"
)

// laneWork is the state of offering the strips of one thickness.
type laneWork struct {
	b      *Bench
	l      *lane
	stacks []stacks
	known  map[checksum][]int32 // rows, by what their worths come to
	first  int                  // row of the lane
	full   []rowKey             // by row, from the first of the lane on
}

// rowKey is what tells rows apart.
type rowKey struct {
	offcuts offcuts
	worth   []Value
}

// addLane offers the strips of one thickness.
func (b *Bench) addLane(l *lane) {
	n := &laneWork{b: b, l: l, known: map[checksum][]int32{}, first: len(b.rows)}
	for k := range l.classes {
		n.stacks = append(n.stacks, b.stacks(&l.classes[k]))
	}
	for h := range l.heights {
		if b.stopped() {
			return
		}
		n.addHeight(h)
	}
}

// addHeight offers the strips of one range of heights.
func (n *laneWork) addHeight(h int) {
	b, l := n.b, n.l
	clear, gives := n.clear(h)
	if !gives {
		return
	}
	plain := int32(len(b.plain))
	b.plain = append(b.plain, b.newPlain(l, h, clear, n.stacks))
	var mergers []*merger
	known := map[mergerKey]*merger{}
	height := l.heights[h]
	for j := range b.w.y.n + 1 {
		if !b.w.fits(l, height, j) {
			continue
		}
		o := offer{from: int32(j), plain: plain, rows: [3]int32{none32, none32, none32}}
		end := j + height.lo
		keeps := b.plain[plain].rate > 0
		if w := b.w.offcutsOf(l, height, []int{j}); n.worths(h, j, clear) || keeps && w.hindered() {
			met := b.w.met(j, height.lo)
			for _, key := range b.w.mergers(met, j, height) {
				m := known[key]
				if m == nil {
					m = &merger{worth: slices.Clone(b.worth)}
					known[key], mergers = m, append(mergers, m)
				}
				m.add(j, end, len(b.offers[end]), b.worth)
			}
			o.rows[0] = n.row(w, b.worth)
		}
		b.offers[end] = append(b.offers[end], o)
	}
	n.merge(height, mergers)
}

// mergers are what a strip from position j is merged with: all that meet the same marks, but
// where the far edge cuts in, for it takes something else from each, and of those the
// strips near by.
func (w *Board) mergers(met set, j int, h height) []mergerKey {
	near := mergerKey{met, j / mergeNear}
	if w.slants() && j+h.lo > w.y.down(min(w.wood.Width, w.wood.TipWidth)) {
		return []mergerKey{near}
	}
	return []mergerKey{{met, -1}, near}
}

// mergeNear is how many positions are near each other.
const mergeNear = 8

type mergerKey struct {
	met  set
	near int
}

// merger is strips of one range of heights that meet the same marks.
type merger struct {
	worth []Value
	from  []int    // positions across
	at    [][2]int // the offers: where they end, and which of those it is
}

// add takes the most of everything.
func (m *merger) add(j, end, k int, worth []Value) {
	for i, v := range worth {
		m.worth[i] = max(m.worth[i], v)
	}
	m.from, m.at = append(m.from, j), append(m.at, [2]int{end, k})
}

// merge puts the merged rows before the offers' own, the widest first.
func (n *laneWork) merge(h height, mergers []*merger) {
	for _, m := range slices.Backward(mergers) {
		id := n.row(n.b.w.offcutsOf(n.l, h, m.from), m.worth)
		for _, at := range m.at {
			if o := &n.b.offers[at[0]][at[1]]; !slices.Contains(o.rows[:], id) {
				o.rows = [3]int32{id, o.rows[0], o.rows[1]}
			}
		}
	}
}

// clear is what the cells of a strip are worth where nothing is in the way, by
// class.
func (n *laneWork) clear(h int) (worth []Value, gives bool) {
	b := n.b
	worth, gives = make([]Value, len(n.l.classes)), n.l.bare && b.w.tall(n.l, n.l.heights[h]) >= b.w.shop.MinOffcutWidth
	for i := range n.l.classes {
		c := &n.l.classes[i]
		worth[i] = b.cellClear(n.l, n.l.heights[h], c, &n.stacks[i])
		gives = gives || worth[i] > 0
	}
	return worth, gives
}

// stepsReady is what one worth counts for of the steps made to make ready.
const stepsReady = 8

// worths sets b.worth to what the cells of a strip are worth, by class and zone.
// It reports whether any is worth less than where nothing is in the way.
func (n *laneWork) worths(h, j int, clear []Value) (less bool) {
	b := n.b
	b.worth = b.worth[:0]
	for i := range n.l.classes {
		c := &n.l.classes[i]
		for z := range c.zones {
			v := b.cell(n.l, n.l.heights[h], j, c, &n.stacks[i], &c.zones[z])
			b.ready += stepsReady
			b.worth = append(b.worth, v)
			less = less || v != clear[i]
		}
	}
	return less
}

// row is the row with some worths and offcuts.
func (n *laneWork) row(o offcuts, worth []Value) int32 {
	b := n.b
	sum := o.sum()
	for _, v := range worth {
		sum = sum.with(int64(v))
	}
	for _, id := range n.known[sum] {
		if k := &n.full[int(id)-n.first]; slices.Equal(k.worth, worth) && k.offcuts.same(o) {
			return id
		}
	}
	id := int32(len(b.rows))
	n.known[sum] = append(n.known[sum], id)
	k := rowKey{o, slices.Clone(worth)}
	n.full = append(n.full, k)
	b.rows = append(b.rows, newRow(n.l, o, k.worth))
	return id
}

// sum is a number that tells most offcuts apart that are not the same.
func (o offcuts) sum() checksum {
	sum := checksum(14695981039346656037)
	for i := range o {
		m := &o[i]
		sum = sum.with(int64(m.most))
		if m.slants {
			sum = sum.with(int64(m.low))
		}
		for _, h := range m.holes {
			sum = sum.with(int64(h.cover))
		}
	}
	return sum
}

// checksum is most often another for other numbers (Fowler, Noll & Vo 1991).
type checksum uint64

func (c checksum) with(v int64) checksum { return (c ^ checksum(v)) * 1099511628211 }

// newRow is a row with some worths by class and zone.
func newRow(l *lane, o offcuts, worth []Value) row {
	r := row{lane: l, offcuts: o}
	for i := range l.classes {
		c := &l.classes[i]
		own := worth[:len(c.zones)]
		worth = worth[len(c.zones):]
		if slices.ContainsFunc(own, func(v Value) bool { return v > 0 }) {
			r.cells = append(r.cells, cells{c, c.advance, c.zoneAt, own})
		}
	}
	return r
}
