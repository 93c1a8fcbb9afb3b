package bound

import "sawbill/layout"

// ruler is what measures of offcuts are the same for all strips that begin at one
// position across and are equally high, wherever their blanks begin: its measures and
// bands count from the butt.
type ruler struct {
	at       rulerAt
	measures []measure // without what a strip keeps
	band     []int8
}

// rulerAt says for which strips: from position j across, so high at most, and whether
// the far edge could cut in.
type rulerAt struct {
	j      int
	height layout.Length
	slants bool
}

// mostRuled is how many values rulers remember at a time, some sixty megabytes.
const mostRuled = 8_000_000

// How many bands of height a strip has where the far edge cuts in: as many as make one no
// higher than bandHeight, or mostBands on a board that tapers a great deal.
const (
	leastBands = 10
	mostBands  = 40
	bandHeight = 5 * layout.Millimetre / 2
)

// rulerOf makes a ruler. What counts of an offcut is a rectangle, as high as the wood
// is at its narrower end. Where the far edge cuts in, the first measure takes the wood
// up to the edge, which is more; each other one is for the offcuts of a band of
// heights and takes them for the highest of it.
func (b *bench) rulerOf(at rulerAt) *ruler {
	if r, ok := b.rulers[at]; ok {
		return r
	}
	r := &ruler{at: at, measures: []measure{{height: at.height}}}
	if at.slants {
		r.measures[0].slab = b.slab(at)
		r.measures = append(r.measures, b.bands(at)...)
		r.setBands(b)
	}
	for g := range r.measures {
		m := &r.measures[g]
		m.lower, m.upper = make([]value, b.nx+1), make([]value, b.nx+1)
		for i := range m.lower {
			m.lower[i] = b.below(at.j, m, b.x.at(i))
			m.upper[i] = b.below(at.j, m, b.x.last(i)-b.crosscut) + 1
		}
	}
	size := 2 * len(r.measures) * (b.nx + 1)
	if b.ruled += size; b.ruled > mostRuled {
		clear(b.rulers)
		b.ruled = size
	}
	b.rulers[at] = r
	return r
}

// bands divides the heights of a strip from that at the board's narrower end to
// its own.
func (b *bench) bands(at rulerAt) []measure {
	y1 := b.y.at(at.j)
	hi := min(at.height, max(b.reach(0), b.reach(b.board.Length))-y1)
	lo := min(hi, max(0, min(b.reach(0), b.reach(b.board.Length))-y1))
	var bands []measure
	n := min(max(leastBands, (hi-lo+bandHeight-1)/bandHeight), mostBands)
	for g := range n {
		bands = append(bands, measure{height: lo + (hi-lo)*(g+1)/n})
	}
	return bands
}

// setBands finds the band of the offcuts that end, or on a board that widens
// begin, at each position: there they are narrowest.
func (r *ruler) setBands(b *bench) {
	r.band = make([]int8, b.nx+1)
	for i := range r.band {
		x := b.x.at(i) - b.crosscut
		if b.widens() {
			x = b.x.last(i)
		}
		r.band[i] = int8(b.bandOf(r.at, r.measures, x))
	}
}

// bandOf is the lowest band that is no lower than a strip at x; negative where no
// offcut is so narrow.
func (b *bench) bandOf(at rulerAt, measures []measure, x layout.Length) int {
	height := min(at.height, b.reach(x)-b.y.at(at.j))
	if height < b.shop.MinOffcutWidth {
		return -1
	}
	for g := 1; g < len(measures); g++ {
		if measures[g].height >= height {
			return g
		}
	}
	return len(measures) - 1
}

// slab adds up the wood of a strip that the far edge cuts into, each position
// as high as the edge is anywhere in it.
func (b *bench) slab(at rulerAt) []int64 {
	y1 := b.y.at(at.j)
	slab := make([]int64, b.nx+2)
	for i := range b.nx + 1 {
		far := max(b.reach(b.x.at(i)), b.reach(b.x.at(i+1)))
		slab[i+1] = slab[i] + int64(b.x.unit)*(up(min(at.height, max(0, far-y1)))+1)
	}
	return slab
}

// below is the worth of the wood of a strip from position j across, from the butt to
// x, by a measure. What defects take before the blank cancels out of differences.
func (b *bench) below(j int, m *measure, x layout.Length) value {
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
	if b.unsound != nil {
		area -= b.wasteIn(span{0, i}, span{j, max(j, b.y.down(b.y.at(j)+m.height))})
	}
	return b.worth.of(area)
}
