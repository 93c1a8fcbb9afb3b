package column

import (
	"slices"

	"sawbill/layout"
)

// stripWork is the scratch of one strip. V[i] is the most that the strip gives
// before position i when the next piece may start there. It is known where the strip is
// visited; in between it is what it was there.
type stripWork struct {
	v    []Value
	from []int64 // prev<<16 | index of the class in its thickness, or a mark
	// rise lists the positions at which V rises: an offcut at the end of the
	// strip starts at one of them.
	rise    []int
	visit   set // positions at which V may rise or a piece may well start
	reached set // positions that a piece leads to
}

// until is the most that the strip gives before position i, and where that was reached.
func (s *stripWork) until(i int) (Value, int) {
	k, exact := slices.BinarySearch(s.rise, i)
	if !exact {
		k--
	}
	at := s.rise[k]
	return s.v[at], at
}

const (
	classMask    = 1<<16 - 1
	carriedClass = classMask
	offcutClass  = classMask - 1
)

// blankEnds is what a strip needs to know of the blanks that start at a.
type blankEnds struct {
	a    int
	ends []int
}

// stripFrom works out the strip of profile id from the blank start a onwards
// and puts its worth for every end in row.
func (b *Bench) stripFrom(id int, be blankEnds, row []Value) {
	w, kerf := b.w, b.w.shop.CrosscutKerf
	last := be.ends[len(be.ends)-1]
	n := w.x.down(w.x.at(last) - max(w.end, w.shop.Snipe) + kerf)
	first := w.x.up(w.x.at(be.a) + w.end)
	b.stripRun(id, be.a, first, n)
	keep := b.newStripKeep(id, be.a)
	for k, e := range be.ends {
		row[k] = none
		if e > be.a {
			row[k], _ = b.stripEnd(keep, first, e)
		}
	}
}

// stripRun fills V by
//
//	V[i] = max(V[i-1], V[i - advance of a class] + its cell, V[i'] + offcut between).
//
// Starting a piece at i is of use where V rises or where other defects are met than
// a position earlier.
func (b *Bench) stripRun(id, a, first, n int) {
	w, p := b.w, b.profile(id)
	b.Steps += n - first
	b.Work += (n-first)/8 + 4
	partsFrom := w.x.up(w.x.at(a) + max(w.end, w.shop.Snipe))
	var inner *stripKeep
	if w.cfg.InnerOffcuts {
		inner = b.newStripKeep(id, a)
	}
	everywhere := inner != nil || p.slanted && w.wood.TipWidth > w.wood.Width
	b.setVisits(&w.thicks[w.strips[p.strip].thick], partsFrom, max(n, first), everywhere)
	s := &b.strip
	s.v, s.from, s.rise = room(s.v, max(n, first)+1), room(s.from, max(n, first)+1), s.rise[:0]
	v, from, reached := s.v, s.from, s.reached
	lines := b.cells[id].lines
	most, mostAt := none, first
	for i := first; i >= 0 && i <= n; i = s.visit.next(i + 1) {
		switch {
		case i == first:
			v[i] = 0
		case !reached.has(i) || v[i] <= most:
			v[i], from[i] = most, int64(mostAt)<<16|carriedClass
		}
		if inner != nil {
			inner.extend(i, first)
		}
		if v[i] > most {
			most, mostAt = v[i], i
			s.rise = append(s.rise, i)
		}
		if i > w.x.n || i < partsFrom {
			continue
		}
		b.Work += 1 + len(lines)
		for k := range lines {
			l := &lines[k]
			j := i + l.advance
			if j > n || i < l.lo || i > l.hi || l.zoneAt[i] < 0 {
				continue
			}
			cell := none
			if l.worth != nil {
				cell = l.worth[l.zoneAt[i]]
			} else {
				cell = b.cellAt(id, l.index, l.class, i)
			}
			if sum := v[i] + cell; sum > v[i] && (!reached.has(j) || sum > v[j]) {
				v[j], from[j] = sum, int64(i)<<16|int64(l.index)
				reached.add(j)
				s.visit.add(j)
			}
		}
	}
}

// setVisits makes a strip ready whose parts start at position from, and n is the last
// one; every position is visited, or those where a strip of a thickness meets other defects
// than a position earlier.
func (b *Bench) setVisits(t *thick, from, n int, everywhere bool) {
	s := &b.strip
	s.reached = size(s.reached, n/64+1, 0)
	if everywhere {
		s.visit = size(s.visit, n/64+1, ^uint64(0))
		return
	}
	s.visit = size(s.visit, n/64+1, 0)
	copy(s.visit, t.anew)
	if from <= n {
		s.visit.add(from)
	}
}

// line is a class as the inner loop of a strip needs it.
type line struct {
	index   int // among the classes of the strip's thickness
	class   *class
	advance int
	lo, hi  int // the positions between which a cell may start
	zoneAt  []int32
	worth   []Value // by zone; nil where it depends on the place as well
}

