package check

import (
	"slices"
	"strings"
	"testing"

	"sawbill/layout"
)

const millimetre = layout.Millimetre

// box is a rectangle in millimetres.
func box(x1, x2, y1, y2 layout.Length) layout.Rect {
	return layout.Rect{X1: x1 * millimetre, X2: x2 * millimetre, Y1: y1 * millimetre, Y2: y2 * millimetre}
}

func leaf(r layout.Rect, part string) *layout.Node { return &layout.Node{Rect: r, Part: part} }

func keep(r layout.Rect) *layout.Node { return &layout.Node{Rect: r, Offcut: "keep"} }

func crosscut(r layout.Rect, kids ...*layout.Node) *layout.Node {
	return &layout.Node{Rect: r, Cut: layout.Crosscut, Children: kids}
}

func rip(r layout.Rect, kids ...*layout.Node) *layout.Node {
	return &layout.Node{Rect: r, Cut: layout.Rip, Children: kids}
}

func trued(r layout.Rect, thickness layout.Length, strips ...*layout.Node) *layout.Node {
	n := rip(r, strips...)
	n.Trued, n.Thickness = true, thickness*millimetre
	return n
}

// goodJob is a shop with the millimetre defaults (kerfs 3, trim 25, joint 3,
// end square 6, skim 2.5, blanks and rips from 300, offcuts from 300 x 40) and
// two boards of pear that are cut:
//
//   - P1 is rough all over and 30 thick, so it finishes to 30 - 2 x 2.5 = 25. It
//     tapers from 200 to 180 over 2000: far(x) = 200 - x/100.
//   - P2 is planed, straight on both edges and 20 thick: nothing is lost.
func goodJob() layout.Problem {
	part := func(name, grade string, length, width, thickness layout.Length, quantity int) layout.Part {
		return layout.Part{
			Name: name, Grade: grade, Species: []string{"pear"}, Quantity: quantity,
			Length: length * millimetre, Width: width * millimetre, Thickness: thickness * millimetre,
		}
	}
	bill := []layout.Part{
		part("shelf", layout.OneFace, 400, 80, 20, 4),
		part("slat", layout.Clear, 400, 38, 20, 2),
		part("stile", layout.Sound, 450, 40, 16, 2),
		part("slip", layout.Clear, 350, 15, 6, 2),
		part("fillet", layout.Clear, 300, 19, 15, 1),
	}
	bill[3].Resaw, bill[4].OnEdge = true, true
	return layout.Problem{Shop: layout.DefaultShop(layout.Millimetres), Stock: goodStock(), Bill: bill}
}

func goodStock() []layout.Board {
	board := func(mark string, thickness, length, width, tip layout.Length, cost layout.Money) layout.Board {
		return layout.Board{
			Mark: mark, Base: mark, Species: "Pear ", Cost: cost * layout.Unity,
			Thickness: thickness * millimetre, Length: length * millimetre,
			Width: width * millimetre, TipWidth: tip * millimetre,
		}
	}
	rough, planed := board("P1", 30, 2000, 200, 180, 38), board("P2", 20, 800, 100, 100, 9)
	rough.Defects = []layout.Defect{
		{Kind: layout.Knot, Face: layout.FaceA, Rect: box(100, 120, 60, 70)},
		{Kind: layout.Check, Rect: box(870, 900, 20, 40)}, // reaches 25 further along
		{Kind: layout.Metal, Rect: box(1900, 1910, 50, 60)},
		{Kind: layout.Knot, Rect: box(500, 540, 150, 170)}, // in the offcut
	}
	planed.Edges, planed.Faces = layout.EdgesBoth, layout.FacesPlaned
	return []layout.Board{rough, planed, board("P3", 30, 900, 150, 150, 12)}
}

