package buy

import (
	"context"
	"slices"
	"testing"

	"sawbill/layout"
	"sawbill/layout/check"
	"sawbill/solver"
	"sawbill/solver/internal/exhaust"
	"sawbill/solver/internal/jobs"
)

// tinyJobs is how many tiny jobs are held against all sets of boards.
const tinyJobs = 160

// What is decided for a tiny job costs as much as the cheapest set of boards of the
// yard that completes the bill, which is found by going through all sets in the order
// of their price and trying every plan for each. The bound is not above it.
func TestDecideAgainstAllSets(t *testing.T) {
	whole, proven := 0, 0
	for seed := range int64(tinyJobs) {
		p := tinyYard(seed)
		a, err := Decide(context.Background(), p, Options{Solve: solver.Options{Rounds: 4, Workers: 1}})
		if err != nil {
			t.Fatalf("seed %d: %v", seed, err)
		}
		holdAnswer(t, seed, p, a)
		least, ok := cheapestSet(p)
		if ok != (len(a.Plan.Missing) == 0) {
			t.Errorf("seed %d: all sets of boards: complete is %v; the answer lacks %v", seed, ok, a.Plan.Missing)
		}
		if !ok {
			continue
		}
		if least > 0 {
			whole++
		}
		if a.Paid != least {
			t.Errorf("seed %d: pays %v, the least is %v", seed, a.Paid, least)
		}
		if a.Bound != nil && *a.Bound > least {
			t.Errorf("seed %d: nothing costs less than %v, says the bound; a set costs %v", seed, *a.Bound, least)
		}
		if least > 0 && a.Bound != nil && *a.Bound == least {
			proven++
		}
	}
	t.Logf("%d of %d tiny jobs are completed out of the yard; %d answers are proven", whole, tinyJobs, proven)
	if whole < tinyJobs/5 || proven*10 < whole*9 {
		t.Errorf("of %d tiny jobs %d are completed out of the yard and %d answers proven to be the cheapest", tinyJobs, whole, proven)
	}
}

// Boards that complete a bill meet every requirement that others do not meet.
func TestRequirementsAgainstAllSets(t *testing.T) {
	refused := 0
	for seed := range int64(tinyJobs / 2) {
		p := withYard(tinyYard(seed))
		q := solver.NewRequirements(context.Background(), p, solver.Options{Workers: 1})
		d := &decision{asked: p}
		var needs []solver.Requirement
		for _, marks := range setsByPrice(p) {
			if need, ok := q.That(d.withRack(marks)); ok {
				needs = append(needs, need)
			}
		}
		for _, marks := range setsByPrice(p) {
			completes := len(exhaust.New(only(p, marks), exhaust.TinyUnit).Best().Missing) == 0
			for _, need := range needs {
				if need.Refuses(d.withRack(marks)) {
					refused++
					if completes {
						t.Fatalf("seed %d: boards %v complete the bill and are refused by %v", seed, marks, need)
					}
				}
			}
		}
	}
	if refused == 0 {
		t.Error("nothing was ever refused")
	}
}

// What is decided is never dearer than what an ordinary plan with the same rounds and
// seed would buy, whatever the job asks for.
func TestDecideAgainstPlanning(t *testing.T) {
	o := solver.Options{Rounds: 2, Workers: 1}
	for seed := range int64(15) {
		var p *layout.Problem
		switch size := (jobs.Size{Boards: 5, Kinds: 3, Pieces: 10}); seed % 3 {
		case 0:
			p = jobs.Varied(size, seed)
		case 1:
			p = jobs.Warped(size, seed)
		default:
			p = tinyYard(seed)
			row := &p.Bill[0]
			row.Set, row.Slices, row.SliceThickness, row.Length = "board", 3, layout.Inch, 0
		}
		for i := range p.Stock {
			if seed%3 < 2 && i > 2 && p.Stock[i].Source == layout.Rack {
				p.Stock[i].Source = layout.Yard
			}
		}
		a, err := Decide(context.Background(), p, Options{Solve: o, Trials: 6})
		if err != nil {
			t.Fatalf("seed %d: %v", seed, err)
		}
		holdAnswer(t, seed, p, a)
		plan, _, err := solver.Solve(context.Background(), withYard(p), o)
		if err != nil {
			t.Fatal(err)
		}
		pays := priceOf(p, bought(p, plan))
		c := missing(a.Plan).Compare(missing(plan))
		if c > 0 || c == 0 && a.Paid > pays {
			t.Errorf("seed %d: pays %v and lacks %v; an ordinary plan pays %v and lacks %v", seed, a.Paid, a.Plan.Missing, pays, plan.Missing)
		}
	}
}

