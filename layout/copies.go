package layout

import (
	"cmp"
	"maps"
	"slices"
)

// Copies is how many whole copies of a set a plan makes that have so many slices.
type Copies struct{ Count, Slices int }

// Copies lists the whole copies of a set that a plan makes, those with the most slices
// first.
func (p *Plan) Copies(set Set) []Copies {
	_, strips := countPieces(p.Boards)
	return p.Problem.copies(set, strips)
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
