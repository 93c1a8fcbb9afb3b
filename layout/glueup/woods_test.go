package glueup

import (
	"strings"
	"testing"

	"sawbill/layout"
)

// 16 in of sugar maple, four points: 16 * 0.00353 * 4 = 0.226 in flatsawn,
// 16 * 0.00165 * 4 = 0.106 in quartersawn.
func TestMovementByHand(t *testing.T) {
	wood, ok := WoodOf("Hard Maple")
	if !ok {
		t.Fatal("hard maple is not known")
	}
	least, most := wood.Movement(16*layout.Inch, 40)
	for _, test := range []struct{ got, want layout.Length }{
		{least, 16 * layout.Inch * 660 / 100_000}, {most, 16 * layout.Inch * 1412 / 100_000},
	} {
		if d := test.got - test.want; d < -10*layout.Micrometre || d > 10*layout.Micrometre {
			t.Errorf("moves %v, want %v", test.got, test.want)
		}
	}
}

func TestTableOfWoodsMakesSense(t *testing.T) {
	seen := map[string]bool{}
	for _, w := range KnownWoods() {
		if seen[w.Species] {
			t.Errorf("%s is in it twice", w.Species)
		}
		seen[w.Species] = true
		if w.Tangential < w.Radial || w.TangentialMove < w.RadialMove || (w.Radial == 0) != (w.Tangential == 0) {
			t.Errorf("%s moves more radially, or is half known", w.Species)
		}
		if w.Density > 0 && (w.Density < 30 || w.Density > 90) || w.Hardness > 0 && (w.Hardness < 300 || w.Hardness > 2500) {
			t.Errorf("%s: density %d, hardness %d", w.Species, w.Density, w.Hardness)
		}
	}
	for name, species := range otherNames() {
		if !seen[species] {
			t.Errorf("%s stands for %s, which is not in the table", name, species)
		}
	}
}

func TestWarnings(t *testing.T) {
	for _, test := range []struct {
		name   string
		change func(*Design)
		want   string // part of a warning
	}{
		{"none", func(*Design) {}, ""},
		{"unlike", func(d *Design) { d.Woods["b"], d.Woods["s"] = "beech", "ash" }, "American beech moves 1.6 times as much as white ash"},
		{"pores", func(d *Design) { d.Food, d.Woods["b"] = true, "elm" }, "American elm has open pores"},
		{"pores, no food", func(d *Design) { d.Woods["b"] = "elm" }, ""},
		{"sensitising", func(d *Design) { d.Food, d.Woods["b"] = true, "yellow birch" }, "yellow birch is known to sensitise"},
		{"frame", func(d *Design) { d.Frame = &Frame{20 * mm, "b"} }, "A frame of long grain"},
		{"letter", func(d *Design) { d.Woods["x"] = "ash" }, "ash (x) stands in [woods] but nowhere"},
	} {
		d := tray(checkerOf("bsts", "stsb"))
		test.change(d)
		got := strings.Join(worked(t, d, metric()).Warnings, "\n")
		if !strings.Contains(got, test.want) || test.want == "" && got != "" {
			t.Errorf("%s: warnings %q, want %q", test.name, got, test.want)
		}
	}
}

func TestFrameIsInTheBill(t *testing.T) {
	d := tray(checkerOf("bs", "sb"))
	d.Frame = &Frame{20 * mm, "t"}
	bill := worked(t, d, metric()).Bill
	long, short := bill[len(bill)-2], bill[len(bill)-1]
	if long.Length != 94*mm || short.Length != 54*mm || long.Width != 20*mm || short.Thickness != 30*mm || long.Quantity != 2 {
		t.Errorf("frame of %v and %v", long, short)
	}
}
