package ceiling

import (
	"fmt"
	"testing"

	"sawbill/layout"
)

// TestOffcutsAlongSlantingBlanks holds what offcuts along a blank of a tapered board are worth at
// most against every one that ends at a mark: also where a shorter and higher one leaves out a
// defect that the longest holds.
func TestOffcutsAlongSlantingBlanks(t *testing.T) {
	const in = layout.Inch
	for _, tip := range []layout.Length{5 * in, 13 * in / 2, 15 * in / 2, 10 * in} {
		for _, holes := range [][2]layout.Length{{0, 0}, {0, 20 * in}, {40 * in, 60 * in}} {
			p := &layout.Problem{Shop: layout.DefaultShop(layout.Inches)}
			b := layout.Board{Mark: "B", Species: "ash", Thickness: in, Length: 60 * in, Width: 8 * in, TipWidth: tip, Cost: 30 * layout.Unity}
			if holes[1] > 0 {
				b.Defects = []layout.Defect{{Kind: layout.Hole, Rect: layout.Rect{X1: holes[0], X2: holes[1], Y2: 8 * in}.Intersect(b.Frame())}}
			}
			p.Stock, p.Bill = []layout.Board{b}, []layout.Part{{Name: "part", Species: []string{"ash"}, Quantity: 1, Thickness: in / 2, Width: 2 * in, Length: 20 * in, Grade: layout.Clear}}
			t.Run(fmt.Sprint(tip, holes), func(t *testing.T) { holdOffcutsAlong(t, p) })
		}
	}
}

func holdOffcutsAlong(t *testing.T, p *layout.Problem) {
	w, wood := Fine(p, &p.Stock[0]), &p.Stock[0]
	b := &Bench{w: w}
	const lo, hi = layout.Inch, 59 * layout.Inch
	kinds := b.newBlankOffcuts(lo, hi, 0)
	for y := layout.Length(0); y < 5*layout.Inch; y += layout.Inch / 4 {
		most := 0.0
		for k := range kinds {
			o := &kinds[k]
			most = max(most, o.below(o.top)-o.below(max(o.low, y)))
		}
		for x1 := lo; x1 < hi; x1 += layout.Inch {
			for x2 := x1 + p.Shop.MinOffcutLength; x2 <= hi; x2 += layout.Inch {
				r := wood.CleanOffcutIn(hi-lo, layout.Rect{X1: x1, X2: x2, Y1: y, Y2: wood.FullWidth()})
				if worth := float64(p.Shop.OffcutWorth(wood, r)) * float64(tenThousandth); worth > most+2 {
					t.Fatalf("from %v to %v, above %v: %.0f, and at most %.0f", x1, x2, y, worth, most)
				}
			}
		}
	}
}
