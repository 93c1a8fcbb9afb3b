package published

import (
	"fmt"
	"slices"

	"sawbill/layout"
)

// spare is how many plates or bars more than needed a case is given.
const spare = 3

// Demand is a case of stock as a job: plates or bars of any number become boards
// of their own, a few more than are known to be enough, each of which costs 1.
// It is for kinds 1d-stock and 2d-stock.
func (c *Case) Demand() *layout.Problem {
	p := c.Problem(true)
	like := p.Stock[0]
	like.Cost = layout.Unity
	p.Stock = nil
	for i := range c.enough() + spare {
		b := like
		b.Mark = fmt.Sprintf("%s.%d", like.Base, i+1)
		p.Stock = append(p.Stock, b)
	}
	return p
}

// Used is how many plates or bars the literature, or whoever worked the case
// out, says are needed: a number, or an interval. The kerfless job's cuts are
// freer than the three stages that begin across the length, and less free than
// any guillotine cuts.
func (c *Case) Used() Outcome {
	if c.Optimum.StockUsed != nil {
		return Outcome{*c.Optimum.StockUsed, *c.Optimum.StockUsed}
	}
	return Outcome{c.Computed["guillotine"].Low, c.Computed["3stage_cross"].High}
}

// Cut is the most that may be cut from the plate of a case, with a last rip: a
// number where it is known, or an interval (see Used).
func (c *Case) Cut() Outcome {
	if o, known := c.Computed["board_3"]; known {
		return o
	}
	return Outcome{c.Computed["3stage_cross"].Low, c.Computed["guillotine"].High}
}

// enough is a number of plates or bars that is enough: the upper end of what was
// worked out, or for bars what the longest-first rule needs (first fit
// decreasing).
func (c *Case) enough() int {
	if high := c.Computed["3stage_cross"].High; high > 0 {
		return int(high)
	}
	var lengths []int
	for _, it := range c.Items {
		for range *it.Copies {
			lengths = append(lengths, it.Length)
		}
	}
	slices.Sort(lengths)
	var left []int
	for _, l := range slices.Backward(lengths) {
		k := slices.IndexFunc(left, func(room int) bool { return room >= l })
		if k < 0 {
			k, left = len(left), append(left, c.Stock[0].Length)
		}
		left[k] -= l
	}
	return len(left)
}
