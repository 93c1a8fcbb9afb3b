package check

import (
	"testing"

	"sawbill/layout"
)

// bevelPlan cuts two strips of 20 mm at 45 degrees out of a planed board of 200
// by 800: d = 20 x tan 45 = 20, and a kerf takes 3 / cos 45 = 4.243 of a face.
//
//	face A   5..45    50..90     the near edge keeps 5, the strips 5 apart
//	face B  25..65    70..110    the far edge keeps 90
func bevelPlan() *layout.Plan {
	p := goodJob()
	p.Stock = p.Stock[1:2]
	p.Stock[0].Width, p.Stock[0].TipWidth = 200*millimetre, 200*millimetre
	p.Bill = []layout.Part{{
		Name: "rafter", Grade: layout.Clear, Species: []string{"pear"}, Quantity: 2, Bevel: 45 * layout.Degree,
		Length: 700 * millimetre, Width: 40 * millimetre, Thickness: 20 * millimetre,
	}}
	strip := func(y1, y2 layout.Length) *layout.Node {
		n := crosscut(box(25, 775, y1, y2), leaf(box(25, 725, y1, y2), "rafter"))
		n.Lean, n.Children[0].Lean = 20*millimetre, 20*millimetre
		return n
	}
	root := crosscut(box(0, 800, 0, 200), trued(box(25, 775, 0, 200), 20, strip(5, 45), strip(50, 90)))
	return layout.Assemble(&p, []layout.BoardCut{{Board: "P2", Root: root}})
}

// move shifts a strip and all that is cut from it across the board.
func move(n *layout.Node, by layout.Length) {
	n.Walk(func(m *layout.Node) { m.Y1, m.Y2 = m.Y1+by, m.Y2+by })
}

func TestBevelledPlanPasses(t *testing.T) {
	for _, v := range Plan(bevelPlan()) {
		t.Error(v)
	}
}

func TestBevelAllowsTheExactKerf(t *testing.T) {
	// 3 / cos 45 is 4.242 640 687… mm.
	p := bevelPlan()
	move(down(p, 0, 0, 1), -5*millimetre+4_242_641)
	move(down(p, 0, 0, 0), -5*millimetre+4_242_641)
	move(down(p, 0, 0, 1), -5*millimetre+4_242_641)
	wantOnly(t, p, "account")
}

func TestBrokenBevels(t *testing.T) {
	const mm = millimetre
	for _, c := range []struct {
		what, rule, piece string
		wreck             func(*layout.Plan)
	}{
		{"part without lean", "V9", "lean says 0 mm; the bevel of the part makes it 20 mm", func(p *layout.Plan) {
			down(p, 0, 0, 0, 0).Lean = 0
		}},
		{"strip without lean", "V9", "its strip leans by 0 mm", func(p *layout.Plan) { down(p, 0, 0, 0).Lean = 0 }},
		{"strip leans otherwise", "V9", "the strip that it is crosscut from leans by 19 mm", func(p *layout.Plan) {
			down(p, 0, 0, 0).Lean = 19 * mm
		}},
		{"a square part of a leaning strip", "V9", "the bevel of the part makes it 0 mm", func(p *layout.Plan) {
			p.Problem.Bill[0].Bevel = 0
		}},
		{"too near the near edge", "V9", "4.2 mm from an edge of its parent", func(p *layout.Plan) {
			move(down(p, 0, 0, 0), -8*mm/10)
		}},
		{"too near the far edge", "V9", "4 mm from an edge of its parent", func(p *layout.Plan) { move(down(p, 0, 0, 1), 86*mm) }},
		{"too near its neighbour", "V9", "4.2 mm from its neighbour", func(p *layout.Plan) { move(down(p, 0, 0, 1), -8*mm/10) }},
		{"beyond the outline on face B", "V7", "reaches to y 201 mm", func(p *layout.Plan) { move(down(p, 0, 0, 1), 91*mm) }},
		{"a defect under face B only", "V8", "knot at x 100 mm", func(p *layout.Plan) {
			p.Problem.Stock[0].Defects = []layout.Defect{{Kind: layout.Knot, Rect: box(100, 110, 95, 100)}}
		}},
		{"resawn at a bevel", "V13", "a bevelled part cannot be resawn", func(p *layout.Plan) {
			p.Problem.Bill[0].Resaw = true
			down(p, 0, 0, 0, 0).Layers = 2
		}},
		{"leaning before truing", "V9", "not ripped at a bevel", func(p *layout.Plan) { down(p, 0, 0).Trued = false }},
	} {
		t.Run(c.what, func(t *testing.T) {
			p := bevelPlan()
			c.wreck(p)
			wantViolation(t, p, c.rule, c.piece)
		})
	}
}

func TestBevelledStripIsNotPlanedThinner(t *testing.T) {
	p := bevelPlan()
	square := p.Problem.Bill[0]
	square.Name, square.Bevel, square.Thickness = "post", 0, 15*millimetre
	p.Problem.Bill[0].Thickness = 10 * millimetre
	p.Problem.Bill = append(p.Problem.Bill, square)
	down(p, 0, 0, 1, 0).Part = "post"
	wantViolation(t, p, "V5", "a bevelled strip cannot be planed thinner")
}
