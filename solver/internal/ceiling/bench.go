package ceiling

import (
	"encoding/binary"
	"slices"

	"sawbill/layout"
)

// Bench is where one goroutine bounds boards: scratch that is used again from
// one board to the next. The zero Bench is ready to use.
type Bench struct {
	w     *Board
	price []Value

	column []Value // a stack across
	rows   []row
	offers [][]offer // by position across
	v, far []Value   // along a strip, or across a blank
	before []Value
	after  []Value
	mem32  []int32
	mem64  []Value
	chains map[layout.Length][]chain // by start of a blank: by row
	rowAt  []Value                   // by row, what it is worth in the blank at hand
	Blanks int
	Starts int
	Paths  int
}

// row is profiles that are worth the same at the prices at hand, wherever a
// blank starts and ends.
type row struct {
	lane    *lane
	cells   []cells
	offcuts *area   // nil where it keeps none
	before  []Value // worth of offcuts up to a position, rounded down
	after   []Value // and up to the kerf before it, rounded up
}

// cells is what a class gives in a row.
type cells struct {
	advance int
	zoneAt  []int16
	worth   []Value // by zone
}

// offer is a strip that may start at a position across: it takes so many
// positions.
type offer struct {
	lo  int
	row int32
}

// size gives a slice of n values, all v, in the memory of s.
func size[T any](s []T, n int, v T) []T {
	s = slices.Grow(s[:0], n)[:n]
	for i := range s {
		s[i] = v
	}
	return s
}

// prepare works out what everything up to a cell is worth.
func (b *Bench) prepare(w *Board, price []Value) {
	b.w, b.price = w, price
	b.rows = b.rows[:0]
	b.offers = make([][]offer, w.y.n+1)
	b.chains = map[layout.Length][]chain{}
	b.mem32, b.mem64 = nil, nil
	known := map[string]int32{}
	for i := range w.lanes {
		l := &w.lanes[i]
		cells := make([]stacks, len(l.classes))
		for k := range l.classes {
			cells[k] = b.stacks(&l.classes[k])
		}
		ids := make([]int32, len(l.profiles))
		for k := range l.profiles {
			ids[k] = b.rowOf(l, &l.profiles[k], cells, known)
		}
		b.addOffers(l, ids)
	}
	for j := range b.offers {
		slices.SortStableFunc(b.offers[j], func(p, q offer) int { return p.lo - q.lo })
	}
}

func (b *Bench) addOffers(l *lane, ids []int32) {
	for h := range l.at {
		for j, id := range l.at[h] {
			if id >= 0 && ids[id] >= 0 {
				b.offers[j] = append(b.offers[j], offer{l.heights[h].lo, ids[id]})
			}
		}
	}
}

// rowOf is the row of a profile; -1 where it gives no part.
func (b *Bench) rowOf(l *lane, p *profile, stacks []stacks, known map[string]int32) int32 {
	r := row{lane: l}
	var key []byte
	for i := range l.classes {
		c := &l.classes[i]
		given := cells{c.advance, c.zoneAt, make([]Value, len(c.zones))}
		gives := false
		for z := range c.zones {
			v := b.cell(l, p, c, &stacks[i], &c.zones[z])
			given.worth[z] = v
			gives = gives || v > 0
			key = binary.AppendVarint(key, int64(v))
		}
		if gives {
			r.cells = append(r.cells, given)
		}
	}
	if r.cells == nil {
		return -1
	}
	if p.keeps {
		r.offcuts = &p.offcuts
		key = r.offcuts.appendKey(key)
	}
	key = binary.AppendVarint(key, int64(l.thickness))
	if id, ok := known[string(key)]; ok {
		return id
	}
	id := int32(len(b.rows))
	known[string(key)] = id
	if p.keeps {
		b.w.measure(&r)
	}
	b.rows = append(b.rows, r)
	return id
}

// cell is the most that a cell of a class is worth in a zone, in any strip of
// the profile.
func (b *Bench) cell(l *lane, p *profile, c *class, s *stacks, z *zone) Value {
	w, h := b.w, l.heights[p.height]
	extra := int((w.shop.RipKerf - w.stripKerf + w.y.unit - 1) / w.y.unit)
	var best Value
	for _, j := range p.starts {
		best = max(best, s.most(z.hit, j, min(j+h.hi+extra, z.top)))
	}
	for i := range c.pieces {
		q := &c.pieces[i]
		if b.price[q.row] <= best || q.alone > h.hi || q.aloneMost < h.lo {
			continue
		}
		for _, j := range p.starts {
			if j+q.advance <= z.top && !q.fails(c.hits[z.hit], q.across[j]) {
				best = b.price[q.row]
				break
			}
		}
	}
	return best
}

// appendKey tells areas apart that differ.
func (a *area) appendKey(key []byte) []byte {
	key = binary.AppendVarint(key, int64(a.height))
	if a.w.wood.Width != a.w.wood.TipWidth || a.low+a.height > a.w.wood.Width {
		key = binary.AppendVarint(key, int64(a.low))
	}
	for _, h := range a.holes {
		key = binary.AppendVarint(key, int64(h.along.Lo))
		key = binary.AppendVarint(key, int64(h.along.Hi))
		key = binary.AppendVarint(key, int64(h.cover))
	}
	return key
}

// measure works out what offcuts of a row are worth.
func (w *Board) measure(r *row) {
	r.before, r.after = make([]Value, w.x.n+2), make([]Value, w.x.n+2)
	for i := range r.before {
		r.before[i] = r.offcuts.before(w.x.at(i))
		r.after[i] = r.offcuts.after(w.x.at(i+1) - w.shop.CrosscutKerf)
	}
}
