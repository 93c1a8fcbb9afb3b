package layout

import (
	"testing"

	"github.com/google/go-cmp/cmp"
)

// whyJob is a part and the boards of a rack for it, in the shop's usual figures.
type whyJob struct {
	shop  *Shop
	stock []Board
	part  Part
	cut   []string // the marks of boards that are used up
}

// inchJob wants two ash rails of 1 x 2 x 44 in. A7 is rough, 2 x 6 x 96 in, and
// gives them.
func inchJob() *whyJob {
	return &whyJob{
		shop: DefaultShop(Inches),
		stock: []Board{{
			Mark: "A7", Base: "A7", Species: "ash", Thickness: 2 * Inch, Width: 6 * Inch, TipWidth: 6 * Inch, Length: 96 * Inch,
		}},
		part: Part{
			Name: "rail", Species: []string{"ash"}, Thickness: Inch, Width: 2 * Inch, Length: 44 * Inch, Quantity: 2, Grade: Clear,
		},
	}
}

// metricJob wants two elm shelves of 22 x 140 x 900 mm. E2 is rough, 30 x 200 x
// 2400 mm, and gives them.
func metricJob() *whyJob {
	const mm = Millimetre
	return &whyJob{
		shop: DefaultShop(Millimetres),
		stock: []Board{{
			Mark: "E2", Base: "E2", Species: "elm", Thickness: 30 * mm, Width: 200 * mm, TipWidth: 200 * mm, Length: 2400 * mm,
		}},
		part: Part{
			Name: "shelf", Species: []string{"elm"}, Thickness: 22 * mm, Width: 140 * mm, Length: 900 * mm, Quantity: 2, Grade: Clear,
		},
	}
}

// why is what a plan says of the part.
func (j *whyJob) why() string {
	p := &Problem{Shop: j.shop, Stock: j.stock, Bill: []Part{j.part}}
	var cuts []BoardCut
	for _, mark := range j.cut {
		cuts = append(cuts, BoardCut{mark, &Node{Rect: p.Board(mark).Frame()}})
	}
	missing := Assemble(p, cuts).Missing
	if len(missing) != 1 {
		return "nothing is missing"
	}
	return missing[0].Why
}

// twin adds a board like the first, with a mark of its own and changed.
func (j *whyJob) twin(mark string, change func(*Board)) {
	b := j.stock[0]
	b.Mark, b.Base = mark, mark
	change(&b)
	j.stock = append(j.stock, b)
}

// mark puts a defect on the first board.
func (j *whyJob) mark(kind Kind, at Rect) {
	j.stock[0].Defects = append(j.stock[0].Defects, Defect{Kind: kind, Rect: at})
}

func inches(x1, x2, y1, y2 Length) Rect { return Rect{x1 * Inch, x2 * Inch, y1 * Inch, y2 * Inch} }

