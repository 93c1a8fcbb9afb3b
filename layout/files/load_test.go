package files

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"

	"sawbill/layout"
)

const (
	goodStock = "board,species,thickness,width,length\nA1,ash,4/4,8,96\n"
	goodBill  = "part,species,thickness,width,length,quantity\nrail,ash,3/4,3,30,2\n"
)

func load(stock, bill string) (*Job, error) {
	return Load(Input{
		Stock: Source{"stock.csv", strings.NewReader(stock)},
		Bill:  Source{"bill.csv", strings.NewReader(bill)},
	})
}

// Every column, in its words and in the synonyms of the trade.
func TestReadStock(t *testing.T) {
	const text = `board;species;thickness;width;tip_width;length;count;cost;edges;faces;bow;source;place;grade;note;defects
M4;ash;5/4;8,5in;7,5;2,44m;2;12,50;SLR1E;;no;hold;rack 2;FAS;dry, straight;
M5;elm;13/16in;150;;2440;1;;;S4S;0;Yard;;;;knot 31,5..33 x 10..20 /B | pin 50 x 20 d7 | ;
`
	shop := layout.DefaultShop(layout.Millimetres)
	stock, cs := ReadStock(strings.NewReader(text), "stock.csv", shop)
	const mm, in = layout.Millimetre, layout.Inch
	m4 := layout.Board{
		Mark: "M4.1", Base: "M4", Species: "ash", Thickness: 5 * in / 4, Width: 17 * in / 2, TipWidth: 15 * mm / 2,
		Length: 2440 * mm, Cost: 125000, Edges: layout.EdgesOne, Source: layout.Hold,
		Place: "rack 2", Grade: "FAS", Note: "dry, straight",
	}
	twin := m4
	twin.Mark = "M4.2"
	m5 := layout.Board{
		Mark: "M5", Base: "M5", Species: "elm", Thickness: 13 * in / 16, Width: 150 * mm, TipWidth: 150 * mm,
		Length: 2440 * mm, Cost: layout.Unpriced, Edges: layout.EdgesBoth, Faces: layout.FacesPlaned, Source: layout.Yard,
		Defects: []layout.Defect{
			{Kind: layout.Knot, Face: layout.FaceB, Rect: layout.Rect{X1: 63 * mm / 2, X2: 33 * mm, Y1: 10 * mm, Y2: 20 * mm}},
			{Kind: layout.Pin, Rect: layout.Rect{X1: 93 * mm / 2, X2: 107 * mm / 2, Y1: 33 * mm / 2, Y2: 47 * mm / 2}},
		},
	}
	if len(cs) > 0 {
		t.Error(cs)
	}
	if diff := cmp.Diff([]layout.Board{m4, twin, m5}, stock.Boards, cmpopts.EquateEmpty()); diff != "" {
		t.Errorf("(-want +got):\n%s", diff)
	}
	if stock.Rows != 2 {
		t.Errorf("%d rows, want 2", stock.Rows)
	}
}

func TestReadBill(t *testing.T) {
	const text = `part,species,thickness,width,length,quantity,grade,bevel,on_edge,resaw,match,priority,from,not_from,set,slices,slice_thickness,note,Piece,spare
rail, ash | elm ,3/4,3,30,2,One-Face,22.5,yes,YES,top,1,A1 A2,A3,,0,no,see drawing,tray,2
strip,ash,7/8,1-1/4,,6,,0,no,,,,,,board,12,1-1/2,,no,0
`
	bill, cs := ReadBill(strings.NewReader(text), "bill.csv", layout.DefaultShop(layout.Inches))
	const in = layout.Inch
	want := []layout.Part{
		{
			Name: "rail", Species: []string{"ash", "elm"}, Thickness: 3 * in / 4, Width: 3 * in, Length: 30 * in,
			Quantity: 2, Grade: layout.OneFace, Bevel: 22*layout.Degree + layout.Degree/2, OnEdge: true, Resaw: true,
			Match: "top", Priority: 1, From: []string{"A1", "A2"}, NotFrom: []string{"A3"}, Note: "see drawing",
			Piece: "tray", Spare: 2,
		},
		{
			Name: "strip", Species: []string{"ash"}, Thickness: 7 * in / 8, Width: 5 * in / 4, Quantity: 6,
			Grade: layout.Clear, Set: "board", Slices: 12, SliceThickness: 3 * in / 2,
		},
	}
	if len(cs) > 0 {
		t.Error(cs)
	}
	if diff := cmp.Diff(want, bill.Parts, cmpopts.EquateEmpty()); diff != "" {
		t.Errorf("(-want +got):\n%s", diff)
	}
}

