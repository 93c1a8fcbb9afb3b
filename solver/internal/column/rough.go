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
	ends []roughEnd
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

// roughHelps reports whether ripping before truing could be worth more for any
// blank: for the sake of offcuts, of several thicknesses, or because a rough rip
// takes less than a rip.
func (w *Board) roughHelps() bool {
	return w.cfg.RoughRips && (w.measure.rate > 0 || len(w.thicks) > 1 ||
		w.shop.RoughRipKerf+2*w.shop.EdgeJoint < w.shop.RipKerf)
}

// trueable reports whether a crosscut piece of the board may go over the machines
// as it is: it holds no metal and is not too wide.
func (w *Board) trueable(piece layout.Rect) bool { return !w.tooWide(piece) && !w.hasMetal(piece) }

// blank is the most that a crosscut piece of the board gives, from a to the
// k-th end, and how.
func (b *Bench) blank(be blankEnds, k int) (best Value, how blankHow) {
	w := b.w
	best = none
	whole := layout.Rect{X1: w.x.at(be.a), X2: w.x.at(be.ends[k]), Y1: 0, Y2: w.wood.FullWidth()}
	fits := w.trueable(whole)
	if fits {
		for _, m := range w.modes(whole, w.jointed()) {
			if v := b.full(be, k, m); v > best {
				best, how = v, blankHow{m: m}
			}
		}
	}
	if !fits || w.roughHelps() || w.cupped(whole) {
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
	v, _, _ := b.nodeEnd(t, b.w.wood.FullWidth())
	return v
}

// simple reports whether ripFull serves.
func (b *Bench) simple(m mode) bool {
	return m.must == 0 && len(b.w.leans) == 1 && (!b.w.cfg.InnerOffcuts || b.w.measure.rate == 0)
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
	lines := b.roughLines(be, k)
	for j := 0; j <= n; j++ {
		if j > 0 && b.rough.v[j-1] >= b.rough.v[j] {
			b.rough.v[j], b.rough.from[j] = b.rough.v[j-1], roughStep{prev: j - 1}
		}
		if j > w.y.n || !lines.starts(j) || j > 0 && !b.roughKerfOK(be, k, w.y.at(j)-w.shop.RoughRipKerf) {
			continue
		}
		y1 := w.y.at(j)
		b.eachRoughOffcut(be, k, j, lines, func(y2 layout.Length, worth Value) {
			b.roughPush(j, roughStep{y1: y1, y2: y2, kind: roughOffcut}, worth)
		})
		b.eachRoughNode(be, k, j, lines, func(t across, y2 layout.Length, v Value) {
			b.roughPush(j, roughStep{y1: y1, y2: y2, kind: roughNode, m: t.m}, v)
		})
	}
	return b.rough.v[n]
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

// eachRoughOffcut calls offer for the pieces that start at position j and are kept
// as they are.
func (b *Bench) eachRoughOffcut(be blankEnds, k, j int, lines *roughLines, offer func(y2 layout.Length, worth Value)) {
	w := b.w
	x1, x2, y1 := w.x.at(be.a), w.x.at(be.ends[k]), w.y.at(j)
	if w.measure.rate == 0 || x2-x1 < w.shop.MinOffcutLength {
		return
	}
	clip := w.wood.FarMin(layout.Span{Lo: x1, Hi: x2})
	wood := max(y1, w.shiftOf(be.a, be.ends[k]))
	for _, y2 := range lines.ends(y1) {
		if y2 <= clip && y2-wood >= w.shop.MinOffcutWidth && (y2 == w.wood.FullWidth() || b.roughKerfOK(be, k, y2)) {
			offer(y2, w.measure.worth(x1, x2, wood, y2))
		}
	}
}

// eachRoughNode calls offer for the trued nodes that start at position j and are
// worth something, in every mode.
func (b *Bench) eachRoughNode(be blankEnds, k, j int, lines *roughLines, offer func(t across, y2 layout.Length, v Value)) {
	w := b.w
	ends := b.roughNodeEnds(be, k, j, lines)
	for _, m := range roughModes(ends) {
		t := b.newAcross(be, k, m)
		b.nodeRun(t, w.y.at(j))
		for _, e := range ends {
			if !slices.Contains(e.modes, m) {
				continue
			}
			if v, _, _ := b.nodeEnd(t, e.y2); v > 0 {
				offer(t, e.y2, v)
			}
		}
	}
}

// roughEnd is where a trued node may end across, and in which modes.
type roughEnd struct {
	y2    layout.Length
	modes []mode
}

// roughNodeEnds lists the ends of the trued nodes that start at position j.
func (b *Bench) roughNodeEnds(be blankEnds, k, j int, lines *roughLines) []roughEnd {
	w := b.w
	r := layout.Rect{X1: w.x.at(be.a), X2: w.x.at(be.ends[k]), Y1: w.y.at(j)}
	ends, full := b.rough.ends[:0], w.wood.FullWidth()
	flat := w.wood.Cup == 0 && w.wood.Twist == 0 // modes do not depend on the width
	for _, r.Y2 = range lines.ends(r.Y1) {
		if w.hasMetal(r) || w.tooWide(r) {
			break
		}
		if r.Y2 < full && !b.roughKerfOK(be, k, r.Y2) {
			continue
		}
		if n := len(ends); flat && n > 0 && (r.Y2 < full || w.rippedLies == 0) {
			ends = append(ends, roughEnd{r.Y2, ends[n-1].modes})
		} else {
			ends = append(ends, roughEnd{r.Y2, w.modes(r, true)})
		}
	}
	b.rough.ends = ends
	return ends
}

// roughModes lists the modes of any of the ends.
func roughModes(ends []roughEnd) []mode {
	var all []mode
	for _, e := range ends {
		for _, m := range e.modes {
			if !slices.Contains(all, m) {
				all = append(all, m)
			}
		}
	}
	return all
}
