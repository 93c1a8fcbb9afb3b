package column

import (
	"slices"

	"sawbill/layout"
)

// roughWork is the scratch of a rough blank that may be ripped before it is
// trued. v[j] is the most that the blank gives below position j when the next
// piece of it may start there.
type roughWork struct {
	node nodeWork
	v    []Value
	from []roughStep
}

// roughStep says how a state was reached: by a trued node of mode m, or by an
// offcut, from y1 to y2.
type roughStep struct {
	prev   int
	y1, y2 layout.Length
	kind   roughKind
	m      mode
}

type roughKind uint8

const (
	roughCarried roughKind = iota
	roughNode
	roughOffcut
)

// hasMetal reports whether a trued piece of the board would hold metal.
func (w *Board) hasMetal(r layout.Rect) bool {
	return slices.ContainsFunc(w.metal, func(m layout.Rect) bool { return m.Overlaps(r) })
}

// roughHelps reports whether ripping before truing could ever be worth more:
// for the sake of offcuts, of metal, of several thicknesses, or because a rough
// rip takes less than a rip.
func (w *Board) roughHelps() bool {
	return w.cfg.RoughRips && (w.measure.rate > 0 || len(w.thicks) > 1 ||
		w.shop.RoughRipKerf+2*w.shop.EdgeJoint < w.shop.RipKerf)
}

// blank is the most that a crosscut piece of the board gives, from a to the
// k-th end, and how.
func (b *Bench) blank(be blankEnds, k int) (best Value, how blankHow) {
	w := b.w
	best = none
	whole := layout.Rect{X1: w.x.at(be.a), X2: w.x.at(be.ends[k]), Y1: 0, Y2: w.wood.FullWidth()}
	metal := len(w.metal) > 0 && w.hasMetal(whole)
	if !metal {
		for _, m := range w.modes(be.a, be.ends[k], w.jointed()) {
			if v := b.full(be, k, m); v > best {
				best, how = v, blankHow{m: m}
			}
		}
	}
	if metal || w.roughHelps() {
		if v := b.roughRun(be, k); v > best {
			best, how = v, blankHow{rough: true}
		}
	}
	return best, how
}

// blankHow says how a crosscut piece is best used: trued whole in a mode, or
// ripped rough.
type blankHow struct {
	rough bool
	m     mode
}

// full is the most that a trued blank of the board's full width gives.
func (b *Bench) full(be blankEnds, k int, m mode) Value {
	if b.simple(m) {
		v, _ := b.ripFull(be, k, m)
		return v
	}
	t := b.newAcross(be, k, m)
	b.nodeRun(t, 0)
	v, _ := b.nodeEnd(t, b.w.wood.FullWidth())
	return v
}

// simple reports whether ripFull serves.
func (b *Bench) simple(m mode) bool {
	return m.must < 0 && (!b.w.cfg.InnerOffcuts || b.w.measure.rate == 0)
}

// roughRun fills the programme of rough rips and gives its result:
//
//	V[next] = max(V[next-1], V[j] + a trued node from j, V[j] + an offcut from j)
//
// where no kerf and no trued node meets metal.
func (b *Bench) roughRun(be blankEnds, k int) Value {
	w := b.w
	a, e := be.a, be.ends[k]
	if w.x.at(e)-w.x.at(a) < w.shop.MinRipLength {
		return none
	}
	n := w.y.up(w.wood.FullWidth() + w.shop.RoughRipKerf)
	b.rough.v = size(b.rough.v, n+1, 0)
	b.rough.from = size(b.rough.from, n+1, roughStep{})
	modes := w.modes(a, e, true)
	for j := 0; j <= n; j++ {
		if j > 0 && b.rough.v[j-1] >= b.rough.v[j] {
			b.rough.v[j], b.rough.from[j] = b.rough.v[j-1], roughStep{prev: j - 1}
		}
		if j > w.y.n || !w.roughStart(j) || j > 0 && !b.roughKerfOK(be, k, w.y.at(j)-w.shop.RoughRipKerf) {
			continue
		}
		b.roughOffcuts(be, k, j)
		for _, m := range modes {
			b.roughNodes(be, k, m, j)
		}
	}
	return b.rough.v[n]
}

