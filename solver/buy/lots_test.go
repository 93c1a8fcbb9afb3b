package buy

import (
	"context"
	"fmt"
	"testing"

	"sawbill/layout"
	"sawbill/solver"
)

// alikeYard wants shelves of which each board of a row of eight gives two, and each of
// two dearer ones, that stand by themselves, three.
func alikeYard() *layout.Problem {
	p := &layout.Problem{Shop: layout.DefaultShop(layout.Inches), Bill: []layout.Part{part("shelf", 3*in/4, 6*in, 24*in, 9)}}
	add := func(mark, base string, length layout.Length, cost layout.Money) {
		b := clearBoard("elm", in, 7*in, length)
		b.Mark, b.Base, b.Cost = mark, base, cost
		p.Stock = append(p.Stock, b)
	}
	for i := range 8 {
		add(fmt.Sprint("L.", i+1), "L", 54*in, 10*layout.Unity)
	}
	add("M1", "M1", 80*in, 14*layout.Unity)
	add("M2", "M2", 80*in, 14*layout.Unity)
	return p
}

// Nine shelves come cheapest out of three boards of two and one of three, for 44; two of
// two and two of three give ten for 48, five of two for 50. Sets that differ only in
// which boards of a row they hold are looked at once.
func TestAlikeBoardsAreOneLot(t *testing.T) {
	d := newDecision(alikeYard(), Options{Solve: solver.Options{Rounds: 1, Workers: 1}})
	if len(d.lots) != 3 || len(d.lots[0]) != 8 {
		t.Fatalf("lots %v", d.lots)
	}
	for _, do := range []func(context.Context) error{d.solveOrdinary, d.fromBelow} {
		if err := do(context.Background()); err != nil {
			t.Fatal(err)
		}
	}
	seen := map[string]bool{}
	for _, set := range append(d.refused, d.aside...) {
		if key := d.key(set); seen[key] {
			t.Errorf("a set like %v was looked at twice", set)
		} else {
			seen[key] = true
		}
	}
	a, err := d.answer()
	if err != nil {
		t.Fatal(err)
	}
	if want := 44 * layout.Unity; a.Paid != want || a.Bound == nil || *a.Bound != want || len(seen) == 0 {
		t.Errorf("pays %v, bound %v, after %d sets", a.Paid, a.Bound, len(seen))
	}
}

// A part that names some boards of a row tells them apart.
func TestNamedBoardsAreNoLot(t *testing.T) {
	p := alikeYard()
	p.Bill[0].NotFrom = []string{"L.2", "L.5"}
	if lots := lotsOf(p); len(lots) != 4 || len(lots[0]) != 6 || len(lots[1]) != 2 {
		t.Errorf("lots %v", lots)
	}
}