func TestWhyInInches(t *testing.T) {
	for _, test := range []struct {
		name   string
		change func(j *whyJob)
		want   string
	}{
		{"a place in a board left", func(*whyJob) {}, "A7 could give one: a longer search may find how"},
		// 40 rails are 24.44 board feet, A7 is 8.
		{"a place, yet far too little", func(j *whyJob) { j.part.Quantity = 40 },
			"stock all but used up: 16.4 board feet short, finished; A7 could give one"},
		// 2 x 1 x 2 x 44 cubic inches are 1.22 board feet.
		{"used up", func(j *whyJob) { j.cut = []string{"A7"} }, "stock used up: 1.2 board feet short, finished"},
		{"used up, and more at the yard", func(j *whyJob) {
			j.cut = []string{"A7"}
			j.twin("Y1", func(b *Board) { b.Source = Yard })
		}, "stock used up: 1.2 board feet short, finished; Y1 (yard) could give one"},

		{"no species", func(j *whyJob) { j.part.Species = []string{"elm", "oak"} }, "no elm or oak in the stock"},
		{"marks", func(j *whyJob) { j.part.NotFrom = []string{"A7"} }, "from and not_from leave no board that could give it"},
		{"on hold", func(j *whyJob) { j.stock[0].Source = Hold },
			"all ash that may give it is on hold or at the yard; A7 (hold) could give one"},
		{"on hold, and too short", func(j *whyJob) { j.stock[0].Source, j.stock[0].Length = Hold, 40*Inch },
			"all ash that may give it is on hold or at the yard"},

		// A7 trues to 2 - 3/16 - 3/4 x (30/96)^2 in in a blank of 29-1/2 in and its two ends.
		{"thickness, bowed", func(j *whyJob) {
			j.stock[0].Bow = 3 * Inch / 4
			j.part.Thickness, j.part.Length = 7*Inch/4, 59*Inch/2
		}, `needs 1-3/4" thick; the thickest ash trues to 1-47/64" in a blank of 30" (A7)`},
		// Shorter, it is thick enough: 3/4 x (20/96)^2 is 1/32 in.
		{"thickness, bowed but short", func(j *whyJob) {
			j.stock[0].Bow = 3 * Inch / 4
			j.part.Thickness, j.part.Length = 7*Inch/4, 39*Inch/2
		}, "A7 could give one: a longer search may find how"},
		{"thickness of what is left", func(j *whyJob) {
			j.part.Thickness, j.cut = 7*Inch/4, []string{"A7"}
			j.twin("A8", func(b *Board) { b.Thickness = Inch })
			j.twin("A9", func(b *Board) { b.Thickness = 15 * Inch / 8 })
		}, `needs 1-3/4" thick; the thickest ash left trues to 1-11/16" in a blank of 44-1/2" (A9)`},
		{"thickness, with a yard", func(j *whyJob) {
			j.part.Thickness = 2 * Inch
			j.twin("Y1", func(b *Board) { b.Source, b.Thickness = Yard, 5*Inch/2 })
		}, `needs 2" thick; the thickest ash trues to 1-13/16" in a blank of 44-1/2" (A7); Y1 (yard) could give one`},
		// Cup costs 1/2 in over 6 in; ripped to 2 in and 1/8 in at each edge 1/2 x (2-1/4 / 6)^2.
		{"thickness, cupped, ripped rough", func(j *whyJob) {
			j.stock[0].Cup = Inch / 2
			j.part.Thickness = 7 * Inch / 4
		}, `needs 1-3/4" thick; the thickest ash trues to 1-47/64" in a blank of 44-1/2" (A7)`},
		{"thickness, cupped, narrow enough", func(j *whyJob) {
			j.stock[0].Cup = Inch / 2
			j.part.Thickness, j.part.Width = 7*Inch/4, 3*Inch/2
		}, "A7 could give one: a longer search may find how"},
		// Flat it needs 3 in of thickness, on edge its width.
		{"thickness on edge", func(j *whyJob) { j.part.Thickness, j.part.OnEdge = 3*Inch, true },
			`needs 2" thick on edge; the thickest ash trues to 1-13/16" in a blank of 44-1/2" (A7)`},
		{"on edge it fits", func(j *whyJob) { j.part.Thickness, j.part.Width, j.part.OnEdge = 3*Inch, Inch, true },
			"A7 could give one: a longer search may find how"},
		{"resawn", func(j *whyJob) { j.stock[0].Thickness, j.part.Thickness, j.part.Resaw = 3*Inch/8, Inch/4, true },
			`needs 1/4" thick; the thickest ash trues to 3/16" in a blank of 44-1/2" (A7)`},
		// One layer by itself fits.
		{"resawn, thick enough for one", func(j *whyJob) { j.stock[0].Thickness, j.part.Thickness, j.part.Resaw = Inch/2, Inch/4, true },
			"A7 could give one: a longer search may find how"},

		// From 1/4 in beyond the trim to the knot 40-3/4 in, from the knot to the other end 41-3/4 in.
		{"clear length", func(j *whyJob) { j.mark(Knot, inches(42, 53, 0, 6)) },
			`needs 44"; the ash gives no clear length over 41-3/4" (A7); two 22" pieces would fit`},
		{"the knot does not spoil the grade", func(j *whyJob) { j.mark(Knot, inches(42, 53, 0, 6)); j.part.Grade = Sound },
			"A7 could give one: a longer search may find how"},
		{"sound length", func(j *whyJob) { j.mark(Rot, inches(42, 53, 0, 6)); j.part.Grade = Sound },
			`needs 44"; the ash gives no sound length over 41-3/4" (A7); two 22" pieces would fit`},
		// Face A can lie down.
		{"the other face", func(j *whyJob) {
			j.mark(Knot, inches(42, 53, 0, 6))
			j.stock[0].Defects[0].Face, j.part.Grade = FaceA, OneFace
		}, "A7 could give one: a longer search may find how"},
		{"either face", func(j *whyJob) {
			j.mark(Knot, inches(42, 53, 0, 6))
			j.mark(Knot, inches(42, 53, 0, 6))
			j.stock[0].Defects[0].Face, j.stock[0].Defects[1].Face, j.part.Grade = FaceA, FaceB, OneFace
		}, `needs 44"; the ash gives no one-face length over 41-3/4" (A7); two 22" pieces would fit`},
		// A check runs on an inch beyond its mark.
		{"clearance", func(j *whyJob) { j.mark(Check, inches(42, 52, 0, 6)) },
			`needs 44"; the ash gives no clear length over 41-3/4" (A7); two 22" pieces would fit`},
		// 95 in and 1/4 in at each end are more than 94 in.
		// Halves of it lie side by side.
		{"length", func(j *whyJob) { j.part.Length = 95 * Inch },
			`needs 95"; the ash gives no clear length over 93-1/2" (A7); two 47-1/2" pieces would fit`},
		{"length, in two boards", func(j *whyJob) {
			j.part.Length, j.part.Width = 150*Inch, 5*Inch
			j.twin("A8", func(*Board) {})
		}, `needs 150"; the ash gives no clear length over 93-1/2" (A7); two 75" pieces would fit`},
		// Between the knots 30 in, beside them 29-3/4 in: one piece of 30 in, but three of 20 in.
		{"length, in three", func(j *whyJob) {
			j.part.Length, j.part.Width = 60*Inch, 5*Inch
			j.mark(Knot, inches(31, 33, 0, 6))
			j.mark(Knot, inches(63, 65, 0, 6))
		}, `needs 60"; the ash gives no clear length over 30" (A7); three 20" pieces would fit`},
		// Before anything was cut no board gave one; where all are cut, none gives shorter ones either.
		{"length, and all is cut", func(j *whyJob) { j.part.Length, j.cut = 95*Inch, []string{"A7"} },
			`needs 95"; the ash gives no clear length over 93-1/2" (A7)`},
		{"length, and a short board is left", func(j *whyJob) {
			j.part.Length, j.cut = 95*Inch, []string{"A7"}
			j.twin("A8", func(b *Board) { b.Length = 60 * Inch })
		}, `needs 95"; the ash gives no clear length over 93-1/2" (A7); two 47-1/2" pieces would fit`},
		{"length, and pieces no board holds", func(j *whyJob) { j.part.Length, j.part.Width = 500*Inch, 5*Inch },
			`needs 500"; the ash gives no clear length over 93-1/2" (A7)`},

		// From 1/8 in to the wane.
		{"width", func(j *whyJob) { j.mark(Wane, inches(0, 96, 3, 6)); j.part.Width = 3 * Inch },
			`needs 3" wide; the ash gives no clear width over 2-7/8" at 44" (A7)`},
		// Far from the butt A7 is 5 in wide: at the end of 44 in, 45-1/4 in from the butt, 5-1/2 in; jointing takes 1/4 in.
		{"width, tapered", func(j *whyJob) {
			j.stock[0].TipWidth = 5 * Inch
			j.part.Width = 6 * Inch
		}, `needs 6" wide; the ash gives no clear width over 5-17/64" at 44" (A7)`},
		// The shift is 1 x (44-1/2 / 96)^2.
		{"width, crooked", func(j *whyJob) {
			j.stock[0].Crook = Inch
			j.part.Width = 23 * Inch / 4
		}, `needs 5-3/4" wide; the ash gives no clear width over 5-17/32" at 44" (A7)`},
		// A blank of 4 in loses 1/8 in at each edge.
		{"width of the machines", func(j *whyJob) { j.shop.JointerWidth, j.part.Width = 4*Inch, 5*Inch },
			`needs 5" wide; the ash gives no clear width over 3-3/4" at 44" (A7)`},
		{"width of the machines, narrow enough", func(j *whyJob) { j.shop.JointerWidth = 4 * Inch },
			"A7 could give one: a longer search may find how"},
		// A lean of 1 in at 45 degrees, and a bevelled kerf of 0.1768 in at each side, of 5-3/4 in.
		{"width, bevelled", func(j *whyJob) { j.part.Bevel, j.part.Width = 45*Degree, 9*Inch/2 },
			`needs 4-1/2" wide; the ash gives no clear width over 4-25/64" at 44" (A7)`},

		{"too short and too narrow", func(j *whyJob) { j.part.Length, j.part.Width = 100*Inch, 7*Inch },
			`needs 100"; the ash gives no clear length over 93-1/2" (A7)`},
		{"nothing clear", func(j *whyJob) { j.mark(Rot, inches(0, 96, 0, 6)) }, "needs clear wood; the ash has none (A7)"},
		{"no blank", func(j *whyJob) { j.stock[0].Length, j.part.Length = 13*Inch, 10*Inch },
			`needs a blank of 12"; the longest ash has 11" between its trims (A7)`},
		// The nail's inch and its clearance of 1/2 in on each side, and a kerf: no blank of 12 in beside it.
		{"metal", func(j *whyJob) {
			j.stock[0].Length, j.part.Length = 26*Inch, 9*Inch
			j.mark(Metal, inches(12, 13, 0, 6))
		}, "needs clear wood; the ash has none (A7)"},
		{"metal at an edge", func(j *whyJob) {
			j.stock[0].Length, j.part.Length = 26*Inch, 9*Inch
			j.mark(Metal, inches(12, 13, 0, 1))
		}, "A7 could give one: a longer search may find how"},
	} {
		t.Run(test.name, func(t *testing.T) {
			j := inchJob()
			test.change(j)
			if diff := cmp.Diff(test.want, j.why()); diff != "" {
				t.Errorf("(-want +got):\n%s", diff)
			}
		})
	}
}

