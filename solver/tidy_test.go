package solver

import (
	"testing"

	"sawbill/layout"
	"sawbill/layout/check"
	"sawbill/solver/internal/jobs"
)

// TestTidyTakesOneLongBoard has four slats that two short boards give as well as one
// long one, for the same money: the plan ends with the long one.
func TestTidyTakesOneLongBoard(t *testing.T) {
	shop := layout.DefaultShop(layout.Millimetres)
	shop.CrosscutKerf, shop.EndTrim, shop.OffcutCredit = 0, 0, 0
	p := &layout.Problem{Shop: shop, Bill: []layout.Part{{
		Name: "slat", Species: []string{"ash"}, Thickness: 20 * layout.Millimetre, Width: 80 * layout.Millimetre,
		Length: 500 * layout.Millimetre, Quantity: 4, Grade: layout.Clear,
	}}}
	for _, b := range []struct {
		mark   string
		metres layout.Length
	}{{"A", 1}, {"B", 1}, {"C", 2}} {
		p.Stock = append(p.Stock, layout.Board{
			Mark: b.mark, Base: b.mark, Species: "ash", Thickness: 20 * layout.Millimetre, Length: b.metres * 1000 * layout.Millimetre,
			Width: 80 * layout.Millimetre, TipWidth: 80 * layout.Millimetre, Cost: layout.Money(b.metres) * 10 * layout.Unity,
			Edges: layout.EdgesBoth, Faces: layout.FacesPlaned,
		})
	}
	s := newSearch(p, Options{Workers: 1}, func() bool { return false })
	s.settleIslands(s.first())
	s.settle(s.best)
	if before := s.best.tidiness(); before.boards != 2 {
		t.Fatalf("the first plan cuts %d boards: nothing is left to tidy", before.boards)
	}
	if !s.tidy(true) || s.best.tidiness().boards != 1 || s.best.cost() != 20*layout.Unity {
		t.Errorf("%d boards for %v", s.best.tidiness().boards, s.best.cost())
	}
}

// TestTidySpendsLittle lets the last pass work on plans of random jobs: it spends at
// most a thousandth of the cost, nothing where the plan is proven, and whatever it
// changes makes a valid plan that is tidier.
func TestTidySpendsLittle(t *testing.T) {
	for seed := range int64(8) {
		p := jobs.New(jobs.Size{Boards: 8, Kinds: 6, Pieces: 24}, seed)
		s := newSearch(p, Options{Seed: seed, Workers: 1}, func() bool { return false })
		s.settleIslands(s.first())
		s.round(1)
		for _, proven := range []bool{true, false} {
			was := s.best.copy()
			changed := s.tidy(proven)
			now, cost := s.best, was.cost()
			switch {
			case !changed && now.cost() != cost:
				t.Errorf("seed %d: nothing changed, but the cost went from %v to %v", seed, cost, now.cost())
			case changed && now.tidiness().compare(was.tidiness()) >= 0:
				t.Errorf("seed %d: %v is no tidier than %v", seed, now.tidiness(), was.tidiness())
			case proven && now.cost() > cost || now.cost() > cost+cost/tidySpend:
				t.Errorf("seed %d: tidied from %v to %v", seed, cost, now.cost())
			}
			if faults := check.Plan(now.plan(p)); len(faults) > 0 {
				t.Errorf("seed %d: %v", seed, faults[0])
			}
		}
	}
}
