package bound

import (
	"math/big"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"sawbill/layout"
)

// ribbonPlan has the boards of slatPlan and one glue-up in place of the slats: 40
// slices of 21.1 mm in copies of two strips 48 wide, and no square ends. A strip of k
// slices takes k x 25.1 with the kerf behind it, so a board holds 80 slices of strips
// exactly, in whatever copies: 9 slices, the least of at least 200, to 40. Strips cost
// rate a slice.
func ribbonPlan(rate, priceBound layout.Money) *layout.Plan {
	plan := slatPlan(0, 0, 80)
	p := &plan.Problem
	p.Shop.MinBlank, p.Shop.PanelSquare = 200*mm, 0
	p.Bill = []layout.Part{{
		Name: "ribbon", Species: []string{"ash"}, Quantity: 2, Grade: layout.Clear, Thickness: 20 * mm, Width: 48 * mm,
		Set: "tray", Slices: 40, SliceThickness: 21*mm + mm/10,
	}}
	whole := layout.Rect{X2: 1000 * mm, Y2: 100 * mm}
	blank := &layout.Node{Rect: whole, Cut: layout.Rip, Trued: true, Thickness: 20 * mm}
	for row := range layout.Length(2) {
		strip := &layout.Node{Rect: whole, Cut: layout.Crosscut}
		strip.Y1, strip.Y2 = row*52*mm, row*52*mm+48*mm
		strip.Children = []*layout.Node{{Rect: strip.Rect, Part: "ribbon", Slices: 40}}
		blank.Children = append(blank.Children, strip)
	}
	root := &layout.Node{Rect: whole, Cut: layout.Crosscut, Children: []*layout.Node{blank}}
	next := layout.Assemble(p, []layout.BoardCut{{Board: "A", Root: root}})
	next.Totals.Prices, next.Totals.StripPrices = map[string]layout.Money{}, map[string]map[int]layout.Money{"ribbon": {}}
	for k := 9; k <= 40; k++ {
		next.Totals.StripPrices["ribbon"][k] = rate * layout.Money(k)
	}
	next.Totals.PriceBound, next.Totals.Bound = &priceBound, plan.Totals.Bound
	return next
}

func TestProveStrips(t *testing.T) {
	const one = layout.Unity
	for _, c := range []struct {
		name         string
		rate, stated layout.Money
		alter        func(map[int]layout.Money)
		want         layout.Money
		isNotReached bool
	}{
		// 40 slices of copies of two strips, at 1 a slice, are worth 80: a board.
		{"prices that are just right", one, 80 * one, nil, 80 * one, false},
		// At 1.2 they are worth 96, and so is each of three boards: 96 - 3 x 16.
		{"prices too high", one * 6 / 5, 48 * one, nil, 48 * one, false},
		{"prices too high for what is stated", one * 6 / 5, 49 * one, nil, 48 * one, true},
		// Four copies of 13 slices cost nothing then.
		{"a price left out", one, one, func(p map[int]layout.Money) { delete(p, 13) }, 0, true},
		// Four copies of 10 slices at 2 x 8.
		{"short strips too cheap", one, 80 * one, func(p map[int]layout.Money) { p[9], p[10] = 8*one, 8*one }, 64 * one, true},
	} {
		t.Run(c.name, func(t *testing.T) {
			plan := ribbonPlan(c.rate, c.stated)
			if c.alter != nil {
				c.alter(plan.Totals.StripPrices["ribbon"])
			}
			proof, err := Prove(never, plan)
			if err != nil {
				t.Fatal(err)
			}
			if proof.Proven != c.want || (len(proof.Violations) > 0) != c.isNotReached {
				t.Errorf("proven %v, want %v; violations %v", proof.Proven, c.want, proof.Violations)
			}
		})
	}
}

// Slices that a plan does not make are not worth anything: with 20 missing, two short
// copies of 10 remain.
func TestMissingSlicesAreNotWanted(t *testing.T) {
	plan := ribbonPlan(layout.Unity, 0)
	s, err := spreadOut(&plan.Problem, &plan.Totals, &fixed{free: plan.Problem.Stock})
	if err != nil {
		t.Fatal(err)
	}
	got := s.wanted([]layout.Missing{{Part: "tray", Quantity: 20}}, &fixed{})
	if want := big.NewInt(int64(40*layout.Unity) * int64(cash)); got.Cmp(want) != 0 {
		t.Errorf("wanted %v, want %v", got, want)
	}
}

// The least that copies are worth is held against trying every number of each.
func TestCheapestCopies(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := &set{least: rapid.IntRange(1, 4).Draw(t, "least")}
		worth := rapid.SliceOfN(rapid.Int64Range(0, 50), 1, 4).Draw(t, "worth")
		for _, w := range worth {
			c.worth = append(c.worth, big.NewInt(w))
		}
		slices := rapid.IntRange(0, 14).Draw(t, "slices")
		if got, want := c.cheapest(slices).Int64(), tryCopies(c.least, slices, worth); got != want {
			t.Errorf("got %d, want %d", got, want)
		}
	})
}

func tryCopies(least, slices int, worth []int64) int64 {
	if slices <= 0 {
		return 0
	}
	var best int64 = 1 << 60
	for i, w := range worth {
		best = min(best, w+tryCopies(least, slices-least-i, worth))
	}
	return best
}

func TestTooManyKindsOfStrips(t *testing.T) {
	plan := ribbonPlan(0, 0)
	plan.Problem.Bill[0].SliceThickness = mm / 100
	plan.Problem.Shop.CrosscutKerf = 0
	if _, err := spreadOut(&plan.Problem, &plan.Totals, &fixed{free: plan.Problem.Stock}); err == nil || !strings.Contains(err.Error(), "too thin") {
		t.Errorf("error %v", err)
	}
}
