package column

import (
	"fmt"
	"math/rand"
	"testing"

	"sawbill/layout"
)

// tinyWarped is a tiny job with a board that is bowed, crooked, cupped or twisted,
// in a shop whose machines may be too narrow for it.
func tinyWarped(seed int64) (*layout.Problem, []Value) {
	rng := rand.New(rand.NewSource(seed))
	p, price := tiny(rng)
	b := &p.Stock[0]
	gap := func(most int) layout.Length {
		return max(0, layout.Length(rng.Intn(2*most)-most)) * unit / 4
	}
	b.Bow, b.Crook, b.Cup, b.Twist = gap(16), gap(10), gap(12), gap(12)
	if rng.Intn(2) == 0 {
		p.Shop.JointerWidth, p.Shop.PlanerWidth = mmOf(rng.Intn(6)), mmOf(rng.Intn(6))
	}
	return p, price
}

// TestWarpedEqualsEveryPosition compares boards that are not flat, not straight or
// too wide with an enumeration of every position.
func TestWarpedEqualsEveryPosition(t *testing.T) {
	for part := range int64(2) {
		t.Run(fmt.Sprint(part), func(t *testing.T) {
			t.Parallel()
			for seed := part; seed < 250; seed += 2 {
				p, price := tinyWarped(seed)
				want := newBrute(p, &p.Stock[0], price, nil).best()[counts{}]
				found := new(Bench).Best(New(p, &p.Stock[0], Exact()), price)
				checkColumn(t, seed, p, price, found)
				holdWarped(t, seed, p, found.Value, want)
			}
		})
	}
}

// TestWarpedLimits does so within limits.
func TestWarpedLimits(t *testing.T) {
	for seed := range int64(100) {
		p, price := tinyWarped(seed)
		limits := []int{1, 2, 1}[:len(price)]
		var want Value
		for _, v := range newBrute(p, &p.Stock[0], price, limits).best() {
			want = max(want, v)
		}
		found, exact := new(Bench).BestLimited(New(p, &p.Stock[0], Exact()), price, limits, 1<<40)
		checkColumn(t, seed, p, price, found)
		checkLimits(t, seed, p, found, limits)
		if !exact {
			t.Errorf("seed %d: not proven best", seed)
		}
		holdWarped(t, seed, p, found.Value, want)
	}
}

// holdWarped compares values. Where offcuts are credited on a tapered board the
// routine is a restriction; on others the enumeration rounds every offcut by itself.
func holdWarped(t *testing.T, seed int64, p *layout.Problem, found, want Value) {
	t.Helper()
	credited, b := p.Shop.OffcutCredit > 0, &p.Stock[0]
	slack := Value(0)
	if credited {
		slack = 4
	}
	least := want - slack
	if credited && b.Width != b.TipWidth {
		least = want / 2
	}
	if found < least || found > want+slack {
		t.Errorf("seed %d: found %d, best is %d", seed, found, want)
	}
}

// bowed is a board of 2 x 6 x 96 in with a bow of 3/4 in: at full length it trues
// to 1-13/16 less most of 3/4 in. In 48 in blanks it loses 3/16 in.
func bowed(parts ...layout.Part) (*layout.Problem, []Value) {
	p := &layout.Problem{Shop: layout.DefaultShop(layout.Inches), Stock: []layout.Board{{
		Mark: "B", Base: "B", Species: "ash", Thickness: 2 * layout.Inch, Length: 96 * layout.Inch,
		Width: 6 * layout.Inch, TipWidth: 6 * layout.Inch, Cost: 40 * layout.Unity, Bow: 3 * layout.Inch / 4,
	}}}
	var price []Value
	for _, part := range parts {
		part.Species, part.Grade, part.Quantity = []string{"ash"}, layout.Clear, 99
		p.Bill = append(p.Bill, part)
		price = append(price, Value(part.Volume().BoardFeet()*14*float64(FromMoney(layout.Unity))))
	}
	return p, price
}

func part(name string, thickness, width, length layout.Length) layout.Part {
	return layout.Part{Name: name, Thickness: thickness, Width: width, Length: length}
}

// blanksOf are the lengths of the trued nodes of a tree.
func blanksOf(root *layout.Node) []layout.Length {
	var lengths []layout.Length
	root.Walk(func(n *layout.Node) {
		if n.Trued {
			lengths = append(lengths, n.Length())
		}
	})
	return lengths
}

// A bowed board is crosscut into short blanks for parts that are too thick for it at
// full length: 1-3/4 in is left of blanks of up to 96 * sqrt(1/12) = 27.7 in, three
// of which the board holds.
func TestQuickCutsABowedBoardShort(t *testing.T) {
	const in = layout.Inch
	p, price := bowed(part("leg", 7*in/4, 2*in, 24*in))
	c := new(Bench).Best(New(p, &p.Stock[0], Quick()), price)
	if c.Root == nil {
		t.Fatal("nothing is cut")
	}
	checkColumn(t, 0, p, price, c)
	if n := len(blanksOf(c.Root)); n != 3 {
		t.Errorf("%d blanks, want 3", n)
	}
}

// For parts that are thin enough it is cut as a flat one would be: what a part of
// 90 in needs.
func TestQuickKeepsABowedBoardLong(t *testing.T) {
	const in = layout.Inch
	p, price := bowed(part("rail", 3*in/4, 2*in, 90*in), part("slat", 3*in/4, 2*in, 20*in))
	c := new(Bench).Best(New(p, &p.Stock[0], Quick()), price)
	checkColumn(t, 0, p, price, c)
	if got := blanksOf(c.Root); len(got) != 1 || got[0] < 90*in {
		t.Errorf("blanks of %v, want one of 90 in and more", got)
	}
}

// A board wider than the jointer is ripped rough before it is trued, so that no
// strip is lost: 2 in wide strips, two in each half.
func TestQuickRipsAWideBoardRough(t *testing.T) {
	const in = layout.Inch
	p, price := bowed(part("slat", 3*in/4, 2*in, 20*in))
	p.Stock[0].Bow, p.Stock[0].Width, p.Stock[0].TipWidth = 0, 10*in, 10*in
	p.Shop.JointerWidth = 6 * in
	c := new(Bench).Best(New(p, &p.Stock[0], Quick()), price)
	if c.Root == nil {
		t.Fatal("nothing is cut")
	}
	checkColumn(t, 0, p, price, c)
	made := 0
	for _, leaf := range c.Root.Leaves() {
		if leaf.Part != "" {
			made++
		}
	}
	if made < 16 { // 4 in each of 4 strips
		t.Errorf("%d slats, want 16", made)
	}
}

// A cupped board is ripped rough for a part that it does not finish to across its
// whole width: of 2 in, 1-13/16 in are left by cleaning, 1-5/16 in by a cup of 1/2 in,
// and 1-11/16 in of a half as wide.
func TestQuickRipsACuppedBoardRough(t *testing.T) {
	const in = layout.Inch
	p, price := bowed(part("leg", 13*in/8, 2*in, 24*in))
	p.Stock[0].Bow, p.Stock[0].Cup = 0, in/2
	c := new(Bench).Best(New(p, &p.Stock[0], Quick()), price)
	if c.Root == nil {
		t.Fatal("nothing is cut")
	}
	checkColumn(t, 0, p, price, c)
	for _, blank := range c.Root.Children {
		if len(blank.Children) > 0 && blank.Trued {
			t.Errorf("the blank at %v is not ripped rough", blank.Rect)
		}
	}
}