// roughTree cuts P1.
//
// Blank one, 25..1025, leaves x 31..1019 and y 3..197. Its far edge is lowest
// at 1019: 189.81, less 3. Strips of 80, 40 (planed to 16) and an offcut of 51.
// The first strip gives a shelf, whose knot on face A must go to the back, and
// a piece that is ripped again into two slats.
//
// Blank two, 1028..1628, is rough-ripped first: the near half leaves x
// 1034..1622 and y 3..97, the far half is kept untrued, to far(1628) = 183.72.
func roughTree() *layout.Node {
	shelf := leaf(box(31, 431, 3, 83), "shelf")
	shelf.Show = layout.FaceB
	one := trued(box(25, 1025, 0, 200), 20,
		crosscut(box(31, 1019, 3, 83),
			shelf,
			rip(box(434, 834, 3, 83),
				leaf(box(434, 834, 3, 41), "slat"),
				leaf(box(434, 834, 44, 82), "slat"))),
		crosscut(box(31, 1019, 86, 126),
			leaf(box(31, 481, 86, 126), "stile"),
			leaf(box(484, 934, 86, 126), "stile")),
		keep(box(31, 1019, 129, 180)))
	two := rip(box(1028, 1628, 0, 200),
		trued(box(1028, 1628, 0, 100), 20,
			crosscut(box(1034, 1622, 3, 83), leaf(box(1034, 1434, 3, 83), "shelf"))),
		keep(box(1028, 1628, 103, 200)))
	return crosscut(box(0, 2000, 0, 200), one, two)
}

// planedTree cuts P2: one blank, 25..775, all of it usable. The second strip is
// planed to 19: a slip resawn in two needs 2 x 6 + 2 + 2 x 2.5 = 19, and a
// fillet on edge is 15 wide and 19 thick.
func planedTree() *layout.Node {
	slip := leaf(box(25, 375, 83, 98), "slip")
	slip.Layers = 2
	fillet := leaf(box(378, 678, 83, 98), "fillet")
	fillet.OnEdge = true
	return crosscut(box(0, 800, 0, 100),
		trued(box(25, 775, 0, 100), 20,
			crosscut(box(25, 775, 0, 80), leaf(box(25, 425, 0, 80), "shelf")),
			crosscut(box(25, 775, 83, 98), slip, fillet)))
}

// goodPlan makes three of the four shelves.
func goodPlan() *layout.Plan {
	p := goodJob()
	return layout.Assemble(&p, []layout.BoardCut{{Board: "P1", Root: roughTree()}, {Board: "P2", Root: planedTree()}})
}

// down follows child numbers from the root of the i-th board.
func down(p *layout.Plan, i int, way ...int) *layout.Node {
	n := p.Boards[i].Root
	for _, k := range way {
		n = n.Children[k]
	}
	return n
}

func TestGoodPlanPasses(t *testing.T) {
	for _, v := range Plan(goodPlan()) {
		t.Error(v)
	}
}

// The boards cost 38 and 9. P1 has 2000 x 190 = 380 000 mm². Its offcuts count
// 988 x 51 less a knot of 40 x 20, and 600 x 80.72: 49 588 and 48 432 mm². At
// 0.6 x 38 / 380 000 a mm² they are worth 2.9752 (.80) and 2.9059 (.20).
func TestGoodPlanCosts(t *testing.T) {
	if got := goodPlan().Totals.Cost; got != 470_000-29_752-29_059 {
		t.Errorf("cost %v", got)
	}
}

// finds reports whether a violation of the rule speaks of piece.
func finds(found []Violation, rule, piece string) bool {
	return slices.ContainsFunc(found, func(v Violation) bool {
		return v.Rule == rule && strings.Contains(v.String(), piece)
	})
}

// wantViolation fails unless the plan breaks the rule in the way that piece
// tells.
func wantViolation(t *testing.T, p *layout.Plan, rule, piece string) {
	t.Helper()
	found := Plan(p)
	if !finds(found, rule, piece) {
		t.Errorf("no %s with %q among %v", rule, piece, found)
	}
}

// wantOnly fails unless all that is wrong, apart from figures that no longer
// add up, is of the rule.
func wantOnly(t *testing.T, p *layout.Plan, rule string) {
	t.Helper()
	figures := []string{"account", "yield", "cost", rule}
	for _, v := range Plan(p) {
		if !slices.Contains(figures, v.Rule) {
			t.Errorf("beside %s: %v", rule, v)
		}
	}
}
