package solver

import (
	"slices"

	"sawbill/layout"
	"sawbill/solver/internal/column"
)

// proof works out a lower bound on the cost of whole plans, board by board. At
// any prices p >= 0 of the parts, whatever a plan makes is worth what it asks for,
// and no board gives more than the best cutting of it, so no plan that makes d
// pieces costs less than
//
//	L(p) = sum of d * p - sum over boards of max(0, most(board, p) - cost)
//
// (Gilmore & Gomory 1961; Geoffrion 1974), where most comes from package ceiling
// and is never less than the best. The first prices are those that the master settled
// on. Each pass over the boards tells the cuttings with which they are bounded; with
// them the programme is solved again, and the next pass is made at prices between its
// own and those that prove the most so far (a cutting plane method: Kelley 1960, with
// the smoothing of Wentges 1997). As most is high, somewhat lower prices may prove more
// at first. They need no further work, for the best cutting is a convex function of the
// prices: most(t*p) <= t*most(p) + (1-t)*most(0), and at no prices at all a board
// is worth its offcuts, no more than the credit for all of its wood.
type proof struct {
	s        *search
	made     []int // by the plans that it is about
	dual     *dual // knows the cuttings with which boards were bounded
	attempts []*attempt
	samples  int // how often a few boards are still looked at for all
	work     int // steps with which a board is looked at
	ended    bool
	promise  float64 // how much more may be proven by the next, as a value; below 0 where that is not known
	pace     pace
	passes   int // over all boards
}

// fewPasses is how many passes there are where it is counted what boards make, which proves
// more.
const fewPasses = 6

// How many steps a look at a board may take, at first and at most.
const (
	firstLook = 64e6
	mostLook  = 1e9
)

// samples is how often a few boards are looked at for all before the first pass, whose
// prices they mend, for the quick routine is far from what the looks find: less often where
// a pass takes so long that it is the first that matters.
func (s *search) samples() int {
	warped := func(b int) bool { return !s.p.Stock[b].Flat() || s.p.Stock[b].Crook > 0 }
	switch {
	case len(s.usable) <= sampledBoards: // a pass is but a step
		return 0
	case len(s.usable) > fewEnough || slices.ContainsFunc(s.usable, warped):
		return 1
	}
	return 3
}

// fewEnough is the most boards of a job of which a pass is no long wait, which dives cut all,
// and of which the wide routine plans some of the tasks.
const fewEnough = 100

// newProof begins a proof at the prices that the search settled on.
func (s *search) newProof() *proof {
	q := &proof{s: s, samples: s.samples()}
	q.begin(s.goal())
	return q
}

// begin begins anew for plans that make other pieces. What the attempts at other prices
// prove stays true.
func (q *proof) begin(made []int) {
	q.made, q.work, q.ended, q.promise = made, firstLook, false, unknown
	q.samples = max(q.samples, min(1, q.s.samples())) // prices must fit what is made now
	from := q.s.master
	if q.dual != nil {
		from = q.dual
	}
	if q.dual = from; from.m.keepsAll() || !slices.Equal(from.m.demand, made) {
		q.dual = from.copied(made)
	}
	a := q.s.newAttempt(q.dual)
	a.rough = len(q.s.usable) > sampledBoards
	q.attempts = append(slices.DeleteFunc(q.attempts, func(a *attempt) bool { return !a.done }), a)
}

// proofBatch is how many boards are looked at in one go.
const proofBatch = 32

// sampledBoards is the most boards that are all looked at instead of a few for all, and closely
// from the beginning.
const sampledBoards = 16

// step looks at a few boards, at the prices at hand or at those that fit what the pass
// before showed; it reports whether a pass over all boards was finished.
func (q *proof) step() bool {
	if made := q.s.goal(); !slices.Equal(made, q.made) {
		q.begin(made)
	}
	if turn := q.pace.turn(q.s, q.share()); q.ended || q.proven() && !turn {
		return false
	}
	defer q.pace.end(q.s)
	a := q.attempts[len(q.attempts)-1]
	switch {
	case q.samples > 0 && len(a.boards) > 0:
		q.samples--
		q.lookAtSome(a)
		q.attempts[len(q.attempts)-1] = q.reprice(a)
		return false
	case a.done && a.next == 0:
		if a = q.next(a); a == nil {
			q.ended = true
			return false
		}
	}
	var batch []int
	for len(batch) < proofBatch && a.next < len(a.boards) {
		if a.open(a.next) {
			batch = append(batch, a.next)
		}
		a.next++
	}
	a.further = q.proven() // the first bound comes first
	a.look(batch, q.work)
	if a.next < len(a.boards) || q.s.workers[0].stop() {
		return false
	}
	a.next, a.done, a.lent = 0, true, false
	q.passes++
	q.drop()
	q.promise = unknown
	return true
}

