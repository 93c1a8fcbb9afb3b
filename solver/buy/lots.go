package buy

import (
	"fmt"
	"slices"

	"sawbill/layout"
)

// lotsOf are the boards of the yard, by index into the stock; those that are alike,
// because they stand in one row of the stock and no part names but some of them, are
// in one lot. Of a lot it does not matter which boards are bought.
func lotsOf(p *layout.Problem) [][]int {
	var lots [][]int
	for i := range p.Stock {
		b := &p.Stock[i]
		if b.Source != layout.Yard {
			continue
		}
		at := slices.IndexFunc(lots, func(lot []int) bool { return alike(p, &p.Stock[lot[0]], b) })
		if at < 0 {
			at = len(lots)
			lots = append(lots, nil)
		}
		lots[at] = append(lots[at], i)
	}
	return lots
}

func alike(p *layout.Problem, a, b *layout.Board) bool {
	if a.Base == "" || a.Base != b.Base {
		return false
	}
	return !slices.ContainsFunc(p.Bill, func(part layout.Part) bool {
		return slices.Contains(part.From, a.Mark) != slices.Contains(part.From, b.Mark) ||
			slices.Contains(part.NotFrom, a.Mark) != slices.Contains(part.NotFrom, b.Mark)
	})
}

// among is how many boards of a lot are in a set.
func (d *decision) among(lot []int, marks []string) int {
	n := 0
	for _, b := range lot {
		if slices.Contains(marks, d.asked.Stock[b].Mark) {
			n++
		}
	}
	return n
}

// key names a set of boards by how many it has of each lot.
func (d *decision) key(marks []string) string {
	var n []int
	for _, lot := range d.lots {
		n = append(n, d.among(lot, marks))
	}
	return fmt.Sprint(n)
}
