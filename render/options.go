package render

import "sawbill/layout/steps"

// Paper is a sheet of paper, always used landscape.
type Paper uint8

// The papers that a sheet can be drawn for.
const (
	Letter Paper = iota // 11 by 8-1/2 in
	A4                  // 297 by 210 mm
)

// size is width and height in millimetres.
func (p Paper) size() (w, h float64) {
	if p == A4 {
		return 297, 210
	}
	return 279.4, 215.9
}

// Options say how sheets are drawn. The zero Options draws for letter paper.
// Lengths print in the units of the plan's shop.
type Options struct {
	Paper Paper
	// Order is the order of work that the steps are numbered in.
	Order steps.Order
}
