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

// setMeasures lists the measures of a strip of n positions.
func (b *bench) setMeasures(s *strip, n int) {
	s.measures, s.band = nil, nil
	if !b.keepsHeight(s) {
		return
	}
	ruler := b.rulerOf(rulerAt{s.at.j, s.height, s.slants})
	s.measures = slices.Clone(ruler.measures)
	for g := range s.measures {
		m := &s.measures[g]
		m.lower, m.upper, m.keep = m.lower[s.first:][:n], m.upper[s.first:][:n], make([]value, n)
		m.kept = slices.Repeat([]value{nothing}, n)
	}
	if s.slants {
		s.band = ruler.band[s.first:][:n]
	}
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
		if most >= 0 && (g == 0 || !b.widens() || int(s.band[i]) == g) {
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
	best := s.measures[0].keep[i]
	if best == nothing {
		return nothing
	}
	best += upper(&s.measures[0])
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

// keepsHeight reports whether offcuts crosscut from a strip can be kept.
func (b *bench) keepsHeight(s *strip) bool {
	return b.worth.rate > 0 && s.height >= b.shop.MinOffcutWidth && s.height > 0
}