func TestWhyInMillimetres(t *testing.T) {
	const mm = Millimetre
	for _, test := range []struct {
		name   string
		change func(j *whyJob)
		want   string
	}{
		// 2 x 22 x 140 x 900 mm.
		{"used up", func(j *whyJob) { j.cut = []string{"E2"} }, "stock used up: 0.0055 m³ short, finished"},
		{"a sliver is short", func(j *whyJob) {
			j.cut = []string{"E2"}
			j.part.Thickness, j.part.Width, j.part.Length = mm, mm, mm
		}, "stock used up: 0.0001 m³ short, finished"},
		// 30 - 5 - 20 x (912/2400)^2.
		{"thickness", func(j *whyJob) { j.stock[0].Bow, j.part.Thickness = 20*mm, 23*mm },
			"needs 23 mm thick; the thickest elm trues to 22.1 mm in a blank of 912 mm (E2)"},
		// From 31 mm to the knot 869 mm; from it to 2369 mm 819 mm.
		{"clear length", func(j *whyJob) { j.mark(Knot, rect(900, 1550, 0, 200)) },
			"needs 900 mm; the elm gives no clear length over 869 mm (E2); two 450 mm pieces would fit"},
		{"width", func(j *whyJob) { j.part.Width = 195 * mm },
			"needs 195 mm wide; the elm gives no clear width over 194 mm at 900 mm (E2)"},
		// The shift is 10 x (912/2400)^2, 1.444 mm.
		{"width, rounded down", func(j *whyJob) { j.part.Width, j.stock[0].Crook = 195*mm, 10*mm },
			"needs 195 mm wide; the elm gives no clear width over 192.5 mm at 900 mm (E2)"},
		{"no blank", func(j *whyJob) { j.stock[0].Length, j.part.Length = 340*mm, 250*mm },
			"needs a blank of 300 mm; the longest elm has 290 mm between its trims (E2)"},
	} {
		t.Run(test.name, func(t *testing.T) {
			j := metricJob()
			test.change(j)
			if diff := cmp.Diff(test.want, j.why()); diff != "" {
				t.Errorf("(-want +got):\n%s", diff)
			}
		})
	}
}