// unknown is the promise of a pass before the programme knows what the one before it showed.
const unknown = -1

// share is how many times as much as the search the proof may work: where the next passes
// promise much, and nothing is to be made, they gain more than the search.
func (q *proof) share() int {
	complete := q.s.best == nil || !wants(q.s.best.missing)
	if complete && (q.promise == unknown || q.promise > q.cost()*muchPromised) {
		return 3
	}
	return 1
}

// cost is that of the plan at hand, as a value.
func (q *proof) cost() float64 { return float64(column.FromMoney(q.s.atHand())) }

// The shares of the cost above which the proof has more than half of the work, and its looks
// are rough, which costs a thousandth or two. A pass proves about half of what it promises.
const (
	muchPromised  = 0.015
	roughPromised = 0.01
)

// drop forgets the attempts for these plans but the last, the best, and that of which the
// prices alone prove the most.
func (q *proof) drop() {
	best, _ := q.best()
	last, priced := q.attempts[len(q.attempts)-1], best
	for _, a := range q.attempts {
		if a.done && a.bound(q.made).priced > priced.bound(q.made).priced {
			priced = a
		}
	}
	q.attempts = slices.DeleteFunc(q.attempts, func(a *attempt) bool {
		return a != best && a != last && a != priced && slices.Equal(a.dual.m.demand, q.made)
	})
}

// sampleShare is one in how many boards is looked at for all.
const sampleShare = 5

// lookAtSome looks at boards here and there.
func (q *proof) lookAtSome(a *attempt) {
	var batch []int
	n := max(1, min(proofBatch, len(a.boards)/sampleShare))
	for k := range n {
		batch = append(batch, (3*k+q.samples%3)*len(a.boards)/(3*n))
	}
	a.look(slices.Compact(batch), q.work)
}

// next is the attempt that the next pass is for: one at other prices, or the best once
// more with sharper looks where that promises more; nil where neither does.
func (q *proof) next(last *attempt) *attempt {
	best, bound := q.best()
	a := q.reprice(last)
	prices, looks := a.dual.value-float64(column.FromMoney(bound)), best.loose()
	q.promise = max(0, prices, looks)
	switch little := closeDual * float64(column.FromMoney(bound)); {
	case looks > max(prices, little) && q.work < mostLook:
		q.work = min(4*q.work, mostLook)
		// The best is the last one now, for it is looked at again.
		q.attempts = append(slices.DeleteFunc(q.attempts, func(a *attempt) bool { return a == best }), best)
		best.dual = q.dual
		return best
	case prices > little || last.rough:
		a.rough = last.rough && q.promise > q.cost()*roughPromised
		q.attempts = append(q.attempts, a)
		return a
	}
	return nil
}

// reprice is an attempt at prices that fit what an attempt showed.
func (q *proof) reprice(last *attempt) *attempt {
	best, _ := q.best()
	a := last.reprice(q.dual, best)
	a.rough, q.dual = last.rough, a.dual
	return a
}

// best is the attempt that proves the most, nil before there is one.
func (q *proof) best() (best *attempt, bound layout.Money) {
	for _, a := range q.attempts {
		if !a.done {
			continue
		}
		if p := a.bound(q.made); best == nil || p.bound > bound {
			best, bound = a, p.bound
		}
	}
	return best, bound
}

// proven reports whether there is a bound; until then the proof need not take turns.
func (q *proof) proven() bool {
	return slices.ContainsFunc(q.attempts, func(a *attempt) bool { return a.done })
}

// bound is the most that is proven for plans that make so many pieces; ok is false before
// every board was looked at.
func (q *proof) bound(made []int) (best proven, ok bool) {
	for _, a := range q.attempts {
		if !a.done {
			continue
		}
		if p := a.bound(made); ok {
			best.take(p)
		} else {
			best, ok = p, true
		}
	}
	return best, ok
}
