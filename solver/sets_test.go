package solver

import (
	"slices"
	"testing"

	"sawbill/layout"
	"sawbill/solver/internal/jobs"
)

// Boards of several species that share no part are groups by themselves; every board
// that gives anything is in one, and no part in two.
func TestApart(t *testing.T) {
	several := 0
	for seed := range int64(200) {
		p := jobs.Varied(jobs.Size{Boards: 6, Kinds: 5, Pieces: 12}, seed)
		s := newSearch(p, Options{Workers: 1}, func() bool { return false })
		s.settleIslands(s.first())
		groups, goal := s.apart(), s.goal()
		if len(groups) > 1 {
			several++
		}
		for i, n := range goal {
			var in []*setGroup
			for _, g := range groups {
				if g.made[i] > 0 {
					in = append(in, g)
				}
			}
			if n > 0 && (len(in) != 1 || in[0].made[i] != n) {
				t.Fatalf("seed %d: part %d is in %d groups", seed, i, len(in))
			}
			for _, b := range s.usable {
				if n > 0 && s.gives[b][i] && !slices.Contains(in[0].boards, b) {
					t.Fatalf("seed %d: board %d gives part %d, but is not in its group", seed, b, i)
				}
			}
		}
	}
	if several < 20 {
		t.Errorf("only %d jobs fall apart", several)
	}
}

// Two woods, a board each, that give one piece each: of each its own board is all that
// is needed, so what is proven of the two adds up. Each board gives back no more than
// half of its cost.
func TestGroupsAddUp(t *testing.T) {
	const in = layout.Inch
	shop := layout.DefaultShop(layout.Inches)
	shop.OffcutCredit = layout.CreditUnity / 2
	var stock []layout.Board
	var bill []layout.Part
	for i, wood := range []string{"ash", "elm"} {
		stock = append(stock, layout.Board{
			Mark: wood, Base: wood, Species: wood, Thickness: in, Width: 6 * in, TipWidth: 6 * in, Length: 40 * in, Cost: layout.Money(10*(i+1)) * layout.Unity,
		})
		bill = append(bill, layout.Part{
			Name: wood, Species: []string{wood}, Thickness: 3 * in / 4, Width: 4 * in, Length: 30 * in, Quantity: 1, Grade: layout.Clear,
		})
	}
	p, complaints := layout.NewProblem(shop, stock, bill, false)
	if len(complaints) > 0 {
		t.Fatal(complaints)
	}
	s := newSearch(p, Options{Workers: 1}, func() bool { return false })
	s.settleIslands(s.first())
	s.settle(s.best)
	s.proof, s.sets = s.newProof(), s.newSets()
	for s.sets.step() {
	}
	if len(s.sets.groups) != 2 {
		t.Fatalf("%d groups", len(s.sets.groups))
	}
	least, ok := s.sets.bound()
	if want := 15 * layout.Unity; !ok || least < want || least > s.best.cost() {
		t.Errorf("proven %v (%v), want from %v to %v", least, ok, want, s.best.cost())
	}
}
