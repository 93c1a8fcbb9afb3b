package quote

import (
	"fmt"
	"strconv"

	"sawbill/layout"
)

// LooseWords stand for the wood of boards that gave no piece.
const LooseWords = "wood of no part"

// Says is the mark of a board, and that it was bought.
func (b *Board) Says() string {
	switch {
	case b.Mark == "":
		return "boards cut before"
	case b.Bought:
		return b.Mark + " (yard, paid whole)"
	}
	return b.Mark
}

// Count is how many pieces there are of a part: 8, or 8 + 1 spare.
func (p *Part) Count() string {
	if p.Spares > 0 {
		return fmt.Sprintf("%d + %d spare", p.Needed, p.Spares)
	}
	return strconv.Itoa(p.Needed)
}

// Each is what the wood of one piece of a part costs on average, rounded down; there
// must be one that is needed.
func (p *Part) Each() layout.Money { return p.Wood / layout.Money(p.Needed) }

// Says is the name of a finished piece.
func (p *Piece) Says() string {
	if p.Name == "" {
		return "of no piece"
	}
	return p.Name
}

// MarginShare is the shop's share in percent: 25%.
func (q *Quote) MarginShare() string {
	return layout.Margin(100*q.Charges.Margin).String() + "%"
}
