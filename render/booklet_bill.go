package render

import (
	"fmt"
	"strings"
)

// mostTicks is how many boxes a row of the bill has at most; of more pieces a
// tally is kept by hand.
const mostTicks = 60

// bill lists the parts with a box for every piece that is cut, which is crossed off,
// or that the plan makes.
func (b *booklet) bill(s *sheet) {
	cut, toCut := b.pieces()
	cols := columns(s.width(), []string{"part", "finished size", "made", "tick off"}, []float64{54, 56, 38, 112})
	var rows [][]string
	for _, p := range b.plan.Wanted() {
		size := b.size(p.Length, p.Width, p.Thickness)
		count := madeOf(cut[p.Name]+toCut[p.Name], p.Quantity)
		if p.Set != "" {
			size, count = b.size(p.Width, p.Thickness)+", set "+p.Set, fmt.Sprint(cut[p.Name]+toCut[p.Name])
		}
		rows = append(rows, []string{p.Name, size, count, ticks(cut[p.Name], toCut[p.Name])})
	}
	s.table("Parts", cols, rows)
	s.copies(b.words)
	s.missing(b.plan.Missing)
}

// madeOf counts pieces against those that are needed; what is more is spare.
func madeOf(made, needed int) string {
	count := fmt.Sprintf("%d of %d", min(made, needed), needed)
	if made > needed {
		count += ", " + held(fmt.Sprintf("%d spare", made-needed))
	}
	return count
}

// pieces counts those that are cut and those that the plan will make, by part.
func (b *booklet) pieces() (cut, toCut map[string]int) {
	cut, toCut = map[string]int{}, map[string]int{}
	r := b.plan.Record
	if r != nil {
		for _, c := range r.Cut {
			cut[c.Part]++
		}
	}
	for _, sheet := range b.sheets {
		for _, st := range sheet.Steps {
			if st.Part != "" && !r.IsCut(st.Off) {
				toCut[st.Part]++
			}
		}
	}
	return cut, toCut
}

func ticks(done, open int) string {
	if done+open > mostTicks {
		return fmt.Sprintf("%d, %d of them cut: keep a tally", done+open, done)
	}
	return strings.Repeat(doneCell, done) + strings.Repeat(tickCell, open)
}
