package bound

import (
	"slices"

	"sawbill/layout"
)

// stripAt says which strip: in a blank that begins at position a along, from
// position j across to k, its kerf included. Where width is not 0 the strip is
// just so wide and begins at one of the positions j to last. It has a lean, and parts
// of those lanes that last in its blank.
type stripAt struct {
	a, j, last, k  int
	width, lasting layout.Length
	lean           lean
}

// strip is the most that the lengths of one strip are worth together, by how
// far along they reach: most[i] is the value of the first i positions, keep[i]
// the largest most[h] less the worth of the wood below h, over h up to i.
type strip struct {
	at     stripAt
	meets  uint64 // the defects that something in the strip could meet
	slants bool   // the far edge could cut in
	// stackTop is the last position that a stack in the strip may reach, its kerf
	// included.
	stackTop int
	first    int // the position along from which i counts

	most, keep []value
	height     layout.Length // at most
	cells      [][]value     // by class, by zone: where nothing slants; negative where not worked out
	stacks     [][]standing  // by class, by zone
	lower      []value       // worth of offcuts, see setWorth
	upper      []value
	slab       []int64 // where it slants: the area of wood below each position
}

// stripOf is the strip at a place, worked out for blanks up to position e at
// least. One that meets no defect beyond its start and does not slant is as that
// of a cleared board, wherever it lies.
func (b *bench) stripOf(at stripAt, e int) *strip {
	s := &strip{at: at}
	b.setMeets(s)
	if b.plain != b && s.meets == 0 && !s.slants {
		return b.plain.stripOf(at, e)
	}
	if b.plain == b {
		s.at, e = stripAt{0, 0, at.last - at.j, at.k - at.j, at.width, at.lasting, at.lean}, e-at.a
	}
	s.first = s.at.a + b.x.down(b.end)
	n := max(0, min(e, b.nx)-s.first)
	if known, ok := b.strips[s.at]; ok && len(known.most) > n {
		return known
	}
	if len(b.strips) >= mostStrips {
		clear(b.strips)
	}
	b.fill(s, min(n+n/4, max(0, b.nx-s.first))) // somewhat further, for the next blank
	b.strips[s.at] = s
	return s
}

func (b *bench) setMeets(s *strip) {
	y1, y2 := b.y.at(s.at.j), b.topOf(s.at.k, b.behind(s.at.lean))
	for i, d := range b.grown {
		if d.Y1 < y2+s.at.lean.by && d.Y2 > y1 && d.X2 > b.x.at(s.at.a) {
			s.meets |= 1 << i
		}
	}
	s.slants = b.tapers() && y2+s.at.lean.by > min(b.board.Width, b.board.TipWidth)-b.far
	s.height = min(y2, b.board.FullWidth()-b.far) - y1
}

// fill works out the first n positions of a strip, for the parts of each
// thickness by itself.
func (b *bench) fill(s *strip, n int) {
	b.setCells(s)
	s.stackTop = b.stackTop(s.at.k, s.at.lean)
	s.most, s.keep = make([]value, n+1), slices.Repeat([]value{nothing}, n+1)
	b.setWorth(s)
	for _, classes := range b.groups(s.at) {
		b.fillOne(s, classes)
	}
	s.cells, s.stacks, s.lower, s.upper = nil, nil, nil, nil // a strip that is filled needs them no more
}

func (b *bench) setCells(s *strip) {
	s.cells, s.stacks = make([][]value, len(b.classes)), make([][]standing, len(b.classes))
	for c := range s.cells {
		s.stacks[c] = make([]standing, len(b.classes[c].zones))
		s.cells[c] = slices.Repeat([]value{-1}, len(b.classes[c].zones))
	}
}

