package layout

import (
	"testing"

	"github.com/google/go-cmp/cmp"
)

// trayRow is a row of a set of 9 slices of 1 in.
func trayRow(name string, quantity int) Part {
	return Part{
		Name: name, Species: []string{"ash"}, Grade: Clear, Quantity: quantity, Thickness: Inch, Width: Inch,
		Set: "tray", Slices: 9, SliceThickness: Inch,
	}
}

// trayJob has one ash board, and a shop that makes no blanks below 12 in.
func trayJob(length Length) *Problem {
	shop := DefaultShop(Inches)
	return &Problem{
		Shop: shop, Bill: []Part{trayRow("light", 2), trayRow("dark", 1)},
		Stock: []Board{{
			Mark: "A1", Species: "ash", Thickness: 2 * Inch, Width: 6 * Inch, TipWidth: 6 * Inch, Length: length,
		}},
	}
}

// Of 10 slices of 1 in, with 9 kerfs of 1/8 in and 1/4 in at each end, a strip is
// 11-5/8 in long; of 11 it is 12-3/4 in.
func TestStripLengthByHand(t *testing.T) {
	p := trayJob(96 * Inch)
	row := &p.Bill[0]
	if got := p.Shop.StripLength(row, 10); got != 11*Inch+Inch*5/8 {
		t.Errorf("10 slices take %v", got)
	}
	if got := p.Shop.LeastSlices(row); got != 11 {
		t.Errorf("a copy has at least %d slices", got)
	}
	p.Shop.LengthAllowance = Inch // it is not added
	strip := p.Shop.Strip(row, 10)
	if got := strip.CutLength(p.Shop); got != 11*Inch+Inch*5/8 {
		t.Errorf("a strip is cut to %v", got)
	}
	if strip.Volume().Cmp(NewVolume(10*Inch, Inch, Inch)) != 0 {
		t.Errorf("a strip has %v mm³", strip.Volume().MM3())
	}
}

// Between the end trims of a board of 16 in, and the ends of the blank, there are
// 13-1/2 in: enough for 11 slices, not for the 13-7/8 in of 12.
func TestSliceCountsByHand(t *testing.T) {
	p := trayJob(16 * Inch)
	if diff := cmp.Diff([]int{11}, p.SliceCounts(p.Sets()[0])); diff != "" {
		t.Errorf("counts (-want +got):\n%s", diff)
	}
	p.Bill[1].Species = []string{"elm"} // of which there is none
	if got := p.SliceCounts(p.Sets()[0]); got != nil {
		t.Errorf("a set without wood may have %v slices", got)
	}
}

// Two whole copies of 11 and 12 slices; of the strips with 13 one is lacking.
func TestSlicesOfWholeCopies(t *testing.T) {
	p := trayJob(96 * Inch)
	strips := map[string]map[int]int{"light": {11: 3, 12: 2, 13: 2}, "dark": {11: 1, 12: 1}}
	if diff := cmp.Diff([]Copies{{1, 12}, {1, 11}}, p.copies(p.Sets()[0], strips)); diff != "" {
		t.Errorf("copies (-want +got):\n%s", diff)
	}
	if got := p.slicesMade(p.Sets()[0], strips); got != 23 {
		t.Errorf("%d slices", got)
	}
}

// Of a set, slices are missing: one of a copy of three strips weighs as much as a
// part of the same wood.
func TestScoreOfMissingSlices(t *testing.T) {
	p := trayJob(96 * Inch)
	p.Bill = append(p.Bill, Part{Name: "block", Quantity: 9, Length: Inch, Width: 3 * Inch, Thickness: Inch})
	plan := func(name string, n int) *Plan {
		return &Plan{Problem: *p, Missing: []Missing{{Part: name, Quantity: n}}}
	}
	for _, c := range []struct{ slices, blocks, want int }{{1, 1, 0}, {2, 1, 1}, {1, 2, -1}} {
		if got := plan("tray", c.slices).Score().Compare(plan("block", c.blocks).Score()); got != c.want {
			t.Errorf("%d slices against %d blocks: %d, want %d", c.slices, c.blocks, got, c.want)
		}
	}
}

func TestNewProblemChecksSets(t *testing.T) {
	for _, c := range []struct {
		name   string
		change func(first, second *Part)
		want   string
	}{
		{"other slices", func(_, q *Part) { q.Slices = 8 }, `slices: found "8", want what light has, of the same set: 9`},
		{"other thickness", func(_, q *Part) { q.SliceThickness = 2 * Inch }, `slice_thickness: found "50.8mm", want what light has, of the same set: 25.4mm`},
		{"other priority", func(_, q *Part) { q.Priority = 1 }, `priority: found "1", want what light has, of the same set: 0`},
		{"a length", func(_, q *Part) { q.Length = Inch }, `length: found "25.4mm", leave it empty in a set: the plan chooses how long its strips are`},
		{"no slices", func(p, q *Part) { p.Slices, q.Slices = 0, 0 }, `slices: found "0", want a whole number from 1 to 100000`},
		{"veneer", func(p, q *Part) { p.SliceThickness, q.SliceThickness = 1000, 1000 }, `slice_thickness: found "0.001mm", want at least 1mm`},
		{"a part called as the set", func(_, q *Part) {
			q.Name, q.Set, q.Slices, q.SliceThickness, q.Length = "Tray", "", 0, 0, Inch
		}, `part: found "Tray", want a name that no set has`},
		{"no set", func(_, q *Part) { q.Set, q.Length = "", Inch }, `slices: found "9", is for the rows of a set: name the set, or leave it empty`},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := trayJob(96 * Inch)
			c.change(&p.Bill[0], &p.Bill[1])
			_, cs := NewProblem(p.Shop, p.Stock, p.Bill, false)
			wantComplaint(t, cs, c.want)
		})
	}
}

func wantComplaint(t *testing.T, cs Complaints, want string) {
	t.Helper()
	for _, c := range cs {
		if got := c.String(); len(got) >= len(want) && got[len(got)-len(want):] == want {
			return
		}
	}
	t.Errorf("%v: none says %q", cs, want)
}
