package ceiling

import (
	"slices"

	"sawbill/layout"
)

// height is a range of heights of a strip, counted in positions from its start
// to the least start of what lies beyond it. A strip in the range takes at least
// lo and holds no more than hi.
type height struct{ lo, hi int }

// widest is the most heights that are taken together, and widestRough the same where a bound
// a thousandth or two higher will do that is found in three quarters of the time.
const (
	widest      = 2
	widestRough = 4
)

// mostHeights is the most ranges of a lane.
const mostHeights = 200

// setHeights divides the heights of strips into ranges: where nothing is in the
// way a strip is as high as a part or a stack of parts of one length, so each of
// these is a range by itself; what lies between two of them is another.
func (w *Board) setHeights(l *lane) {
	wide := w.wood.FullWidth() - w.far - w.near - l.lean.by - 2*l.lean.inset()
	if most := w.shop.MachineWidth(); most > 0 {
		wide = min(wide, most)
	}
	most := w.y.down(max(0, wide)+l.kerf) + 1
	alone := make([]bool, most+2)
	for i := range l.classes {
		l.classes[i].markHeights(alone)
	}
	lo := 1
	for m := 1; m <= most; m++ {
		if alone[m] {
			l.between(lo, m-1, w.widest)
			l.heights = append(l.heights, height{m, m})
			lo = m + 1
		}
	}
	l.between(lo, most, w.widest)
	l.thin()
}

// between adds ranges from lo to hi, of so many heights at most.
func (l *lane) between(lo, hi, widest int) {
	for ; lo <= hi; lo += widest {
		l.heights = append(l.heights, height{lo, min(hi, lo+widest-1)})
	}
}

// markHeights marks the heights of parts and of stacks.
func (c *class) markHeights(alone []bool) {
	stacks := make([]bool, len(alone))
	stacks[0] = true
	for m := range stacks {
		if !stacks[m] {
			continue
		}
		for i := range c.pieces {
			if to := m + c.pieces[i].advance; c.again && to < len(stacks) {
				stacks[to], alone[to] = true, true
			}
		}
	}
	for i := range c.pieces {
		if q := &c.pieces[i]; q.alone < len(alone) {
			alone[q.alone] = true
		}
	}
}

// thin merges neighbouring ranges until there are not too many.
func (l *lane) thin() {
	for len(l.heights) > mostHeights {
		var merged []height
		for i := 0; i < len(l.heights); i += 2 {
			h := l.heights[i]
			if i+1 < len(l.heights) {
				h.hi = l.heights[i+1].hi
			}
			merged = append(merged, h)
		}
		l.heights = merged
	}
}

// tops is the highest position behind a strip.
func (w *Board) tops(l *lane) int {
	return w.y.down(w.wood.FullWidth() - w.far - l.lean.by - l.lean.inset() + l.kerf)
}

// fits reports whether a strip in a range of heights may start at position j. Strips
// without parts are worth something only where the far edge cuts into them.
func (w *Board) fits(l *lane, h height, j int) bool {
	if l.bare && w.y.upTo(j+h.hi)-l.kerf <= min(w.wood.Width, w.wood.TipWidth) {
		return false
	}
	return j >= w.y.down(w.near+l.lean.inset()) && j <= w.y.n && j+h.lo <= w.tops(l)
}

// tall is the most that a strip in a range of heights measures across.
func (w *Board) tall(l *lane, h height) layout.Length { return w.y.upTo(h.hi) - l.kerf }

// offcuts is what strips may hold of offcuts: under a slanting edge several kinds,
// by how high they are.
type offcuts []stretch

// stretch is offcuts of one height, or of a band of heights.
type stretch struct {
	area
	band
}

// level is the height of offcuts that are all equally high; 0 where they are not.
func (m *stretch) level() layout.Length {
	if m.slants {
		return 0
	}
	return m.most
}

// offcutsOf is what strips in a range of heights hold of offcuts, when they start
// at any of some positions; none where they are too low.
func (w *Board) offcutsOf(l *lane, h height, starts []int) offcuts {
	tall := w.tall(l, h)
	if w.rate == 0 || tall < w.shop.MinOffcutWidth {
		return nil
	}
	low := w.y.at(slices.Min(starts))
	var o offcuts
	for _, band := range w.bands(low, tall) {
		a := w.newArea(low, band.most, func(spot layout.Rect) layout.Length {
			cover := spot.Width()
			for _, j := range starts {
				lo, hi := w.y.upTo(j), w.y.at(j+h.lo)-l.kerf
				cover = min(cover, shared(spot.Across(), layout.Span{Lo: lo, Hi: min(hi, w.y.at(j)+band.sure)}))
			}
			return cover / w.coverStep() * w.coverStep()
		})
		o = append(o, stretch{a, band})
	}
	if len(o) > 1 && !slices.ContainsFunc(o, func(m stretch) bool { return len(m.holes) > 0 }) {
		return o[len(o)-1:] // nothing that would have to be known by bands
	}
	return o
}

// coverStep is what a defect covers across is rounded down by, so that more
// strips are worth the same.
func (w *Board) coverStep() layout.Length {
	if w.fine() {
		return w.y.unit
	}
	return max(w.y.unit, w.wood.FullWidth()/32)
}

// hindered reports whether a defect or the far edge takes anything from what strips
// of their height hold where nothing is in the way; the far edge may take it all.
func (o offcuts) hindered() bool {
	return len(o) != 1 || len(o[0].holes) > 0 || o[0].slants
}

// same reports whether two are the same.
func (o offcuts) same(p offcuts) bool {
	return slices.EqualFunc(o, p, func(a, b stretch) bool {
		return a.band == b.band && (!a.slants || a.low == b.low) && slices.Equal(a.holes, b.holes)
	})
}

// met is the marks that a strip from position j meets for certain when it takes
// m positions.
func (w *Board) met(j, m int) set {
	var met set
	for i, d := range w.marks {
		if w.y.at(j+1) <= w.y.at(w.y.down(d.Y2)) && w.y.at(j+m)-w.stripKerf > d.Y1 {
			met |= 1 << i
		}
	}
	return met
}
