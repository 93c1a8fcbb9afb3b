package layout

// WithoutPrices says what a board counts where the shop has no price at all and some
// board has no cost of its own; otherwise it is empty.
func (s *Shop) WithoutPrices(boards []Board) string {
	if len(s.Price) > 0 {
		return ""
	}
	usual := 0
	for i := range boards {
		if cost, ok := s.DefaultCost(&boards[i]); ok && cost == boards[i].Cost {
			usual++
		}
	}
	unit := "board foot"
	if s.PriceUnit == PerCubicMetre {
		unit = "cubic metre"
	}
	switch usual {
	case 0:
		return ""
	case len(boards):
		return "no prices: every " + unit + " counts 1"
	}
	return "no prices: every " + unit + " of a board without a cost counts 1"
}
