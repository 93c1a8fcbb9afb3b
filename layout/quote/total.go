package quote

import (
	"math/big"

	"sawbill/layout"
)

// setTotal adds the shop's lines to the wood.
func (q *Quote) setTotal() {
	q.Total = q.Wood
	c := q.Charges
	if c == nil {
		return
	}
	q.Labour = product(c.Rate, int64(c.Hours), int64(layout.Hour))
	q.Total += q.Labour + c.Finish + c.Hardware
	q.Margin = product(q.Total, int64(c.Margin), int64(layout.MarginUnity))
	q.Total += q.Margin
}

// product is an amount, not negative, times n/unity, rounded half up.
func product(m layout.Money, n, unity int64) layout.Money {
	p := new(big.Int).Mul(big.NewInt(int64(m)), big.NewInt(n))
	p.Add(p.Lsh(p, 1), big.NewInt(unity))
	return layout.Money(p.Div(p, big.NewInt(2*unity)).Int64())
}
