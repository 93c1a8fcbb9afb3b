package column

import (
	"fmt"
	"math/rand"
	"testing"

	"sawbill/layout"
	"sawbill/layout/check/bound"
)

// idle is the plan that cuts nothing of a job and says that its prices prove an
// amount. What they do prove is the negative of what the best cuttings of the
// boards are worth beyond the boards' costs.
func idle(p *layout.Problem, price []Value, stated layout.Money) *layout.Plan {
	plan := layout.Assemble(p, nil)
	plan.Totals.Prices = map[string]layout.Money{}
	for i := range p.Bill {
		plan.Totals.Prices[p.Bill[i].Name] = layout.Money(price[i] / Cash)
	}
	plan.Totals.PriceBound, plan.Totals.Bound = &stated, &stated
	return plan
}

// proven is the most that the prices of a job prove, found by asking for more.
func proven(t *testing.T, p *layout.Problem, price []Value) layout.Money {
	t.Helper()
	proof, err := bound.Prove(func() bool { return false }, idle(p, price, 0))
	if err != nil {
		t.Fatal(err)
	}
	return proof.Proven
}

// dear makes parts so dear that most boards are worth cutting, in whole
// ten-thousandths.
func dear(price []Value) []Value {
	for i := range price {
		price[i] = price[i] * 5 / Cash * Cash
	}
	return price
}

// TestBoundIsNeverBelowTheBest holds the proof from prices against an
// enumeration of every position: no column may be worth more than the proof
// allows. Where it relaxes nothing the two are equal. In a shop of inches its
// grid divides no length of these jobs.
func TestBoundIsNeverBelowTheBest(t *testing.T) {
	for part := range int64(2) {
		t.Run(fmt.Sprint(part), func(t *testing.T) {
			t.Parallel()
			for seed := part; seed < 300; seed += 2 {
				holdBound(t, seed)
			}
		})
	}
}

// On these tapered boards an offcut under the slanting edge, crosscut from a
// strip without parts, was not reckoned with.
func TestBoundKnowsOffcutsUnderTheFarEdge(t *testing.T) {
	for _, seed := range []int64{1525, 2374, 3421, 4656, 5631, 7651} {
		holdBound(t, seed)
	}
}

func holdBound(t *testing.T, seed int64) {
	p, price := tiny(rand.New(rand.NewSource(seed)))
	b := &p.Stock[0]
	price = dear(price)
	best := newBrute(p, b, price, nil).best()[counts{}]
	got := -FromMoney(proven(t, p, price))
	over := max(0, best-FromMoney(b.Cost))
	switch slack := Value(4); { // the enumeration rounds each offcut to the nearest
	case got+slack < over:
		t.Errorf("seed %d: the best column is worth %d beyond its board, the proof allows %d", seed, over, got)
	case relaxesNothing(p) && got != over:
		t.Errorf("seed %d: the best column is worth %d beyond its board, the proof allows as much as %d", seed, over, got)
	}
	p.Shop.Units = layout.Inches
	if rounded := -FromMoney(proven(t, p, price)); rounded+4 < over {
		t.Errorf("seed %d: the best column is worth %d beyond its board, the proof on sixty-fourths allows %d", seed, over, rounded)
	}
}

// relaxesNothing reports whether the proof takes a job as it is: its lengths are
// whole half millimetres.
func relaxesNothing(p *layout.Problem) bool {
	s, b := p.Shop, &p.Stock[0]
	for _, d := range b.Defects {
		if d.Kind == layout.Metal {
			return false
		}
	}
	for _, part := range p.Bill {
		if part.Thickness != p.Bill[0].Thickness {
			return false
		}
	}
	return s.OffcutCredit == 0 && b.Width == b.TipWidth && s.RoughRipKerf >= s.RipKerf &&
		b.Faces == layout.FacesRough
}

// TestBoundKnowsWarpAndWays does the same for boards that are not flat, machines that
// are narrow, parts on edge, in layers and at a bevel.
func TestBoundKnowsWarpAndWays(t *testing.T) {
	for _, kind := range tinyKinds[1:] {
		t.Run(kind.name, func(t *testing.T) {
			t.Parallel()
			for seed := range int64(80) {
				p, price := kind.make(seed)
				holdBoundOf(t, fmt.Sprint(kind.name, " ", seed), p, dear(price))
			}
		})
	}
}

func holdBoundOf(t *testing.T, name string, p *layout.Problem, price []Value) {
	t.Helper()
	b := &p.Stock[0]
	best := newBrute(p, b, price, nil).best()[counts{}]
	over := max(0, best-FromMoney(b.Cost))
	if got := -FromMoney(proven(t, p, price)); got+4 < over {
		t.Errorf("%s: the best column is worth %d beyond its board, the proof allows %d", name, over, got)
	}
}
