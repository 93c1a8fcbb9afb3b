package render

import (
	"fmt"
	"strings"

	"sawbill/layout"
)

// copies tells which strips are glued together: a row for the copies of a set that
// have the same number of slices.
func (s *sheet) copies(w words) {
	cols := columns(s.width(), []string{"set", "to glue", "strips of a copy", "long", "slices"}, []float64{24, 44, 100, 30, 40})
	var rows [][]string
	p := &s.plan.Problem
	for _, set := range p.Sets() {
		made := 0
		for _, c := range s.plan.Copies(set) {
			made += c.Count * c.Slices
			rows = append(rows, []string{
				set.Name, fmt.Sprintf("%s of %s", copiesIn(c.Count), counted(c.Slices, "slice")), stripsOf(p, set),
				w.reading(p.Shop.StripLength(&p.Bill[set.Rows[0]], c.Slices)), "",
			})
		}
		if made > 0 {
			rows[len(rows)-1][4] = fmt.Sprintf("%d of %d", made, set.Slices)
		}
	}
	if len(rows) > 0 {
		s.table("Glue-ups", cols, rows)
	}
}

func copiesIn(n int) string {
	if n == 1 {
		return "1 copy"
	}
	return fmt.Sprintf("%d copies", n)
}

// stripsOf lists the strips of one copy of a set.
func stripsOf(p *layout.Problem, set layout.Set) string {
	var list []string
	for _, i := range set.Rows {
		list = append(list, fmt.Sprintf("%d%c%s", p.Bill[i].Quantity, hold, p.Bill[i].Name))
	}
	return strings.Join(list, ", ")
}
