package solver

import (
	"slices"

	"sawbill/layout"
)

// proof works out a lower bound on the cost of whole plans, board by board. At
// any prices p >= 0 of the parts, whatever a plan makes is worth what it asks for,
// and no board gives more than the best cutting of it, so no plan that makes d
// pieces costs less than
//
//	L(p) = sum of d * p - sum over boards of max(0, most(board, p) - cost)
//
// (Gilmore & Gomory 1961; Geoffrion 1974), where most comes from package ceiling
// and is never less than the best. The prices are those that the master settled
// on. As most is high by some part in a hundred, somewhat lower prices prove more.
// They need no further work, for the best cutting is a convex function of the
// prices: most(t*p) <= t*most(p) + (1-t)*most(0), and at no prices at all a board
// is worth its offcuts, no more than the credit for all of its wood.
type proof struct {
	s        *search
	made     []int // by the plans that it is about
	stages   []proofStage
	stage    int
	attempts []*attempt
	pace     pace
}

// proofStage is one look at all boards. Some begin with other prices: those that
// are best when every board counts for as much more than the quick routine finds
// as the look before showed.
type proofStage struct {
	work int // steps with which a board is looked at
	anew bool
	some bool // a few boards stand for all
}

// glance is the work of the first look, at prices that may not be settled yet.
const glance = 8e6

// proofStages are the looks in their order. Those at one choice of prices are
// sharp before another is made of what they show. Where boards take long to be made
// ready a first brief look is not worth its time; where there are many, a few of them
// show what the prices should be.
func (s *search) proofStages() []proofStage {
	stages := []proofStage{
		{work: glance}, {work: 64e6},
		{work: 64e6, anew: true}, {work: 256e6}, {work: 64e6, anew: true}, {work: 256e6}, {work: 1e9},
	}
	switch {
	case len(s.usable) > mostGlanced:
		stages[0] = proofStage{work: 64e6, some: true}
		return slices.Delete(stages, 1, 2)
	case s.slowness() > 2:
		return stages[1:]
	}
	return stages
}

// mostGlanced is the most boards of a job that are glanced at.
const mostGlanced = 100

// newProof begins a proof at the prices that the search settled on.
func (s *search) newProof() *proof {
	q := &proof{s: s, made: s.master.m.demand, stages: s.proofStages()}
	q.attempts = []*attempt{s.newAttempt(s.master)}
	q.follow()
	return q
}

// follow begins anew, at prices that fit, when the best plan makes other pieces
// than those that the proof is about.
func (q *proof) follow() {
	made := q.s.goal()
	if slices.Equal(made, q.made) {
		return
	}
	q.made, q.stage = made, 0
	q.attempts = append(q.attempts, q.s.newAttempt(q.s.master.again(made, nil)))
}

// proofBatch is how many boards are looked at in one go; proofPricings how many are
// priced in one go before, to improve the prices, in no fewer rounds than leastRounds.
const (
	proofBatch    = 16
	proofPricings = 160
	leastRounds   = 4
)

// step looks at a few boards, or where the prices are not settled yet improves
// them; it reports whether a stage was finished.
func (q *proof) step() bool {
	q.follow()
	if turn := q.pace.turn(q.s); q.stage == len(q.stages) || q.proven() && !turn {
		return false
	}
	defer q.pace.end(q.s)
	stage := q.stages[q.stage]
	a := q.attempts[len(q.attempts)-1]
	if d := a.dual; stage.work > glance && !stage.some && !a.some && a.next == 0 && !d.ended && d.count < d.most() && !d.tired(fullEffort) {
		d.run(d.count+max(leastRounds, proofPricings/max(1, len(a.boards))), fullEffort)
		q.replace(q.s.newAttempt(d))
		return false
	}
	if stage.some {
		q.lookAtSome(a, stage.work)
		return false
	}
	if stage.anew && (a.done || a.some) && a.next == 0 && a.dual.worth != nil {
		a = q.s.newAttempt(a.dual.again(a.dual.m.demand, a.factors()))
		q.replace(a)
	}
	var batch []int
	for len(batch) < proofBatch && a.next < len(a.boards) {
		if a.open(a.next) {
			batch = append(batch, a.next)
		}
		a.next++
	}
	a.look(batch, stage.work)
	if a.next < len(a.boards) || q.s.workers[0].stop() {
		return false
	}
	a.next, a.done = 0, true
	q.stage++
	return true
}

// proven reports whether there is a bound; until then the proof need not take turns.
func (q *proof) proven() bool {
	return slices.ContainsFunc(q.attempts, func(a *attempt) bool { return a.done })
}

// lookAtSome looks at boards here and there.
func (q *proof) lookAtSome(a *attempt, work int) {
	var batch []int
	for k := range proofBatch {
		batch = append(batch, k*len(a.boards)/proofBatch)
	}
	a.look(slices.Compact(batch), work)
	a.some = true
	q.stage++
}

// replace puts an attempt in the place of the last one, unless that has proven
// something.
func (q *proof) replace(a *attempt) {
	if last := len(q.attempts) - 1; !q.attempts[last].done {
		q.attempts = q.attempts[:last]
	}
	q.attempts = append(q.attempts, a)
}

// bound is the most that is proven for plans that make so many pieces, and the
// prices that prove it; ok is false before every board was looked at.
func (q *proof) bound(made []int) (bound layout.Money, prices []layout.Money, ok bool) {
	for _, a := range q.attempts {
		if !a.done {
			continue
		}
		if b, at := a.bound(made); !ok || b > bound {
			bound, prices, ok = b, at, true
		}
	}
	return bound, prices, ok
}
