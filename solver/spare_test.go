package solver

import (
	"context"
	"math/rand"
	"slices"
	"testing"

	"sawbill/layout"
	"sawbill/layout/check"
	"sawbill/solver/internal/exhaust"
	"sawbill/solver/internal/jobs"
)

// TestSparesCostNothing solves hundreds of random jobs with spares and without: cost,
// boards, offcuts and missing pieces are the same, and the checker passes all.
func TestSparesCostNothing(t *testing.T) {
	laid := 0
	for seed := range int64(400) {
		laid += compareSpares(t, variedSpares(seed), seed, 1<<(seed/2%4))
	}
	if laid < 100 {
		t.Errorf("%d spares were laid in all, want a hundred", laid)
	}
}

// variedSpares is a random job, now and then with offcuts that are worth nothing, and
// with two parts of one match word.
func variedSpares(seed int64) *layout.Problem {
	size := jobs.Size{Boards: 1 + int(seed%3), Kinds: 1 + int(seed%4), Pieces: 4 + int(seed%12)}
	p := jobs.Varied(size, seed)
	if seed%4 == 0 {
		p = jobs.Warped(size, seed)
	}
	if seed%3 == 0 {
		p.Shop.OffcutCredit = 0
	}
	for i := range p.Bill[:min(2, len(p.Bill))] {
		if seed%5 == 1 {
			p.Bill[i].Match = "top"
		}
	}
	return p
}

// compareSpares solves a job with spares and without, as long as looks at the context
// allow, and tells how many spares were laid.
func compareSpares(t *testing.T, p *layout.Problem, seed int64, looks int) (laid int) {
	t.Helper()
	rng := rand.New(rand.NewSource(seed))
	plain := *p
	p.Bill = slices.Clone(p.Bill)
	for i := range p.Bill {
		if p.Bill[i].Set == "" {
			p.Bill[i].Spare = rng.Intn(4)
		}
	}
	solve := func(p *layout.Problem) *layout.Plan {
		return looseSolve(t, p, seed, looks)
	}
	without, with := solve(&plain), solve(p)
	for _, v := range check.Plan(with) {
		t.Errorf("seed %d: %v", seed, v)
	}
	if with.Score().Compare(without.Score()) != 0 || len(with.Boards) != len(without.Boards) || offcutsIn(with) != offcutsIn(without) {
		t.Errorf("seed %d: with spares %s, without %s", seed, summary(with), summary(without))
	}
	if laid = piecesIn(with) - piecesIn(without); laid != len(with.Spares()) {
		t.Errorf("seed %d: %d pieces more, %d of them spare", seed, laid, len(with.Spares()))
	}
	return laid
}

// looseSolve is Solve, as long as looks at the context allow, before needless cuts are
// taken out.
func looseSolve(t *testing.T, p *layout.Problem, seed int64, looks int) *layout.Plan {
	t.Helper()
	plan, _, err := withoutSpares(&jobs.Patience{Context: context.Background(), Looks: looks}, p, Options{Seed: seed, Rounds: 1, Workers: 1})
	if err != nil {
		t.Fatalf("seed %d: %v", seed, err)
	}
	if plan, err = withSpares(p, plan, seed); err != nil {
		t.Fatalf("seed %d: %v", seed, err)
	}
	return plan
}

// TestSparesOfTinyJobs does the same with tiny jobs in shops without kerfs, trims or
// least lengths, and with jobs of a glue-up and a part beside it.
func TestSparesOfTinyJobs(t *testing.T) {
	laid, beside := 0, 0
	for seed := range int64(400) {
		laid += compareSpares(t, exhaust.Tiny(seed), seed, 4)
		beside += compareSpares(t, tinySetJob(seed), seed, 30)
	}
	if laid < 20 || beside == 0 {
		t.Errorf("%d spares were laid, and %d beside glue-ups", laid, beside)
	}
}

func offcutsIn(plan *layout.Plan) int {
	n := 0
	for _, b := range plan.Boards {
		for _, leaf := range b.Root.Leaves() {
			if leaf.Offcut != "" {
				n++
			}
		}
	}
	return n
}

func piecesIn(plan *layout.Plan) int {
	n := 0
	for _, b := range plan.Boards {
		for _, leaf := range b.Root.Leaves() {
			if leaf.Part != "" {
				n += leaf.Pieces()
			}
		}
	}
	return n
}

// oneStrip is a job of one planed board, 4 in wide and straight, of which rails of
// 12 in are wanted, out of wood between the end trims of the length given.
func oneStrip(inside layout.Length) *layout.Problem {
	const in = layout.Inch
	board := layout.Board{
		Mark: "B", Base: "B", Species: "ash", Thickness: in, Length: inside + 2*in, Width: 4 * in, TipWidth: 4 * in,
		Edges: layout.EdgesBoth, Faces: layout.FacesPlaned, Cost: 10 * layout.Unity,
	}
	rail := layout.Part{
		Name: "rail", Species: []string{"ash"}, Thickness: in, Width: 4 * in, Length: 12 * in,
		Quantity: 2, Spare: 3, Grade: layout.Clear,
	}
	return &layout.Problem{Shop: layout.DefaultShop(layout.Inches), Stock: []layout.Board{board}, Bill: []layout.Part{rail}}
}

// Two rails of 12 in and their kerfs leave of 36-1/4 in exactly 12 in, which would be
// an offcut worth keeping; no spare is cut out of that. Where the last 3 in of it are
// split, what is left is too short to keep, and too short for a spare; where offcuts
// of less than 20 in are scrap, it is a spare that costs nothing.
func TestSparesComeOutOfScrapAlone(t *testing.T) {
	const in = layout.Inch
	for _, test := range []struct {
		what   string
		change func(p *layout.Problem)
		want   int
	}{
		{"an offcut worth keeping", func(*layout.Problem) {}, 2},
		{"scrap", func(p *layout.Problem) { p.Shop.MinOffcutLength = 20 * in }, 3},
		{"scrap that is split", func(p *layout.Problem) {
			p.Stock[0].Defects = []layout.Defect{{Kind: layout.Split, Rect: layout.Rect{X1: 34 * in, X2: 38 * in, Y2: 4 * in}}}
			p.Shop.MinOffcutLength = 20 * in
		}, 2},
		{"offcuts without credit", func(p *layout.Problem) { p.Shop.OffcutCredit = 0 }, 3},
		{"no spares wanted", func(p *layout.Problem) {
			p.Shop.MinOffcutLength, p.Bill[0].Spare = 20*in, 0
		}, 2},
	} {
		t.Run(test.what, func(t *testing.T) {
			p := oneStrip(36*in + in/4)
			test.change(p)
			plan, _, err := Solve(context.Background(), p, Options{Rounds: 3})
			if err != nil {
				t.Fatal(err)
			}
			if n := piecesIn(plan); n != test.want || len(plan.Missing) > 0 {
				t.Errorf("%d rails, %v missing, want %d and none", n, plan.Missing, test.want)
			}
			if p.Shop.OffcutCredit == 0 && plan.Totals.Cost != p.Stock[0].Cost {
				t.Errorf("costs %v", plan.Totals.Cost)
			}
		})
	}
}
