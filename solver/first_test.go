package solver

import (
	"fmt"
	"testing"

	"sawbill/layout"
)

// TestFirstPlanOfBoardsAlike has six bars of 70 in, each of which holds one of six
// parts of 34 to 39 in and wastes so much that all are passed over at first. What
// the bars then make alike, the longest part, is wanted of one of them only.
func TestFirstPlanOfBoardsAlike(t *testing.T) {
	board := layout.Board{
		Species: "ash", Thickness: layout.Inch, Length: 70 * layout.Inch,
		Width: 2 * layout.Inch, TipWidth: 2 * layout.Inch, Edges: layout.EdgesBoth, Cost: 10 * layout.Unity,
	}
	part := layout.Part{Species: []string{"ash"}, Thickness: 3 * layout.Inch / 4, Width: 2 * layout.Inch, Quantity: 1, Grade: layout.Clear}
	p := &layout.Problem{Shop: layout.DefaultShop(layout.Inches)}
	p.Shop.OffcutCredit = 0
	for i := range 6 {
		board.Mark, part.Name = fmt.Sprint("B.", i+1), fmt.Sprint("p", i)
		part.Length = layout.Length(34+i) * layout.Inch
		p.Stock, p.Bill = append(p.Stock, board), append(p.Bill, part)
	}
	s := newSearch(p, Options{}, func() bool { return false })
	if st := s.first(); !st.score().Complete() {
		t.Errorf("%d of 6 bars are cut, missing by part: %v", len(st.used()), st.missing)
	}
}
