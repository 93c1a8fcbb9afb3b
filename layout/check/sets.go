package check

import (
	"cmp"
	"maps"
	"slices"
	"strconv"

	"sawbill/layout"
)

// strips counts the strips of one row of a set by their k.
type strips map[int]int

// missingSlices judges every glue-up set: for each k the strips make a whole
// number of copies, and what the copies lack in slices is wanted as missing. In a
// plan that goes on, strips that are cut count with the others of their copies, on
// whatever board they were; where these are not to be had a strip may wait for them
// if it is cut, but no other is to be cut for nothing.
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
	cut := j.cutStrips(count)
	rows := map[string][]*layout.Part{}
	for i := range j.plan.Problem.Bill {
		p := &j.plan.Problem.Bill[i]
		if p.Set != "" {
			rows[p.Set] = append(rows[p.Set], p)
		}
	}
	for _, set := range slices.Sorted(maps.Keys(rows)) {
		sameSet(set, rows[set], note)
		want[set] = max(0, rows[set][0].Slices-madeSlices(set, rows[set], count, cut, note))
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

// cutStrips counts the strips that the record of the job says are cut, by row, and
// adds to count those of boards that the plan no longer holds.
func (j *job) cutStrips(count map[string]strips) map[string]strips {
	cut := map[string]strips{}
	if j.plan.Record == nil {
		return cut
	}
	held := map[string]bool{}
	j.eachPart(func(_ *sawn, at *spot) {
		for n := range at.pieces() {
			held[layerID(at, n)] = true
		}
	})
	for i := range j.plan.Record.Cut {
		c := &j.plan.Record.Cut[i]
		if row := j.part(c.Part); row == nil || row.Set == "" {
			continue
		}
		for _, tally := range []map[string]strips{cut, count} {
			if tally[c.Part] == nil {
				tally[c.Part] = strips{}
			}
		}
		cut[c.Part][c.Slices]++
		if !held[c.Wood.Mark] {
			count[c.Part][c.Slices]++
		}
	}
	return cut
}

// layerID is the id of one of the pieces of a part leaf, counted from 0.
func layerID(at *spot, n int) string {
	if at.pieces() == 1 {
		return at.ID
	}
	return at.ID + strconv.Itoa(n+1)
}

// madeSlices adds up the slices of the whole copies of a set.
func madeSlices(set string, rows []*layout.Part, count, cut map[string]strips, note note) int {
	total := 0
	ks := map[int]bool{}
	for _, p := range rows {
		for k := range count[p.Name] {
			ks[k] = true
		}
	}
	for _, k := range slices.SortedFunc(maps.Keys(ks), cmp.Compare[int]) {
		copies := count[rows[0].Name][k] / max(rows[0].Quantity, 1)
		for _, p := range rows[1:] {
			copies = min(copies, count[p.Name][k]/max(p.Quantity, 1))
		}
		for _, p := range rows {
			if n := count[p.Name][k]; n-copies*p.Quantity > cut[p.Name][k] {
				note("", "", "set %s: %d strips of %s with %d slices do not make whole copies with the other rows",
					set, n, p.Name, k)
			}
		}
		total += copies * k
	}
	return total
}
