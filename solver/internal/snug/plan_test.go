package snug

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"sawbill/layout"
	"sawbill/layout/check"
	"sawbill/layout/steps"
)

// A board of 2000 by 200 mm, planed and with straight edges, loses nothing but kerfs of
// 3 mm and 25 mm at each end. Every figure below is in millimetres.

func rect(x1, x2, y1, y2 int) layout.Rect {
	mm := func(n int) layout.Length { return layout.Length(n) * layout.Millimetre }
	return layout.Rect{X1: mm(x1), X2: mm(x2), Y1: mm(y1), Y2: mm(y2)}
}

func blank(x1, x2 int, strips ...*layout.Node) *layout.Node {
	n := cut(layout.Rip, rect(x1, x2, 0, 200), strips...)
	n.Trued, n.Thickness = true, 20*layout.Millimetre
	return n
}

func cut(c layout.Cut, r layout.Rect, kids ...*layout.Node) *layout.Node {
	return &layout.Node{Rect: r, Cut: c, Children: kids}
}

func part(r layout.Rect) *layout.Node { return &layout.Node{Rect: r, Part: "a part"} }
func keep(r layout.Rect) *layout.Node { return &layout.Node{Rect: r, Offcut: "keep"} }
func knot(r layout.Rect) layout.Defect {
	return layout.Defect{Kind: layout.Knot, Rect: r}
}

// planOf is a plan that cuts one board into blanks, with a kind of part for every size
// that a part of it has.
func planOf(t *testing.T, defects []layout.Defect, blanks ...*layout.Node) *layout.Plan {
	t.Helper()
	b := layout.Board{
		Mark: "B", Base: "B", Species: "ash", Thickness: 20 * layout.Millimetre, Width: 200 * layout.Millimetre,
		TipWidth: 200 * layout.Millimetre, Length: 2000 * layout.Millimetre, Cost: 100 * layout.Unity,
		Edges: layout.EdgesBoth, Faces: layout.FacesPlaned, Defects: defects,
	}
	p := &layout.Problem{Shop: layout.DefaultShop(layout.Millimetres), Stock: []layout.Board{b}}
	root := cut(layout.Crosscut, b.Frame(), blanks...)
	made := map[string]int{}
	for _, leaf := range root.Leaves() {
		if leaf.Part == "" {
			continue
		}
		leaf.Part = fmt.Sprintf("%v by %v", leaf.Length(), leaf.Width())
		if made[leaf.Part]++; made[leaf.Part] == 1 {
			p.Bill = append(p.Bill, layout.Part{
				Name: leaf.Part, Species: []string{"ash"}, Thickness: b.Thickness, Width: leaf.Width(), Length: leaf.Length(), Grade: layout.Sound,
			})
		}
	}
	for i := range p.Bill {
		p.Bill[i].Quantity = made[p.Bill[i].Name]
	}
	plan := layout.Assemble(p, []layout.BoardCut{{Board: "B", Root: root}})
	if faults := check.Plan(plan); len(faults) > 0 {
		t.Fatalf("the plan to begin with: %v", faults)
	}
	return plan
}

func cutsOf(plan *layout.Plan) int {
	n := 0
	for _, s := range steps.List(plan, steps.ByBoard) {
		if !s.Kerf.Empty() && !s.NoCut {
			n++
		}
	}
	return n
}

// places are the nodes of a tree below its root, in words.
func places(plan *layout.Plan) string {
	var list []string
	plan.Boards[0].Root.Walk(func(n *layout.Node) {
		mm := func(l layout.Length) int { return int(l / layout.Millimetre) }
		list = append(list, fmt.Sprint(mm(n.X1), "-", mm(n.X2), " x ", mm(n.Y1), "-", mm(n.Y2)))
	})
	return strings.Join(list[1:], ", ")
}

// apart are two blanks with 25 mm between them, which is a kerf and 22 mm.
func apart() []*layout.Node {
	return []*layout.Node{
		blank(25, 600, cut(layout.Crosscut, rect(25, 600, 0, 200), part(rect(25, 500, 0, 200)))),
		blank(625, 1975, cut(layout.Crosscut, rect(625, 1975, 0, 200), part(rect(700, 1975, 0, 200)))),
	}
}

