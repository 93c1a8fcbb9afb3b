package layout

import "testing"

// A slip of 15 x 6 mm, kerf 2 and skim 2.5 of the resaw: two layers need
// 2 x 6 + 2 + 2 x 2.5 = 19, three 3 x 6 + 2 x 7 = 32; on edge two need
// 2 x 15 + 7 = 37. With an allowance of 1 a layer has 1 more.
func TestThicknessNeeded(t *testing.T) {
	part := &Part{Width: 15 * Millimetre, Thickness: 6 * Millimetre}
	for _, c := range []struct {
		leaf      Node
		allowance Length
		want      Length
	}{
		{Node{}, 0, 6},
		{Node{Layers: 1}, 0, 6},
		{Node{Layers: 2}, 0, 19},
		{Node{Layers: 3}, 0, 32},
		{Node{OnEdge: true}, 0, 15},
		{Node{OnEdge: true, Layers: 2}, 0, 37},
		{Node{}, 1, 7},
		{Node{Layers: 2}, 1, 21},
		{Node{OnEdge: true}, 1, 16},
	} {
		shop := DefaultShop(Millimetres)
		shop.ThicknessAllowance = c.allowance * Millimetre
		if got := shop.NeedOf(&c.leaf, part); got != c.want*Millimetre {
			t.Errorf("%d layers, on edge %t, allowance %v: %v, want %d mm", c.leaf.Layers, c.leaf.OnEdge, c.allowance, got, c.want)
		}
	}
}

func TestWidthOnEdge(t *testing.T) {
	shop := DefaultShop(Millimetres)
	shop.WidthAllowance = 2 * Millimetre
	part := &Part{Width: 15 * Millimetre, Thickness: 6 * Millimetre}
	if got := part.EdgeWidth(shop); got != 8*Millimetre {
		t.Errorf("%v, want 8 mm", got)
	}
}
