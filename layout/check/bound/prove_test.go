package bound

import (
	"errors"
	"strings"
	"testing"

	"sawbill/layout"
)

// The job of these tests: boards of ash, 1000 by 100, planed and straight, that
// cost 80 each, and eight slats of 247 by 48. All kerfs are 4 and nothing else is
// lost, so a board gives 4 x 2 slats exactly: 4 x 247 + 3 x 4 = 1000 and
// 2 x 48 + 4 = 100. Offcuts are worth nothing.
const mm = layout.Millimetre

func slatShop() *layout.Shop {
	s := layout.DefaultShop(layout.Millimetres)
	s.RipKerf, s.CrosscutKerf, s.RoughRipKerf = 4*mm, 4*mm, 4*mm
	s.EndTrim, s.OffcutCredit = 0, 0
	s.MinRipLength = 200 * mm
	return s
}

func slatBoard(mark string, source layout.Source) layout.Board {
	return layout.Board{
		Mark: mark, Base: mark, Species: "ash", Thickness: 20 * mm, Source: source,
		Length: 1000 * mm, Width: 100 * mm, TipWidth: 100 * mm,
		Edges: layout.EdgesBoth, Faces: layout.FacesPlaned, Cost: 80 * layout.Unity,
	}
}

// slatTree cuts eight slats from a board.
func slatTree() *layout.Node {
	whole := layout.Rect{X1: 0, X2: 1000 * mm, Y1: 0, Y2: 100 * mm}
	blank := &layout.Node{Rect: whole, Cut: layout.Rip, Trued: true, Thickness: 20 * mm}
	for row := range layout.Length(2) {
		strip := &layout.Node{Rect: whole, Cut: layout.Crosscut}
		strip.Y1, strip.Y2 = row*52*mm, row*52*mm+48*mm
		for i := range layout.Length(4) {
			slat := &layout.Node{Rect: strip.Rect, Part: "slat"}
			slat.X1, slat.X2 = i*251*mm, i*251*mm+247*mm
			strip.Children = append(strip.Children, slat)
		}
		blank.Children = append(blank.Children, strip)
	}
	return &layout.Node{Rect: whole, Cut: layout.Crosscut, Children: []*layout.Node{blank}}
}

// slatPlan cuts one of three boards on the rack; one on hold takes no part, nor
// does one at the yard unless yard says so. Prices and bounds are in whole units.
func slatPlan(price, priceBound, bound layout.Money) *layout.Plan {
	p := &layout.Problem{Shop: slatShop(), Bill: []layout.Part{{
		Name: "slat", Species: []string{"ash"}, Quantity: 8, Grade: layout.Clear,
		Thickness: 20 * mm, Width: 48 * mm, Length: 247 * mm,
	}}}
	for i, source := range []layout.Source{layout.Rack, layout.Rack, layout.Rack, layout.Hold, layout.Yard} {
		p.Stock = append(p.Stock, slatBoard(string(rune('A'+i)), source))
	}
	plan := layout.Assemble(p, []layout.BoardCut{{Board: "A", Root: slatTree()}})
	priceBound, bound = priceBound*layout.Unity, bound*layout.Unity
	plan.Totals.Prices = map[string]layout.Money{"slat": price * layout.Unity}
	plan.Totals.PriceBound, plan.Totals.Bound = &priceBound, &bound
	return plan
}

func TestProve(t *testing.T) {
	withYard := func(p *layout.Plan) { p.Problem.Yard = true }
	none := func(*layout.Plan) {}
	for _, tc := range []struct {
		name         string
		price        layout.Money
		stated       layout.Money
		alter        func(*layout.Plan)
		want         layout.Money
		isNotReached bool
	}{
		// Eight slats at 10 are worth 80, which is what a board costs.
		{"prices that are just right", 10, 80, none, 80, false},
		{"less than they prove", 10, 70, none, 80, false},
		// At 12 each of three boards is worth 96, 16 more than it costs: 96 - 3 x 16.
		{"prices too high", 12, 48, none, 48, false},
		{"prices too high for what is stated", 12, 49, none, 48, true},
		{"a board at the yard takes part", 12, 32, withYard, 32, false},
		{"a board at the yard takes part, stated without it", 12, 48, withYard, 32, true},
		// At 9 no board is worth what it costs: 8 x 9.
		{"prices too low", 9, 72, none, 72, false},
		{"prices too low for what is stated", 9, 80, none, 72, true},
		// Of the slats none is priced.
		{"no price for the part", 0, 0, none, 0, false},
	} {
		plan := slatPlan(tc.price, tc.stated, 80)
		tc.alter(plan)
		proof, err := Prove(never, plan)
		if err != nil {
			t.Errorf("%s: %v", tc.name, err)
			continue
		}
		if proof.Proven != tc.want*layout.Unity || (len(proof.Violations) > 0) != tc.isNotReached {
			t.Errorf("%s: proven %v, want %v; violations %v", tc.name, proof.Proven, tc.want, proof.Violations)
		}
	}
}

