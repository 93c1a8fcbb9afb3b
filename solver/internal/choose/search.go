package choose

import "slices"

// search is one branch and bound under way.
type search struct {
	*instance
	best []int // item by group
	cost int64 // of best
	left int   // nodes
	ways int   // so few combinations are gone through one by one
	cut  bool  // whether nodes were left out

	ranked  [][]int   // promising items by group
	rounded []int     // what the last relaxation was rounded to
	share   []float64 // by item, in the last relaxation
	price   []int64   // by kind, scaled
	reduced []int64   // by item, scaled
	least   []int64   // by group, scaled
}

func newSearch(in *instance, nodes int) *search {
	return &search{
		instance: in, left: nodes, ways: 2000, share: make([]float64, len(in.items)),
		price: make([]int64, len(in.wanted)), reduced: make([]int64, len(in.items)), least: make([]int64, in.groups()),
	}
}

// begin takes the start, or the first items of all groups, as the best choice.
func (s *search) begin(start []int) {
	for g := range s.groups() {
		k := s.first[g]
		if start != nil && start[g] >= 0 {
			k = s.stand[start[g]]
		}
		s.best = append(s.best, k)
	}
	s.cost = s.costOf(s.best)
	s.offer(slices.Clone(s.best))
}

// run searches, and tells whether it has seen everything.
func (s *search) run() bool {
	allowed := make([]bool, len(s.items))
	for k := range allowed {
		allowed[k] = true
	}
	if s.left > 0 {
		s.dive(slices.Clone(allowed))
	}
	s.explore(allowed, nil)
	return !s.cut
}

// explore finds the best choice of the allowed items, which it changes. The
// relaxation is that of the node above.
func (s *search) explore(allowed []bool, x *relaxation) {
	r, alive := s.tighten(allowed)
	if !alive {
		return
	}
	if s.left--; s.left < 0 {
		s.cut = true
		return
	}
	if s.few(allowed, r) {
		s.enumerate(allowed, r)
		return
	}
	if x == nil || !x.fits(allowed, r) {
		x = s.relax(allowed, r)
	}
	s.solve(x, allowed)
	s.round(allowed)
	if r, alive = s.tighten(allowed); !alive {
		return
	}
	if s.few(allowed, r) {
		s.enumerate(allowed, r)
		return
	}
	price := slices.Clone(s.price)
	for _, half := range s.split(allowed, r) {
		copy(s.price, price)
		s.explore(half, x)
	}
}