// setSlab adds up the wood of a strip that the far edge cuts into, each position
// as high as the edge is anywhere in it.
func (b *bench) setSlab(s *strip) {
	y1 := b.y.at(s.at.j)
	s.slab = make([]int64, b.nx+2)
	for i := range b.nx + 1 {
		far := max(b.reach(b.x.at(i)), b.reach(b.x.at(i+1)))
		s.slab[i+1] = s.slab[i] + int64(b.x.unit)*(up(min(s.height, max(0, far-y1)))+1)
	}
}

// fillOne fills the strip with lengths of the classes, by
//
//	most[i] = max(most[i-1], most[i - advance] + a cell, keep[i - least] + worth below i)
//
// in which the last is an offcut crosscut from the strip.
func (b *bench) fillOne(s *strip, classes []int) {
	n := len(s.most) - 1
	most, keep := make([]value, n+1), slices.Repeat([]value{nothing}, n+1)
	least, keeps := b.x.down(b.shop.MinOffcutLength+b.crosscut), b.keepsHeight(s)
	partsFrom := b.x.down(b.inset) - b.x.down(b.end)
	for i := range most {
		if i > 0 {
			most[i], keep[i] = max(most[i], most[i-1]), keep[i-1]
		}
		if keeps {
			if i >= least {
				most[i] = max(most[i], keep[i-least]+s.upper[i])
			}
			keep[i] = max(keep[i], most[i]-s.lower[i])
		}
		if i < partsFrom {
			continue
		}
		for _, c := range classes {
			if to := i + b.classes[c].advance; to <= n {
				most[to] = max(most[to], most[i]+b.cell(s, c, s.first+i))
			}
		}
	}
	for i := range most {
		s.most[i], s.keep[i] = max(s.most[i], most[i]), max(s.keep[i], keep[i])
	}
}

// setWorth works out what an offcut is worth that is crosscut from the strip: if
// it begins at position i and ends before position k, at most upper[k] less
// lower[i].
func (b *bench) setWorth(s *strip) {
	if !b.keepsHeight(s) {
		return
	}
	if s.slants {
		b.setSlab(s)
	}
	n := len(s.most)
	s.lower, s.upper = make([]value, n), make([]value, n)
	for i := range n {
		s.lower[i] = b.below(s, b.x.at(s.first+i))
		s.upper[i] = b.below(s, b.x.last(s.first+i)-b.crosscut) + 1
	}
}

// keepsHeight reports whether offcuts crosscut from a strip can be kept.
func (b *bench) keepsHeight(s *strip) bool {
	return b.worth.rate > 0 && s.height >= b.shop.MinOffcutWidth && s.height > 0
}

// below is the worth of the wood of a strip from the butt to x.
func (b *bench) below(s *strip, x layout.Length) value {
	if x <= 0 {
		return 0
	}
	x = min(x, b.x.at(b.nx+1))
	i := b.x.down(x)
	area := int64(x) * (up(s.height) + 1)
	if s.slab != nil {
		area = s.slab[i]
		if part := x - b.x.at(i); part > 0 {
			area += (s.slab[i+1] - s.slab[i]) / int64(b.x.unit) * int64(part)
		}
	}
	if b.unsound != nil && s.meets != 0 {
		area -= b.wasteIn(span{0, i}, span{s.at.j, max(s.at.j, b.y.down(b.y.at(s.at.j)+s.height))})
	}
	return b.worth.of(area)
}

// upTo is what the strip is worth in a blank.
func (b *bench) upTo(s *strip, at blankAt) value {
	end := b.endOf(at.e)
	shift := at.a + b.x.down(b.end) - s.first
	i := b.x.down(end-b.inset+b.crosscut) - s.first - shift
	if i < 0 {
		return 0
	}
	i = min(i, len(s.most)-1)
	best := s.most[i]
	x := end - b.end - b.x.at(shift)
	least := b.x.down(x-b.shop.MinOffcutLength) - s.first
	if least = min(least, i); least >= 0 && s.keep[least] > nothing/2 {
		best = max(best, s.keep[least]+b.below(s, x)+1)
	}
	return best
}
