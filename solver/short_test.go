package solver

import (
	"testing"

	"sawbill/layout"
)

// shortJob is one board of 40 in, 38 between the end trims, and two parts of which
// it holds one: the long one, 30 in, and the short one, 12 in, which is served
// first.
func shortJob() *layout.Problem {
	board := layout.Board{
		Mark: "B", Base: "B", Species: "ash", Thickness: layout.Inch, Length: 40 * layout.Inch,
		Width: 3 * layout.Inch, TipWidth: 3 * layout.Inch, Edges: layout.EdgesBoth, Cost: 10 * layout.Unity,
	}
	long := layout.Part{
		Name: "long", Species: []string{"ash"}, Thickness: 3 * layout.Inch / 4, Width: 5 * layout.Inch / 2,
		Length: 30 * layout.Inch, Quantity: 1, Grade: layout.Clear,
	}
	short := long
	short.Name, short.Length, short.Priority = "short", 12*layout.Inch, 1
	return &layout.Problem{
		Shop: layout.DefaultShop(layout.Inches), Stock: []layout.Board{board}, Bill: []layout.Part{long, short},
	}
}

// TestMissingDisplacesLaterRanks begins with a plan that makes the long part.
func TestMissingDisplacesLaterRanks(t *testing.T) {
	p := shortJob()
	s := newSearch(p, Options{Workers: 1}, func() bool { return false })
	s.settleIslands(newState(p))
	s.settle(s.best)
	st := newState(p)
	cut := s.workers[0].bench.Within(s.quick.board(0), prices(p, s.start, nil), []int{1, 0}, 1)
	st.set(0, &cut)
	if !s.improve(st) || s.best.missing[0] != 0 || s.best.missing[1] != 1 {
		t.Fatalf("the plan to begin with leaves %v missing", s.best.missing)
	}
	if !s.makeMissing() || s.best.missing[0] != 1 || s.best.missing[1] != 0 {
		t.Errorf("missing: %v", s.best.missing)
	}
	if s.makeMissing() {
		t.Error("a plan that cannot be better became better")
	}
}

// Where nothing is missing, there is nothing to make.
func TestMakeMissingLeavesWholePlansAlone(t *testing.T) {
	p := shortJob()
	p.Bill = p.Bill[:1]
	s := solved(p)
	if wants(s.best.missing) || s.makeMissing() {
		t.Errorf("missing: %v", s.best.missing)
	}
}
