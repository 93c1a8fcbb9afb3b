package check

import (
	"cmp"
	"maps"
	"slices"

	"sawbill/layout"
)

// strips counts the strips of one row of a set by their k.
type strips map[int]int

// missingSlices judges every glue-up set: for each k the strips make a whole
// number of copies, and what the copies lack in slices is wanted as missing.
func (j *job) missingSlices(want map[string]int, note note) {
	count := map[string]strips{}
	j.eachPart(func(s *sawn, at *spot) {
		if at.part.Set == "" {
			return
		}
		if at.Slices < 1 {
			note(s.wood.Mark, j.place(at), "a strip of set %q does not say how many slices it gives", at.part.Set)
		}
		if least := j.shop.MinBlank; at.Length() < least {
			note(s.wood.Mark, j.place(at), "the strip is %v long; a glue-up is at least %v", at.Length(), least)
		}
		if count[at.Part] == nil {
			count[at.Part] = strips{}
		}
		count[at.Part][at.Slices] += at.pieces()
	})
	rows := map[string][]*layout.Part{}
	for i := range j.plan.Problem.Bill {
		p := &j.plan.Problem.Bill[i]
		if p.Set != "" {
			rows[p.Set] = append(rows[p.Set], p)
		}
	}
	for _, set := range slices.Sorted(maps.Keys(rows)) {
		sameSet(set, rows[set], note)
		want[set] = max(0, rows[set][0].Slices-madeSlices(set, rows[set], count, note))
	}
}

// sameSet: the rows of a set ask for the same slices, as thick and as urgent.
func sameSet(set string, rows []*layout.Part, note note) {
	first := rows[0]
	for _, p := range rows[1:] {
		if p.Slices != first.Slices || p.SliceThickness != first.SliceThickness || p.Priority != first.Priority {
			note("", "", "set %s: %s and %s ask for other slices or have other priorities", set, first.Name, p.Name)
		}
	}
}

// madeSlices adds up the slices of the whole copies of a set.
func madeSlices(set string, rows []*layout.Part, count map[string]strips, note note) int {
	total := 0
	ks := map[int]bool{}
	for _, p := range rows {
		for k := range count[p.Name] {
			ks[k] = true
		}
	}
	for _, k := range slices.SortedFunc(maps.Keys(ks), cmp.Compare[int]) {
		first := rows[0]
		copies := count[first.Name][k] / max(first.Quantity, 1)
		for _, p := range rows {
			if n := count[p.Name][k]; n != copies*p.Quantity {
				note("", "", "set %s: %d strips of %s with %d slices do not make whole copies with the other rows",
					set, n, p.Name, k)
			}
		}
		total += copies * k
	}
	return total
}
