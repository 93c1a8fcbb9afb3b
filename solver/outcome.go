package solver

import (
	"fmt"

	"sawbill/layout"
	"sawbill/layout/check"
)

// outcome is the best plan so far as it is handed out, with what is proven of it.
type outcome struct {
	s     *search
	plan  *layout.Plan
	round int  // in which the plan was found
	early bool // it is of another search, and stands until this one has a better
	asked *layout.Problem
}

// take makes a plan of the best state and has the checker pass it.
func (a *outcome) take(round int) error {
	plan := a.s.best.plan(a.asked)
	a.s.state(plan)
	if faults := check.Plan(plan); len(faults) > 0 {
		return fmt.Errorf("solver: seed %d made a plan that fails its check: %v", a.s.o.Seed, faults[0])
	}
	if a.early && plan.Score().Compare(a.plan.Score()) > 0 {
		return nil
	}
	a.plan, a.round, a.early = plan, round, false
	if o := a.s.o.Observer; o != nil {
		o.Improved(round, plan)
	}
	return nil
}

// takeEarly hands out the first plan that the search makes, until another has a better one.
func (a *outcome) takeEarly() error {
	a.s.settleIslands(a.s.first())
	if err := a.take(0); err != nil {
		return err
	}
	a.early = true
	return nil
}

// prove states what is proven by now of the plan at hand.
func (a *outcome) prove(round int) {
	if a.early {
		return
	}
	plan := *a.plan
	if !a.s.state(&plan) {
		return
	}
	better := a.plan.Totals.Bound == nil || *plan.Totals.Bound > *a.plan.Totals.Bound
	if !better {
		return
	}
	a.plan = &plan
	if o := a.s.o.Observer; o != nil {
		o.Proven(round, *plan.Totals.Bound)
	}
}

// state writes into a plan's totals what is proven of it; it reports whether
// anything is. A bound above the cost would be a fault of the proof, and is not
// worth the plan: it is left out.
func (s *search) state(plan *layout.Plan) bool {
	made := made(s.p, s.best)
	var priced proven
	var ok bool
	switch {
	case len(s.usable) == 0: // nothing is cut, and nothing costs less, at no prices at all
		priced.prices, ok = make([]layout.Money, len(made)), true
	case s.proof == nil:
		return false
	default:
		priced, ok = s.proof.bound(made)
	}
	if ok && priced.bound <= plan.Totals.Cost {
		held := heldBack(priced, plan.Totals.Cost)
		plan.Totals.Bound, plan.Totals.PriceBound = &priced.bound, &held
		plan.Totals.Prices = map[string]layout.Money{}
		for i, m := range priced.prices {
			plan.Totals.Prices[s.p.Bill[i].Name] = m
		}
	}
	if more, ok := s.fewBound(); ok && more <= plan.Totals.Cost && (plan.Totals.Bound == nil || more > *plan.Totals.Bound) {
		plan.Totals.Bound = &more
	}
	if b := plan.Totals.Bound; b != nil {
		if up := s.wholeCosts(*b); up <= plan.Totals.Cost {
			plan.Totals.Bound = &up
		}
	}
	return plan.Totals.Bound != nil
}

// heldBack is what a plan of some cost claims that its prices prove, a trifle less than
// they do: who proves it again sees the boards on other grids, which may be the less
// sharp by a few ten-thousandths of what a board costs, or by more where it tapers.
func heldBack(p proven, cost layout.Money) layout.Money {
	const trifle = 2000
	return max(0, p.priced-cost/trifle-p.blur)
}

// wholeCosts rounds a bound up to the next cost that a plan can have: without
// credit for offcuts costs are multiples of whatever divides those of all boards.
func (s *search) wholeCosts(bound layout.Money) layout.Money {
	var step layout.Money
	usable := s.usable
	if s.unmatched != nil {
		usable = s.unmatched.usable
	}
	for _, b := range usable {
		for cost := s.p.Stock[b].Cost; cost != 0; {
			step, cost = cost, step%cost
		}
	}
	if s.p.Shop.OffcutCredit > 0 || step == 0 {
		return bound
	}
	return (bound + step - 1) / step * step
}

// beginProof makes ready for proving.
func (s *search) beginProof() {
	if s.unmatched == nil {
		s.proof, s.sets = s.newProof(), s.newSets()
		return
	}
	s.unmatched.best = s.best
	s.proof = s.unmatched.newProof()
	s.unmatched.proof, s.sets = s.proof, s.unmatched.newSets()
	s.pool.sketches = s.unmatched.pool.sketches // blanks may start where those of the proof do
}

// stepProof takes the proof further; it reports whether it has come to the end of
// something.
func (s *search) stepProof() bool {
	if s.proof == nil {
		return false
	}
	if s.unmatched != nil {
		s.unmatched.best = s.best
	}
	ahead := false
	if s.proof.passes < fewPasses || !s.sets.counting() {
		ahead = s.proof.step()
	}
	for range setSteps {
		s.sets.step()
	}
	return ahead
}

// fewBound is what is proven of a job of few boards by going through their sets,
// or through all plans.
func (s *search) fewBound() (layout.Money, bool) {
	if s.unmatched != nil { // s went through plans with the words on boards that it chose
		return s.sets.bound()
	}
	exact, ok := s.exactBound()
	if least, some := s.sets.bound(); some && (!ok || least > exact) {
		return least, true
	}
	return exact, ok
}

// provenMore reports whether going through sets or plans proved more than the plan
// at hand says.
func (a *outcome) provenMore() bool {
	more, ok := a.s.fewBound()
	b := a.plan.Totals.Bound
	return ok && more <= a.plan.Totals.Cost && (b == nil || more > *b)
}

// proven reports whether no plan with as much made costs less.
func (a *outcome) proven() bool {
	gap, ok := a.plan.Totals.Gap()
	return ok && gap == 0
}

// near reports whether the plan is proven to be near enough to the best.
func (a *outcome) near() bool {
	gap, ok := a.plan.Totals.Gap()
	return ok && gap <= a.s.o.Within && (a.s.leastMissing() || !a.s.short())
}

// short reports whether something is missing that some board could give.
func (s *search) short() bool {
	for i, n := range s.best.missing {
		if n > 0 && s.givable(i) {
			return true
		}
	}
	return false
}

// givable reports whether a board that may be cut could hold a part.
func (s *search) givable(row int) bool {
	for _, b := range s.usable {
		if s.gives[b][row] {
			return true
		}
	}
	return false
}
