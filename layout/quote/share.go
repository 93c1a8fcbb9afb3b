package quote

import (
	"cmp"
	"math/big"
	"slices"

	"sawbill/layout"
)

// charge lets the parts bear the net cost of a board. Spare pieces bear it only where
// there are no others; where no part of the bill came out of a board, nobody does.
func (q *Quote) charge(g *group) {
	areas, sum := make([]*big.Rat, len(q.Parts)), new(big.Rat)
	for i := range areas {
		areas[i] = new(big.Rat)
	}
	needed := slices.ContainsFunc(g.takes, func(t take) bool { return !t.spare })
	for _, t := range g.takes {
		i := slices.IndexFunc(q.Parts, func(p Part) bool { return p.Name == t.part })
		if i < 0 {
			continue
		}
		if t.spare {
			q.Parts[i].Spares++
		} else {
			q.Parts[i].Needed++
		}
		if !t.spare || !needed {
			areas[i].Add(areas[i], t.area)
			sum.Add(sum, t.area)
		}
	}
	if sum.Sign() <= 0 {
		q.Loose += g.Net()
		return
	}
	for i, amount := range apportion(g.Net(), areas, sum) {
		q.Parts[i].Wood += amount
	}
}

// apportion splits an amount in proportion to weights, which are not negative and add
// up to sum, more than 0, into whole numbers that add up to it exactly: each share is
// rounded down, and what is left goes, one each, to those that lost the most by that,
// the first of equal ones first (largest remainder: Hamilton 1792).
func apportion(amount layout.Money, weights []*big.Rat, sum *big.Rat) []layout.Money {
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
