package solver

import (
	"math/big"

	"sawbill/layout"
	"sawbill/solver/internal/column"
)

// mostRanked is the most that all pieces may come to at prices by rank.
const mostRanked = 1 << 59

// setRank prices the parts of one rank at so much for every unit of volume, the
// greatest common divisor of theirs, and sums up what all of them come to.
func setRank(p *layout.Problem, price []column.Value, rank int, unit column.Value) (sum column.Value, ok bool) {
	divisor := new(big.Int)
	for i := range p.Bill {
		if p.Bill[i].Rank() == rank {
			divisor.GCD(nil, nil, divisor, p.Bill[i].Volume().Int())
		}
	}
	all := new(big.Int)
	for i := range p.Bill {
		if p.Bill[i].Rank() != rank {
			continue
		}
		v := new(big.Int).Div(p.Bill[i].Volume().Int(), divisor)
		v.Mul(v, big.NewInt(int64(unit)))
		all.Add(all, new(big.Int).Mul(v, big.NewInt(int64(p.Bill[i].Quantity))))
		if all.Cmp(big.NewInt(mostRanked)) > 0 {
			return 0, false
		}
		price[i] = column.Value(v.Int64())
	}
	return column.Value(all.Int64()) + unit, true
}
