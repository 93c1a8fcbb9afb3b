package solver

import (
	"cmp"
	"context"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"sawbill/layout"
	"sawbill/solver/internal/column"
	"sawbill/solver/internal/exhaust"
	"sawbill/solver/internal/jobs"
)

// TestRankPricesCompareAsScoresDo shows that at prices by rank the plan that comes
// to more is the one with the better score, whatever is made and at any costs up to
// those of all boards.
func TestRankPricesCompareAsScoresDo(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := exhaust.Tiny(rapid.Int64Range(0, 10_000).Draw(t, "job"))
		price, exact := rankPrices(p, 50*layout.Unity)
		if !exact {
			t.Fatal("no exact prices for a tiny job")
		}
		draw := func(name string) (layout.Score, column.Value) {
			cost := layout.Money(rapid.Int64Range(0, int64(50*layout.Unity)).Draw(t, name+" costs"))
			missing, value := make([]int, len(p.Bill)), -column.FromMoney(cost)
			for i := range missing {
				missing[i] = rapid.IntRange(0, p.Bill[i].Quantity).Draw(t, name+" misses")
				value += column.Value(p.Bill[i].Quantity-missing[i]) * price[i]
			}
			return layout.NewScore(p, missing, cost), value
		}
		a, x := draw("one")
		b, y := draw("other")
		if a.Compare(b) != cmp.Compare(y, x) {
			t.Errorf("scores compare as %d, values %v and %v", a.Compare(b), x, y)
		}
	})
}

// Volumes without a common measure make prices whose sums are too large: they are
// rounded, and with a great many pieces there are none.
func TestRankPricesTooLarge(t *testing.T) {
	p := exhaust.Tiny(1)
	for i := range 4 {
		part := p.Bill[0]
		part.Length += layout.Length(1 + i*i)
		part.Quantity = 10_000
		p.Bill = append(p.Bill, part)
	}
	price, exact := rankPrices(p, layout.Unity)
	if exact || price == nil || slices.Min(price) < column.FromMoney(layout.Unity) {
		t.Errorf("prices %v, exact %v", price, exact)
	}
	p.Bill[0].Quantity = 1 << 62 / int(column.FromMoney(layout.Unity))
	if price, _ := rankPrices(p, layout.Unity); price != nil {
		t.Errorf("prices %v", price)
	}
}

// TestLeastMissingIsProven has jobs that cannot be made whole. Where the search
// says that no plan leaves less missing, none does.
func TestLeastMissingIsProven(t *testing.T) {
	proven := 0
	for seed := range int64(60) {
		p := exhaust.Tiny(seed)
		s := solved(p)
		if !wants(s.best.missing) || !s.leastMissing() {
			continue
		}
		proven++
		best := exhaust.New(p, exhaust.TinyUnit).Best().Score()
		best.Cost = s.best.cost()
		if s.best.score().Compare(best) != 0 {
			t.Errorf("seed %d: a plan with less missing than %v was said to be impossible", seed, s.best.missing)
		}
	}
	if proven < 10 {
		t.Errorf("least missing is proven of only %d jobs", proven)
	}
}

// solved is the search after its first look at a small job.
func solved(p *layout.Problem) *search {
	s := newSearch(p, Options{Workers: 1}, func() bool { return false })
	s.settleIslands(s.first())
	s.settle(s.best)
	s.exactly(0, s.improve(s.second()))
	return s
}

// Jobs of many boards are left to the rounds.
func TestLargeJobsAreNotSmall(t *testing.T) {
	s := solved(jobs.New(jobs.Size{Boards: smallBoards * 4, Kinds: 3, Pieces: 9}, 2))
	if _, ok := s.exactBound(); s.small != nil || ok {
		t.Error("a job of many boards was searched as a whole")
	}
}

// TestSmallStops shows that the search of a small job as a whole heeds the context.
func TestSmallStops(t *testing.T) {
	p := jobs.Small()[4].Problem
	plan, status, err := Solve(stopped(), p, Options{})
	if err != nil || status != Stopped || plan.Totals.Bound != nil {
		t.Errorf("status %v, error %v, bound %v", status, err, plan.Totals.Bound)
	}
	ctx, cancel := context.WithCancel(context.Background())
	defer cancel()
	if _, status, err = Solve(ctx, p, Options{Rounds: 1, Observer: untilFirst{cancel}}); err != nil || status != Stopped {
		t.Errorf("status %v, error %v", status, err)
	}
}
