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
	s      *search
	prices []layout.Money
	boards []int           // one of each that are alike
	most   []ceiling.Value // by index into boards
	level  int             // how sharply the boards are looked at
	next   int             // the board that is looked at next
}

// proofStarts is how many starts of blanks a board is looked at with, level by
// level.
var proofStarts = [...]int{24, 80, 240, 1000}

// newProof begins a proof at the values that the search settled on.
func (s *search) newProof() *proof {
	q := &proof{s: s, boards: s.master.m.boards()}
	for _, v := range s.master.prices() {
		q.prices = append(q.prices, layout.Money(v/float64(column.Cash)))
	}
	q.most = make([]ceiling.Value, len(q.boards))
	return q
}

// proofBatch is how many boards are looked at in one go.
const proofBatch = 4

// step looks at a few boards; it reports whether a level was finished.
func (q *proof) step() bool {
	if q.level == len(proofStarts) {
		return false
	}
	var batch []int
	for len(batch) < proofBatch && q.next < len(q.boards) {
		if q.loose(q.next) {
			batch = append(batch, q.next)
		}
		q.next++
	}
	q.look(batch)
	if q.next < len(q.boards) || q.s.workers[0].stop() {
		return false
	}
	q.next = 0
	q.level++
	return true
}

// loose reports whether a sharper look at a board may prove more.
func (q *proof) loose(k int) bool { return q.level == 0 || q.most[k] > q.cost(k) }

func (q *proof) cost(k int) ceiling.Value {
	return ceiling.Value(column.FromMoney(q.s.p.Stock[q.boards[k]].Cost))
}

func (q *proof) look(batch []int) {
	price := make([]ceiling.Value, len(q.prices))
	for i, m := range q.prices {
		price[i] = ceiling.Value(column.FromMoney(m))
	}
	q.s.each(len(batch), func(w *worker, i int) {
		k := batch[i]
		if w.stop() {
			return
		}
		board := ceiling.New(q.s.p, &q.s.p.Stock[q.boards[k]])
		most := w.high.Most(board, price, q.cost(k), proofStarts[q.level])
		if q.level == 0 || most < q.most[k] {
			q.most[k] = most
		}
	})
}

// bound is what is proven for plans that make so many pieces, and the prices that
// prove it; ok is false before every board was looked at.
func (q *proof) bound(made []int) (bound layout.Money, prices []layout.Money, ok bool) {
	if q.level == 0 {
		return 0, nil, false
	}
	for thousandths := int64(1000); thousandths >= leastScale; thousandths-- {
		b, at := q.boundAt(thousandths, made)
		if !ok || b > bound {
			bound, prices, ok = b, at, true
		}
	}
	return bound, prices, ok
}

// leastScale is the lowest prices that are tried, in thousandths of those settled
// on.
const leastScale = 700

// boundAt is what some thousandths of the prices prove.
func (q *proof) boundAt(t int64, made []int) (layout.Money, []layout.Money) {
	prices := make([]layout.Money, len(q.prices))
	var worth, excess ceiling.Value
	for i, p := range q.prices {
		prices[i] = p * layout.Money(t) / 1000
		worth += ceiling.Value(column.FromMoney(prices[i])) * ceiling.Value(made[i])
	}
	for k, b := range q.boards {
		most := (ceiling.Value(t)*q.most[k] + ceiling.Value(1000-t)*q.offcuts(k) + 999) / 1000
		if over := most - q.cost(k); over > 0 {
			q.s.master.m.eachTwin(b, func(int) { excess += over })
		}
	}
	left := worth - excess
	if left < 0 {
		return 0, prices
	}
	return layout.Money(left / ceiling.Value(column.Cash)), prices
}

// offcuts is what a board is worth at most when no part has a price.
func (q *proof) offcuts(k int) ceiling.Value {
	credit := q.s.p.Shop.OffcutCredit
	whole := int64(layout.CreditUnity)
	cost := int64(q.cost(k))
	return ceiling.Value(cost/whole*int64(credit)+(cost%whole*int64(credit)+whole-1)/whole) + 1
}
