package solver

import (
	"math/big"
	"slices"

	"sawbill/layout"
	"sawbill/solver/internal/column"
)

// mostRanked is the most that all pieces may come to at prices by rank.
const mostRanked = 1 << 59

// coarseUnits is how many units of volume the largest part has where the true ones
// make prices too large.
const coarseUnits = 16

// rankPrices are prices at which plans compare as layout.Score says: in proportion
// to volume within a rank, one unit of volume for more than all boards cost
// together, and for more than everything of a later rank. Where the sums of such
// prices would be too large, volumes are rounded, and exact is false; price is nil
// where even that does not help.
func rankPrices(p *layout.Problem, costs layout.Money) (price []column.Value, exact bool) {
	if price = pricesFor(p, costs, trueUnits(p)); price != nil {
		return price, true
	}
	return pricesFor(p, costs, roundUnits(p)), false
}

// pricesFor gives every part its units times the price of one unit of its rank.
func pricesFor(p *layout.Problem, costs layout.Money, units []*big.Int) []column.Value {
	price := make([]column.Value, len(p.Bill))
	unit := big.NewInt(int64(column.FromMoney(costs) + column.Cash))
	for _, rank := range ranksLast(p) {
		sum := new(big.Int)
		for i := range p.Bill {
			if p.Bill[i].Rank() != rank {
				continue
			}
			v := new(big.Int).Mul(units[i], unit)
			sum.Add(sum, new(big.Int).Mul(v, big.NewInt(int64(p.Bill[i].Quantity))))
			if sum.Cmp(big.NewInt(mostRanked)) > 0 {
				return nil
			}
			price[i] = column.Value(v.Int64())
		}
		unit.Add(unit, sum)
	}
	return price
}

// ranksLast lists the ranks of the bill, the last to be served first.
func ranksLast(p *layout.Problem) []int {
	var ranks []int
	for i := range p.Bill {
		ranks = append(ranks, p.Bill[i].Rank())
	}
	slices.Sort(ranks)
	slices.Reverse(ranks)
	return slices.Compact(ranks)
}

// trueUnits counts the volume of a part by the greatest measure that those of its
// rank have in common.
func trueUnits(p *layout.Problem) []*big.Int {
	common := map[int]*big.Int{}
	for i := range p.Bill {
		r, v := p.Bill[i].Rank(), p.Bill[i].Volume().Int()
		if common[r] == nil {
			common[r] = new(big.Int)
		}
		common[r].GCD(nil, nil, common[r], v)
	}
	units := make([]*big.Int, len(p.Bill))
	for i := range p.Bill {
		units[i] = new(big.Int).Div(p.Bill[i].Volume().Int(), common[p.Bill[i].Rank()])
	}
	return units
}

// roundUnits counts the volume of a part by a share of that of the largest.
func roundUnits(p *layout.Problem) []*big.Int {
	most := new(big.Int)
	for i := range p.Bill {
		if v := p.Bill[i].Volume().Int(); v.Cmp(most) > 0 {
			most = v
		}
	}
	units := make([]*big.Int, len(p.Bill))
	for i := range p.Bill {
		v := p.Bill[i].Volume().Int()
		v.Mul(v, big.NewInt(coarseUnits))
		v.Add(v, most).Sub(v, big.NewInt(1)).Div(v, most) // up, so that none counts for nothing
		units[i] = v
	}
	return units
}
