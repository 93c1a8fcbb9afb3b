package bound

import (
	"testing"

	"sawbill/layout"
)

// A board of 1000 narrows from 94 to 54, so one slat of 800 by 48 leaves 94 - 52 =
// 42 beside it at the butt and less than 40, the least width of an offcut, from x
// = 50 on; behind it remain 196. Offcuts are 300 long at least: the slat is all
// there is, whichever end is the wide one.
func TestTooNarrowIsNoOffcut(t *testing.T) {
	for _, b := range []layout.Board{slatBoard("A", layout.Rack), slatBoard("B", layout.Rack)} {
		b.Width, b.TipWidth = 94*mm, 54*mm
		if b.Mark == "B" {
			b.Width, b.TipWidth = b.TipWidth, b.Width
		}
		p := &layout.Problem{Shop: slatShop(), Stock: []layout.Board{b}, Bill: []layout.Part{{
			Name: "slat", Species: []string{"ash"}, Quantity: 1, Grade: layout.Clear,
			Thickness: 20 * mm, Width: 48 * mm, Length: 800 * mm,
		}}}
		p.Shop.OffcutCredit = layout.CreditUnity * 6 / 10
		p.Shop.MinOffcutLength, p.Shop.MinOffcutWidth = 300*mm, 40*mm
		c, err := newCeiling(p, &p.Stock[0], map[string]layout.Money{"slat": 50 * layout.Unity})
		if err != nil {
			t.Fatal(err)
		}
		for _, at := range levels() {
			c.lower(at, 0, func() bool { return false })
		}
		if want := 50 * value(layout.Unity) * cash; c.most != want {
			t.Errorf("board %s: at most %d, want %d", b.Mark, c.most, want)
		}
	}
}
