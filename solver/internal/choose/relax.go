package choose

import (
	"math"

	"sawbill/solver/internal/lp"
)

// relaxation is the linear relaxation: exactly one item a group, in fractions.
type relaxation struct {
	*lp.Program
	allowed []bool
	x       []float64 // by item, of the last solution
}

// steps limits the work on one relaxation, which takes some ten steps as a rule.
const steps = 5000

func relax(in *instance) *relaxation {
	var senses []lp.Sense
	var rhs []float64
	for range in.groups() {
		senses, rhs = append(senses, lp.Equal), append(rhs, 1)
	}
	for _, n := range in.wanted {
		senses, rhs = append(senses, lp.AtLeast), append(rhs, float64(n))
	}
	r := &relaxation{lp.New(senses, rhs), make([]bool, len(in.items)), make([]float64, len(in.items))}
	for k, it := range in.items {
		entries := []lp.Entry{{Row: it.group, Coef: 1}}
		for i, n := range it.counts {
			entries = append(entries, lp.Entry{Row: in.groups() + i, Coef: float64(n)})
		}
		r.Add(float64(it.cost), entries)
		r.allowed[k] = true
	}
	for i, p := range in.penalty {
		r.Add(float64(p), []lp.Entry{{Row: in.groups() + i, Coef: 1}})
	}
	return r
}

// solve finds fractions of the allowed items.
func (r *relaxation) solve(allowed []bool) {
	for k, may := range allowed {
		switch {
		case may && !r.allowed[k]:
			r.Allow(k)
		case !may && r.allowed[k]:
			r.Forbid(k)
		}
	}
	copy(r.allowed, allowed)
	r.Solve(steps)
	for k := range r.x {
		r.x[k] = r.X(k)
	}
}

// takePrices makes whole prices of the relaxation's duals.
func (s *search) takePrices() {
	duals := s.relax.Dual()[s.groups():]
	for i, y := range duals {
		price := int64(math.Round(y * float64(s.scale)))
		s.price[i] = min(max(price, 0), s.penalty[i]*s.scale)
	}
}
