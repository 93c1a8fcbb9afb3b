package column

import (
	"sawbill/layout"
)

// Column is one way to cut one board.
type Column struct {
	// Value is the prices of the pieces plus the worth of the offcuts, as the
	// programme found it.
	Value Value
	// Root is the cut tree; nil when nothing is worth cutting.
	Root *layout.Node
}

// child says how a state of the crosscuts was reached: from prev by a blank or
// an offcut from position a to x2; a blank ends at position e.
type child struct {
	prev, a, e int
	x2         layout.Length
	kind       childKind
	pieces     []roughPiece // of a blank; nil to be worked out when built
	rough      bool         // ripped rough: worked out before anything is built
	whole      *piece       // the part that a whole blank is
}

type childKind uint8

const (
	childCarried childKind = iota
	childBlank
	childOffcut
	childWhole
)

// Best finds the best column of a board at the given prices, one for each row
// of the bill; prices of 0 and less mean that the part is not wanted.
func (b *Bench) Best(w *Board, price []Value) Column {
	b.prepare(w, price)
	n := len(b.best) - 1
	if b.best[n] <= 0 {
		return Column{}
	}
	return Column{Value: b.best[n], Root: b.build(n)}
}

// prepare runs the whole programme.
func (b *Bench) prepare(w *Board, price []Value) {
	b.w = w
	b.Runs++
	b.cells = room(b.cells, len(w.profiles)+1)
	b.rows = room(b.rows, len(w.profiles))
	b.setPrices(price)
	b.likes = room(b.likes, len(w.profiles))
	b.crosscuts()
}

// crosscuts fills the programme along the board. best[i] is the most that the
// board gives before position i when the next piece may start there; the last
// state is the whole board.
//
//	best[next] = max(best[next-1], best[i] + blank from i, best[i] + offcut from i)
func (b *Bench) crosscuts() {
	w := b.w
	n := w.x.up(w.wood.Length + w.shop.CrosscutKerf)
	b.best = size(b.best, n+1, 0)
	b.from = size(b.from, n+1, child{})
	b.byLen = size(b.byLen, w.x.n+2, unknown)
	starts := w.starts
	for i := 0; i <= n; i++ {
		if i > 0 && b.best[i-1] >= b.best[i] {
			b.best[i], b.from[i] = b.best[i-1], child{prev: i - 1}
		}
		if i > w.x.n {
			continue
		}
		if w.startOK[i] && (i == 0 || b.best[i] > b.best[i-1] || w.exact()) {
			b.boardOffcuts(i)
		}
		if w.startOK[i] {
			b.boardWholes(i)
		}
		if len(starts) > 0 && starts[0] == i {
			starts = starts[1:]
			if w.startOK[i] {
				b.blanksFrom(i)
			}
		}
	}
}

// blanksFrom offers every blank that starts at a.
func (b *Bench) blanksFrom(a int) {
	w := b.w
	ends := w.ends
	for len(ends) > 0 && (ends[0] <= a || w.x.at(ends[0])-w.x.at(a) < w.shop.MinRipLength) {
		ends = ends[1:]
	}
	if len(ends) == 0 || len(w.strips) == 0 {
		return
	}
	be := blankEnds{a, ends}
	alike := w.alike()
	if !alike || a == w.starts[0] {
		b.fillRows(be)
	}
	for k, e := range ends {
		if !w.endOK[e] {
			continue
		}
		c := child{prev: a, a: a, e: e, x2: w.x.at(e), kind: childBlank}
		next := w.x.up(c.x2 + w.shop.CrosscutKerf)
		if alike {
			if b.byLen[e-a] == unknown {
				b.byLen[e-a], _ = b.blank(be, k)
			}
			b.push(c, next, b.byLen[e-a])
			continue
		}
		v, how := b.blank(be, k)
		if v > 0 && b.best[a]+v > b.best[next] {
			if c.rough = how.rough; !c.rough {
				c.pieces = b.pieces(be, k, how)
			}
			b.push(c, next, v)
		}
	}
}

// alike reports whether blanks of one length are worth the same wherever they
// start: a board without defects and taper, and every start and end allowed.
func (w *Board) alike() bool {
	return w.exact() && len(w.grown) == 0 && !w.slants()
}

func (b *Bench) fillRows(be blankEnds) {
	w := b.w
	for id := range w.profiles {
		b.rows[id] = room(b.rows[id], len(be.ends))
		b.likes[id] = id
		if plain := w.clearOf[w.profiles[id].strip]; plain >= 0 && w.passed(&w.profiles[id], be.a) {
			b.likes[id] = int(plain)
		}
	}
	for id, like := range b.likes {
		if like == id {
			b.stripFrom(id, be, b.rows[id])
		}
	}
	for id, like := range b.likes {
		copy(b.rows[id], b.rows[like])
	}
}

// passed reports whether every defect that a profile meets lies before a, so
// that from there on it is as good as clear.
func (w *Board) passed(p *profile, a int) bool {
	if p.clear || p.slanted {
		return false
	}
	for i, g := range w.grown {
		if p.hit.has(i) && g.X2 > w.x.at(a) {
			return false
		}
	}
	return true
}

// push offers a child that is worth v and after which the next may start at
// next.
func (b *Bench) push(c child, next int, v Value) {
	if v > 0 && b.best[c.a]+v > b.best[next] {
		b.best[next], b.from[next] = b.best[c.a]+v, c
	}
}

// boardOffcuts offers the rough pieces that start at i and are kept as they
// are: up to where a blank may start, or up to the tip.
func (b *Bench) boardOffcuts(i int) {
	w := b.w
	if w.measure.rate == 0 {
		return
	}
	n := len(b.best) - 1
	if w.exact() {
		for e := i + 1; e <= w.x.n; e++ {
			if w.endOK[e] && w.x.at(e) < w.wood.Length {
				b.boardOffcut(i, w.x.at(e), w.x.up(w.x.at(e)+w.shop.CrosscutKerf))
			}
		}
	} else {
		for _, s := range w.starts {
			if s > i {
				b.boardOffcut(i, w.x.at(s)-w.shop.CrosscutKerf, s)
			}
		}
	}
	b.boardOffcut(i, w.wood.Length, n)
}

func (b *Bench) boardOffcut(i int, x2 layout.Length, next int) {
	w := b.w
	clean := w.wood.CleanOffcutIn(x2-w.x.at(i), layout.Rect{X1: w.x.at(i), X2: x2, Y1: 0, Y2: w.wood.FullWidth()})
	if w.shop.Keeps(clean) {
		worth := w.measure.worth(clean.X1, clean.X2, clean.Y1, clean.Y2)
		b.push(child{prev: i, a: i, x2: x2, kind: childOffcut}, next, worth)
	}
}