// Once a piece of a match word is made, the others may come from its board alone.
func TestWhyMatched(t *testing.T) {
	j := inchJob()
	j.twin("A8", func(*Board) {})
	j.part.Match = "pair"
	other := j.part
	other.Name, other.Quantity = "stile", 1
	p := &Problem{Shop: j.shop, Stock: j.stock, Bill: []Part{j.part, other}}
	made := &Node{Rect: inches(0, 96, 0, 6), Part: "stile"} // where it lies does not matter
	for length, want := range map[Length]string{
		44 * Inch: `match "pair" keeps it on A7, which has no more room`,
		95 * Inch: `needs 95"; the ash gives no clear length over 93-1/2" (A7); two 47-1/2" pieces would fit`, // and on no other board
	} {
		p.Bill[0].Length = length
		missing := Assemble(p, []BoardCut{{"A7", made.Clone()}}).Missing
		if diff := cmp.Diff([]Missing{{"rail", 2, want}}, missing); diff != "" {
			t.Errorf("(-want +got):\n%s", diff)
		}
	}
}

// Of a glue-up the first row is named whose shortest strips no board left gives:
// 19 slices of 1/2 in, their kerfs and 1/4 in at each end are 12-1/4 in long, the
// least that the machines take.
func TestWhyNoSlices(t *testing.T) {
	j := inchJob()
	row := Part{
		Name: "light", Species: []string{"ash"}, Thickness: Inch, Width: 2 * Inch, Quantity: 3, Grade: Clear,
		Set: "board", Slices: 20, SliceThickness: Inch / 2,
	}
	dark := row
	dark.Name, dark.Width = "dark", 7*Inch
	p := &Problem{Shop: j.shop, Stock: j.stock, Bill: []Part{row, dark}}
	for _, test := range []struct {
		cut  []BoardCut
		want string
	}{
		{nil, `strips of dark: needs 7" wide; the ash gives no clear width over 5-3/4" at 12-1/4" (A7)`},
		// 20 slices of 3 strips of 1 x 2 x 1/2 in.
		{[]BoardCut{{"A7", &Node{Rect: inches(0, 96, 0, 6)}}}, "strips of light: stock used up: 0.4 board feet short, finished"},
	} {
		if got := Assemble(p, test.cut).Missing; len(got) != 1 || got[0].Why != test.want {
			t.Errorf("missing %+v, want %s", got, test.want)
		}
	}
	p.Bill[1].Width = 2 * Inch
	if got := Assemble(p, nil).Missing; len(got) != 1 || got[0].Why != "A7 could give one: a longer search may find how" {
		t.Errorf("missing %+v, though each row fits", got)
	}
}

func TestLargest(t *testing.T) {
	for _, test := range []struct{ step, floor, limit, does, want Length }{
		{5, 0, 100, 37, 35}, {5, 0, 100, 4, 0}, {5, 0, 100, 5, 5}, {5, 0, 100, 1000, 100}, {5, 0, 99, 1000, 95},
		{5, 35, 100, 37, 35}, {5, 35, 100, 40, 40}, {5, 0, 3, 1000, 0}, {5, 100, 100, 1000, 100},
	} {
		got := largest(test.step, test.floor, test.limit, func(l Length) bool { return l <= test.does })
		if got != test.want {
			t.Errorf("largest(%d, %d, %d) of what does to %d is %d, want %d", test.step, test.floor, test.limit, test.does, got, test.want)
		}
	}
}
