package files

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"sawbill/layout"
)

// pair is a table of two columns for these tests.
type pair struct {
	A string `csv:"a" needed:"yes"`
	B string `csv:"b"`
}

func TestTablesAsPeopleHaveThem(t *testing.T) {
	want := []pair{{"1", `96"`}, {"2", "x, y"}}
	for _, test := range []struct{ name, text string }{
		{"plain", "a,b\n1,96\"\n2,\"x, y\"\n"},
		{"quoted by a spreadsheet", "a,b\n1,\"96\"\"\"\n2,\"x, y\"\n"},
		{"byte order mark, CRLF", "\ufeffa,b\r\n1,96\"\r\n2,\"x, y\"\r\n"},
		{"CR, no last line end", "a,b\r1,96\"\r2,\"x, y\""},
		{"semicolons", "a;b\n1;96\"\n2;x, y\n"},
		{"tabs", "a\tb\n1\t96\"\n2\tx, y\n"},
		{"separator named", "sep=;\na;b\n1;96\"\n2;x, y\n"},
		{"capitals and spaces", " A , B\n1, 96\"\n2, \"x, y\"\n"},
		{"other order", "B,A\n96\",1\n\"x, y\",2\n"},
		{"empty columns at the end", "a,b,,\n1,96\",,\n2,\"x, y\",,,,\n"},
		{"empty rows and comments", "# the 6\" ones\n\na,b\n,\n1,96\"\n\"# left, out\",\n , \n2,\"x, y\"\n\n"},
	} {
		rows, sheet := readRows[pair](strings.NewReader(test.text), "t.csv", layout.StockTable)
		if len(sheet.faults) > 0 {
			t.Errorf("%s: %v", test.name, sheet.faults)
		}
		if diff := cmp.Diff(want, rows); diff != "" {
			t.Errorf("%s (-want +got):\n%s", test.name, diff)
		}
	}
}

func TestTrueLinesAndSkippedRows(t *testing.T) {
	const text = "# one\n\na,b\n1,\"two\nlines\"\n,\n# x\n#12,3\n\n4,5"
	rows, sheet := readRows[pair](strings.NewReader(text), "t.csv", layout.StockTable)
	if diff := cmp.Diff([]pair{{"1", "two\nlines"}, {"#12", "3"}, {"4", "5"}}, rows); diff != "" {
		t.Errorf("rows (-want +got):\n%s", diff)
	}
	if diff := cmp.Diff([]int{4, 8, 10}, sheet.lines); diff != "" {
		t.Errorf("lines (-want +got):\n%s", diff)
	}
	if sheet.skipped != (Skipped{Blank: 3, Comments: 2}) {
		t.Errorf("skipped %+v, want 3 blank rows and 2 comments", sheet.skipped)
	}
}

// A cell that opens with a quote and does not close it as it should must not
// swallow what follows, and what follows is still read.
func TestQuotesThatDoNotPair(t *testing.T) {
	for _, bad := range []string{
		`1,"96"",x`,
		`1,"96""`,
		`"1,96`,
		`"8' 2"",b`,
	} {
		for _, after := range []string{"2,48\"\n3,6\n", "2,\"48\"\n3,\"6\"\n", "2,48\n3,6\"\n", "2,\"48\"\"\"\n3,\"\"\"6\"\"\"\n"} {
			rows, sheet := readRows[pair](strings.NewReader("a,b\n"+bad+"\n"+after), "t.csv", layout.StockTable)
			if len(sheet.faults) == 0 || sheet.faults[0].Line != 2 {
				t.Errorf("%q before %q: complaints %v, want one about line 2", bad, after, sheet.faults)
			}
			for _, row := range rows {
				if strings.Contains(row.A+row.B, "\n") {
					t.Errorf("%q before %q: swallowed in %q", bad, after, row)
				}
			}
		}
	}
}

func TestTableComplaints(t *testing.T) {
	for _, test := range []struct {
		name, text string
		want       []string
	}{
		{"empty", "", []string{`t.csv: is empty: want a row with the names of the columns, a and, if you like, b`}},
		{"comments only", "# a\n\n", []string{`t.csv: is empty: want a row with the names of the columns, a and, if you like, b`}},
		{"UTF-16", "\xff\xfea\x00", []string{`t.csv: is UTF-16 text: save it as "CSV UTF-8"`}},
		{"Latin-1", "a,b\n1,\xbd\n", []string{`t.csv: line 2 is not UTF-8 text: save the file as "CSV UTF-8"`}},
		{"missing column", "b\n1\n", []string{`t.csv:1: a: the column is missing: want a and, if you like, b`}},
		{"repeated column", "a,b,A\n1,2,3\n", []string{`t.csv:1: a: the column is there twice`}},
		{"unknown column", "\na,bb\n1,2\n", []string{`t.csv:2: found "bb", which is no column: want one of a, b (did you mean "b"?)`}},
		{"cells too many", "a,b\n1,5,5\n", []string{`t.csv:2: found "5", in cell 3, beyond the last column: want a cell with a separator in it in quotes`}},
		{"column without a name", "a,,b\n1,7,2\n", []string{`t.csv:2: column 2, which has no name: found "7", want a name in the header`}},
		{"quotes", "a,b\n1,\"x\n", []string{`t.csv:2: found "1,\"x", want quotes in pairs: leave them out around a cell with an inch mark, or write "96"""`}},
	} {
		_, sheet := readRows[pair](strings.NewReader(test.text), "t.csv", layout.StockTable)
		var got []string
		for _, c := range sheet.faults {
			got = append(got, c.String())
		}
		if diff := cmp.Diff(test.want, got); diff != "" {
			t.Errorf("%s (-want +got):\n%s", test.name, diff)
		}
	}
}
