package solver

import (
	"context"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"sawbill/layout"
	"sawbill/layout/check"
	"sawbill/layout/files"
	"sawbill/solver/internal/jobs"
)

// TestRandomJobs solves a thousand random jobs and lets the checker pass every
// plan. Solve does so itself; here its answer is not trusted. Most are interrupted
// after so many looks at the context, one in fifty goes through a whole round.
func TestRandomJobs(t *testing.T) {
	for part := range int64(2) {
		t.Run(fmt.Sprint(part), func(t *testing.T) {
			t.Parallel()
			for seed := part; seed < 1000; seed += 2 {
				solveVaried(t, seed)
			}
		})
	}
}

func solveVaried(t *testing.T, seed int64) {
	p := jobs.Varied(jobs.Size{Boards: 1 + int(seed%3), Kinds: 1 + int(seed%4), Pieces: 4 + int(seed%12)}, seed)
	ctx := context.Background()
	if seed%100 >= 2 {
		ctx = &jobs.Patience{Context: ctx, Looks: 1 << (seed / 2 % 6)}
	}
	plan, _, err := Solve(ctx, p, Options{Seed: seed, Rounds: 2, Workers: 1})
	if err != nil {
		t.Fatalf("seed %d: %v", seed, err)
	}
	for _, v := range check.Plan(plan) {
		t.Errorf("seed %d: %v", seed, v)
	}
}

// TestSameAnswer shows that the number of workers does not change a plan, and
// that the seed does.
func TestSameAnswer(t *testing.T) {
	p := jobs.New(jobs.Size{Boards: 12, Kinds: 9, Pieces: 90}, 5)
	solve := func(seed int64, workers int) string {
		plan, _, err := Solve(context.Background(), p, Options{Seed: seed, Rounds: 3, Workers: workers})
		if err != nil {
			t.Fatal(err)
		}
		var text strings.Builder
		if err := files.WritePlan(&text, plan); err != nil {
			t.Fatal(err)
		}
		return text.String()
	}
	if solve(1, 1) != solve(1, 3) {
		t.Error("one worker and three make different plans")
	}
	if solve(1, 2) == solve(2, 2) {
		t.Error("another seed makes the same plan")
	}
}

// TestStopped shows that a solve that may not think at all still gives a plan
// that is valid.
func TestStopped(t *testing.T) {
	p := jobs.New(jobs.Size{Boards: 5, Kinds: 4, Pieces: 20}, 3)
	plan, status, err := Solve(stopped(), p, Options{})
	if err != nil || status != Stopped || len(check.Plan(plan)) > 0 {
		t.Errorf("status %v, error %v, faults %v", status, err, check.Plan(plan))
	}
}

// TestPriority leaves room for one of two parts: 38 in between the end trims,
// parts of 30 and 12 in. The shorter one is served first, and the longer one,
// though it is worth more, is missing; without priorities it is the other way
// round, for less volume is then missing.
func TestPriority(t *testing.T) {
	for _, c := range []struct {
		priority int
		missing  string
	}{{1, "long"}, {0, "short"}} {
		shop := layout.DefaultShop(layout.Inches)
		board := layout.Board{
			Mark: "B", Base: "B", Species: "ash", Thickness: layout.Inch, Length: 40 * layout.Inch,
			Width: 3 * layout.Inch, TipWidth: 3 * layout.Inch, Edges: layout.EdgesBoth, Cost: 10 * layout.Unity,
		}
		part := layout.Part{Species: []string{"ash"}, Thickness: 3 * layout.Inch / 4, Width: 5 * layout.Inch / 2, Quantity: 1, Grade: layout.Clear}
		long, short := part, part
		long.Name, long.Length = "long", 30*layout.Inch
		short.Name, short.Length, short.Priority = "short", 12*layout.Inch, c.priority
		p := &layout.Problem{Shop: shop, Stock: []layout.Board{board}, Bill: []layout.Part{long, short}}
		plan, _, err := Solve(context.Background(), p, Options{Rounds: 6})
		if err != nil {
			t.Fatal(err)
		}
		if len(plan.Missing) != 1 || plan.Missing[0].Part != c.missing {
			t.Errorf("priority %d: missing %v, want %s", c.priority, plan.Missing, c.missing)
		}
	}
}

// TestFirstPlanPricesOnce counts what the first plan of a shop-size job costs:
// at most one pricing a board, and nothing is missing that the search then makes.
func TestFirstPlanPricesOnce(t *testing.T) {
	p := jobs.New(jobs.Size{Boards: 40, Kinds: 16, Pieces: 200}, 11)
	s := newSearch(p, Options{}, func() bool { return false })
	st := s.first()
	if n := s.workers[0].bench.Runs; n > len(p.Stock) {
		t.Errorf("%d pricings for %d boards", n, len(p.Stock))
	}
	if !st.score().Complete() {
		t.Errorf("the first plan leaves %v missing", st.missing)
	}
}

// TestExamplesAreBeaten solves three jobs for which valid plans are at hand:
// ours cost less.
func TestExamplesAreBeaten(t *testing.T) {
	for _, name := range []string{"ash", "beech-mm", "elm-and-beech"} {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			f, err := os.Open(filepath.Join("..", "testdata", "examples", name, "plan.json"))
			if err != nil {
				t.Fatal(err)
			}
			defer f.Close()
			theirs, err := files.ReadPlan(f, name)
			if err != nil {
				t.Fatal(err)
			}
			ours, _, err := Solve(context.Background(), &theirs.Problem, Options{Rounds: 8, Workers: 2})
			if err != nil {
				t.Fatal(err)
			}
			t.Logf("%s; theirs: %s", summary(ours), summary(theirs))
			if ours.Score().Compare(theirs.Score()) >= 0 {
				t.Errorf("ours: %s; theirs: %s", summary(ours), summary(theirs))
			}
		})
	}
}

func summary(plan *layout.Plan) string {
	missing := 0
	for _, m := range plan.Missing {
		missing += m.Quantity
	}
	return fmt.Sprintf("cost %s missing %d boards %d", plan.Totals.Cost, missing, len(plan.Boards))
}
