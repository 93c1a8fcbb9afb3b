package layout

import (
	"maps"
	"slices"
	"strconv"
	"strings"
)

// MaxQuantity is the most pieces that one row of a bill may ask for.
const MaxQuantity = 100_000

// newBill checks the parts, each by itself, and gives copies of them.
func newBill(cs *Complaints, shop *Shop, bill []Part) []Part {
	if len(bill) == 0 {
		about{cs, BillTable, WholeTable}.fault("", "", "there are no parts in it")
	}
	seen := map[string]bool{}
	for i := range bill {
		a := about{cs, BillTable, i}
		checkPart(a, shop, &bill[i])
		fold := strings.ToLower(strings.TrimSpace(bill[i].Name))
		if seen[fold] && fold != "" {
			a.fault("part", bill[i].Name, "want a name that no other part has")
		}
		seen[fold] = true
	}
	checkSets(cs, bill)
	return slices.Clone(bill)
}

func checkPart(a about, shop *Shop, p *Part) {
	checkName(a, "part", p.Name)
	if len(p.Species) == 0 {
		a.fault("species", "", "is empty: want a species, or several such as ash|elm")
	}
	for _, s := range p.Species {
		checkName(a, "species", s)
	}
	checkSize(a, "thickness", p.Thickness)
	checkSize(a, "width", p.Width)
	if p.Set == "" {
		checkSize(a, "length", p.Length)
	}
	checkStrip(a, p)
	if p.Quantity < 1 || p.Quantity > MaxQuantity {
		a.fault("quantity", strconv.Itoa(p.Quantity), "want a whole number from 1 to "+strconv.Itoa(MaxQuantity)+
			`; to leave a row out put "# " in front of it`)
	}
	if p.Spare < 0 || p.Spare > MaxQuantity {
		a.fault("spare", strconv.Itoa(p.Spare), "want a whole number from 0 to "+strconv.Itoa(MaxQuantity))
	}
	if p.Priority < 0 {
		a.fault("priority", strconv.Itoa(p.Priority), "want 1, 2, … or nothing")
	}
	if p.Bevel < 0 || p.Bevel > 45*Degree {
		a.fault("bevel", p.Bevel.String(), "want degrees from 0 to 45")
	}
	for _, leave := range []struct {
		column string
		given  bool
	}{{"on_edge", p.OnEdge}, {"resaw", p.Resaw}} {
		if leave.given && p.Bevel > 0 {
			a.warn(leave.column, "yes", "which counts for nothing where the part has a bevel")
		}
	}
	if _, known := shop.Grades[p.Grade]; !known {
		a.fault("grade", p.Grade, WantOneOf(p.Grade, slices.Sorted(maps.Keys(shop.Grades))))
	}
}
