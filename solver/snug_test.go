package solver

import (
	"fmt"
	"maps"
	"testing"

	"sawbill/layout"
	"sawbill/layout/check"
	"sawbill/layout/steps"
	"sawbill/solver/internal/exhaust"
	"sawbill/solver/internal/jobs"
	"sawbill/solver/internal/snug"
)

// TestSnugPlansMakeTheSame takes the needless cuts out of the plans of a thousand random
// jobs: of the same boards the same pieces and offcuts come, the checker passes them, and
// neither cost, steps nor cautions are more.
func TestSnugPlansMakeTheSame(t *testing.T) {
	saved := 0
	for seed := range int64(350) {
		saved += compareSnug(t, snugJob(seed), seed, 1<<(seed/2%4))
		saved += compareSnug(t, exhaust.Tiny(seed), seed, 4)
		saved += compareSnug(t, tinySetJob(seed), seed, 30)
	}
	if saved < 50 {
		t.Errorf("%d steps are saved in all, want fifty", saved)
	}
}

// snugJob is a random job with spares, often of warped boards.
func snugJob(seed int64) *layout.Problem {
	p := variedSpares(seed)
	if seed%2 == 0 {
		p = jobs.Warped(jobs.Size{Boards: 1 + int(seed%4), Kinds: 1 + int(seed%5), Pieces: 6 + int(seed%20)}, seed)
	}
	for i := range p.Bill {
		if p.Bill[i].Set == "" {
			p.Bill[i].Spare = int(seed) % 3
		}
	}
	return p
}

// compareSnug holds a plan against the one without its needless cuts, and tells how many
// steps that saves.
func compareSnug(t *testing.T, p *layout.Problem, seed int64, looks int) (saved int) {
	t.Helper()
	plan := looseSolve(t, p, seed, looks)
	next := snug.Plan(plan)
	for _, v := range check.Plan(next) {
		t.Errorf("seed %d: %v", seed, v)
	}
	if was, is := comesOf(plan), comesOf(next); !maps.Equal(was, is) {
		t.Errorf("seed %d: of %v became %v", seed, was, is)
	}
	if was, is := plan.Totals, next.Totals; is.Cost > was.Cost || is.Bound != was.Bound || is.PriceBound != was.PriceBound {
		t.Errorf("seed %d: %v became %v", seed, was, is)
	}
	before, after := steps.List(plan, steps.ByBoard), steps.List(next, steps.ByBoard)
	if saved = len(before) - len(after); saved < 0 || cautionsIn(after) > cautionsIn(before) {
		t.Errorf("seed %d: %d steps became %d", seed, len(before), len(after))
	}
	if again := snug.Plan(next); again != next {
		t.Errorf("seed %d: what is snug becomes %v", seed, again.Totals)
	}
	return saved
}

// comesOf counts what comes of each board of a plan: pieces of a kind, offcuts, and what
// of the bill is missing.
func comesOf(plan *layout.Plan) map[string]int {
	count := map[string]int{}
	for _, b := range plan.Boards {
		for _, leaf := range b.Root.Leaves() {
			if leaf.Part != "" || leaf.Offcut != "" {
				count[fmt.Sprint(b.Board, leaf.Part, leaf.Slices, leaf.Spare, leaf.OnEdge)] += leaf.Pieces()
			}
		}
	}
	for _, m := range plan.Missing {
		count["missing "+m.Part] = m.Quantity
	}
	return count
}

func cautionsIn(list []*steps.Step) int {
	n := 0
	for _, s := range list {
		n += len(s.Cautions)
	}
	return n
}