// Every way to touch what a plan says of its bound is found out.
func TestProveRefuses(t *testing.T) {
	for _, tc := range []struct {
		name  string
		alter func(*layout.Plan)
		want  string
	}{
		{"price_bound raised", func(p *layout.Plan) { *p.Totals.PriceBound += layout.Unity; *p.Totals.Bound += layout.Unity }, "more than the cost"},
		{"price_bound above bound", func(p *layout.Plan) { *p.Totals.Bound -= layout.Unity }, "is less than"},
		{"bound above the cost", func(p *layout.Plan) { *p.Totals.Bound += 1 }, "more than the cost"},
		{"bound left out", func(p *layout.Plan) { p.Totals.Bound = nil }, "no bound is given"},
		{"price_bound left out", func(p *layout.Plan) { p.Totals.PriceBound = nil }, "does not say what they prove"},
		{"prices left out", func(p *layout.Plan) { p.Totals.Prices = nil }, "without the prices"},
		{"a price lowered", func(p *layout.Plan) { p.Totals.Prices["slat"]-- }, "falls short"},
		{"a price raised", func(p *layout.Plan) { p.Totals.Prices["slat"]++ }, "falls short"},
		{"a price below 0", func(p *layout.Plan) { p.Totals.Prices["slat"] = -1 }, "is negative"},
		{"a price for nothing in the bill", func(p *layout.Plan) { p.Totals.Prices["slot"] = 1 }, "does not ask for"},
		{"a price dropped", func(p *layout.Plan) { delete(p.Totals.Prices, "slat") }, "falls short"},
		{"a cut moved", func(p *layout.Plan) { p.Boards[0].Root.Children[0].Children[0].Y2 += mm }, "V2: "},
	} {
		plan := slatPlan(10, 80, 80)
		tc.alter(plan)
		proof, err := Prove(never, plan)
		if err != nil {
			t.Errorf("%s: %v", tc.name, err)
			continue
		}
		var said []string
		for _, v := range proof.Violations {
			said = append(said, v.String())
		}
		if !strings.Contains(strings.Join(said, "\n"), tc.want) {
			t.Errorf("%s: want a violation that says %q, got %q", tc.name, tc.want, said)
		}
	}
}

func TestProveFails(t *testing.T) {
	unpriced := slatPlan(10, 80, 80)
	unpriced.Totals.Prices, unpriced.Totals.PriceBound = nil, nil
	if _, err := Prove(never, unpriced); !errors.Is(err, ErrUnpriced) {
		t.Errorf("without prices: %v", err)
	}
	always := func() bool { return true }
	if _, err := Prove(always, slatPlan(12, 80, 80)); !errors.Is(err, ErrStopped) {
		t.Errorf("stopped: %v", err)
	}
	for name, alter := range map[string]func(*layout.Plan){
		"sliver": func(p *layout.Plan) {
			p.Problem.Shop.OffcutCredit, p.Problem.Shop.MinOffcutWidth, p.Problem.Shop.RoughRipKerf = 1, 0, 0
		},
		"price": func(p *layout.Plan) { p.Totals.Prices["slat"] = layout.MaxMoney * 1000 },
	} {
		plan := slatPlan(10, 80, 80)
		alter(plan)
		if proof, err := Prove(never, plan); err == nil || !strings.HasPrefix(err.Error(), "cannot prove: ") {
			t.Errorf("%s: want a refusal, got %v and %v", name, err, proof.Violations)
		}
	}
}

// A board of which no part has a price is worth no more than the credit for its wood,
// 60 of 100, however large its offcuts are taken on a grid; so no look is taken at it.
func TestOffcutsAreWorthNoMoreThanTheWood(t *testing.T) {
	p := &slatPlan(0, 0, 0).Problem
	p.Shop.OffcutCredit = layout.CreditUnity * 6 / 10
	p.Stock[0].Cost, p.Stock[0].TipWidth = 100*layout.Unity, 90*mm
	c, err := newCeiling(p, &p.Stock[0], nil)
	if err != nil {
		t.Fatal(err)
	}
	if want := 60*value(layout.Unity)*cash + 1; c.most != want {
		t.Errorf("at most %d, want %d", c.most, want)
	}
}