// setLines lists the classes that are of use in a profile whose cells are worked out.
func (b *Bench) setLines(id int) {
	w, p, cv := b.w, b.profile(id), &b.cells[id]
	cv.lines = cv.lines[:0]
	for k, ci := range w.thicks[w.strips[p.strip].thick].classes {
		c := &w.classes[ci]
		l := line{index: k, class: c, advance: c.advance, hi: w.x.n, zoneAt: c.zoneAt}
		if cv.span == 1 {
			l.worth = cv.zones[k]
			if len(l.worth) == 0 || slices.Max(l.worth) <= 0 {
				continue
			}
			if p.slanted {
				l.lo, l.hi = w.underFar(c, w.y.at(p.at)+w.strips[p.strip].height+p.lean+p.far)
			}
		}
		cv.lines = append(cv.lines, l)
	}
}

// underFar are the positions between which the wood of cells of a class reaches as
// far across as y.
func (w *Board) underFar(c *class, y layout.Length) (lo, hi int) {
	hi = w.x.n
	for lo <= hi && c.reach[lo] < y {
		lo++
	}
	for hi >= lo && c.reach[hi] < y {
		hi--
	}
	return lo, hi
}

// stripEnd is the worth of the strip in a blank that ends at e; last is where
// its trace begins, negative when an offcut at the end starts at -last-1.
func (b *Bench) stripEnd(keep *stripKeep, first, e int) (best Value, last int) {
	w := b.w
	i := w.x.down(w.x.at(e) - max(w.end, w.shop.Snipe) + w.shop.CrosscutKerf)
	if i < first {
		return none, first
	}
	best, last = b.strip.until(i)
	if keep != nil {
		end := min(w.x.at(e)-w.end, keep.hi)
		keep.reach(end, i)
		if keep.most != none {
			if v := keep.most + keep.before(end); v > best {
				return v, -keep.mostAt - 1
			}
		}
	}
	return best, last
}

// stripKeep seeks offcuts in one strip: crosscut from it, as high as it is.
type stripKeep struct {
	b      *Bench
	flat   float64 // value per nanometre along, where the strip meets no defect
	y1, y2 layout.Length
	lo, hi layout.Length // between these the far edge does not cut in
	most   Value         // the largest V[i] - worth before i over the i far enough back
	mostAt int
	next   int // index into rise of the first that is not yet far enough back
}

// newStripKeep is nil where the strip is too low for an offcut.
func (b *Bench) newStripKeep(id, a int) *stripKeep {
	w, p := b.w, b.profile(id)
	height := w.strips[p.strip].height
	if w.measure.rate == 0 || height < w.shop.MinOffcutWidth {
		return nil
	}
	k := &stripKeep{b: b, y1: w.y.at(p.at), y2: w.y.at(p.at) + height, most: none}
	if p.clear {
		k.flat = w.measure.rate * float64(height) / mm2
	}
	k.lo, k.hi = 0, w.wood.Length
	if p.slanted {
		k.lo, k.hi = p.lo, p.hi
	}
	k.lo = max(k.lo, w.x.at(a))
	return k
}

// below is the part of the board along which the far edge is at least y from
// the reference edge.
func (w *Board) below(y layout.Length) (lo, hi layout.Length) {
	lo, hi = 0, w.wood.Length
	if min(w.wood.Width, w.wood.TipWidth) >= y {
		return lo, hi
	}
	i := 0
	for i < w.x.n && w.wood.Far(w.x.at(i)) < y {
		i++
	}
	lo = w.x.at(i)
	for i < w.x.n && w.wood.Far(w.x.at(i+1)) >= y {
		i++
	}
	if i < w.x.n || w.wood.TipWidth < y {
		hi = w.x.at(i)
	}
	return lo, hi
}

// before is the worth of the strip's wood from the butt to x.
func (k *stripKeep) before(x layout.Length) Value {
	if k.flat > 0 {
		return Value(k.flat*float64(x) + 0.5)
	}
	return k.b.w.measure.worth(0, x, k.y1, k.y2)
}

// reach moves on to the positions at which an offcut that ends at x may start,
// none of them after limit.
func (k *stripKeep) reach(x layout.Length, limit int) {
	w := k.b.w
	for k.next < len(k.b.strip.rise) {
		i := k.b.strip.rise[k.next]
		at := w.x.at(i)
		if i > limit || at+w.shop.MinOffcutLength > x {
			return
		}
		k.next++
		if at < k.lo {
			continue
		}
		if v := k.b.strip.v[i] - k.before(at); v > k.most {
			k.most, k.mostAt = v, i
		}
	}
}

// extend lets an offcut end one kerf before position i.
func (k *stripKeep) extend(i, first int) {
	w := k.b.w
	end := w.x.at(i) - w.shop.CrosscutKerf
	if end > k.hi || i == first {
		return
	}
	k.reach(end, i-1)
	if k.most == none {
		return
	}
	if v := k.most + k.before(end); v > k.b.strip.v[i] {
		k.b.strip.v[i], k.b.strip.from[i] = v, int64(k.mostAt)<<16|offcutClass
	}
}
