package mip

import "sawbill/layout"

// Bars states a job in which every part is as wide as its board: which pieces
// are crosscut from which bar (Kantorovich 1939, in English 1960). With y = 1
// for a bar that is cut and x pieces of part i from bar j,
//
//	least sum of cost(j) y(j)
//	sum over i of (length(i) + kerf) x(i, j) <= (length(j) - 2 trim + kerf) y(j)
//	sum over j of x(i, j) >= quantity(i)
//
// for a piece that ends at the end of the bar needs no kerf there. Of bars that
// are alike the first are cut, so that a program does not try them in every
// order.
func Bars(p *layout.Problem) *Model {
	m := &Model{}
	pieces := make([][]term, len(p.Bill))
	used := map[bar]int{}
	for j := range p.Stock {
		b := &p.Stock[j]
		y := m.variable(int64(b.Cost), 1)
		alike := bar{b.Length, b.Cost}
		if before, ok := used[alike]; ok {
			m.atLeast(0, term{1, before}, term{-1, y})
		}
		used[alike] = y
		fits := []term{{int64(b.Length - 2*p.Shop.EndTrim + p.Shop.CrosscutKerf), y}}
		for i := range p.Bill {
			x := m.variable(0, p.Bill[i].Quantity)
			fits = append(fits, term{-int64(p.Bill[i].Length + p.Shop.CrosscutKerf), x})
			pieces[i] = append(pieces[i], term{1, x})
		}
		m.atLeast(0, inMillimetres(fits)...)
	}
	for i := range p.Bill {
		m.atLeast(int64(p.Bill[i].Quantity), pieces[i]...)
	}
	return m
}

// bar is what makes bars alike.
type bar struct {
	length layout.Length
	cost   layout.Money
}

// inMillimetres divides lengths in nanometres so that the program keeps its
// precision. It panics on lengths that are no whole millimetres.
func inMillimetres(terms []term) []term {
	for i := range terms {
		if terms[i].factor%int64(layout.Millimetre) != 0 {
			panic("mip: a length is no whole number of millimetres")
		}
		terms[i].factor /= int64(layout.Millimetre)
	}
	return terms
}