// Each case is one shape of a sliver: how many cuts there are before and after, and where
// the wood that moved lies then.
func TestNeedlessCutsVanish(t *testing.T) {
	for _, c := range []struct {
		name          string
		defects       []layout.Defect
		blanks        []*layout.Node
		before, after int
		want          string
	}{
		{
			// 22, 625 and 628 are the readings, and 625 is one for nothing.
			"blanks 6 mm apart", nil,
			[]*layout.Node{
				blank(25, 625, part(rect(25, 625, 0, 200))), blank(631, 1975, part(rect(631, 1975, 0, 200))),
			}, 4, 3, "25-625 x 0-200, 628-1972 x 0-200",
		}, {
			// Neither blank may move: its piece would come on to a knot. The first one takes the
			// 22 mm between them in, which come off with its own waste.
			"a blank that takes waste in", []layout.Defect{knot(rect(500, 510, 0, 50)), knot(rect(650, 690, 0, 50))},
			apart(), 6, 5, "25-622 x 0-200, 25-622 x 0-200, 25-500 x 0-200",
		}, {
			"a blank that does not take a knot in",
			[]layout.Defect{knot(rect(500, 510, 0, 50)), knot(rect(605, 615, 0, 50)), knot(rect(650, 690, 0, 50))},
			apart(), 6, 6, "",
		}, {
			"strips 10 mm apart", nil,
			[]*layout.Node{blank(25, 1975, part(rect(25, 1975, 0, 50)), part(rect(25, 1975, 60, 150)))},
			5, 4, "25-1975 x 0-50, 25-1975 x 53-143",
		}, {
			"a strip off the jointed edge", nil,
			[]*layout.Node{blank(25, 1975, part(rect(25, 1975, 5, 55)), part(rect(25, 1975, 58, 150)))},
			5, 4, "25-1975 x 0-50, 25-1975 x 53-145",
		}, {
			// A knot lies between the strips; the one beyond it reaches the far edge.
			"a strip 8 mm off the far edge", []layout.Defect{knot(rect(500, 520, 50, 60))},
			[]*layout.Node{blank(25, 1975, part(rect(25, 1975, 0, 50)), part(rect(25, 1975, 60, 192)))},
			5, 4, "25-1975 x 68-200",
		}, {
			"pieces of a strip apart", nil,
			[]*layout.Node{blank(25, 1975, cut(layout.Crosscut, rect(25, 1975, 0, 200),
				part(rect(25, 625, 0, 200)), part(rect(633, 1233, 0, 200)), part(rect(1236, 1836, 0, 200))))},
			6, 5, "25-625 x 0-200, 628-1228 x 0-200, 1231-1831 x 0-200",
		}, {
			"an offcut that takes a sliver in", nil,
			[]*layout.Node{
				blank(25, 625, part(rect(25, 625, 0, 200))), keep(rect(633, 2000, 0, 200)),
			}, 3, 2, "25-625 x 0-200, 25-625 x 0-200, 628-2000 x 0-200",
		}, {
			// The second length is trimmed at both edges: it has room to move.
			"a strip wider than its pieces", nil,
			[]*layout.Node{blank(25, 1975, cut(layout.Crosscut, rect(25, 1975, 0, 90),
				cut(layout.Rip, rect(25, 1000, 0, 90), part(rect(25, 1000, 0, 80))),
				cut(layout.Rip, rect(1003, 1975, 0, 90), part(rect(1003, 1975, 5, 85)))))},
			7, 4, "25-1975 x 0-80, 25-1000 x 0-80, 1003-1975 x 0-80",
		}, {
			"a strip wider than each of its pieces", nil,
			[]*layout.Node{blank(25, 1975, cut(layout.Crosscut, rect(25, 1975, 0, 90),
				cut(layout.Rip, rect(25, 1000, 0, 90), part(rect(25, 1000, 0, 80))),
				cut(layout.Rip, rect(1003, 1975, 0, 90), part(rect(1003, 1975, 0, 80)))))},
			6, 4, "25-1975 x 0-80, 25-1000 x 0-80, 1003-1975 x 0-80",
		},
	} {
		t.Run(c.name, func(t *testing.T) {
			plan := planOf(t, c.defects, c.blanks...)
			next := Plan(plan)
			if before, after := cutsOf(plan), cutsOf(next); before != c.before || after != c.after {
				t.Errorf("%d cuts became %d, want %d and %d", before, after, c.before, c.after)
			}
			if c.want == "" && next != plan {
				t.Errorf("it moved to %s", places(next))
			}
			if got := places(next); !strings.Contains(got, c.want) {
				t.Errorf("it lies at %s; want %s", got, c.want)
			}
			if faults := check.Plan(next); len(faults) > 0 || next.Totals.Cost > plan.Totals.Cost {
				t.Errorf("it costs %v, after %v: %v", next.Totals.Cost, plan.Totals.Cost, faults)
			}
		})
	}
}

// A sound part may have a knot in it. It is not moved on to one for a cut.
func TestNoPieceIsMovedOnToAKnot(t *testing.T) {
	tree := func() *layout.Node {
		return blank(25, 1975, part(rect(25, 1975, 0, 50)), part(rect(25, 1975, 60, 150)))
	}
	beyond := knot(rect(900, 920, 150, 160))
	plan := planOf(t, []layout.Defect{knot(rect(900, 920, 52, 60)), beyond}, tree())
	if next := Plan(plan); next != plan {
		t.Errorf("it moved to %s", places(next))
	}
	// A knot that it bears already is no reason to stay.
	plan = planOf(t, []layout.Defect{knot(rect(900, 920, 55, 65)), beyond}, tree())
	if next := Plan(plan); !strings.Contains(places(next), "53-143") {
		t.Errorf("it lies at %s", places(next))
	}
}

// Beside a bevel a kerf is no plain kerf: such a row stays as it is.
func TestBevelsStay(t *testing.T) {
	n := blank(25, 1975, part(rect(25, 1975, 0, 50)), part(rect(25, 1975, 60, 150)))
	plan := planOf(t, nil, n)
	b := newBoard(plan, &plan.Boards[0])
	root := plan.Boards[0].Root.Clone()
	root.Children[0].Children[1].Lean = layout.Millimetre
	if moves := b.closings(root); slices.ContainsFunc(moves, func(c change) bool { return c.at == 1 }) {
		t.Error("the row with the bevel is changed")
	}
}
