package bound

import (
	"slices"

	"sawbill/layout"
)

// measure is one way to bound the worth of the offcuts that are crosscut from a
// strip: one that begins in position i and ends before position k is worth at
// most upper[k] less lower[i]. Positions count from the strip's first.
type measure struct {
	height       layout.Length // of the wood that is counted
	slab         []int64       // where it is counted up to a far edge that cuts in: the area below each position
	lower, upper []value
	keep         []value // the largest most[h] less lower[h], over h up to i, for parts of one thickness
	kept         []value // the same for those of any
}

// mostBands is how many bands of height a strip has where the far edge cuts in.
const mostBands = 10

// setMeasures lists the measures of a strip. What counts of an offcut is a
// rectangle, as high as the wood is at its narrower end. Where the far edge cuts in,
// the first measure takes the wood up to the edge, which is more; each other one
// is for the offcuts of a band of heights and takes them for the highest of it.
func (b *bench) setMeasures(s *strip, n int) {
	s.measures = nil
	if !b.keepsHeight(s) {
		return
	}
	s.measures = []measure{{height: s.height}}
	if s.slants {
		s.measures[0].slab = b.slab(s)
		s.measures = append(s.measures, b.bands(s)...)
		s.setBands(b, n)
	}
	for g := range s.measures {
		m := &s.measures[g]
		m.lower, m.upper, m.keep = make([]value, n), make([]value, n), make([]value, n)
		m.kept = slices.Repeat([]value{nothing}, n)
		for i := range n {
			m.lower[i] = b.below(s, m, b.x.at(s.first+i))
			m.upper[i] = b.below(s, m, b.x.last(s.first+i)-b.crosscut) + 1
		}
	}
}

// bands divides the heights of a strip from that at the board's narrower end to
// its own.
func (b *bench) bands(s *strip) []measure {
	y1 := b.y.at(s.at.j)
	hi := min(s.height, max(b.reach(0), b.reach(b.board.Length))-y1)
	lo := min(hi, max(0, min(b.reach(0), b.reach(b.board.Length))-y1))
	var bands []measure
	for g := range layout.Length(mostBands) {
		bands = append(bands, measure{height: lo + (hi-lo)*(g+1)/mostBands})
	}
	return bands
}

// setBands finds the band of the offcuts that end, or on a board that widens
// begin, at each position: there they are narrowest.
func (s *strip) setBands(b *bench, n int) {
	s.band = make([]int8, n)
	for i := range s.band {
		x := b.x.at(s.first+i) - b.crosscut
		if b.widens() {
			x = b.x.last(s.first + i)
		}
		s.band[i] = int8(s.bandOf(b, x))
	}
}

// bandOf is the lowest band that is no lower than the strip at x; negative where
// no offcut is so narrow.
func (s *strip) bandOf(b *bench, x layout.Length) int {
	height := min(s.height, b.reach(x)-b.y.at(s.at.j))
	if height < b.shop.MinOffcutWidth {
		return -1
	}
	for g := 1; g < len(s.measures); g++ {
		if s.measures[g].height >= height {
			return g
		}
	}
	return len(s.measures) - 1
}

// widens reports whether the board is wider at its tip.
func (w *wood) widens() bool { return w.board.TipWidth > w.board.Width }

// keepFrom lets offcuts begin at position i, where the strip before it is worth
// most.
func (s *strip) keepFrom(b *bench, i int, most value) {
	for g := range s.measures {
		m := &s.measures[g]
		m.keep[i] = nothing
		if i > 0 {
			m.keep[i] = m.keep[i-1]
		}
		if g == 0 || !b.widens() || int(s.band[i]) == g {
			m.keep[i] = max(m.keep[i], most-m.lower[i])
		}
	}
}

// merge adds what one thickness keeps to what all do.
func (s *strip) merge() {
	for g := range s.measures {
		m := &s.measures[g]
		for i, v := range m.keep {
			m.kept[i] = max(m.kept[i], v)
		}
	}
}

// offcutTo is the most with a last offcut that begins no later than position i
// and is in a band, or on a board that widens in any; upper is what its wood
// counts for by a measure.
func (s *strip) offcutTo(b *bench, i, band int, upper func(m *measure) value) value {
	best := s.measures[0].keep[i] + upper(&s.measures[0])
	if !s.slants {
		return best
	}
	banded := nothing
	for g := 1; g < len(s.measures); g++ {
		if m := &s.measures[g]; (b.widens() || g == band) && m.keep[i] > nothing/2 {
			banded = max(banded, m.keep[i]+upper(m))
		}
	}
	return min(best, banded)
}

// slab adds up the wood of a strip that the far edge cuts into, each position
// as high as the edge is anywhere in it.
func (b *bench) slab(s *strip) []int64 {
	y1 := b.y.at(s.at.j)
	slab := make([]int64, b.nx+2)
	for i := range b.nx + 1 {
		far := max(b.reach(b.x.at(i)), b.reach(b.x.at(i+1)))
		slab[i+1] = slab[i] + int64(b.x.unit)*(up(min(s.height, max(0, far-y1)))+1)
	}
	return slab
}

// keepsHeight reports whether offcuts crosscut from a strip can be kept.
func (b *bench) keepsHeight(s *strip) bool {
	return b.worth.rate > 0 && s.height >= b.shop.MinOffcutWidth && s.height > 0
}

// below is the worth of the wood of a strip from the butt to x, by a measure.
func (b *bench) below(s *strip, m *measure, x layout.Length) value {
	if x <= 0 {
		return 0
	}
	x = min(x, b.x.at(b.nx+1))
	i := b.x.down(x)
	area := int64(x) * (up(m.height) + 1)
	if m.slab != nil {
		area = m.slab[i]
		if part := x - b.x.at(i); part > 0 {
			area += (m.slab[i+1] - m.slab[i]) / int64(b.x.unit) * int64(part)
		}
	}
	if b.unsound != nil && s.meets != 0 {
		area -= b.wasteIn(span{0, i}, span{s.at.j, max(s.at.j, b.y.down(b.y.at(s.at.j)+m.height))})
	}
	return b.worth.of(area)
}