// A board 1423.5 by 107.7 gives twelve slats of 283.5 by 24 that are worth 17.5464
// together, and a little wood to keep beside fewer of them, but nothing beyond its cost.
// On a grid of 1 along and 1/2 across it seemed worth 0.0017 more, and the solver's own
// grid knew better: what it stated was refused.
func TestWhatNoMarkMeasuresIsLookedAtFinely(t *testing.T) {
	const mm = layout.Millimetre
	shop := layout.DefaultShop(layout.Millimetres)
	shop.RipKerf, shop.CrosscutKerf, shop.OffcutCredit = 3200*layout.Micrometre, 2600*layout.Micrometre, layout.CreditUnity/2
	board := layout.Board{
		Mark: "B", Base: "B", Species: "ash", Thickness: 57 * mm / 2, Length: 14235 * mm / 10, Width: 1077 * mm / 10, TipWidth: 1077 * mm / 10,
		Edges: layout.EdgesOne, Faces: layout.FacesPlaned, Cost: 175905,
	}
	slat := layout.Part{
		Name: "slat", Species: []string{"ash"}, Grade: layout.Clear, Thickness: 20 * mm, Width: 24 * mm, Length: 567 * mm / 2, Quantity: 4,
	}
	plan := layout.Assemble(&layout.Problem{Shop: shop, Stock: []layout.Board{board}, Bill: []layout.Part{slat}}, nil)
	nothing := layout.Money(0)
	plan.Totals.Prices = map[string]layout.Money{"slat": 14622}
	plan.Totals.PriceBound, plan.Totals.Bound = &nothing, &nothing
	proof, err := Prove(func() bool { return false }, plan)
	if err != nil || len(proof.Violations) > 0 {
		t.Errorf("%v %v", proof.Violations, err)
	}
}

// In a length that is ripped again a leaning part keeps a kerf from a square one on either
// side, and no more: prices under which such a plan is the best prove no more than it costs.
func TestLeaningPartBetweenSquareOnes(t *testing.T) {
	const bevel = 45 * layout.Degree
	s := slatShop()
	kerf := s.BevelKerf(bevel)
	high := 41*mm + kerf + 61*mm + 20*mm + kerf + 41*mm
	board := slatBoard("A", layout.Rack)
	board.Width, board.TipWidth, board.Cost = high+35*mm, high+35*mm, 100*layout.Unity
	p := &layout.Problem{Shop: s, Stock: []layout.Board{board}}
	add := func(name string, n int, length, width layout.Length, bevel layout.Angle) {
		p.Bill = append(p.Bill, layout.Part{
			Name: name, Quantity: n, Length: length, Width: width, Bevel: bevel,
			Species: []string{"ash"}, Grade: layout.Clear, Thickness: 20 * mm,
		})
	}
	add("top", 1, 696*mm, high, 0)
	add("brace", 1, 300*mm, 61*mm, bevel)
	add("rail", 2, 300*mm, 41*mm, 0)
	add("sill", 1, 1000*mm, 31*mm, 0)
	wide := layout.Rect{X2: 1000 * mm, Y2: high}
	cell, top, sill := wide, wide, wide
	cell.X2, top.X1 = 300*mm, 304*mm
	sill.Y1, sill.Y2 = high+4*mm, high+35*mm
	rail, brace, last := cell, cell, cell
	rail.Y2, last.Y1 = 41*mm, high-41*mm
	brace.Y1, brace.Y2 = rail.Y2+kerf, rail.Y2+kerf+61*mm
	blank := &layout.Node{Rect: board.Frame(), Cut: layout.Rip, Trued: true, Thickness: 20 * mm, Children: []*layout.Node{
		{Rect: wide, Cut: layout.Crosscut, Children: []*layout.Node{
			{Rect: cell, Cut: layout.Rip, Children: []*layout.Node{
				{Rect: rail, Part: "rail"}, {Rect: brace, Part: "brace", Lean: p.Bill[1].Lean()}, {Rect: last, Part: "rail"},
			}},
			{Rect: top, Part: "top"},
		}},
		{Rect: sill, Part: "sill"},
	}}
	plan := layout.Assemble(p, []layout.BoardCut{{
		Board: "A", Root: &layout.Node{Rect: board.Frame(), Cut: layout.Crosscut, Children: []*layout.Node{blank}},
	}})
	stated := plan.Totals.Cost
	plan.Totals.PriceBound, plan.Totals.Bound = &stated, &stated
	plan.Totals.Prices = map[string]layout.Money{"top": 90 * layout.Unity, "brace": 5 * layout.Unity, "rail": 3 * layout.Unity, "sill": 8 * layout.Unity}

	proof, err := Prove(func() bool { return false }, plan)
	if err != nil || proof.Proven > plan.Totals.Cost {
		t.Errorf("it is proven that the plan costs %v, and it costs %v: %v %v", proof.Proven, plan.Totals.Cost, err, proof.Violations)
	}
}
