package layout

import (
	"testing"

	"github.com/google/go-cmp/cmp"
)

// The board is 2050 x 200 x 30 mm, with 25 mm of trim at each end; faces lose 5 in
// all and edges 3 each.
func TestWhatABoardFinishesTo(t *testing.T) {
	const mm = Millimetre
	flat := Board{Thickness: 30 * mm, Width: 200 * mm, TipWidth: 200 * mm, Length: 2050 * mm}
	bowed := flat
	bowed.Length, bowed.Bow, bowed.Crook = 1200*mm, 8*mm, 16*mm // the short blank is half as long
	tapered := flat
	tapered.Width = 159 * mm // 1 mm in 50 mm: the last 600 before the trim begin at 1425
	for _, c := range []struct {
		what        string
		board       Board
		machine     Length
		full, short Finish
	}{
		{"flat", flat, 0, Finish{2000 * mm, 25 * mm, 194 * mm, false}, Finish{600 * mm, 25 * mm, 194 * mm, false}},
		{"too wide", flat, 150 * mm, Finish{2000 * mm, 25 * mm, 194 * mm, true}, Finish{600 * mm, 25 * mm, 194 * mm, true}},
		{"tapered", tapered, 0, Finish{2000 * mm, 25 * mm, 153_500_000, false}, Finish{600 * mm, 25 * mm, 181_500_000, false}},
		{"bowed and crooked", bowed, 0,
			// 1150 of 1200: bow 7.347 222 2…, crook 14.694 444 4….
			Finish{1150 * mm, 17_652_777, 179_305_555, false}, Finish{600 * mm, 23 * mm, 190 * mm, false}},
	} {
		shop := DefaultShop(Millimetres)
		shop.PlanerWidth = c.machine
		if diff := cmp.Diff(c.full, shop.FullFinish(&c.board)); diff != "" {
			t.Errorf("%s, at full length: %s", c.what, diff)
		}
		if diff := cmp.Diff(c.short, shop.ShortFinish(&c.board)); diff != "" {
			t.Errorf("%s, in short blanks: %s", c.what, diff)
		}
	}
}

func TestShortBoardsAreOneBlank(t *testing.T) {
	shop := DefaultShop(Inches)
	b := &Board{Thickness: Inch, Width: 6 * Inch, TipWidth: 6 * Inch, Length: 20 * Inch}
	if got := shop.ShortFinish(b); got.Length != 18*Inch {
		t.Errorf("a board of 20 in gives a blank of %v", got.Length)
	}
}
