package layout

import (
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

// rack is a small stock in which nothing is wrong: two rough ash boards of 1 in
// and 2 in, the second planed elm of 1-1/2 in.
func rack() []Board {
	return []Board{
		{
			Mark: "A1", Base: "A1", Species: "ash", Thickness: Inch, Width: 8 * Inch, TipWidth: 6 * Inch,
			Length: 96 * Inch, Cost: Unpriced,
		},
		{
			Mark: "A2", Base: "A2", Species: "ash", Thickness: 2 * Inch, Width: 5 * Inch, TipWidth: 5 * Inch,
			Length: 40 * Inch, Cost: Unpriced,
		},
		{
			Mark: "E1", Base: "E1", Species: "elm", Thickness: 3 * Inch / 2, Width: 7 * Inch, TipWidth: 7 * Inch,
			Length: 60 * Inch, Cost: Unpriced, Faces: FacesPlaned, Edges: EdgesBoth,
		},
	}
}

// rail is a part that A1 can give.
func rail() Part {
	return Part{
		Name: "rail", Species: []string{"ash"}, Thickness: 3 * Inch / 4, Width: 3 * Inch,
		Length: 30 * Inch, Quantity: 2, Grade: Clear,
	}
}

func tell(cs Complaints) []string {
	var lines []string
	for _, c := range cs {
		lines = append(lines, c.String())
	}
	return lines
}

func TestNewProblemTakesASoundJob(t *testing.T) {
	shop := DefaultShop(Inches)
	stock, bill := rack(), []Part{rail()}
	bill[0].From = []string{"a1", "E1"}
	p, cs := NewProblem(shop, stock, bill, false)
	if len(cs) != 0 {
		t.Fatalf("complaints:\n%s", strings.Join(tell(cs), "\n"))
	}
	// 8 and 6 in wide, 1 in thick, 96 in long: 672 cubic inches, 4.6667 board feet at a price of 1.
	if p.Stock[0].Cost != 46667 {
		t.Errorf("A1 costs %v, want 4.6667", p.Stock[0].Cost)
	}
	if diff := cmp.Diff([]string{"A1", "E1"}, p.Bill[0].From); diff != "" {
		t.Errorf("from (-want +got):\n%s", diff)
	}
	if stock[0].Cost != Unpriced || bill[0].From[0] != "a1" {
		t.Error("the arguments were changed")
	}
}

func TestNewProblemComplains(t *testing.T) {
	for _, test := range []struct {
		name   string
		change func(shop *Shop, stock []Board, part *Part)
		want   []string
	}{
		{"two boards of one mark", func(_ *Shop, stock []Board, _ *Part) {
			stock[2].Mark, stock[2].Base = "a1", "a1"
		}, []string{`stock row 3: board: found "a1", want a mark that no other board bears`}},
		{"no price", func(shop *Shop, _ []Board, _ *Part) {
			shop.Price = map[string]Money{"ahs": Unity, "elm": Unity}
		}, []string{
			`stock row 1: cost: is empty, and the shop has prices but none for ash (did you mean "ahs"?): give the board a cost or the species a price`,
			`stock row 2: cost: is empty, and the shop has prices but none for ash (did you mean "ahs"?): give the board a cost or the species a price`,
			`shop: price.ahs: found "ahs", of which the stock has no board (did you mean "ash"?)`,
		}},
		{"a quote without prices", func(shop *Shop, stock []Board, part *Part) {
			shop.Charges = &Charges{Hours: -1, Rate: MaxMoney + 1, Margin: MaxMargin + 1}
			stock[0].Cost, stock[2].Cost = 5, 5
			part.Spare = MaxQuantity + 1
		}, []string{
			`shop: quote.hours: found "-0.000001", want hours from 0 to 10000`,
			`shop: quote.rate: found "1000000000.0001", want an amount from 0 to 1000000000`,
			`shop: quote.margin: found "10.000001", want a share from 0 to 10`,
			`stock row 2: cost: is empty, and the shop has no prices, though its quote counts in money: give the board a cost or the species a price`,
			`bill row 1: spare: found "100001", want a whole number from 0 to 100000`,
		}},
		{"sizes", func(_ *Shop, stock []Board, part *Part) {
			stock[0].Width, stock[1].Length, part.Thickness = 0, MaxLength+1, -1
		}, []string{
			`stock row 1: width: found "0mm", want a length of more than 0 and at most 30 m`,
			`stock row 2: length: found "30000.000001mm", want a length of more than 0 and at most 30 m`,
			`bill row 1: thickness: found "-0.000001mm", want a length of more than 0 and at most 30 m`,
		}},
		{"defects", func(_ *Shop, stock []Board, _ *Part) {
			stock[0].Defects = []Defect{
				{Kind: "nkot", Rect: Rect{0, Inch, 0, Inch}},
				{Kind: Knot, Rect: Rect{96 * Inch, 97 * Inch, 0, Inch}},
				{Kind: Knot, Rect: Rect{90 * Inch, 91 * Inch, 7 * Inch, 8 * Inch}}, // beyond the taper
				{Kind: Knot, Face: FaceB, Rect: Rect{95 * Inch, 97 * Inch, -Inch, Inch}},
				{Kind: Pin, Rect: Rect{Inch, Inch, 0, Inch}},
			}
		}, []string{
			`stock row 1: defects: found "nkot", want one of bark, burl, check, gum, hole, knot, loose, metal, pin, pith, rot, sap, shake, split, stain, wane (did you mean "knot"?)`,
			`stock row 1: defects: found "knot 96\"..97\" x 0\"..1\"", which lies wholly off the board`,
			`stock row 1: defects: found "knot 90\"..91\" x 7\"..8\"", which lies wholly off the board`,
			`stock row 1: defects: found "knot 95\"..97\" x -1\"..1\" /B", which reaches over the board and is taken as knot 95"..96" x 0"..1" /B`,
			`stock row 1: defects: found "pin 1\"..1\" x 0\"..1\"", want a place with some length and width`,
		}},
		{"words of the bill", func(_ *Shop, _ []Board, part *Part) {
			part.Species, part.Grade = []string{"ahs"}, "cleer"
			part.From, part.NotFrom = []string{"A9"}, []string{"E1", "X"}
		}, []string{
			`bill row 1: grade: found "cleer", want one of clear, one-face, sound (did you mean "clear"?)`,
			`bill row 1: from: found "A9", which no board bears (did you mean "A1"?)`,
			`bill row 1: not_from: found "X", which no board bears: leave it out if that board is gone`,
			`bill row 1: species: found "ahs", of which the stock has no board: want one of ash, elm (did you mean "ash"?)`,
		}},
		{"numbers of the bill", func(_ *Shop, _ []Board, part *Part) {
			part.Quantity, part.Priority, part.Name = 0, -1, " "
		}, []string{
			`bill row 1: part: is empty: want a name`,
			`bill row 1: quantity: found "0", want a whole number from 1 to 100000; to leave a row out put "# " in front of it`,
			`bill row 1: priority: found "-1", want 1, 2, … or nothing`,
		}},
		{"the shop", func(shop *Shop, _ []Board, _ *Part) {
			shop.Fraction, shop.OffcutCredit, shop.MaxBlank, shop.RipKerf = 12, CreditUnity, Inch, -1
			shop.Fraction = 32
			shop.Grades["shelf"] = Grade{Show: []Kind{"pinn"}}
			shop.Clearance["chek"] = Clearance{}
			shop.Price = map[string]Money{"ash": 1, "Ash ": 1, "elm": 1}
		}, []string{
			`shop: rip_kerf: found "-0.000001mm", want a length from 0 to 30 m`,
			`shop: offcut_credit: found "1", want a share from 0 to less than 1`,
			`shop: max_blank: found "1\"", want at least min_blank, 12"`,
			`shop: price.ash: found "ash", which is priced already, as "Ash "`,
			`shop: clearance.chek: found "chek", want one of bark, burl, check, gum, hole, knot, loose, metal, pin, pith, rot, sap, shake, split, stain, wane (did you mean "check"?)`,
			`shop: grades.shelf: found "pinn", want one of bark, burl, check, gum, hole, knot, loose, metal, pin, pith, rot, sap, shake, split, stain, wane (did you mean "pin"?)`,
		}},
		{"kerfs", func(shop *Shop, _ []Board, _ *Part) {
			shop.RipKerf, shop.CrosscutKerf, shop.ResawKerf = 400*Inch, Inch, Inch+SixtyFourth
		}, []string{
			`shop: rip_kerf: found "400\"", want what the saw turns to dust, at most 1"`,
			`shop: resaw_kerf: found "1-1/64\"", want what the saw turns to dust, at most 1"`,
		}},
	} {
		t.Run(test.name, func(t *testing.T) {
			shop, stock, part := DefaultShop(Inches), rack(), rail()
			test.change(shop, stock, &part)
			p, cs := NewProblem(shop, stock, []Part{part}, false)
			if p != nil {
				t.Error("a problem was made")
			}
			if diff := cmp.Diff(test.want, tell(cs)); diff != "" {
				t.Errorf("complaints (-want +got):\n%s", diff)
			}
		})
	}
}

// A species that the rack happens to lack is no fault while there is another to
// choose, but nor is it passed over in silence.
func TestAlternativeSpeciesThatTheStockLacks(t *testing.T) {
	part := rail()
	part.Species = []string{"ash", "lime"}
	p, cs := NewProblem(DefaultShop(Inches), rack(), []Part{part}, false)
	want := []string{`bill row 1: species: found "lime", of which the stock has no board: want one of ash, elm`}
	if diff := cmp.Diff(want, tell(cs.Warnings())); p == nil || diff != "" {
		t.Errorf("problem %v, warnings (-want +got):\n%s", p, diff)
	}
}

// What a bevelled part cannot have is said to count for nothing.
func TestLeaveThatABevelTakes(t *testing.T) {
	part := rail()
	part.Bevel, part.OnEdge, part.Resaw = 10*Degree, true, true
	p, cs := NewProblem(DefaultShop(Inches), rack(), []Part{part}, false)
	want := []string{
		`bill row 1: on_edge: found "yes", which counts for nothing where the part has a bevel`,
		`bill row 1: resaw: found "yes", which counts for nothing where the part has a bevel`,
	}
	if diff := cmp.Diff(want, tell(cs.Warnings())); p == nil || diff != "" {
		t.Errorf("problem %v, warnings (-want +got):\n%s", p, diff)
	}
}

// A price that no board uses may be misspelt, or for wood that is out of stock.
func TestPricesOfSpeciesThatTheStockLacks(t *testing.T) {
	shop := DefaultShop(Inches)
	shop.Price = map[string]Money{"Ash": Unity, "elm": Unity, "lem": Unity, "poplar": Unity}
	boards, cs := NewStock(shop, rack())
	want := []string{
		`shop: price.lem: found "lem", of which the stock has no board (did you mean "elm"?)`,
		`shop: price.poplar: found "poplar", of which the stock has no board`,
	}
	if diff := cmp.Diff(want, tell(cs.Warnings())); boards == nil || diff != "" {
		t.Errorf("%d boards, warnings (-want +got):\n%s", len(boards), diff)
	}
}

func TestNewProblemWantsBoardsAndParts(t *testing.T) {
	_, cs := NewProblem(DefaultShop(Inches), nil, nil, false)
	want := []string{"stock: there are no boards in it", "bill: there are no parts in it"}
	if diff := cmp.Diff(want, tell(cs)); diff != "" {
		t.Errorf("complaints (-want +got):\n%s", diff)
	}
}

// A row of several boards is told of once, its mark stands for all of them, and
// no other row may bear it.
func TestNewProblemWithCountedBoards(t *testing.T) {
	stock := rack()
	for i := range stock[:2] {
		stock[i] = stock[0]
		stock[i].Mark, stock[i].Base = "A1."+string(rune('1'+i)), "A1"
		stock[i].Defects = []Defect{{Kind: Knot, Rect: Rect{95 * Inch, 97 * Inch, 0, Inch}}}
	}
	part := rail()
	part.NotFrom = []string{"A1.2"}
	part.From = []string{"A1"}
	p, cs := NewProblem(DefaultShop(Inches), stock, []Part{part}, false)
	want := []string{
		`stock row 1: count: every one of these boards is taken to have the same defects`,
		`stock row 1: defects: found "knot 95\"..97\" x 0\"..1\"", which reaches over the board and is taken as knot 95"..96" x 0"..1"`,
	}
	if diff := cmp.Diff(want, tell(cs)); diff != "" {
		t.Errorf("complaints (-want +got):\n%s", diff)
	}
	if !slices.Equal(p.Bill[0].From, []string{"A1.1", "A1.2"}) || !slices.Equal(p.Bill[0].NotFrom, []string{"A1.2"}) {
		t.Errorf("from %q, not_from %q", p.Bill[0].From, p.Bill[0].NotFrom)
	}
	for _, b := range p.Stock[:2] {
		if b.Defects[0].Rect != (Rect{95 * Inch, 96 * Inch, 0, Inch}) {
			t.Errorf("%s: the defect is %v", b.Mark, b.Defects[0].Rect)
		}
	}
	stock[2].Mark, stock[2].Base = "A1", "A1"
	_, cs = NewProblem(DefaultShop(Inches), stock, []Part{part}, false)
	if got := tell(cs.Faults()); len(got) != 1 || !strings.Contains(got[0], `found "A1", want a mark`) {
		t.Errorf("complaints: %q", got)
	}
}
