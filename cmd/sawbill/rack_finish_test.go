package main

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"sawbill/layout"
)

// A bowed and crooked board of 8/4, 98 in long, finishes thicker and wider in
// blanks of 24 in, a quarter of its length between the trims. One that is too wide
// is told apart, boards of one row are told once, and one that is bent too far
// gives nothing.
func TestFinishesOfBentBoards(t *testing.T) {
	const in = layout.Inch
	board := func(mark, base string, thick, width, length layout.Length) layout.Board {
		return layout.Board{Mark: mark, Base: base, Thickness: thick, Width: width, TipWidth: width, Length: length}
	}
	bowed := board("B1", "B1", 2*in, 8*in, 96*in)
	bowed.Bow, bowed.Crook = in/2, in
	hopeless := board("B3", "B3", in, 6*in, 96*in)
	hopeless.Bow = in
	boards := []layout.Board{
		bowed, board("B2.1", "B2", in, 14*in, 60*in), board("B2.2", "B2", in, 14*in, 60*in), hopeless,
	}
	shop := layout.DefaultShop(layout.Inches)
	shop.PlanerWidth = 12 * in
	// B1: of 2 the faces take 3/16; over 94 of 96 in bow takes 0.479 and crook 0.959,
	// over 24 in 1/32 and 1/16.
	want := `
what each board finishes to, thick x wide:
  board         at full length      in 24" blanks
  B1            1-5/16" x 6-25/32"  1-25/32" x 7-11/16"
  B2.1 to B2.2  13/16" x 13-3/4" *  13/16" x 13-3/4" *
  B3            nothing             3/4" x 5-3/4"
* wider than the machines: rough-rip it first, and it loses less to cup and twist
`
	var got strings.Builder
	printFinishes(&got, shop, boards)
	if diff := cmp.Diff(want, got.String()); diff != "" {
		t.Error(diff)
	}
}
