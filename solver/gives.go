package solver

import "sawbill/layout"

// mayGive reports whether a board could give a part, by species, marks, source and
// size.
func mayGive(p *layout.Problem, part *layout.Part, b *layout.Board) bool {
	return p.Allows(part, b) && p.CouldHold(part, b)
}

// gives tells by board and row of the bill which boards may give which parts.
func gives(p *layout.Problem) [][]bool {
	table := make([][]bool, len(p.Stock))
	for b := range table {
		table[b] = make([]bool, len(p.Bill))
		for i := range p.Bill {
			table[b][i] = mayGive(p, &p.Bill[i], &p.Stock[b])
		}
	}
	return table
}
