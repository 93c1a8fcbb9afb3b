package solver

import (
	"slices"

	"sawbill/layout"
	"sawbill/solver/internal/ceiling"
	"sawbill/solver/internal/column"
)

// attempt is a proof at one choice of prices.
type attempt struct {
	s      *search
	dual   *dual
	prices []layout.Money
	boards []int           // one of each that are alike
	most   []ceiling.Value // by index into boards
	sharp  []bool          // the same: no more work makes it less
	done   bool            // every board was looked at
	some   bool            // some were, to learn by how much they are worth more
	next   int             // the board that is looked at next
}

func (s *search) newAttempt(d *dual) *attempt {
	a := &attempt{s: s, dual: d, boards: d.m.boards()}
	for _, v := range d.prices()[:len(s.p.Bill)] {
		a.prices = append(a.prices, layout.Money(v/float64(column.Cash)))
	}
	a.most, a.sharp = slices.Repeat([]ceiling.Value{unseen}, len(a.boards)), make([]bool, len(a.boards))
	return a
}

// unseen stands for what is not known of a board that was not looked at.
const unseen ceiling.Value = -1

func (a *attempt) cost(k int) ceiling.Value {
	return ceiling.Value(column.FromMoney(a.s.p.Stock[a.boards[k]].Cost))
}

// enough is the value of the k-th board below which no sharper look proves more:
// a board need not be cut that is not worth its cost.
func (a *attempt) enough(k int) ceiling.Value {
	if a.dual.m.forced {
		return 0
	}
	return a.cost(k)
}

// open reports whether a sharper look at the k-th board may prove more.
func (a *attempt) open(k int) bool {
	return !a.done || !a.sharp[k] && a.most[k] > a.enough(k)
}

// look bounds a few boards.
func (a *attempt) look(batch []int, work int) {
	price := make([]ceiling.Value, len(a.prices))
	for i, m := range a.prices {
		price[i] = ceiling.Value(column.FromMoney(m))
	}
	a.s.each(len(batch), func(w *worker, i int) {
		k := batch[i]
		if w.stop() {
			return
		}
		board := ceiling.New(a.s.p, &a.s.p.Stock[a.boards[k]])
		most, sharp := w.high.Most(board, price, a.enough(k), work, w.stop)
		w.looks += w.high.Work()
		if !a.done || most <= a.most[k] {
			a.most[k], a.sharp[k] = most, sharp
		}
	})
}

// factors is by how much each board is worth more than the quick routine finds.
// Where a bound was good enough before it was sharp, the mean of the others
// stands for it, but no more than what is known.
func (a *attempt) factors() []float64 {
	f := make([]float64, len(a.s.p.Stock))
	sum, n := 0.0, 0.0
	for k, b := range a.boards {
		if worth := a.dual.worth[b] / a.dual.factor(b); worth > 0 && a.most[k] > a.enough(k) {
			f[b] = float64(a.most[k]) / worth
			sum, n = sum+f[b], n+1
		}
	}
	for k, b := range a.boards {
		if f[b] == 0 {
			f[b] = max(1, sum/max(n, 1))
			if a.most[k] != unseen {
				f[b] = max(1, min(f[b], a.dual.factor(b)*float64(a.enough(k))/max(a.dual.worth[b], 1)))
			}
		}
		own := f[b]
		a.dual.m.eachTwin(b, func(twin int) { f[twin] = own })
	}
	return f
}

// leastScale is the lowest prices that are tried, in thousandths of those settled
// on.
const leastScale = 700

// bound is what the best scale of the prices proves, and these prices. No prices at
// all prove that no plan costs less than nothing.
func (a *attempt) bound(made []int) (bound layout.Money, prices []layout.Money) {
	bound, prices = a.boundAt(0, made)
	for t := int64(1000); t >= leastScale; t-- {
		if b, at := a.boundAt(t, made); b > bound {
			bound, prices = b, at
		}
	}
	return bound, prices
}

// rounding is kept back for every board, for whoever proves the bound again may
// round the worth of its offcuts up a little further.
const rounding = ceiling.Value(column.Cash)

// boundAt is what some thousandths of the prices prove.
func (a *attempt) boundAt(t int64, made []int) (layout.Money, []layout.Money) {
	prices := make([]layout.Money, len(a.prices))
	for i, p := range a.prices {
		prices[i] = p * layout.Money(t) / 1000
	}
	left := a.s.worthMade(prices, made)
	for k, b := range a.boards {
		most := (ceiling.Value(t)*a.most[k] + ceiling.Value(1000-t)*a.offcuts(k) + 999) / 1000
		if over := most - a.cost(k); over > 0 || a.dual.m.forced {
			a.dual.m.eachTwin(b, func(int) { left -= over + rounding })
		}
	}
	return layout.Money(max(0, left) / ceiling.Value(column.Cash)), prices
}

// boundOf is what the prices prove of plans that cut these boards and no others.
func (a *attempt) boundOf(boards, made []int) layout.Money {
	left := a.s.worthMade(a.prices, made)
	for k, b := range a.boards {
		a.dual.m.eachTwin(b, func(twin int) {
			if slices.Contains(boards, twin) {
				left -= a.most[k] - a.cost(k) + rounding
			}
		})
	}
	return layout.Money(max(0, left) / ceiling.Value(column.Cash))
}

// boundWithin is what the prices prove of plans that cut no others than these boards.
func (a *attempt) boundWithin(boards, made []int) layout.Money {
	left := a.s.worthMade(a.prices, made)
	for k, b := range a.boards {
		over := a.most[k] - a.cost(k)
		if over <= 0 {
			continue
		}
		a.dual.m.eachTwin(b, func(twin int) {
			if slices.Contains(boards, twin) {
				left -= over + rounding
			}
		})
	}
	return layout.Money(max(0, left) / ceiling.Value(column.Cash))
}

// offcuts is what a board is worth at most when no part has a price.
func (a *attempt) offcuts(k int) ceiling.Value {
	credit := int64(a.s.p.Shop.OffcutCredit)
	whole := int64(layout.CreditUnity)
	cost := int64(a.cost(k))
	return ceiling.Value(cost/whole*credit+(cost%whole*credit+whole-1)/whole) + 1
}
