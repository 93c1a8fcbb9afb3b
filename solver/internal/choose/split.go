package choose

import "slices"

// division is a way to part the allowed items of a group in two: those that
// make at least so many pieces of a kind, and the others; or those that make
// anything, and the one that does not.
type division struct {
	group, kind, count int
	share              float64 // of the items that make as much, in the relaxation
	rank               float64
}

// split parts what is allowed in two, the likelier half first. Where the
// relaxation wavers about the use of a group it splits there, otherwise where it
// wavers about the pieces of a kind that a group makes.
func (s *search) split(allowed []bool, r rest) [2][]bool {
	best := division{rank: -1}
	for _, g := range r.open {
		for _, d := range s.divisions(allowed, g, r.left) {
			if d.rank > best.rank {
				best = d
			}
		}
	}
	return s.halves(allowed, best)
}

const anything = -1 // for the kind of a division

// divisions lists how the items of an open group can be parted, so that neither
// part is empty.
func (s *search) divisions(allowed []bool, g int, left []int) []division {
	var found []division
	try := func(d division, weight float64) {
		more, fewer := false, false
		lo, hi := s.group(g)
		for k := lo; k < hi; k++ {
			if !allowed[k] {
				continue
			}
			if s.items[k].makes(d) {
				more = true
				d.share += s.share[k]
			} else {
				fewer = true
			}
		}
		if more && fewer {
			d.rank = max(d.share*(1-d.share), 0) * weight
			found = append(found, d)
		}
	}
	try(division{group: g, kind: anything}, useFirst)
	dearest := max(slices.Max(s.price), 1)
	for i := range left {
		for _, n := range s.numbers(allowed, g, i) {
			try(division{group: g, kind: i, count: n}, float64(s.price[i])/float64(dearest))
		}
	}
	return found
}

// useFirst is how much more it weighs to waver about the use of a group than
// about the dearest kind. With equal weights, jobs as BenchmarkBest draws them took
// two to five times as many nodes.
const useFirst = 20

// makes tells on which side of a division an item is.
func (it *item) makes(d division) bool {
	if d.kind == anything {
		return it.origin >= 0
	}
	return it.counts[d.kind] >= d.count
}

// numbers lists the different counts of a kind, above the least, among the
// allowed items of a group.
func (s *search) numbers(allowed []bool, g, i int) []int {
	var seen []int
	lo, hi := s.group(g)
	for k := lo; k < hi; k++ {
		if allowed[k] {
			seen = append(seen, s.items[k].counts[i])
		}
	}
	slices.Sort(seen)
	return slices.Compact(seen)[1:]
}

// halves carries out a division.
func (s *search) halves(allowed []bool, d division) [2][]bool {
	more, fewer := slices.Clone(allowed), slices.Clone(allowed)
	lo, hi := s.group(d.group)
	for k := lo; k < hi; k++ {
		if s.items[k].makes(d) {
			fewer[k] = false
		} else {
			more[k] = false
		}
	}
	if d.share < 0.5 {
		return [2][]bool{fewer, more}
	}
	return [2][]bool{more, fewer}
}
