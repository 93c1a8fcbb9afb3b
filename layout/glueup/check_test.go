package glueup

import (
	"strings"
	"testing"

	"sawbill/layout"
)

// Everything that is wrong is told, each with its key.
func TestComplaints(t *testing.T) {
	for _, test := range []struct {
		name   string
		design func() *Design
		want   []string
	}{
		{"sizes", func() *Design {
			d := tray(&Cubes{StripThickness: 0, Top: "x", Left: "s", Right: "t"})
			d.Thickness, d.Trim, d.SpareSlices, d.Moisture = 0, -mm, -1, 400
			return d
		}, []string{"thickness", "trim", "spare_slices", "moisture_change", "cubes.top", "cubes.strip_thickness"}},
		{"rows", func() *Design { return tray(checkerOf("bs", "bsx")) }, []string{"grid.rows[2]", "grid.rows[2]"}},
		{"face of a grid", func() *Design {
			d := tray(checkerOf("bs"))
			d.Length = mm
			return d
		}, []string{"length"}},
		{"trim", func() *Design {
			d := tray(checkerOf("bs", "sb"))
			d.Trim = 32 * mm
			return d
		}, []string{"trim"}},
		{"trim of one row", func() *Design {
			d := tray(checkerOf("bs"))
			d.Trim = 16 * mm
			return d
		}, []string{"trim"}},
		{"blocks", func() *Design {
			return tray(&Herringbone{BlockWidth: 20 * mm, BlockLength: 50 * mm, Lying: "b", Standing: ""})
		}, []string{"herringbone.standing", "herringbone.block_length"}},
		{"angle", func() *Design { return tray(zigzag(4 * layout.Degree)) }, []string{"chevron.angle"}},
		{"too many", func() *Design { return tray(&Cubes{StripThickness: mm, Top: "b", Left: "s", Right: "t"}) }, []string{"cubes.strip_thickness"}},
		{"woods", func() *Design {
			d := tray(checkerOf("b"))
			d.Woods = map[string]string{"b": " ", "ss": "ash"}
			return d
		}, []string{"woods.b", "woods.ss"}},
	} {
		w, cs := New(test.design(), metric())
		var keys []string
		for _, c := range cs {
			keys = append(keys, c.Column)
		}
		if got, want := strings.Join(keys, " "), strings.Join(test.want, " "); got != want || w != nil {
			t.Errorf("%s: complaints about %q, want %q", test.name, got, want)
		}
	}
}

// The least number of slices makes a strip long enough for the machines: with
// 34 mm slices, 3 mm kerfs and 6 mm at each end 8 slices need 305 mm, 7 need 268 mm.
func TestLeastSlicesByHand(t *testing.T) {
	w := worked(t, tray(checkerOf("bs", "sb")), metric())
	if n := w.StripLength(1); n != 46*mm {
		t.Errorf("one slice takes %v", n)
	}
	if n := w.LeastSlices(); n != 8 || w.StripLength(8) != 305*mm || w.StripLength(7) != 268*mm {
		t.Errorf("%d slices, %v", n, w.StripLength(n))
	}
}
