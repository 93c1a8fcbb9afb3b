package bound

import (
	"fmt"
	"math/big"

	"sawbill/layout"
)

// A set of a glue-up stands in the bill as rows of strips whose length the plan
// chooses. Here every row is written out once for each number of slices k that a copy
// may have, as a part of its own that is cut to
//
//	k * slice_thickness + (k - 1) * crosscut_kerf + 2 * panel_square.
//
// Copies are at least as long as the shortest blank; the longest are those of which
// every strip still fits some board. A plan makes n(k) >= 0 whole copies of each k, so
// that the sum of k * n(k) is at least the slices that it makes; its strips are worth
// at least the least of the sum of n(k) * q(k), where q(k) is what the strips of one
// copy are priced at. A longer copy than any that fits can be no part of a plan.

// mostKinds is how many rows a bill may be written out to.
const mostKinds = 4000

// spread is a bill of which every set is written out.
type spread struct {
	problem layout.Problem
	prices  map[string]layout.Money // by name in the bill written out
	sets    []set
}

// set is the copies of one glue-up.
type set struct {
	name   string
	slices int
	least  int        // slices of the shortest copy
	worth  []*big.Int // of the strips of a copy, from the shortest on, in ten-thousandths
}

// spreadOut writes the sets of a bill out, for the boards that are free.
func spreadOut(p *layout.Problem, t *layout.Totals, f *fixed) (*spread, error) {
	s := &spread{problem: *p, prices: map[string]layout.Money{}}
	s.problem.Bill, s.problem.Stock = nil, f.free
	rows := map[string][]*layout.Part{}
	var order []string
	for i := range p.Bill {
		part := &p.Bill[i]
		if part.Set == "" {
			s.problem.Bill = append(s.problem.Bill, *part)
			s.prices[part.Name] = t.Prices[part.Name]
			continue
		}
		if rows[part.Set] == nil {
			order = append(order, part.Set)
		}
		rows[part.Set] = append(rows[part.Set], part)
	}
	for _, name := range order {
		if err := s.add(name, rows[name], t.StripPrices); err != nil {
			return nil, err
		}
		for _, row := range rows[name] {
			for k := range f.lacks[row.Name] {
				s.strip(row, k, t.StripPrices)
			}
		}
	}
	return s, nil
}

// add writes one set out: copies of ever more slices, until some strip fits no board.
func (s *spread) add(name string, rows []*layout.Part, prices map[string]map[int]layout.Money) error {
	c := set{name: name, slices: rows[0].Slices, least: 1}
	shop := s.problem.Shop
	for stripLength(shop, rows[0], c.least) < shop.MinBlank {
		if c.least++; c.least > mostKinds {
			return fmt.Errorf("the slices of set %q are too thin", name)
		}
	}
	for k := c.least; s.fit(rows, k); k++ {
		worth := new(big.Int)
		for _, row := range rows {
			price := s.strip(row, k, prices)
			worth.Add(worth, new(big.Int).Mul(big.NewInt(int64(price)), big.NewInt(int64(row.Quantity))))
		}
		c.worth = append(c.worth, worth)
		if len(s.problem.Bill) > mostKinds {
			return fmt.Errorf("set %q may have too many kinds of strips", name)
		}
	}
	s.sets = append(s.sets, c)
	return nil
}

// strip writes the strips of a row with so many slices out, once, and gives their price.
func (s *spread) strip(row *layout.Part, k int, prices map[string]map[int]layout.Money) layout.Money {
	strip, shop := *row, s.problem.Shop
	strip.Name = fmt.Sprintf("%s\x00%d", row.Name, k)
	strip.Length = stripLength(shop, row, k) - shop.LengthAllowance
	strip.Set = ""
	price := prices[row.Name][k]
	if _, there := s.prices[strip.Name]; !there {
		s.problem.Bill = append(s.problem.Bill, strip)
		s.prices[strip.Name] = price
	}
	return price
}

func stripLength(s *layout.Shop, row *layout.Part, k int) layout.Length {
	n := layout.Length(k)
	return n*row.SliceThickness + (n-1)*s.CrosscutKerf + 2*s.PanelSquare
}

// fit reports whether every strip of a copy fits between the end trims of some board
// that may give it.
func (s *spread) fit(rows []*layout.Part, k int) bool {
	for _, row := range rows {
		fits := false
		for i := range s.problem.Stock {
			b := &s.problem.Stock[i]
			strip := *row
			strip.Length = stripLength(s.problem.Shop, row, k) - s.problem.Shop.LengthAllowance
			strip.Set = ""
			fits = fits || s.problem.Allows(row, b) && s.problem.CouldHold(&strip, b)
		}
		if !fits {
			return false
		}
	}
	return true
}

// wanted is the least that the copies of all sets of a plan are worth, in hundredths
// of a ten-thousandth.
func (s *spread) wanted(missing []layout.Missing, f *fixed) *big.Int {
	sum := new(big.Int)
	for i := range s.sets {
		c := &s.sets[i]
		made := c.slices - f.slices[c.name]
		for _, m := range missing {
			if m.Part == c.name {
				made -= m.Quantity
			}
		}
		sum.Add(sum, c.cheapest(made))
	}
	return sum.Mul(sum, big.NewInt(int64(cash)))
}

// cheapest is the least that copies with so many slices or more are worth:
//
//	f(0) = 0, f(n) = min over k of f(max(0, n - k)) + worth of a copy of k
func (c *set) cheapest(slices int) *big.Int {
	f := []*big.Int{new(big.Int)}
	for n := 1; n <= slices; n++ {
		var least *big.Int
		for i, worth := range c.worth {
			sum := new(big.Int).Add(f[max(0, n-c.least-i)], worth)
			if least == nil || sum.Cmp(least) < 0 {
				least = sum
			}
		}
		if least == nil { // no copy fits: nothing can be made
			return new(big.Int)
		}
		f = append(f, least)
	}
	return f[max(0, slices)]
}
