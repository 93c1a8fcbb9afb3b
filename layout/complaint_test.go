package layout

import (
	"strings"
	"testing"
)

func TestComplaintString(t *testing.T) {
	for _, test := range []struct {
		complaint Complaint
		want      string
	}{
		{
			Complaint{Table: StockTable, Row: 4, Column: "width", Found: "x", Want: "want a length", File: "stock.csv", Line: 7},
			`stock.csv:7: width: found "x", want a length`,
		},
		{Complaint{Table: BillTable, Row: 4, Column: "width", Want: "is empty"}, `bill row 5: width: is empty`},
		{Complaint{Table: ShopTable, Row: WholeTable, Want: "is odd"}, `shop: is odd`},
		{Complaint{Table: ShopTable, Row: WholeTable, Want: "is odd", File: "s.toml"}, `s.toml: is odd`},
	} {
		if got := test.complaint.String(); got != test.want {
			t.Errorf("got %q, want %q", got, test.want)
		}
	}
}

func TestComplaintsTellTwentyFaultsAndCountTheRest(t *testing.T) {
	var cs Complaints
	for i := range 27 {
		about{&cs, BillTable, i}.fault("part", "", "is empty")
		about{&cs, BillTable, i}.warn("note", "", "is long")
	}
	lines := strings.Split(cs.Error(), "\n")
	if len(lines) != 21 || lines[19] != "bill row 20: part: is empty" || lines[20] != "and 7 more" {
		t.Errorf("got %d lines:\n%s", len(lines), cs.Error())
	}
	if len(cs.Faults()) != 27 || len(cs.Warnings()) != 27 {
		t.Errorf("got %d faults and %d warnings, want 27 of each", len(cs.Faults()), len(cs.Warnings()))
	}
	if err := cs.Warnings().Err(); err != nil {
		t.Errorf("warnings alone are an error: %v", err)
	}
}
