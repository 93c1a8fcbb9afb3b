package solver

import (
	"context"
	"math/rand"
	"testing"

	"github.com/google/go-cmp/cmp"

	"sawbill/layout"
	"sawbill/solver/internal/exhaust"
)

// tinySetJob is a tiny job with one glue-up of one or two rows, and now and then a part
// beside it, everything in whole inches.
func tinySetJob(seed int64) *layout.Problem {
	p := exhaust.Tiny(seed)
	rng := rand.New(rand.NewSource(seed))
	inches := func(n int) layout.Length { return layout.Length(n) * layout.Inch }
	p.Shop.PanelSquare = inches(rng.Intn(2))
	first := p.Bill[0]
	first.Set, first.Slices, first.SliceThickness, first.Length = "tray", 2+rng.Intn(4), inches(1+rng.Intn(2)), 0
	first.Quantity = 1 + rng.Intn(2)
	bill := []layout.Part{first}
	switch {
	case rng.Intn(2) == 0:
		second := first
		second.Name, second.Width, second.Quantity = "other", inches(1+rng.Intn(2)), 1
		bill = append(bill, second)
	case len(p.Bill) > 1:
		bill = append(bill, p.Bill[1])
	}
	p.Bill = bill
	return p
}

// everyComposition lists all ways to make some slices, at most as many as are wanted
// before the last copy.
func everyComposition(lo, most, wanted int) []composition {
	list := []composition{{nil}}
	if lo == 0 || wanted <= 0 {
		return list
	}
	var grow func(copies []int, left int)
	grow = func(copies []int, left int) {
		list = append(list, composition{copies})
		for k := lo; left > 0 && k <= min(most, copies[len(copies)-1]); k++ {
			grow(append(copies[:len(copies):len(copies)], k), left-k)
		}
	}
	for k := lo; k <= most; k++ {
		grow([]int{k}, wanted-k)
	}
	return list
}

// bestOfAll goes through all compositions and all plans of each: the best score, and
// the least cost of plans with as much missing as plan has.
func bestOfAll(p *layout.Problem, plan *layout.Plan) (best layout.Score, least layout.Money) {
	sets := p.Sets()
	counts := p.SliceCounts(sets[0])
	lo, hi := 0, 0
	if len(counts) > 0 {
		lo, hi = counts[0], counts[len(counts)-1]
	}
	least = layout.MaxMoney
	found := false
	for _, c := range everyComposition(lo, hi, sets[0].Slices) {
		e := newStrips(p)
		plain := len(e.p.Bill)
		for i, k := range c[0] {
			if i == 0 || c[0][i-1] != k {
				e.add(sets, 0, k, count(c[0], k))
			}
		}
		all := exhaust.New(e.p, exhaust.TinyUnit)
		short := max(0, sets[0].Slices-total(c[0]))
		for _, missing := range waysToMiss(e.p, plain) {
			cost, ok := all.Cost(missing)
			if !ok {
				continue
			}
			score := scoreOf(p, e.p, missing, short, cost)
			if !found || score.Compare(best) < 0 {
				best, found = score, true
			}
			if sameShort(plan, e.p, missing, short) {
				least = min(least, cost)
			}
		}
	}
	return best, least
}

// waysToMiss lists what may be missing of at most one part beside strips that are all
// made.
func waysToMiss(p *layout.Problem, plain int) [][]int {
	if plain == 0 {
		return [][]int{make([]int, len(p.Bill))}
	}
	var ways [][]int
	for n := range p.Bill[0].Quantity + 1 {
		missing := make([]int, len(p.Bill))
		missing[0] = n
		ways = append(ways, missing)
	}
	return ways
}

func scoreOf(p, strips *layout.Problem, missing []int, slices int, cost layout.Money) layout.Score {
	plan := layout.Plan{Problem: *p}
	plan.Totals.Cost = cost
	plan.Missing = append(plan.Missing, layout.Missing{Part: "tray", Quantity: slices})
	for i, n := range missing {
		plan.Missing = append(plan.Missing, layout.Missing{Part: strips.Bill[i].Name, Quantity: n})
	}
	return plan.Score()
}

// sameShort reports whether a plan leaves just so much missing.
func sameShort(plan *layout.Plan, strips *layout.Problem, missing []int, slices int) bool {
	want := map[string]int{"tray": slices}
	for i, n := range missing {
		want[strips.Bill[i].Name] = n
	}
	for _, m := range plan.Missing {
		want[m.Part] -= m.Quantity
	}
	for _, n := range want {
		if n != 0 {
			return false
		}
	}
	return true
}

// TestTinyGlueUps holds plans and bounds of tiny jobs with a glue-up against the best
// of all plans of all compositions.
func TestTinyGlueUps(t *testing.T) {
	const jobs, fair = 30, 90
	met, bounded := 0, 0
	for seed := range int64(jobs) {
		p := tinySetJob(seed)
		plan, _, err := Solve(context.Background(), p, Options{Rounds: 24, Workers: 1})
		if err != nil {
			t.Fatalf("seed %d: %v", seed, err)
		}
		best, least := bestOfAll(p, plan)
		switch c := plan.Score().Compare(best); {
		case c < 0:
			t.Errorf("seed %d: %s is better than the best of all", seed, summary(plan))
		case c == 0:
			met++
		default:
			t.Logf("seed %d: %s; the best costs %v", seed, summary(plan), best.Cost)
		}
		if b := plan.Totals.Bound; b != nil {
			bounded++
			if *b > least {
				t.Errorf("seed %d: no plan costs less than %v, says the bound; one costs %v", seed, *b, least)
			}
		}
	}
	t.Logf("%d of %d jobs are planned best, %d have a bound", met, jobs, bounded)
	if met*100 < jobs*fair {
		t.Errorf("only %d of %d tiny jobs are planned best", met, jobs)
	}
	if bounded*2 < jobs {
		t.Errorf("only %d of %d tiny jobs have a bound", bounded, jobs)
	}
}

// TestGlueUpsStop shows that a job with a glue-up heeds the context, whenever it ends.
func TestGlueUpsStop(t *testing.T) {
	p := tinySetJob(2)
	plan, status, err := Solve(stopped(), p, Options{})
	if err != nil || status != Stopped || plan == nil || plan.Totals.Bound != nil {
		t.Errorf("status %v, error %v, plan %v", status, err, plan)
	}
	ctx, cancel := context.WithCancel(context.Background())
	defer cancel()
	if plan, status, err = Solve(ctx, p, Options{Observer: untilFirst{cancel}}); err != nil || status != Stopped || plan == nil {
		t.Errorf("status %v, error %v", status, err)
	}
}

// Workers never change the plan of a job with a glue-up, nor what is proven of it.
func TestGlueUpsAreTheSameWithMoreWorkers(t *testing.T) {
	for seed := range int64(4) {
		var first *layout.Plan
		for _, workers := range []int{1, 3} {
			plan, _, err := Solve(context.Background(), tinySetJob(seed), Options{Rounds: 10, Seed: seed, Workers: workers})
			if err != nil {
				t.Fatal(err)
			}
			if first == nil {
				first = plan
			}
			if diff := cmp.Diff(first, plan); diff != "" {
				t.Errorf("seed %d: %d workers (-1 worker):\n%s", seed, workers, diff)
			}
		}
	}
}