func TestLoadComplains(t *testing.T) {
	for _, test := range []struct {
		name, stock, bill string
		want              []string
	}{
		{"nothing wrong", goodStock, goodBill, nil},
		{"cells of the stock", `board,species,thickness,width,tip_width,length,count,cost,edges,faces,source,defects
A1,ash,4-Apr,1/3,x,-96,0,dear,on,plained,rak,nkot 1..2; knot 5
,ash,4/4,8,,96,,,one,S4S,,
A3,,4/4,8,,,,,,S2S,,
`, goodBill, []string{
			`stock.csv:2: length: found "-96", want a length that is not negative`,
			`stock.csv:2: width: found "1/3", want an exact length: sixty-fourths of an inch, or millimetres with up to six decimals`,
			`stock.csv:2: source: found "rak", want one of rack, yard, hold (did you mean "rack"?)`,
			`stock.csv:2: tip_width: found "x", want a length such as 5-7/8, 5-7/8", 8' 2-1/2" or 149.5mm`,
			`stock.csv:2: cost: found "dear", want an amount such as 31.50, at most 1000000000`,
			`stock.csv:2: edges: found "on", want one of rough, one, both, SLR1E (did you mean "one"?)`,
			`stock.csv:2: faces: found "plained", want one of rough, planed, S2S, S4S (did you mean "planed"?)`,
			`stock.csv:2: thickness: found "4-Apr", which a spreadsheet made of a fraction: give the column the format "text", then write 7/8", 0 7/8 or 0.875, and quarters as 4q`,
			`stock.csv:2: defects: found "knot 5", want a range such as 31..33, or a centre with a diameter such as 50 x 2 d1/4`,
			`stock.csv:2: count: found "0", want a whole number from 1 to 10000`,
			`stock.csv:2: defects: found "nkot", want one of bark, burl, check, gum, hole, knot, loose, metal, pin, pith, rot, sap, shake, split, stain, wane (did you mean "knot"?)`,
			`stock.csv:3: edges: found "one", want both, or nothing, for a board that is S4S`,
			`stock.csv:3: thickness: found "4/4", which is a rough thickness: want what the planed board measures, such as 13/16`,
			`stock.csv:3: board: is empty: want a name`,
			`stock.csv:4: length: is empty: want a length such as 5-7/8" or 149mm`,
			`stock.csv:4: thickness: found "4/4", which is a rough thickness: want what the planed board measures, such as 13/16`,
			`stock.csv:4: species: is empty: want a name`,
		}},
		{"cells of the bill", goodStock, `part,species,thickness,width,length,quantity,grade,bevel,on_edge,priority,from
# a comment

rail,ahs,3/4,"3,5",30,0,cleer,50,perhaps,first,A2
rail,ash,1-1/8,3,30,1.5,,,,,
`, []string{
			`bill.csv:4: width: found "3,5", want a length such as 5-7/8, 5-7/8", 8' 2-1/2" or 149.5mm`,
			`bill.csv:4: quantity: found "0", want at least 1; to leave the row out put "# " in front of it`,
			`bill.csv:4: on_edge: found "perhaps", want one of no, yes`,
			`bill.csv:4: priority: found "first", want a whole number from 1 to 1000`,
			`bill.csv:4: bevel: found "50", want degrees from 0 to 45, with up to six decimals`,
			`bill.csv:4: grade: found "cleer", want one of clear, one-face, sound (did you mean "clear"?)`,
			`bill.csv:4: from: found "A2", which no board bears (did you mean "A1"?)`,
			`bill.csv:4: species: found "ahs", of which the stock has no board: want one of ash (did you mean "ash"?)`,
			`bill.csv:5: quantity: found "1.5", want a whole number from 1 to 100000`,
			`bill.csv:5: part: found "rail", want a name that no other part has`,
		}},
		{"spares of a glue-up", goodStock, `part,species,thickness,width,length,quantity,set,slices,slice_thickness,spare,piece
light,ash,3/4,1,,2,top,4,1,1,tray
dark,ash,3/4,1,,2,top,4,1,-1,box
`, []string{
			`bill.csv:2: spare: found "1", is not for the rows of a set: ask for more slices, or for spare_slices and spare_strips in its design`,
			`bill.csv:3: spare: found "-1", want a whole number from 0 to 100000`,
			`bill.csv:3: piece: found "box", want what light has, of the same set: tray`,
		}},
		{"a row of a set without its slices, and one with a length", goodStock, `part,species,thickness,width,length,quantity,set,slices,slice_thickness
light,ash,3/4,1,,2,top,,
dark,ash,3/4,1,30,2,side,4,1
`, []string{
			`bill.csv:2: slices: is empty: want a whole number from 1 to 100000`,
			`bill.csv:2: slice_thickness: is empty: want a length of more than 0 and at most 30 m`,
			`bill.csv:3: length: found "30", leave it empty in a set: the plan chooses how long its strips are`,
		}},
		{"a width that nobody can read, without a tip", "board,species,thickness,width,length,bow\nA1,ash,4/4,broad,96,9999\nA2,ash,4/4,0,96,\n", goodBill, []string{
			`stock.csv:2: width: found "broad", want a length such as 5-7/8, 5-7/8", 8' 2-1/2" or 149.5mm`,
			`stock.csv:2: bow: found "9999", want a length of at most 30 m`,
			`stock.csv:3: width: found "0", want a length of more than 0 and at most 30 m`,
		}},
		{"a comma after @ where it is the decimal mark", "board;species;thickness;width;length;defects\nA1;ash;4/4;8;96;knot@31..33,1-1/2..3\n", goodBill, []string{
			`stock.csv:2: defects: found "knot@31..33,1-1/2..3", want x in the place of the comma after @, such as "knot 31..33 x 1,5..3": here a comma is the decimal mark`,
		}},
		{"both", "board,species,thickness,width,lenght\nA1,ash,4/4,8,96\n", goodBill + "rail,ash,46116,3,30,1\n", []string{
			`stock.csv:1: length: the column is missing: want board, species, thickness, width, length and, if you like, tip_width, count, cost, edges, faces, bow, crook, cup, twist, source, place, grade, note, defects`,
			`stock.csv:1: found "lenght", which is no column: want one of board, species, thickness, width, tip_width, length, count, cost, edges, faces, bow, crook, cup, twist, source, place, grade, note, defects (did you mean "length"?)`,
			`bill.csv:3: thickness: found "46116", which a spreadsheet made of a fraction: give the column the format "text", then write 7/8", 0 7/8 or 0.875, and quarters as 4q`,
			`bill.csv:3: part: found "rail", want a name that no other part has`,
		}},
		{"together", goodStock + "\nA1,elm,8/4,6,50\n", "part,species,thickness,width,length,quantity\nrail,ash,1-1/8,3,30,2\n", []string{
			`stock.csv:4: board: found "A1", want a mark that no other board bears`,
		}},
		{"cannot be held", goodStock + "E1,elm,8/4,6,50\n", "part,species,thickness,width,length,quantity\nrail,ash,1-1/8,3,30,2\n", []string{
			`bill.csv:2: part "rail": needs 1-1/8" thick; the thickest ash, A1, finishes to 13/16"`,
		}},
	} {
		t.Run(test.name, func(t *testing.T) {
			_, err := load(test.stock, test.bill)
			if diff := cmp.Diff(strings.Join(test.want, "\n"), errorText(err)); diff != "" {
				t.Errorf("(-want +got):\n%s", diff)
			}
		})
	}
}
