package render

import (
	"fmt"
	"strings"
)

// mostTicks is how many boxes a row of the bill has at most; of more pieces a
// tally is kept by hand.
const mostTicks = 60

// bill lists the parts with a box for every piece that the plan makes.
func (b *booklet) bill(s *sheet) {
	made := map[string]int{}
	for _, sheet := range b.sheets {
		for _, st := range sheet.Steps {
			if st.Part != "" {
				made[st.Part]++
			}
		}
	}
	cols := columns(s.width(), []string{"part", "finished size", "made", "tick off"}, []float64{54, 56, 30, 120})
	var rows [][]string
	for i := range b.plan.Problem.Bill {
		p := &b.plan.Problem.Bill[i]
		size := b.size(p.Length, p.Width, p.Thickness)
		count := fmt.Sprintf("%d of %d", made[p.Name], p.Quantity)
		if p.Set != "" {
			size, count = b.size(p.Width, p.Thickness)+", set "+p.Set, fmt.Sprint(made[p.Name])
		}
		rows = append(rows, []string{p.Name, size, count, ticks(made[p.Name])})
	}
	s.table("Parts", cols, rows)
	for _, m := range b.plan.Missing {
		line := newBlock(s.types)
		line.height = line.lines(fmt.Sprintf("%d of %s MISSING: %s", m.Quantity, m.Part, m.Why), 0, textCap+1, s.width(), strong()) + 2
		s.add(line, 0)
	}
}

func ticks(n int) string {
	if n > mostTicks {
		return fmt.Sprintf("%d: keep a tally", n)
	}
	return strings.Repeat(tickCell, n)
}
