package choose

// rest is what a node leaves to decide.
type rest struct {
	left []int // pieces wanted beyond those of settled groups, at least 0
	cost int64 // of settled groups
	open []int // groups with more than one item allowed
}

// look finds what the allowed items leave to decide; false when a group has none.
func (s *search) look(allowed []bool) (rest, bool) {
	r := rest{left: append([]int(nil), s.wanted...)}
	for g := range s.groups() {
		n, last := 0, -1
		lo, hi := s.group(g)
		for k := lo; k < hi; k++ {
			if allowed[k] {
				n, last = n+1, k
			}
		}
		switch n {
		case 0:
			return r, false
		case 1:
			r.cost += s.items[last].cost
			for i, made := range s.items[last].counts {
				r.left[i] = max(r.left[i]-made, 0)
			}
		default:
			r.open = append(r.open, g)
		}
	}
	return r, true
}

// bound is what no choice of allowed items costs less than, in scaled units:
//
//	cost of settled groups + sum of price*left
//	+ sum over open groups of the least of cost - sum of price*min(count, left)
//
// It holds at any prices between 0 and the penalties. For let a choice fall short
// by f. Its penalties are at least sum of price*f, and f is at least left less
// the pieces that open groups make, even if no more than left are counted of each
// group: where one group alone makes all that is left, nothing is asked of f. It
// leaves behind, in reduced and least, the numbers of items and open groups.
func (s *search) bound(allowed []bool, r rest) int64 {
	total := r.cost * s.scale
	for i, n := range r.left {
		total += int64(n) * s.price[i]
	}
	for _, g := range r.open {
		lo, hi := s.group(g)
		first := true
		for k := lo; k < hi; k++ {
			if !allowed[k] {
				continue
			}
			s.reduced[k] = s.reduce(k, r.left)
			if first || s.reduced[k] < s.least[g] {
				s.least[g], first = s.reduced[k], false
			}
		}
		total += s.least[g]
	}
	return total
}

// reduce is the cost of an item less what its pieces are worth, in scaled units.
func (s *search) reduce(k int, left []int) int64 {
	it := &s.items[k]
	d := it.cost * s.scale
	for i, n := range it.counts {
		d -= int64(min(n, left[i])) * s.price[i]
	}
	return d
}

// beaten tells whether a choice with that bound cannot cost less than the best
// one known. Every cost is a whole multiple of unit, so the bound rounds up.
func (s *search) beaten(bound int64) bool {
	return ceil(ceil(bound, s.scale), s.unit)*s.unit >= s.cost
}

// ceil is a/b rounded up, for b above 0.
func ceil(a, b int64) int64 {
	q := a / b
	if a%b > 0 {
		q++
	}
	return q
}

// tighten strikes out the items that cannot be part of a better choice, over and
// over, since each one may settle a group. It returns false when nothing better
// is left at all.
func (s *search) tighten(allowed []bool) (rest, bool) {
	for {
		s.putInOrder(allowed)
		r, ok := s.look(allowed)
		if !ok {
			return r, false
		}
		total := s.bound(allowed, r)
		if s.beaten(total) {
			return r, false
		}
		if !s.strike(allowed, r, total) {
			return r, true
		}
	}
}

// strike strikes out the items with which the bound is beaten, and tells whether
// there were any.
func (s *search) strike(allowed []bool, r rest, total int64) bool {
	struck := false
	for _, g := range r.open {
		lo, hi := s.group(g)
		for k := lo; k < hi; k++ {
			if allowed[k] && s.beaten(total-s.least[g]+s.reduced[k]) {
				allowed[k], struck = false, true
			}
		}
	}
	return struck
}
