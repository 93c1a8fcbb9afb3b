package exhaust

import (
	"testing"

	"sawbill/layout"
	"sawbill/layout/check"
)

const inch = layout.Inch

// job is one planed board of 10 by 4 by 8 in with straight edges, worth 1 a
// square inch, in a shop that loses nothing and credits half; change adds parts
// and whatever else a case is about.
func job(change func(p *layout.Problem, s *layout.Shop, b *layout.Board)) *layout.Problem {
	s := layout.DefaultShop(layout.Inches)
	s.RipKerf, s.CrosscutKerf, s.RoughRipKerf = 0, 0, 0
	s.EndTrim, s.EdgeJoint, s.EndSquare, s.FaceSkim = 0, 0, 0, 0
	s.MinBlank, s.MinRipLength = 0, 0
	s.MinOffcutLength, s.MinOffcutWidth = 2*inch, inch
	s.OffcutCredit = layout.CreditUnity / 2
	s.Clearance = nil
	p := &layout.Problem{Shop: s, Stock: []layout.Board{{
		Mark: "B", Base: "B", Species: "ash", Thickness: 8 * inch, Length: 10 * inch, Width: 4 * inch, TipWidth: 4 * inch,
		Edges: layout.EdgesBoth, Faces: layout.FacesPlaned, Cost: 40 * layout.Unity,
	}}}
	change(p, s, &p.Stock[0])
	return p
}

// add puts quantity pieces of a part into the bill, sizes in inches.
func add(p *layout.Problem, name string, quantity int, length, width, thickness layout.Length) {
	p.Bill = append(p.Bill, layout.Part{
		Name: name, Species: []string{"ash"}, Grade: layout.Clear, Quantity: quantity,
		Length: length * inch, Width: width * inch, Thickness: thickness * inch,
	})
}

func mark(b *layout.Board, kind layout.Kind, face layout.Face, x1, x2, y1, y2 layout.Length) {
	b.Defects = append(b.Defects, layout.Defect{
		Kind: kind, Face: face, Rect: layout.Rect{X1: x1 * inch, X2: x2 * inch, Y1: y1 * inch, Y2: y2 * inch},
	})
}

// TestByHand holds the best plan of small jobs against what a pencil says.
func TestByHand(t *testing.T) {
	type (
		problem = *layout.Problem
		shop    = *layout.Shop
		board   = *layout.Board
	)
	for _, c := range []struct {
		name    string
		missing int
		cost    layout.Money // in hundredths
		change  func(problem, shop, board)
	}{
		// 4 + 1 + 4 leaves 1 by 4, too short to keep.
		{"two lengths and a kerf", 0, 4000, func(p problem, s shop, _ board) {
			add(p, "a", 2, 4, 4, 8)
			s.CrosscutKerf = inch
		}},
		// Between the trims lie 8, so one part; beside it and a kerf 4 by 4 are kept.
		{"end trims", 1, 3200, func(p problem, s shop, _ board) {
			add(p, "a", 2, 4, 4, 8)
			s.CrosscutKerf, s.EndTrim = inch, inch
		}},
		// The part is too short to be ripped, but it is the blank; 5 by 4 are kept.
		{"a blank that is a part", 0, 3000, func(p problem, s shop, _ board) {
			add(p, "a", 1, 4, 4, 8)
			s.CrosscutKerf, s.MinRipLength = inch, 5*inch
		}},
		// A strip of 1 in, 10 long, is planed from 8 to 6 beside one of 2; blanks of
		// their own would have to be jointed.
		{"a strip planed thinner", 0, 4000, func(p problem, s shop, _ board) {
			add(p, "thick", 1, 10, 2, 8)
			add(p, "thin", 1, 10, 1, 6)
			s.RipKerf, s.EdgeJoint, s.MinBlank = inch, inch, 10*inch
		}},
		// The planer takes nothing under 11; what would be the thin one is kept.
		{"a strip too short to plane", 1, 3500, func(p problem, s shop, _ board) {
			add(p, "thick", 1, 10, 2, 8)
			add(p, "thin", 1, 10, 1, 6)
			s.RipKerf, s.EdgeJoint, s.MinBlank = inch, inch, 11*inch
		}},
		// The kerf before the part would lie in the metal.
		{"metal in the kerf", 1, 0, func(p problem, s shop, b board) {
			add(p, "a", 1, 5, 4, 8)
			mark(b, layout.Metal, layout.Through, 4, 5, 0, 4)
			s.CrosscutKerf = inch
		}},
		// The cut takes nothing; of the other 5 by 4, 4 are metal.
		{"metal beside the cut", 0, 3200, func(p problem, _ shop, b board) {
			add(p, "a", 1, 5, 4, 8)
			mark(b, layout.Metal, layout.Through, 4, 5, 0, 4)
		}},
		// One blank of 10: a strip for a, another crosscut into b and a cell that
		// gives c and keeps 5 by 1.
		{"ripped again", 0, 3750, func(p problem, s shop, b board) {
			add(p, "a", 1, 10, 2, 8)
			add(p, "b", 1, 5, 2, 8)
			add(p, "c", 1, 5, 1, 8)
			b.Faces, s.MinBlank = layout.FacesRough, 10*inch
		}},
		// The cell stays whole and is kept.
		{"not ripped again", 1, 3500, func(p problem, s shop, b board) {
			add(p, "a", 1, 10, 2, 8)
			add(p, "b", 1, 5, 2, 8)
			add(p, "c", 1, 5, 1, 8)
			b.Faces, s.MinBlank, s.RipAgain = layout.FacesRough, 10*inch, false
		}},
		// One knot is on the back.
		{"one good face", 0, 4000, func(p problem, _ shop, b board) {
			add(p, "a", 1, 10, 4, 8)
			p.Bill[0].Grade = layout.OneFace
			mark(b, layout.Knot, layout.FaceA, 2, 3, 1, 2)
		}},
		{"no good face", 1, 0, func(p problem, _ shop, b board) {
			add(p, "a", 1, 10, 4, 8)
			p.Bill[0].Grade = layout.OneFace
			mark(b, layout.Knot, layout.FaceA, 2, 3, 1, 2)
			mark(b, layout.Knot, layout.FaceB, 6, 7, 1, 2)
		}},
		// The far edge is at 3 where the part ends; then 2 by 2.6 and 3 by 2 are
		// kept: 30 - 11.2 / 2.
		{"taper", 0, 2440, func(p problem, _ shop, b board) {
			add(p, "a", 1, 5, 3, 8)
			b.TipWidth, b.Cost = 2*inch, 30*layout.Unity
		}},
		// 1 + 4 + 4 + 1 is the whole board; without snipe 2 by 4 would be kept.
		{"snipe", 0, 4000, func(p problem, s shop, _ board) {
			add(p, "a", 2, 4, 4, 8)
			s.Snipe = inch
		}},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := job(c.change)
			best := New(p, inch).Best()
			for _, v := range check.Plan(best) {
				t.Error(v)
			}
			missing := 0
			for _, m := range best.Missing {
				missing += m.Quantity
			}
			if want := c.cost * layout.Unity / 100; missing != c.missing || best.Totals.Cost != want {
				t.Errorf("missing %d, cost %v; want %d, %v", missing, best.Totals.Cost, c.missing, want)
			}
		})
	}
}
