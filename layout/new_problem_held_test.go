package layout

import (
	"testing"

	"github.com/google/go-cmp/cmp"
)

func TestPartsThatNoBoardCouldHold(t *testing.T) {
	for _, test := range []struct {
		name   string
		change func(shop *Shop, stock []Board, part *Part)
		want   []string
	}{
		// A2 is 2 in rough and loses 3/32 in from each face.
		{"thick", func(_ *Shop, _ []Board, part *Part) { part.Thickness = 15 * Inch / 8 },
			[]string{`bill row 1: part "rail": needs 1-7/8" thick; the thickest ash, A2, finishes to 1-13/16"`}},
		{"thick with allowance", func(shop *Shop, _ []Board, part *Part) {
			part.Thickness, shop.ThicknessAllowance = 29*Inch/16, Inch/32
		}, []string{`bill row 1: part "rail": needs 1-27/32" thick; the thickest ash, A2, finishes to 1-13/16"`}},
		{"just thick enough", func(_ *Shop, _ []Board, part *Part) { part.Thickness = 29 * Inch / 16 }, nil},
		// A1 is 96 in long less an inch of trim at each end; squaring takes 1/4 in at each end.
		{"just short enough", func(_ *Shop, _ []Board, part *Part) { part.Length = 187 * Inch / 2 }, nil},
		{"long", func(_ *Shop, _ []Board, part *Part) { part.Length = 187*Inch/2 + 1 },
			[]string{`bill row 1: part "rail": needs a blank ~94" long; the longest ash that is thick enough, A1, gives 94"`}},
		{"long and thick", func(_ *Shop, _ []Board, part *Part) { part.Length, part.Thickness = 50*Inch, Inch },
			[]string{`bill row 1: part "rail": needs a blank 50-1/2" long; the longest ash that is thick enough, A2, gives 38"`}},
		{"longer than the machines take", func(shop *Shop, _ []Board, part *Part) { shop.MaxBlank = 30 * Inch },
			[]string{`bill row 1: part "rail": needs a blank 30-1/2" long; the longest ash that is thick enough, A1, gives 30"`}},
		{"snipe", func(shop *Shop, _ []Board, part *Part) { part.Length, shop.Snipe = 90*Inch, 3*Inch },
			[]string{`bill row 1: part "rail": needs a blank 96" long; the longest ash that is thick enough, A1, gives 94"`}},
		// Far from the butt, A1 is 8 in less 2/96 in for each inch: a piece of 46-3/4 in ends 48 in from the butt, where
		// the board is 7 in wide; jointing takes 1/8 in at each edge.
		{"just narrow enough", func(_ *Shop, _ []Board, part *Part) { part.Length, part.Width = 187*Inch/4, 27*Inch/4 }, nil},
		{"wide", func(_ *Shop, _ []Board, part *Part) { part.Length, part.Width = 187*Inch/4, 7*Inch },
			[]string{`bill row 1: part "rail": needs 7" wide; the widest ash that is thick and long enough, A1, gives 6-3/4"`}},
		{"wide, on a board that widens", func(_ *Shop, stock []Board, part *Part) {
			stock[0].Width, stock[0].TipWidth = stock[0].TipWidth, stock[0].Width
			part.Length, part.Width = 187*Inch/4, 27*Inch/4
		}, nil},
		{"planed with straight edges", func(shop *Shop, stock []Board, part *Part) {
			part.Species, part.Thickness, part.Width, part.Length = []string{"elm"}, 3*Inch/2, 7*Inch, 58*Inch
			shop.MinBlank, shop.MaxBlank = 70*Inch, 80*Inch // nothing goes over the machines
		}, nil},
		// A2, 40 in long, is bowed by 3/8 in: a blank of 30-1/2 in loses 3/8 * (30.5/40)^2 = 0.218 of 1-13/16 in.
		{"thick for a bowed board", func(_ *Shop, stock []Board, part *Part) {
			stock[1].Bow, part.Thickness = 3*Inch/8, 7*Inch/4
		}, []string{`bill row 1: part "rail": needs 1-3/4" thick; the thickest ash, A2, finishes to ~1-19/32" in a blank 30-1/2" long`}},
		{"just thick enough for a bowed board", func(_ *Shop, stock []Board, part *Part) {
			stock[1].Bow, part.Thickness = 3*Inch/8, 25*Inch/16
		}, nil},
		{"wide for the machines", func(shop *Shop, _ []Board, part *Part) { part.Width, shop.PlanerWidth = 5*Inch, 9*Inch/2 },
			[]string{`bill row 1: part "rail": needs 5" wide; the widest ash that is thick and long enough, A1, gives 4-1/2"`}},
		// Flat it is too wide; on edge its width comes out of the thickness.
		{"on edge", func(shop *Shop, _ []Board, part *Part) {
			part.Width, part.Thickness, part.OnEdge, shop.JointerWidth = 3*Inch/2, 3*Inch/4, true, Inch
		}, nil},
		{"from leaves none", func(_ *Shop, _ []Board, part *Part) { part.From, part.NotFrom = []string{"A1"}, []string{"A1"} },
			[]string{`bill row 1: part "rail": from and not_from leave no board that could give it`}},
		{"another species", func(_ *Shop, _ []Board, part *Part) { part.Species = []string{"elm"}; part.From = []string{"A2"} },
			[]string{`bill row 1: part "rail": from and not_from leave no board that could give it`}},
		{"on hold", func(_ *Shop, stock []Board, part *Part) { part.Length = 90 * Inch; stock[0].Source = Hold },
			[]string{`bill row 1: part "rail": only a board that takes no part, A1 (hold), could hold it`}},
		{"at the yard", func(_ *Shop, stock []Board, part *Part) { part.Length = 90 * Inch; stock[0].Source = Yard },
			[]string{`bill row 1: part "rail": only a board that takes no part, A1 (yard), could hold it`}},
		{"all defects", func(_ *Shop, stock []Board, _ *Part) {
			stock[0].Defects = []Defect{{Kind: Rot, Rect: stock[0].Frame()}}
		}, nil},
		{"more than there is", func(_ *Shop, _ []Board, part *Part) { part.Quantity = 1000 }, nil},
	} {
		t.Run(test.name, func(t *testing.T) {
			shop, stock, part := DefaultShop(Inches), rack(), rail()
			test.change(shop, stock, &part)
			_, cs := NewProblem(shop, stock, []Part{part}, false)
			if diff := cmp.Diff(test.want, tell(cs)); diff != "" {
				t.Errorf("complaints (-want +got):\n%s", diff)
			}
		})
	}
}

// The yard's boards count as soon as it takes part.
func TestYardBoardsHoldParts(t *testing.T) {
	stock, part := rack(), rail()
	stock[0].Source, part.Length = Yard, 90*Inch
	if _, cs := NewProblem(DefaultShop(Inches), stock, []Part{part}, true); len(cs) > 0 {
		t.Errorf("complaints: %q", tell(cs))
	}
}
