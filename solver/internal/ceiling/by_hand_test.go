package ceiling_test

import (
	"testing"

	"sawbill/layout"
	"sawbill/layout/check"
	"sawbill/solver/internal/ceiling"
)

const mm = layout.Millimetre

// byHand is a planed board with two straight edges in a shop that trims no ends.
func byHand(width, tip layout.Length, defects ...layout.Defect) *layout.Problem {
	s := layout.DefaultShop(layout.Millimetres)
	s.EndTrim, s.Snipe = 0, 0
	return &layout.Problem{Shop: s, Stock: []layout.Board{{
		Mark: "B", Base: "B", Species: "ash", Cost: 100 * layout.Unity, Edges: layout.EdgesBoth, Faces: layout.FacesPlaned,
		Thickness: 20 * mm, Length: 1000 * mm, Width: width, TipWidth: tip, Defects: defects,
	}}}
}

func (p partByHand) in(job *layout.Problem) {
	job.Bill = append(job.Bill, layout.Part{
		Name: p.name, Species: []string{"ash"}, Quantity: 9, Grade: layout.Clear, Bevel: p.bevel,
		Thickness: 20 * mm, Length: p.length - job.Shop.LengthAllowance, Width: p.width - job.Shop.WidthAllowance,
	})
}

type partByHand struct {
	name          string
	length, width layout.Length
	bevel         layout.Angle
}

// holdByHand lets the checker pass strips of one blank as long as the board, and holds the
// ceiling against what they are worth at prices of which the first is by far the highest.
func holdByHand(t *testing.T, p *layout.Problem, strips ...*layout.Node) {
	t.Helper()
	b := &p.Stock[0]
	blank := &layout.Node{Rect: b.Frame(), Cut: layout.Rip, Trued: true, Thickness: b.Thickness, Children: strips}
	root := &layout.Node{Rect: b.Frame(), Cut: layout.Crosscut, Children: []*layout.Node{blank}}
	plan := layout.Assemble(p, []layout.BoardCut{{Board: b.Mark, Root: root}})
	for _, v := range check.Plan(plan) {
		t.Errorf("%v", v)
	}
	price, rows := []ceiling.Value{9000e6, 500e6, 300e6, 800e6}[:len(p.Bill)], map[string]int{}
	for i := range p.Bill {
		rows[p.Bill[i].Name] = i
	}
	worth := ceiling.Value(b.Cost-plan.Totals.Cost) * 100
	for _, leaf := range root.Leaves() {
		if leaf.Part != "" {
			worth += price[rows[leaf.Part]]
		}
	}
	var bench ceiling.Bench
	if most, _ := bench.Most(ceiling.New(p, b), price, 0, 1e8, nil); most < worth {
		t.Errorf("the ceiling is %d, a cutting is worth %d", most, worth)
	}
}

// An offcut under a slanting edge that is just as long and as high as it must be is one.
func TestOffcutJustHighEnough(t *testing.T) {
	p := byHand(150*mm, 80*mm, layout.Defect{Kind: layout.Knot, Rect: layout.Rect{X1: 500 * mm, X2: 505 * mm, Y1: 80 * mm, Y2: 85 * mm}})
	partByHand{name: "long", length: 1000 * mm, width: 65 * mm}.in(p)
	partByHand{name: "short", length: 297 * mm, width: 40 * mm}.in(p)
	at := layout.Rect{X2: 1000 * mm, Y1: 68 * mm, Y2: 108 * mm}
	part, rest := at, at
	part.X2, rest.X1, rest.X2 = 297*mm, 300*mm, 600*mm
	holdByHand(t, p,
		&layout.Node{Rect: layout.Rect{X2: 1000 * mm, Y2: 65 * mm}, Part: "long"},
		&layout.Node{Rect: at, Cut: layout.Crosscut, Children: []*layout.Node{{Rect: part, Part: "short"}, {Rect: rest, Offcut: "keep"}}},
	)
}

// What is left over beside a leaning strip may lean as well: then it nests against it, and
// its wedge lies where the wood is of no use.
func TestOffcutNestsAgainstALeaningStrip(t *testing.T) {
	const bevel = 45 * layout.Degree
	for _, tip := range []layout.Length{190 * mm, 150 * mm} {
		p := byHand(190*mm, tip)
		if tip == 190*mm {
			p.Stock[0].Defects = []layout.Defect{{Kind: layout.Stain, Rect: layout.Rect{X2: 1000 * mm, Y1: 166 * mm, Y2: 189 * mm}}}
		}
		partByHand{"brace", 240 * mm, 80 * mm, bevel}.in(p)
		lean, kerf := p.Bill[0].Lean(), p.Shop.BevelKerf(bevel)
		at := layout.Rect{X2: 1000 * mm, Y1: kerf, Y2: kerf + 80*mm}
		strip := &layout.Node{Rect: at, Cut: layout.Crosscut, Lean: lean}
		for i := range layout.Length(4) {
			cell := at
			cell.X1, cell.X2 = i*243*mm, i*243*mm+240*mm
			strip.Children = append(strip.Children, &layout.Node{Rect: cell, Part: "brace", Lean: lean})
		}
		rest := layout.Rect{X2: 1000 * mm, Y1: at.Y2 + kerf, Y2: 190*mm - lean - kerf}
		holdByHand(t, p, strip, &layout.Node{Rect: rest, Offcut: "keep", Lean: lean})
	}
}

// In a cell that is ripped again a leaning part keeps a kerf from a square one on either side,
// and no more.
func TestLeaningPartBetweenSquareOnes(t *testing.T) {
	const bevel = 45 * layout.Degree
	p := byHand(0, 0)
	kerf := p.Shop.BevelKerf(bevel)
	brace := partByHand{"brace", 300 * mm, 61 * mm, bevel}
	wide := 41*mm + kerf + brace.width + 20*mm + kerf + 41*mm
	p.Stock[0].Width, p.Stock[0].TipWidth = wide+34*mm, wide+34*mm
	partByHand{name: "top", length: 697 * mm, width: wide}.in(p)
	brace.in(p)
	partByHand{name: "rail", length: 300 * mm, width: 41 * mm}.in(p)
	partByHand{name: "sill", length: 1000 * mm, width: 31 * mm}.in(p)
	lean, all := p.Bill[1].Lean(), p.Stock[0].Frame()
	all.Y2 = wide
	sill := layout.Rect{X2: 1000 * mm, Y1: wide + 3*mm, Y2: wide + 34*mm}
	rail, last, cell := layout.Rect{X2: 300 * mm, Y2: 41 * mm}, layout.Rect{X2: 300 * mm, Y1: wide - 41*mm, Y2: wide}, layout.Rect{X2: 300 * mm, Y2: wide}
	leaning, top := cell, all
	leaning.Y1, leaning.Y2 = rail.Y2+kerf, rail.Y2+kerf+brace.width
	top.X1 = 303 * mm
	holdByHand(t, p, &layout.Node{Rect: all, Cut: layout.Crosscut, Children: []*layout.Node{
		{Rect: cell, Cut: layout.Rip, Children: []*layout.Node{{Rect: rail, Part: "rail"}, {Rect: leaning, Part: "brace", Lean: lean}, {Rect: last, Part: "rail"}}},
		{Rect: top, Part: "top"},
	}}, &layout.Node{Rect: sill, Part: "sill"})
}