// roughKerfOK reports whether a rough rip whose kerf starts at y meets no metal.
func (b *Bench) roughKerfOK(be blankEnds, k int, y layout.Length) bool {
	w := b.w
	return len(w.metal) == 0 || !w.hasMetal(layout.Rect{
		X1: w.x.at(be.a), X2: w.x.at(be.ends[k]), Y1: max(0, y), Y2: min(y+w.shop.RoughRipKerf, w.wood.FullWidth()),
	})
}

// roughPush offers a piece from y1 to y2, worth v more than what lies below j.
func (b *Bench) roughPush(j int, s roughStep, v Value) {
	w := b.w
	next := w.y.up(s.y2 + w.shop.RoughRipKerf)
	s.prev = j
	if v += b.rough.v[j]; v > b.rough.v[next] {
		b.rough.v[next], b.rough.from[next] = v, s
	}
}

// roughStart reports whether a rough piece may start at position j: anywhere
// where all positions are tried, otherwise at the reference edge and beyond
// metal.
func (w *Board) roughStart(j int) bool {
	return w.exact() || j == 0 || slices.ContainsFunc(w.metal, func(m layout.Rect) bool {
		return j == w.y.up(max(0, m.Y2)+w.shop.RoughRipKerf)
	})
}

// roughEnds lists the positions across at which a rough piece from y1 may end: the
// grid, or what lies just before metal, and the far edge.
func (b *Bench) roughEnds(y1 layout.Length) []layout.Length {
	w := b.w
	var ends []layout.Length
	if !w.exact() {
		for _, m := range w.metal {
			if y2 := w.y.at(max(0, w.y.down(m.Y1-w.shop.RoughRipKerf))); y2 > y1 {
				ends = append(ends, y2)
			}
		}
		slices.Sort(ends)
		return append(slices.Compact(ends), w.wood.FullWidth())
	}
	for j := w.y.down(y1) + 1; j <= w.y.n; j++ {
		ends = append(ends, w.y.at(j))
	}
	if full := w.wood.FullWidth(); len(ends) == 0 || ends[len(ends)-1] < full {
		ends = append(ends, full)
	}
	return ends
}

func (b *Bench) roughOffcuts(be blankEnds, k, j int) {
	w := b.w
	x1, x2, y1 := w.x.at(be.a), w.x.at(be.ends[k]), w.y.at(j)
	if w.measure.rate == 0 || x2-x1 < w.shop.MinOffcutLength {
		return
	}
	clip := w.wood.FarMin(layout.Span{Lo: x1, Hi: x2})
	for _, y2 := range b.roughEnds(y1) {
		if y2 > clip || y2-y1 < w.shop.MinOffcutWidth || y2 < w.wood.FullWidth() && !b.roughKerfOK(be, k, y2) {
			continue
		}
		b.roughPush(j, roughStep{y1: y1, y2: y2, kind: roughOffcut}, w.measure.worth(x1, x2, y1, y2))
	}
}

func (b *Bench) roughNodes(be blankEnds, k int, m mode, j int) {
	w := b.w
	t := b.newAcross(be, k, m)
	y1 := w.y.at(j)
	b.nodeRun(t, y1)
	for _, y2 := range b.roughEnds(y1) {
		if w.hasMetal(layout.Rect{X1: w.x.at(be.a), X2: w.x.at(be.ends[k]), Y1: y1, Y2: y2}) {
			return
		}
		if y2 < w.wood.FullWidth() && !b.roughKerfOK(be, k, y2) {
			continue
		}
		if v, _ := b.nodeEnd(t, y2); v > 0 {
			b.roughPush(j, roughStep{y1: y1, y2: y2, kind: roughNode, m: m}, v)
		}
	}
}
