package solver

import (
	"sawbill/layout"
	"sawbill/solver/internal/ceiling"
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
// and is never less than the best. The prices are those that the master settled
// on. As most is high by some part in a hundred, somewhat lower prices prove more.
// They need no further work, for the best cutting is a convex function of the
// prices: most(t*p) <= t*most(p) + (1-t)*most(0), and at no prices at all a board
// is worth its offcuts, no more than the credit for all of its wood.
type proof struct {
	s        *search
	stages   []proofStage
	stage    int
	attempts []*attempt
}

// proofStage is one look at all boards. Some begin with other prices: those that
// are best when every board counts for as much more than the quick routine finds
// as the look before showed.
type proofStage struct {
	work int // steps with which a board is looked at
	anew bool
}

// proofStages are the looks in their order.
func proofStages() []proofStage {
	return []proofStage{{4e6, true}, {16e6, false}, {16e6, true}, {64e6, false}, {64e6, true}, {256e6, false}, {1e9, false}}
}

// attempt is a proof at one choice of prices.
type attempt struct {
	dual   *dual
	prices []layout.Money
	boards []int           // one of each that are alike
	most   []ceiling.Value // by index into boards
	done   bool            // every board was looked at
	next   int             // the board that is looked at next
}

// newProof begins a proof at the prices that the search settled on, or where
// parts are missing at those of what is made.
func (s *search) newProof() *proof {
	q := &proof{s: s, stages: proofStages()}
	d := s.master
	if s.short() {
		d = d.again(made(s.p, s.best), nil)
	}
	q.attempts = []*attempt{s.newAttempt(d)}
	return q
}

func (s *search) newAttempt(d *dual) *attempt {
	a := &attempt{dual: d, boards: d.m.boards()}
	for _, v := range d.prices() {
		a.prices = append(a.prices, layout.Money(v/float64(column.Cash)))
	}
	a.most = make([]ceiling.Value, len(a.boards))
	return a
}

// proofBatch is how many boards are looked at in one go.
const proofBatch = 16

// step looks at a few boards, or where the prices are not settled yet improves
// them; it reports whether a stage was finished.
func (q *proof) step() bool {
	if q.stage == len(q.stages) {
		return false
	}
	stage := q.stages[q.stage]
	a := q.attempts[len(q.attempts)-1]
	if d := a.dual; !a.done && a.next == 0 && !d.ended && d.count < mostDualRounds {
		d.run(d.count + 1)
		q.attempts[len(q.attempts)-1] = q.s.newAttempt(d)
		return false
	}
	if stage.anew && a.done && a.next == 0 && a.dual.worth != nil {
		a = q.s.newAttempt(a.dual.again(a.dual.m.demand, q.factors(a)))
		q.attempts = append(q.attempts, a)
	}
	var batch []int
	for len(batch) < proofBatch && a.next < len(a.boards) {
		if !a.done || a.most[a.next] > q.cost(a, a.next) {
			batch = append(batch, a.next)
		}
		a.next++
	}
	q.look(a, batch, stage.work)
	if a.next < len(a.boards) || q.s.workers[0].stop() {
		return false
	}
	a.next, a.done = 0, true
	q.stage++
	return true
}

// factors is by how much each board is worth more than the quick routine finds.
// Where a bound was good enough before it was sharp, the mean of the others
// stands for it.
func (q *proof) factors(a *attempt) []float64 {
	f := make([]float64, len(q.s.p.Stock))
	sum, n := 0.0, 0.0
	for k, b := range a.boards {
		if worth := a.dual.worth[b] / a.dual.factor(b); worth > 0 && a.most[k] > q.cost(a, k) {
			f[b] = float64(a.most[k]) / worth
			sum, n = sum+f[b], n+1
		}
	}
	for _, b := range a.boards {
		if f[b] == 0 {
			f[b] = max(1, sum/max(n, 1))
		}
		own := f[b]
		a.dual.m.eachTwin(b, func(twin int) { f[twin] = own })
	}
	return f
}

func (q *proof) cost(a *attempt, k int) ceiling.Value {
	return ceiling.Value(column.FromMoney(q.s.p.Stock[a.boards[k]].Cost))
}

func (q *proof) look(a *attempt, batch []int, work int) {
	price := make([]ceiling.Value, len(a.prices))
	for i, m := range a.prices {
		price[i] = ceiling.Value(column.FromMoney(m))
	}
	q.s.each(len(batch), func(w *worker, i int) {
		k := batch[i]
		if w.stop() {
			return
		}
		board := ceiling.New(q.s.p, &q.s.p.Stock[a.boards[k]])
		most := w.high.Most(board, price, q.cost(a, k), work, w.stop)
		if !a.done || most < a.most[k] {
			a.most[k] = most
		}
	})
}

// bound is the most that is proven for plans that make so many pieces, and the
// prices that prove it; ok is false before every board was looked at.
func (q *proof) bound(made []int) (bound layout.Money, prices []layout.Money, ok bool) {
	for _, a := range q.attempts {
		if !a.done {
			continue
		}
		for t := int64(1000); t >= leastScale; t-- {
			b, at := q.boundAt(a, t, made)
			if !ok || b > bound {
				bound, prices, ok = b, at, true
			}
		}
	}
	return bound, prices, ok
}

// leastScale is the lowest prices that are tried, in thousandths of those settled
// on.
const leastScale = 700

// boundAt is what some thousandths of the prices prove.
func (q *proof) boundAt(a *attempt, t int64, made []int) (layout.Money, []layout.Money) {
	prices := make([]layout.Money, len(a.prices))
	var worth, excess ceiling.Value
	for i, p := range a.prices {
		prices[i] = p * layout.Money(t) / 1000
		worth += ceiling.Value(column.FromMoney(prices[i])) * ceiling.Value(made[i])
	}
	for k, b := range a.boards {
		most := (ceiling.Value(t)*a.most[k] + ceiling.Value(1000-t)*q.offcuts(a, k) + 999) / 1000
		if over := most - q.cost(a, k); over > 0 {
			a.dual.m.eachTwin(b, func(int) { excess += over })
		}
	}
	left := max(0, worth-excess)
	return layout.Money(left / ceiling.Value(column.Cash)), prices
}

// offcuts is what a board is worth at most when no part has a price.
func (q *proof) offcuts(a *attempt, k int) ceiling.Value {
	credit := int64(q.s.p.Shop.OffcutCredit)
	whole := int64(layout.CreditUnity)
	cost := int64(q.cost(a, k))
	return ceiling.Value(cost/whole*credit+(cost%whole*credit+whole-1)/whole) + 1
}
