package solver

import (
	"slices"
	"testing"

	"sawbill/layout"
)

// Wood that is free says nothing of what a part is worth that it does not give: were
// it counted, parts would be worth a trifle, and leaving them out would seem cheaper
// than a board.
func TestFreeBoardsDoNotMakePartsWorthless(t *testing.T) {
	board := func(mark string, cost layout.Money) layout.Board {
		return layout.Board{
			Mark: mark, Species: "ash", Thickness: layout.Inch, Width: 6 * layout.Inch, TipWidth: 6 * layout.Inch,
			Length: 60 * layout.Inch, Cost: cost,
		}
	}
	p := &layout.Problem{
		Shop: layout.DefaultShop(layout.Inches),
		Bill: []layout.Part{{Name: "rail", Species: []string{"ash"}, Thickness: 3 * layout.Inch / 4, Width: 2 * layout.Inch, Length: 40 * layout.Inch, Quantity: 9, Grade: layout.Clear}},
	}
	p.Stock = []layout.Board{board("paid", 20*layout.Unity)}
	want := startValues(p)
	p.Stock = append(p.Stock, board("free", 0), board("free too", 0), board("and this", 0))
	if got := startValues(p); !slices.Equal(got, want) {
		t.Errorf("beside free boards a part is worth %v, without them %v", got, want)
	}
	p.Stock = p.Stock[1:]
	if got := startValues(p); got[0] <= 0 || got[0] >= want[0] {
		t.Errorf("out of free boards alone a part is worth %v, out of paid ones %v", got, want)
	}
}