// Whoever has no time gets an answer all the same, if only what is missing.
func TestDecideAndAskWithoutTime(t *testing.T) {
	ctx, cancel := context.WithCancel(context.Background())
	cancel()
	for seed := range int64(12) {
		p := jobs.Varied(jobs.Size{Boards: 6, Kinds: 3, Pieces: 12}, seed)
		for i := range p.Stock[3:] {
			p.Stock[3+i].Source = layout.Yard
		}
		a, err := Decide(ctx, p, Options{})
		if err != nil {
			t.Fatalf("seed %d: %v", seed, err)
		}
		holdAnswer(t, seed, p, a)
		advice, err := Ask(ctx, p, AskOptions{})
		if err != nil {
			t.Fatalf("seed %d: %v", seed, err)
		}
		for _, w := range advice.Woods {
			if w.Piles != 0 || w.Half != nil || w.Most != nil {
				t.Errorf("seed %d: amounts without a plan: %+v", seed, w)
			}
		}
	}
}

// tinyYard is a tiny job of which all boards but perhaps the first are at the yard.
func tinyYard(seed int64) *layout.Problem {
	p := exhaust.Tiny(seed)
	p.Yard = false
	for i := range p.Stock {
		p.Stock[i].Source = layout.Yard
		if i == 0 && seed%2 == 0 {
			p.Stock[i].Source = layout.Rack
		}
	}
	return p
}

// holdAnswer holds the figures of an answer against each other and its plan against
// the checker.
func holdAnswer(t *testing.T, seed int64, p *layout.Problem, a *Answer) {
	t.Helper()
	for _, v := range check.Plan(a.Plan) {
		t.Errorf("seed %d: %v", seed, v)
	}
	var sum layout.Money
	var marks []string
	for _, b := range a.Boards {
		if b.Source != layout.Yard || a.Plan.Board(b.Mark) == nil {
			t.Errorf("seed %d: board %s (%v) is bought, and cut: %v", seed, b.Mark, b.Source, a.Plan.Board(b.Mark) != nil)
		}
		sum += b.Cost
		marks = append(marks, b.Mark)
	}
	if sum != a.Paid {
		t.Errorf("seed %d: boards cost %v together, said to be %v", seed, sum, a.Paid)
	}
	if !slices.Equal(bought(p, a.Plan), marks) {
		t.Errorf("seed %d: the plan cuts %v of the yard, bought are %v", seed, bought(p, a.Plan), marks)
	}
}

// cheapestSet goes through all sets of boards of the yard; ok is false when not even
// all of them complete the bill.
func cheapestSet(p *layout.Problem) (price layout.Money, ok bool) {
	for _, marks := range setsByPrice(p) {
		best := exhaust.New(only(p, marks), exhaust.TinyUnit).Best()
		if len(best.Missing) == 0 {
			return priceOf(p, marks), true
		}
	}
	return 0, false
}

func setsByPrice(p *layout.Problem) [][]string {
	sets := [][]string{nil}
	for _, b := range p.Stock {
		if b.Source != layout.Yard {
			continue
		}
		for _, s := range slices.Clone(sets) {
			sets = append(sets, append(slices.Clone(s), b.Mark))
		}
	}
	slices.SortStableFunc(sets, func(a, b []string) int { return int(priceOf(p, a) - priceOf(p, b)) })
	return sets
}

func priceOf(p *layout.Problem, marks []string) layout.Money {
	var sum layout.Money
	for _, m := range marks {
		sum += p.Board(m).Cost
	}
	return sum
}
