package column

import (
	"fmt"
	"math/rand"
	"slices"
	"testing"

	"sawbill/layout"
	"sawbill/layout/check"
)

func mmOf(n int) layout.Length { return layout.Length(n) * unit }

// tiny makes a job on a small grid of whole millimetres: one board, up to four
// kinds of part, with everything that a shop can ask for turned on by chance.
func tiny(rng *rand.Rand) (*layout.Problem, []Value) {
	s := layout.DefaultShop(layout.Millimetres)
	pick := func(n ...int) layout.Length { return mmOf(n[rng.Intn(len(n))]) }
	s.RipKerf, s.CrosscutKerf, s.RoughRipKerf = pick(0, 1), pick(0, 1, 2), pick(1, 1, 2)
	s.EndTrim, s.EdgeJoint, s.EndSquare = pick(0, 1), pick(0, 1), pick(0, 1)
	s.Snipe, s.FaceSkim = pick(0, 0, 2), pick(1)
	s.MinBlank, s.MaxBlank = pick(0, 4, 9), pick(0, 0, 12)
	s.MinRipLength = pick(0, 3, 5)
	s.MinOffcutLength, s.MinOffcutWidth = pick(2, 4), pick(1, 2)
	s.OffcutCredit = []layout.Credit{0, layout.CreditUnity / 10 * 6}[rng.Intn(2)]
	s.RipAgain = rng.Intn(2) == 0
	s.Clearance = map[layout.Kind]layout.Clearance{
		layout.Check: {Along: pick(0, 1)}, layout.Metal: {Along: pick(0, 1), Across: pick(0, 1)}, layout.Knot: {Along: pick(0, 1), Across: pick(0, 1)},
	}
	b := layout.Board{
		Mark: "B", Base: "B", Species: "elm", Thickness: mmOf(10),
		Width: mmOf(2 + rng.Intn(6)), Length: mmOf(6 + rng.Intn(10)),
		Edges: layout.Edges(rng.Intn(3)), Faces: layout.Faces(rng.Intn(2)),
	}
	b.TipWidth = b.Width
	if rng.Intn(3) == 0 {
		b.TipWidth = mmOf(2 + rng.Intn(6))
	}
	b.Cost = layout.Money(2 * int64(b.Length/unit) * int64((b.Width+b.TipWidth)/unit))
	kinds := []layout.Kind{layout.Knot, layout.Check, layout.Stain, layout.Hole, layout.Metal}
	for range rng.Intn(4) {
		x, y := rng.Intn(int(b.Length/unit)), rng.Intn(int(b.FullWidth()/unit))
		r := layout.Rect{X1: mmOf(x), X2: mmOf(x + 1 + rng.Intn(3)), Y1: mmOf(y), Y2: mmOf(y + 1 + rng.Intn(2))}
		kind := kinds[rng.Intn(len(kinds))]
		if kind == layout.Metal && rng.Intn(2) == 0 {
			kind = layout.Hole
		}
		b.Defects = append(b.Defects, layout.Defect{Kind: kind, Face: layout.Face(rng.Intn(3)), Rect: r.Intersect(b.Frame())})
	}
	p := &layout.Problem{Shop: s, Stock: []layout.Board{b}}
	var price []Value
	for i := range 1 + rng.Intn(3) {
		p.Bill = append(p.Bill, layout.Part{
			Name: fmt.Sprint("p", i), Species: []string{"elm"}, Quantity: 99,
			Thickness: pick(8, 8, 6, 10), Width: mmOf(1 + rng.Intn(3)), Length: mmOf(2 + rng.Intn(6)),
			Grade: []string{layout.Clear, layout.OneFace, layout.Sound}[rng.Intn(3)],
		})
		part := &p.Bill[i]
		area := int64(part.Width/unit) * int64(part.Length/unit)
		price = append(price, Value(area*int64(200+rng.Intn(300))))
	}
	return p, price
}

// TestExactEqualsEveryPosition compares the exact routine with an enumeration
// of every position. On a tapered board that credits offcuts the routine is a
// restriction: what it finds may be worth less, where an offcut lies under the
// slanting edge, never more (but for the rounding of corners).
func TestExactEqualsEveryPosition(t *testing.T) {
	for part := range int64(2) {
		t.Run(fmt.Sprint(part), func(t *testing.T) {
			t.Parallel()
			for seed := part; seed < 500; seed += 2 {
				compare(t, seed)
			}
		})
	}
}

func compare(t *testing.T, seed int64) {
	p, price := tiny(rand.New(rand.NewSource(seed)))
	b := &p.Stock[0]
	want := newBrute(p, b, price, nil).best()[counts{}]
	found := new(Bench).Best(New(p, b, Exact()), price)
	got := found.Value
	checkColumn(t, seed, p, price, found)
	if b.Width != b.TipWidth && p.Shop.OffcutCredit > 0 {
		if got > want+4 || got < want/2 {
			t.Errorf("seed %d: found %d on a tapered board, best is %d", seed, got, want)
		}
		return
	}
	if got != want {
		t.Errorf("seed %d: found %d, best is %d", seed, got, want)
	}
}

// checkColumn lets the checker pass the cut tree and adds up what it is worth.
func checkColumn(t *testing.T, seed int64, p *layout.Problem, price []Value, c Column) {
	t.Helper()
	if c.Root == nil {
		return
	}
	b := &p.Stock[0]
	var sum Value
	leaves := 0
	c.Root.LeavesByBlank(func(blank, leaf *layout.Node) {
		switch {
		case leaf.Part != "":
			sum += Value(leaf.Pieces()) * price[slices.IndexFunc(p.Bill, func(q layout.Part) bool { return q.Name == leaf.Part })]
		case leaf.Offcut != "":
			sum += FromMoney(p.Shop.OffcutWorth(b, b.CleanOffcutIn(blank.Length(), leaf.Rect)))
			leaves++
		}
	})
	if slack := Value(leaves) * (Cash + 2); sum > c.Value+slack || sum < c.Value-slack {
		t.Errorf("seed %d: the tree is worth %d, the column says %d", seed, sum, c.Value)
	}
	for _, v := range check.Plan(layout.Assemble(p, []layout.BoardCut{{Board: b.Mark, Root: c.Root}})) {
		t.Errorf("seed %d: %v", seed, v)
	}
}
