package column

import (
	"math/rand"
	"testing"

	"sawbill/layout"
)

// TestBarEqualsEveryPosition compares the filling of a bar with the exact routine
// with limits, which tries every position. Where offcuts count, a bar keeps one
// rest, which is never better.
func TestBarEqualsEveryPosition(t *testing.T) {
	for seed := range int64(40) {
		rng := rand.New(rand.NewSource(seed))
		p, price := barJob(rng)
		limits := make([]int, len(price))
		for i := range limits {
			limits[i] = rng.Intn(4)
		}
		w := New(p, &p.Stock[0], Exact())
		if w.bar == nil {
			t.Fatalf("seed %d: not taken for a bar", seed)
		}
		cut := new(Bench).Within(w, price, limits, 1)
		exact, _ := new(Bench).BestLimited(w, price, limits, 1<<40)
		if cut.Root != nil {
			checkColumn(t, seed, p, price, Column{Value: cut.Gain(), Root: cut.Root})
			checkLimits(t, seed, p, Column{Root: cut.Root}, limits)
		}
		if got := cut.Gain(); got > exact.Value+4 || p.Shop.OffcutCredit == 0 && got < exact.Value {
			t.Errorf("seed %d: %d in a bar, the best is %d", seed, got, exact.Value)
		}
	}
}

// barJob is one stick and a few lengths of its own width.
func barJob(rng *rand.Rand) (*layout.Problem, []Value) {
	shop := layout.DefaultShop(layout.Millimetres)
	shop.CrosscutKerf = layout.Length(rng.Intn(3)) * layout.Millimetre
	shop.EndTrim = layout.Length(rng.Intn(4)) * layout.Millimetre
	shop.EndSquare = layout.Length(rng.Intn(2)) * layout.Millimetre
	shop.Snipe = layout.Length(rng.Intn(3)) * layout.Millimetre
	shop.EdgeJoint, shop.MinBlank, shop.MinRipLength = layout.Millimetre, 10*layout.Millimetre, 10*layout.Millimetre
	shop.MinOffcutLength, shop.MinOffcutWidth = 10*layout.Millimetre, 20*layout.Millimetre
	if rng.Intn(2) == 0 {
		shop.OffcutCredit = 0
	}
	board := layout.Board{
		Mark: "S1", Base: "S1", Species: "ash", Thickness: 30 * layout.Millimetre, Length: layout.Length(60+rng.Intn(60)) * layout.Millimetre,
		Width: 45 * layout.Millimetre, TipWidth: 45 * layout.Millimetre, Cost: 5 * layout.Unity,
		Edges: layout.Edges(rng.Intn(3)),
	}
	p := &layout.Problem{Shop: shop, Stock: []layout.Board{board}}
	var price []Value
	for k := range 1 + rng.Intn(4) {
		p.Bill = append(p.Bill, layout.Part{
			Name: string(rune('a' + k)), Species: []string{"ash"}, Thickness: 20 * layout.Millimetre, Width: 40 * layout.Millimetre,
			Length: layout.Length(10+rng.Intn(40)) * layout.Millimetre, Quantity: 3, Grade: layout.Clear,
		})
		price = append(price, Value(rng.Intn(3_000_000)))
	}
	return p, price
}
