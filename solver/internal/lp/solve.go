package lp

// Status is how a Solve ended.
type Status int

// The ends of a Solve.
const (
	// Optimal: no x costs less, within rounding.
	Optimal Status = iota
	// Infeasible: no x satisfies the rows; Dual says why.
	Infeasible
	// Unbounded: there are x at any cost, however low.
	Unbounded
	// Stopped: the limit of iterations was reached.
	Stopped
)

func (s Status) String() string {
	return [...]string{"optimal", "infeasible", "unbounded", "stopped"}[s]
}

// simplex is one Solve under way.
type simplex struct {
	*Program
	left    int     // iterations
	slack   float64 // by which bounds may be missed
	cost    []float64
	list    []int // candidates to enter
	idle    int   // steps since the last one with progress
	shifted bool
	shifts  int // so far
}

// Solve goes on from the present basis for at most so many iterations, each one a
// change of the basis.
func (p *Program) Solve(iterations int) Status {
	p.settle()
	s := &simplex{Program: p, left: iterations, slack: p.slackness()}
	status := s.run()
	if status != Infeasible {
		p.findY(p.trueCost)
	}
	return status
}

// run repeats the two phases until the basis passes them with true right-hand
// sides and accurate values.
func (s *simplex) run() Status {
	for {
		s.findX()
		s.descend()
		status := s.repair()
		if status == Optimal {
			status = s.improve()
		}
		switch {
		case s.shifted:
			s.unshift()
			if status == Stopped {
				s.findX()
				return Stopped
			}
		case status == Stopped:
			return Stopped
		case s.confirmed(status):
			return status
		default:
			s.refactor()
		}
	}
}

// confirmed tells whether the end that was reached may be told: an answer with
// accurate values and no violation, anything else with a fresh inverse.
func (s *simplex) confirmed(status Status) bool {
	if s.base.changes == 0 {
		return true
	}
	if status != Optimal {
		return false
	}
	s.findX()
	return s.accurate(s.slack) && s.worst(s.slack*10) < 0
}

// change lets variable q take seat r with value x; the basis sees it as alpha,
// and the other values move by step against it.
func (s *simplex) change(q, r int, step, x float64) {
	b, alpha := &s.base, s.work.alpha
	for i, a := range alpha {
		b.x[i] -= step * a
	}
	b.x[r] = x
	b.pivot(r, alpha, s.work.at)
	s.vars.seat[b.order[r]] = -1
	b.order[r], s.vars.seat[q] = q, r
	s.left--
	if b.changes >= s.freshAfter {
		s.refactor()
		s.findX()
	}
}
