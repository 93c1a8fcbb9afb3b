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
// far along they reach: most[i] is the value of the first i positions.
type strip struct {
	at     stripAt
	meets  uint64 // the defects that something in the strip could meet
	slants bool   // the far edge could cut in
	// stackTop is the last position that a stack in the strip may reach, its kerf
	// included.
	stackTop int
	first    int // the position along from which i counts

	most     []value
	height   layout.Length // at most
	measures []measure     // of offcuts; none where none can be kept
	band     []int8        // where it slants: by position, the measure for offcuts that are narrowest there; negative where they are too narrow
	cells    [][]value     // by class, by zone: where nothing slants; negative where not worked out
	stacks   [][]standing  // by class, by zone
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
	if len(b.strips) >= b.mostStrips() {
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
	s.most = make([]value, n+1)
	b.setMeasures(s, n+1)
	for _, classes := range b.groups(s.at) {
		b.fillOne(s, classes)
	}
	s.forget(b)
}

func (b *bench) setCells(s *strip) {
	s.cells, s.stacks = make([][]value, len(b.classes)), make([][]standing, len(b.classes))
	for c := range s.cells {
		s.stacks[c] = make([]standing, len(b.classes[c].zones))
		s.cells[c] = slices.Repeat([]value{-1}, len(b.classes[c].zones))
	}
}

// forget drops what a strip that is filled needs no more: offcuts are measured once
// again only where they may reach nearer to the end of the blank than parts.
func (s *strip) forget(b *bench) {
	s.cells, s.stacks = nil, nil
	if b.inset == b.end {
		s.measures, s.band = nil, nil
	}
	for g := range s.measures {
		m := &s.measures[g]
		m.lower, m.upper, m.keep, m.kept = nil, nil, m.kept, nil
	}
}

// fillOne fills the strip with lengths of the classes, by
//
//	most[i] = max(most[i-1], all[i - advance] + a cell, keep[i - least] + worth below i)
//	all[i]  = max(most[i], one offcut up to i)
//
// in which the third is an offcut crosscut from the strip. A strip without a part is worth
// no more than one offcut of its length but where the far edge cuts in: elsewhere most is
// for strips with a part.
func (b *bench) fillOne(s *strip, classes []int) {
	most := slices.Repeat([]value{nothing}, len(s.most))
	if s.slants {
		most[0] = 0
	}
	least := b.x.down(b.shop.MinOffcutLength + b.crosscut)
	partsFrom := b.x.down(b.inset) - b.x.down(b.end)
	for i := range most {
		if i > 0 {
			most[i] = max(most[i], most[i-1])
		}
		all := max(0, most[i])
		if s.measures != nil {
			if i >= least {
				most[i] = max(most[i], s.offcutTo(b, i-least, s.bandAt(i), func(m *measure) value { return m.upper[i] }))
				all = max(most[i], s.alone(i))
			}
			s.keepFrom(b, i, most[i])
		}
		if i < partsFrom {
			continue
		}
		for _, c := range classes {
			if to := i + b.classes[c].advance; to < len(most) {
				most[to] = max(most[to], all+b.cell(s, c, s.first+i))
			}
		}
	}
	for i, v := range most {
		s.most[i] = max(s.most[i], v)
	}
	s.merge()
}

// alone is one offcut up to position i, of a strip into which the far edge does not cut.
func (s *strip) alone(i int) value {
	if s.slants {
		return 0
	}
	return s.measures[0].upper[i] - s.measures[0].lower[0]
}

// bandAt is the band of the offcuts that are narrowest at a position.
func (s *strip) bandAt(i int) int {
	if s.slants {
		return int(s.band[i])
	}
	return 0
}

// home is the bench that the strip is of: one that meets nothing is a cleared board's.
func (s *strip) home(b *bench) *bench {
	if s.meets == 0 && !s.slants {
		return b.plain
	}
	return b
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
	if s.measures == nil {
		return best
	}
	// Offcuts that end before position i are in it; the others end beyond it.
	x := end - b.end - b.x.at(shift)
	least := b.x.down(x-b.shop.MinOffcutLength) - s.first
	if least = min(least, i); least >= 0 {
		band := b.bandOf(rulerAt{s.at.j, s.height, s.slants}, s.measures, min(x, b.x.at(s.first+i)-b.crosscut))
		best = max(best, s.offcutTo(b, least, band, func(m *measure) value { return s.home(b).below(s.at.j, m, x) + 1 }))
	}
	return best
}
