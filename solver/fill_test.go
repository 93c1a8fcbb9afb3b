package solver

import (
	"context"
	"testing"

	"sawbill/layout"
)

// A strip of a board gives three long bevelled pieces and a short one; wanted are four
// long and three or four short ones beside it. Halving prices swings between strips
// of long and strips of short pieces, and left one long piece missing beside an offcut
// that holds it.
func TestMissingPiecesAreLaidIntoOffcuts(t *testing.T) {
	const mm = layout.Millimetre
	shop := layout.DefaultShop(layout.Millimetres)
	shop.RipKerf, shop.CrosscutKerf, shop.RoughRipKerf = 3200*layout.Micrometre, 3200*layout.Micrometre, 1500*layout.Micrometre
	shop.JointerWidth, shop.PlanerWidth = 260*mm, 260*mm
	shop.OffcutCredit = layout.CreditUnity / 4
	board := layout.Board{
		Mark: "SY1", Base: "SY1", Species: "sycamore", Thickness: 26 * mm, Width: 250 * mm, TipWidth: 250 * mm, Length: 1640 * mm, Cup: 2 * mm,
		Cost: 15 * layout.Unity, Defects: []layout.Defect{{Kind: layout.Check, Rect: layout.Rect{X2: 25 * mm, Y2: 250 * mm}}},
	}
	side := func(name string, length layout.Length) layout.Part {
		return layout.Part{
			Name: name, Species: []string{"sycamore"}, Thickness: 12 * mm, Width: 88 * mm, Length: length * mm, Quantity: 4,
			Grade: layout.OneFace, Bevel: 15 * layout.Degree, Priority: 1,
		}
	}
	foot := layout.Part{
		Name: "foot", Species: []string{"sycamore"}, Thickness: 12 * mm, Width: 30 * mm, Length: 300 * mm, Quantity: 4, Grade: layout.Sound, Priority: 3,
	}
	p, complaints := layout.NewProblem(shop, []layout.Board{board}, []layout.Part{side("long side", 430), side("short side", 255), foot}, false)
	if len(complaints) > 0 {
		t.Fatal(complaints)
	}
	plan, _, err := Solve(context.Background(), p, Options{Rounds: 5})
	if err != nil {
		t.Fatal(err)
	}
	if len(plan.Missing) > 0 {
		t.Errorf("missing: %v", plan.Missing)
	}
}
