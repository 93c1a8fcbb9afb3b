package column

import (
	"math/rand"
	"testing"

	"sawbill/layout"
)

// tinyBevels is a tiny warped job with bevelled parts. Offcuts are not credited: those
// along a wedge lie between the marks of the grid.
func tinyBevels(seed int64) (*layout.Problem, []Value) {
	rng := rand.New(rand.NewSource(seed))
	p, price := tinyWarped(seed)
	p.Shop.OffcutCredit = 0
	b := &p.Stock[0]
	wider := mmOf(rng.Intn(5))
	b.Width, b.TipWidth = b.Width+wider, b.TipWidth+wider
	for i := range p.Bill {
		if rng.Intn(3) > 0 {
			p.Bill[i].Bevel = []layout.Angle{5, 10, 20}[rng.Intn(3)] * layout.Degree
		}
		price[i] += Value(rng.Intn(200))
	}
	return p, price
}

// TestBevelsEqualEveryPosition compares strips that lean with an enumeration of every
// position of the grid.
func TestBevelsEqualEveryPosition(t *testing.T) {
	leaning := 0
	for seed := range int64(150) {
		p, price := tinyBevels(seed)
		want := newBrute(p, &p.Stock[0], price, nil).best()[counts{}]
		found := new(Bench).Best(New(p, &p.Stock[0], Exact()), price)
		checkColumn(t, seed, p, price, found)
		if found.Value != want {
			t.Errorf("seed %d: found %d, best is %d", seed, found.Value, want)
		}
		if found.Root == nil {
			continue
		}
		for _, leaf := range found.Root.Leaves() {
			if leaf.Lean > 0 {
				leaning++
			}
		}
	}
	if leaning < 20 {
		t.Errorf("only %d leaves lean", leaning)
	}
}

// TestBevelsWithinLimits does so within limits.
func TestBevelsWithinLimits(t *testing.T) {
	for seed := range int64(60) {
		p, price := tinyBevels(seed)
		limits := []int{2, 1, 1}[:len(price)]
		if found, want := besideBrute(t, seed, p, price, limits); found.Value != want {
			t.Errorf("seed %d: found %d, best is %d", seed, found.Value, want)
		}
	}
}

// TestBevelsWithCredit lets the checker pass columns with leaning strips and offcuts.
func TestBevelsWithCredit(t *testing.T) {
	for seed := range int64(100) {
		p, price := tinyBevels(seed)
		p.Shop.OffcutCredit = layout.CreditUnity / 2
		w := New(p, &p.Stock[0], Exact())
		bench := new(Bench)
		checkColumn(t, seed, p, price, bench.Best(w, price))
		limits := []int{2, 1, 1}[:len(price)]
		cut := bench.Within(w, price, limits, 2)
		if cut.Root != nil && holdsPart(cut.Root) {
			checkColumn(t, seed, p, price, Column{Value: cut.Gain(), Root: cut.Root})
		}
	}
}

// Strips that lean alike nest: four strips of 30 mm at 45 degrees in
// 20 mm wood, with three kerfs of 3 mm / cos(45) = 4.243 mm between them, one at each
// side and the wedge of 20 mm, take 120 + 5*4.243 + 20 = 161.2 mm of face.
func TestLeaningStripsNest(t *testing.T) {
	const mm = layout.Millimetre
	for width, want := range map[layout.Length]int{162 * mm: 4, 161 * mm: 3} {
		p, price := stickJob(1000)
		b, part := &p.Stock[0], &p.Bill[0]
		b.Length, b.Width, b.TipWidth = 1000*mm, width, width
		part.Width, part.Bevel = 30*mm, 45*layout.Degree
		w := New(p, b, Quick())
		c := new(Bench).Best(w, price)
		if c.Root == nil {
			t.Fatalf("%v: nothing is cut", width)
		}
		checkColumn(t, int64(width/mm), p, price, c)
		if got := w.CountParts(c.Root)[0]; got != want {
			t.Errorf("%v across: %d strips, want %d", width, got, want)
		}
	}
}
