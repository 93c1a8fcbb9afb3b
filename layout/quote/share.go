package quote

import (
	"cmp"
	"math/big"
	"slices"

	"sawbill/layout"
)

// charge lets the parts bear the net cost of a board. Spare pieces bear it only where
// there are no others; where nothing came out of a board, nobody does.
func (q *Quote) charge(g *group) {
	areas := make([]*big.Rat, len(q.Parts))
	for i := range areas {
		areas[i] = new(big.Rat)
	}
	needed := slices.ContainsFunc(g.takes, func(t take) bool { return !t.spare })
	for _, t := range g.takes {
		i := slices.IndexFunc(q.Parts, func(p Part) bool { return p.Name == t.part })
		if t.spare {
			q.Parts[i].Spares++
		} else {
			q.Parts[i].Needed++
		}
		if !t.spare || !needed {
			areas[i].Add(areas[i], t.area)
		}
	}
	if len(g.takes) == 0 {
		q.Loose += g.Net()
		return
	}
	for i, amount := range apportion(g.Net(), areas) {
		q.Parts[i].Wood += amount
	}
}

// apportion splits an amount in proportion to weights, which are not negative and not
// all 0, into whole numbers that add up to it exactly: each share is rounded down, and
// what is left goes, one each, to those that lost the most by that, the first of equal
// ones first (largest remainder: Hamilton 1792).
func apportion(amount layout.Money, weights []*big.Rat) []layout.Money {
	sum := new(big.Rat)
	for _, w := range weights {
		sum.Add(sum, w)
	}
	shares, lost := make([]layout.Money, len(weights)), make([]*big.Rat, len(weights))
	order := make([]int, len(weights))
	left := amount
	for i, w := range weights {
		exact := new(big.Rat).Mul(new(big.Rat).SetInt64(int64(amount)), new(big.Rat).Quo(w, sum))
		down := new(big.Int).Div(exact.Num(), exact.Denom()) // toward the lower
		shares[i], lost[i] = layout.Money(down.Int64()), exact.Sub(exact, new(big.Rat).SetInt(down))
		left -= shares[i]
		order[i] = i
	}
	slices.SortStableFunc(order, func(a, b int) int { return cmp.Or(lost[b].Cmp(lost[a]), cmp.Compare(a, b)) })
	for _, i := range order[:left] {
		shares[i]++
	}
	return shares
}
