package exhaust

import (
	"math/rand"
	"testing"

	"sawbill/layout"
	"sawbill/solver/internal/column"
)

// TestColumnAgrees holds the pairs of random boards against the exact board
// routine, at random values and within the limits of the bill: it finds a column
// worth as much as the best pair. On tapered boards, where the routine is not
// exact, it finds none that is worth more.
func TestColumnAgrees(t *testing.T) {
	equal := 0
	for seed := range int64(200) {
		p := Tiny(seed)
		for i := range p.Stock {
			if b := &p.Stock[i]; p.Takes(b) {
				equal += compare(t, seed, p, b)
			}
		}
	}
	if equal < 500 {
		t.Errorf("only %d values compared", equal)
	}
}

// compare counts the values that are equal.
func compare(t *testing.T, seed int64, p *layout.Problem, b *layout.Board) (equal int) {
	t.Helper()
	rng := rand.New(rand.NewSource(seed))
	pairs := Pairs(p, b, TinyUnit)
	ready := column.New(p, b, column.Exact())
	for range 3 {
		price, limits := values(rng, p)
		found, proven := new(column.Bench).BestLimited(ready, price, limits, 1<<30)
		want := most(pairs, price)
		switch {
		case !proven:
			t.Errorf("seed %d, %s: the column is not proven best", seed, b.Mark)
		case found.Value == want:
			equal++
		case b.Width == b.TipWidth || found.Value > want+rounding(found):
			t.Errorf("seed %d, %s: a column of %d, the best pair %d", seed, b.Mark, found.Value, want)
		}
	}
	return equal
}

// rounding is what the offcuts of a column lose when each is worth a whole number
// of ten-thousandths.
func rounding(c column.Column) column.Value {
	var sum column.Value
	if c.Root != nil {
		for _, l := range c.Root.Leaves() {
			if l.Offcut != "" {
				sum += column.Cash
			}
		}
	}
	return sum
}

// values draws what a piece of each part is worth, and lists the limits.
func values(rng *rand.Rand, p *layout.Problem) (price []column.Value, limits []int) {
	for i := range p.Bill {
		area := int64(p.Bill[i].Length/TinyUnit) * int64(p.Bill[i].Width/TinyUnit)
		price = append(price, column.FromMoney(layout.Money(area*int64(200+rng.Intn(1200)))))
		limits = append(limits, p.Bill[i].Quantity)
	}
	return price, limits
}

// most is the most that a pair is worth.
func most(pairs []Pair, price []column.Value) column.Value {
	var best column.Value
	for _, pair := range pairs {
		v := column.FromMoney(pair.Worth)
		for i, n := range pair.Made {
			v += column.Value(n) * price[i]
		}
		best = max(best, v)
	}
	return best
}
