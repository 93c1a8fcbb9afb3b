package layout

import (
	"cmp"
	"maps"
	"slices"
)

// Copies is how many whole copies of a set a plan makes that have so many slices.
type Copies struct{ Count, Slices int }

// Copies lists the whole copies of a set that a plan makes, those with the most slices
// first. Strips that are cut already count, wherever they were cut from.
func (p *Plan) Copies(set Set) []Copies { return p.Problem.copies(set, p.Strips()) }

// Waiting are the strips of glue-ups that are cut and in no whole copy, for the others
// of theirs are neither cut nor planned. Of strips that are alike those wait that were
// cut last.
func (p *Plan) Waiting() []CutPiece {
	if p.Record == nil {
		return nil
	}
	room := map[string]map[int]int{}
	for _, set := range p.Problem.Sets() {
		for _, c := range p.Copies(set) {
			for _, i := range set.Rows {
				row := &p.Problem.Bill[i]
				addStrips(room, row.Name, c.Slices, c.Count*row.Quantity)
			}
		}
	}
	var list []CutPiece
	for _, c := range p.Record.Cut {
		switch part := p.Problem.Part(c.Part); {
		case part == nil || part.Set == "":
		case room[c.Part][c.Slices] > 0:
			room[c.Part][c.Slices]--
		default:
			list = append(list, c)
		}
	}
	return list
}

// Strips counts the strips of glue-ups that a plan makes or that are cut, by the name of
// their row and by their slices.
func (p *Plan) Strips() map[string]map[int]int {
	strips := map[string]map[int]int{}
	for _, b := range p.Boards {
		for _, leaf := range b.Root.Leaves() {
			if leaf.Slices > 0 {
				addStrips(strips, leaf.Part, leaf.Slices, leaf.Pieces())
			}
		}
	}
	for _, c := range p.CutElsewhere() {
		if c.Slices > 0 {
			addStrips(strips, c.Part, c.Slices, 1)
		}
	}
	return strips
}

func addStrips(strips map[string]map[int]int, row string, slices, n int) {
	if strips[row] == nil {
		strips[row] = map[int]int{}
	}
	strips[row][slices] += n
}

// copies lists the whole copies of a set among strips that are counted by the name of
// their row and by their slices.
func (p *Problem) copies(set Set, strips map[string]map[int]int) []Copies {
	var list []Copies
	of := func(row int) map[int]int { return strips[p.Bill[row].Name] }
	for _, k := range slices.SortedFunc(maps.Keys(of(set.Rows[0])), func(a, b int) int { return cmp.Compare(b, a) }) {
		n := of(set.Rows[0])[k]
		for _, i := range set.Rows {
			n = min(n, of(i)[k]/max(1, p.Bill[i].Quantity))
		}
		if n > 0 {
			list = append(list, Copies{n, k})
		}
	}
	return list
}

// slicesMade counts the slices of the whole copies of a set.
func (p *Problem) slicesMade(set Set, strips map[string]map[int]int) int {
	made := 0
	for _, c := range p.copies(set, strips) {
		made += c.Count * c.Slices
	}
	return made
}
