package check

import (
	"testing"

	"sawbill/layout"
)

// setPlan makes one copy of 8 slices of 30 mm: strips of
// 8 x 30 + 7 x 3 + 2 x 6 = 273 mm. One copy takes two light strips and a dark
// one, side by side from a planed board of 200 by 800. Blanks from 250.
func setPlan() *layout.Plan {
	p := goodJob()
	p.Shop.MinBlank = 250 * millimetre
	p.Stock = p.Stock[1:2]
	p.Stock[0].Width, p.Stock[0].TipWidth = 200*millimetre, 200*millimetre
	row := func(name string, quantity int) layout.Part {
		return layout.Part{
			Name: name, Grade: layout.Clear, Species: []string{"pear"}, Quantity: quantity,
			Set: "chess", Slices: 8, SliceThickness: 30 * millimetre, Width: 40 * millimetre, Thickness: 20 * millimetre,
		}
	}
	p.Bill = []layout.Part{row("light", 2), row("dark", 1)}
	strip := func(part string, y layout.Length) *layout.Node {
		n := crosscut(box(25, 775, y, y+40), leaf(box(25, 298, y, y+40), part))
		n.Children[0].Slices = 8
		return n
	}
	root := crosscut(box(0, 800, 0, 200), trued(box(25, 775, 0, 200), 20,
		strip("light", 0), strip("light", 43), strip("dark", 86)))
	plan := layout.Assemble(&p, []layout.BoardCut{{Board: "P2", Root: root}})
	plan.Missing = nil
	return plan
}

func TestSetPlanPasses(t *testing.T) {
	for _, v := range Plan(setPlan()) {
		t.Error(v)
	}
}

func TestBrokenSets(t *testing.T) {
	for _, c := range []struct {
		what, rule, piece string
		wreck             func(*layout.Plan)
	}{
		{"slices are missing", "V11", "chess: 2 missing, but the plan lists 0", func(p *layout.Plan) {
			p.Problem.Bill[0].Slices, p.Problem.Bill[1].Slices = 10, 10
		}},
		{"rows that differ", "V11", "light and dark ask for other slices", func(p *layout.Plan) { p.Problem.Bill[1].SliceThickness++ }},
		{"a copy without strips of a row", "form", "0 strips in a copy", func(p *layout.Plan) { p.Problem.Bill[1].Quantity = 0 }},
		{"no whole copy", "V11", "2 strips of light with 8 slices do not make whole copies", func(p *layout.Plan) {
			down(p, 0, 0, 2, 0).Part = ""
		}},
		{"strip shorter than its slices", "V6", "the part is cut to 306 mm", func(p *layout.Plan) { down(p, 0, 0, 0, 0).Slices = 9 }},
		{"strip without slices", "V11", "does not say how many slices", func(p *layout.Plan) { down(p, 0, 0, 0, 0).Slices = 0 }},
		{"a price for any strip", "bound", "in a set there is one for each number of slices", func(p *layout.Plan) {
			p.Totals.Prices = map[string]layout.Money{"dark": 1}
		}},
		{"a negative price of a strip", "bound", "the price of dark with 8 slices is negative", func(p *layout.Plan) {
			p.Totals.StripPrices = map[string]map[int]layout.Money{"dark": {8: -1}}
		}},
		{"strip too short for the machines", "V11", "a glue-up is at least 300 mm", func(p *layout.Plan) {
			p.Problem.Shop.MinBlank = 300 * millimetre
		}},
	} {
		t.Run(c.what, func(t *testing.T) {
			p := setPlan()
			c.wreck(p)
			wantViolation(t, p, c.rule, c.piece)
		})
	}
}
