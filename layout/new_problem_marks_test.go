package layout

import (
	"slices"
	"strings"
	"testing"
)

// A bill is used again after boards that it names were cut: what is left of them, which
// restock writes into the stock, is the same wood.
func TestMarksStandForWhatIsLeft(t *testing.T) {
	for _, c := range []struct{ stock, mark, want, told string }{
		{"A4.2 A1", "A4", "A4.2", "taken for what is left of it, A4.2"},
		{"A4.1-K1 A4.2 A1", "a4", "A4.1-K1 A4.2", "taken for what is left of it, A4.1-K1, A4.2"},
		{"E1-K1 E1-2-R1 E10 E10-K1 E2", "E1", "E1-K1 E1-2-R1", "taken for what is left of it, E1-K1, E1-2-R1"},
		{"E1 E1-K1", "E1", "E1", ""}, // the board itself is there
		{"E1.old E1b E", "E1", "", "which no board bears"},
		{"A-K1", ".", "", "which no board bears: leave it out if that board is gone"},
	} {
		var stock []Board
		for mark := range strings.FieldsSeq(c.stock) {
			stock = append(stock, Board{Mark: mark, Base: mark})
		}
		var cs Complaints
		got := resolveMarks(about{&cs, BillTable, 1}, "from", []string{c.mark}, stock)
		if want := strings.Fields(c.want); !slices.Equal(got, want) {
			t.Errorf("%s in %s: got %v, want %v", c.mark, c.stock, got, want)
		}
		if told := strings.Join(tell(cs), "\n"); (c.told == "") != (len(cs) == 0) || !strings.Contains(told, c.told) || len(cs.Faults()) > 0 != (c.want == "") {
			t.Errorf("%s in %s: told %q, want %q", c.mark, c.stock, told, c.told)
		}
	}
}
