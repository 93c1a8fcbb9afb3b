package glueup

import (
	"testing"

	"sawbill/layout"
)

const mm = layout.Millimetre

func threeWoods() map[string]string {
	return map[string]string{"b": "basswood", "s": "sycamore", "t": "black tupelo"}
}

// tray is a small face that a pattern is to fill.
func tray(p Pattern) *Design {
	d := &Design{
		Units: layout.Millimetres, Woods: threeWoods(), Thickness: 30 * mm, Flatten: 2 * mm, Trim: 5 * mm, Pattern: p,
	}
	if p.Name() != "grid" {
		d.Length, d.Width = 310*mm, 190*mm
	}
	return d
}

func checkerOf(rows ...string) *Grid {
	return &Grid{Rows: rows, CellWidths: []layout.Length{32 * mm}, RowHeights: []layout.Length{32 * mm}}
}

func zigzag(angle layout.Angle) *Chevron {
	return &Chevron{
		Angle: angle, SliceWidth: 42 * mm, RowHeight: 27 * mm, Stripes: "bst",
		StripeWidths: []layout.Length{20 * mm, 12 * mm, 31 * mm},
	}
}

func bone(diagonal bool) *Herringbone {
	return &Herringbone{BlockWidth: 22 * mm, BlockLength: 66 * mm, Lying: "bs", Standing: "t", Diagonal: diagonal}
}

// patterns are one or two of each.
func patterns() map[string]Pattern {
	return map[string]Pattern{
		"grid":       checkerOf("bsbs", "sbsb", "bbtt"),
		"cubes":      &Cubes{StripThickness: 23 * mm, Top: "b", Left: "s", Right: "t"},
		"sideways":   &Cubes{StripThickness: 35 * mm, Top: "b", Left: "s", Right: "t"},
		"chevron":    zigzag(30 * layout.Degree),
		"flat":       zigzag(12 * layout.Degree),
		"bone":       bone(false),
		"diagonal":   bone(true),
		"two to one": &Herringbone{BlockWidth: 30 * mm, BlockLength: 60 * mm, Lying: "b", Standing: "s", Diagonal: true},
	}
}

func worked(t testing.TB, d *Design, shop *layout.Shop) *Work {
	t.Helper()
	w, cs := New(d, shop)
	if w == nil {
		t.Fatal(cs)
	}
	return w
}

func metric() *layout.Shop { return layout.DefaultShop(layout.Millimetres) }
