package solver

import (
	"context"
	"testing"

	"sawbill/layout"
	"sawbill/layout/check"
	"sawbill/solver/internal/jobs"
)

// TestMatchedPiecesFromOneBoard solves random jobs some of whose parts bear match
// words. The checker, which knows the words, passes every plan, and no bound is
// above the cost of a plan.
func TestMatchedPiecesFromOneBoard(t *testing.T) {
	made := 0
	for seed := range int64(10) {
		p := jobs.Varied(jobs.Size{Boards: 3, Kinds: 3, Pieces: 8}, seed)
		for i := range p.Bill {
			if layout.SameSpecies(p.Bill[i].Species[0], p.Bill[0].Species[0]) && i < 2 {
				p.Bill[i].Match = "top"
			}
		}
		plan, _, err := Solve(context.Background(), p, Options{Seed: seed, Rounds: 3, Workers: 1})
		if err != nil {
			t.Fatalf("seed %d: %v", seed, err)
		}
		for _, v := range check.Plan(plan) {
			t.Errorf("seed %d: %v", seed, v)
		}
		if b := plan.Totals.Bound; b != nil && *b > plan.Totals.Cost {
			t.Errorf("seed %d: bound %v above cost %v", seed, *b, plan.Totals.Cost)
		}
		made += len(p.Bill) - len(plan.Missing)
	}
	if made == 0 {
		t.Error("all parts of all jobs are missing")
	}
}

// ashBoard is a planed board, 20 mm thick, with two straight edges.
func ashBoard(mark string, length, width layout.Length, cost layout.Money) layout.Board {
	return layout.Board{
		Mark: mark, Base: mark, Species: "ash", Thickness: 20 * layout.Millimetre, Length: length, Width: width, TipWidth: width,
		Cost: cost * layout.Unity, Edges: layout.EdgesBoth, Faces: layout.FacesPlaned,
	}
}

// TestMatchCostsMore has two narrow boards that give two slats each, and a dear wide
// one that gives four. Slats that match are all cut from the dear one.
func TestMatchCostsMore(t *testing.T) {
	const mm = layout.Millimetre
	shop := layout.DefaultShop(layout.Millimetres)
	shop.CrosscutKerf, shop.EndTrim, shop.OffcutCredit = 0, 0, 0
	p := &layout.Problem{Shop: shop, Bill: []layout.Part{{
		Name: "slat", Species: []string{"ash"}, Thickness: 20 * mm, Width: 80 * mm, Length: 500 * mm, Quantity: 4, Grade: layout.Clear,
	}}}
	for _, b := range []struct {
		mark   string
		length layout.Length
		cost   layout.Money
	}{{"A", 1000 * mm, 10}, {"B", 1000 * mm, 10}, {"C", 2000 * mm, 30}} {
		p.Stock = append(p.Stock, ashBoard(b.mark, b.length, 80*mm, b.cost))
	}
	for _, c := range []struct {
		match string
		cost  layout.Money
	}{{"", 20}, {"front", 30}} {
		p.Bill[0].Match = c.match
		plan, _, err := Solve(context.Background(), p, Options{Rounds: 20, Workers: 1})
		if err != nil || len(plan.Missing) > 0 || plan.Totals.Cost != c.cost*layout.Unity {
			t.Errorf("match %q: cost %v, missing %v, error %v; want cost %d", c.match, plan.Totals.Cost, plan.Missing, err, c.cost)
		}
		if b := plan.Totals.Bound; b == nil || *b != plan.Totals.Cost {
			t.Errorf("match %q: proven %v, want the cost", c.match, b)
		}
	}
}

// TestMatchIsProvenBySets has two slats that match and two boards, each far longer
// than the slats: by prices a board is paid for in part, but one is cut and paid for whole.
func TestMatchIsProvenBySets(t *testing.T) {
	const mm = layout.Millimetre
	shop := layout.DefaultShop(layout.Millimetres)
	shop.OffcutCredit = 0
	p := &layout.Problem{Shop: shop, Bill: []layout.Part{{
		Name: "slat", Species: []string{"ash"}, Thickness: 20 * mm, Width: 80 * mm, Length: 500 * mm, Quantity: 2, Grade: layout.Clear, Match: "pair",
	}}}
	for i, cost := range []layout.Money{20, 13} {
		p.Stock = append(p.Stock, ashBoard(string(rune('A'+i)), 2400*mm, 80*mm, cost))
	}
	plan, _, err := Solve(context.Background(), p, Options{Rounds: 20, Workers: 1})
	if err != nil {
		t.Fatal(err)
	}
	if b := plan.Totals.Bound; b == nil || *b != 13*layout.Unity {
		t.Errorf("a plan costs %v, proven are %v; want 13", plan.Totals.Cost, b)
	}
}

// TestHomeLeavesRoomForOthers has four slats that match and one top. The cheapest board that
// holds the slats is the only cheap one that holds the top, so the slats come from another.
func TestHomeLeavesRoomForOthers(t *testing.T) {
	const mm = layout.Millimetre
	shop := layout.DefaultShop(layout.Millimetres)
	shop.CrosscutKerf, shop.EndTrim, shop.OffcutCredit = 0, 0, 0
	p := &layout.Problem{Shop: shop, Bill: []layout.Part{
		{Name: "slat", Species: []string{"ash"}, Thickness: 20 * mm, Width: 80 * mm, Length: 500 * mm, Quantity: 4, Grade: layout.Clear, Match: "front"},
		{Name: "top", Species: []string{"ash"}, Thickness: 20 * mm, Width: 90 * mm, Length: 1500 * mm, Quantity: 1, Grade: layout.Clear},
	}}
	for _, b := range []struct {
		mark  string
		width layout.Length
		cost  layout.Money
	}{{"A", 90 * mm, 30}, {"B", 80 * mm, 31}, {"C", 90 * mm, 60}} {
		p.Stock = append(p.Stock, ashBoard(b.mark, 2000*mm, b.width, b.cost))
	}
	s := newSearch(p, Options{Workers: 1}, func() bool { return false })
	s.heeds.words = matched(p)
	if home := s.withHomes().p.Bill[0].From; len(home) != 1 || home[0] != "B" {
		t.Errorf("the slats are to come from %q, want B", home)
	}
}
