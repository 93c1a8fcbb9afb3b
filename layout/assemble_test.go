package layout

import (
	"math"
	"testing"

	"github.com/google/go-cmp/cmp"
)

func assembleJob() (*Problem, []BoardCut) {
	b, bill, root := oneOfEach()
	spare := *b
	spare.Mark, spare.Species = "P2", "ash"
	b.Species = "ash"
	bill[0].Species = []string{"ash"}
	return &Problem{Shop: millimetreShop(), Stock: []Board{*b, spare}, Bill: bill}, []BoardCut{{"P1", root}}
}

func TestAssembleNamesAndTotals(t *testing.T) {
	p, cuts := assembleJob()
	plan := Assemble(p, cuts)
	var names []string
	for _, leaf := range plan.Boards[0].Root.Leaves() {
		names = append(names, leaf.ID+leaf.Offcut)
	}
	if diff := cmp.Diff([]string{"P1-1a", "P1-K1"}, names); diff != "" {
		t.Error(diff)
	}
	// The board at 10 less 0.6 x 10 x 150 x 100 / (500 x 100).
	if plan.Totals.Cost != 82_000 {
		t.Errorf("cost %v, want 8.2", plan.Totals.Cost)
	}
	// 60 800 mm³ of 500 000 less 150 000.
	if y := plan.Totals.Yield; y == nil || math.Abs(*y-60_800.0/350_000) > 1e-12 {
		t.Errorf("yield %v", y)
	}
	if len(plan.Missing) != 0 {
		t.Errorf("missing %v", plan.Missing)
	}
}

func TestAssembleSaysWhatIsMissing(t *testing.T) {
	p, cuts := assembleJob()
	p.Bill[0].Quantity = 3
	p.Bill = append(p.Bill, Part{
		Name: "leg", Species: []string{"elm"}, Quantity: 2,
		Length: Millimetre, Width: Millimetre, Thickness: Millimetre,
	})
	want := []Missing{
		{"rail", 2, "P2 could give one: a longer search may find how"},
		{"leg", 2, "no elm in the stock"},
	}
	if diff := cmp.Diff(want, Assemble(p, cuts).Missing); diff != "" {
		t.Error(diff)
	}
}

func TestAssembleOfNothing(t *testing.T) {
	p, _ := assembleJob()
	plan := Assemble(p, nil)
	if plan.Totals.Cost != 0 || plan.Totals.Yield != nil || len(plan.Boards) != 0 {
		t.Errorf("an empty plan has %d boards, cost %v, yield %v", len(plan.Boards), plan.Totals.Cost, plan.Totals.Yield)
	}
}

// A board may bear the mark that a piece or an offcut would have got.
func TestAssembleNamesNoPieceLikeABoard(t *testing.T) {
	p, cuts := assembleJob()
	for _, mark := range []string{"P1-1a", "P1-K1", "P1-K2"} {
		b := p.Stock[1]
		b.Mark = mark
		p.Stock = append(p.Stock, b)
	}
	leaves := Assemble(p, cuts).Boards[0].Root.Leaves()
	if leaves[0].ID != "P1-1b" || leaves[1].Offcut != "P1-K3" {
		t.Errorf("named %q and %q, want P1-1b and P1-K3", leaves[0].ID, leaves[1].Offcut)
	}
}

func TestLetters(t *testing.T) {
	for n, want := range map[int]string{0: "a", 25: "z", 26: "aa", 51: "az", 52: "ba", 701: "zz", 702: "aaa"} {
		if got := letters(n); got != want {
			t.Errorf("letters(%d) is %q, want %q", n, got, want)
		}
	}
}
