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

// cutStrip notes a strip of the plan as cut.
func cutStrip(p *layout.Plan, leaf *layout.Node) {
	p.Record.Cut = append(p.Record.Cut, layout.CutPiece{
		Part: leaf.Part, Board: "P2", Slices: leaf.Slices, Wood: layout.Board{Mark: leaf.ID}, Lay: leaf.Rect,
	})
}

// Strips that are cut may wait for a dark one; if only one of them is cut, the other
// would be cut for nothing. A dark one from a board that is gone makes the copy whole.
func TestStripsThatAreCut(t *testing.T) {
	waiting := func() *layout.Plan {
		p := setPlan()
		p.Record = &layout.Record{Wanted: p.Problem.Bill}
		cutStrip(p, down(p, 0, 0, 0, 0))
		cutStrip(p, down(p, 0, 0, 1, 0))
		*down(p, 0, 0, 2) = layout.Node{Rect: down(p, 0, 0, 2).Rect}
		p = layout.AssembleWith(&p.Problem, p.Record, []layout.BoardCut{{Board: "P2", Root: p.Boards[0].Root}}, nil)
		return p
	}
	p := waiting()
	for _, v := range Plan(p) {
		t.Error("they wait:", v)
	}
	if len(p.Waiting()) != 2 || len(p.Missing) != 1 || p.Missing[0].Quantity != 8 {
		t.Errorf("%d strips wait, missing %v", len(p.Waiting()), p.Missing)
	}
	p.Record.Cut = p.Record.Cut[:1]
	wantViolation(t, p, "V11", "2 strips of light with 8 slices do not make whole copies")

	p = waiting()
	p.Record.Cut = append(p.Record.Cut, layout.CutPiece{Part: "dark", Board: "P7", Slices: 8, Wood: layout.Board{Mark: "P7-1a"}})
	p = layout.AssembleWith(&p.Problem, p.Record, []layout.BoardCut{{Board: "P2", Root: p.Boards[0].Root}}, nil)
	if len(p.Missing) > 0 || len(p.Waiting()) > 0 {
		t.Errorf("missing %v, waiting %v", p.Missing, p.Waiting())
	}
	for _, v := range Plan(p) {
		t.Error("whole again:", v)
	}
	p.Record.Cut[0].Slices = 9
	wantViolation(t, p, "record", "it was cut as light at")
	p.Record.Cut[0] = p.Record.Cut[1]
	wantViolation(t, p, "record", "the record says twice that it is cut")
}
