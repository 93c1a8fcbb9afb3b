package column

import (
	"math/big"

	"sawbill/layout"
)

// Rounding is how much less the value of columns may come to than their pieces
// and offcuts are worth in truth: 0 where the worth of every rectangle of the grids
// is a whole value.
func (t *Together) Rounding() Value {
	var sum Value
	for _, s := range t.boards {
		if !s.w.wholeWorth() {
			sum += offcutRounding * Value(s.w.mostOffcuts())
		}
	}
	return sum
}

// offcutRounding is more than the worth of one offcut may be off by.
const offcutRounding = 4

// mostOffcuts is how many offcuts that are worth keeping a board can hold.
func (w *Board) mostOffcuts() int64 {
	if w.measure.rate == 0 {
		return 0
	}
	long, wide := max(w.shop.MinOffcutLength, w.x.unit), max(w.shop.MinOffcutWidth, w.y.unit)
	return int64(w.wood.Length/long) * int64(w.wood.FullWidth()/wide)
}

// wholeWorth reports whether a square of the grid is worth a whole value.
func (w *Board) wholeWorth() bool {
	if w.measure.rate == 0 {
		return true
	}
	b := w.wood
	num := product(int64(w.x.unit), int64(w.y.unit), 2, int64(w.shop.OffcutCredit), int64(FromMoney(b.Cost)))
	den := product(int64(b.Length), int64(b.Width+b.TipWidth), int64(layout.CreditUnity))
	return num.Rem(num, den).Sign() == 0
}

func product(factors ...int64) *big.Int {
	p := big.NewInt(1)
	for _, f := range factors {
		p.Mul(p, big.NewInt(f))
	}
	return p
}

// least is by how much two plans of different cost differ in value at least.
func (t *Together) least() Value {
	step := commonStep(t.price)
	for b, s := range t.boards {
		if s.w.measure.rate > 0 {
			return max(1, Cash-t.Rounding())
		}
		step = commonStep([]Value{step, t.costs[b]})
	}
	return max(1, step)
}
