package steps

import "sawbill/layout"

// Truing is what it costs to true a blank.
type Truing struct {
	From     layout.Length // thickness of the board
	Faces    layout.Flattening
	Finishes layout.Length // the thickness that is then left at most
	// Hollow is what a crooked reference edge takes at the ends of the blank, beyond
	// what is jointed off all along it.
	Hollow layout.Length
	Losses layout.Losses
}

func truingOf(shop *layout.Shop, b *layout.Board, blank layout.Rect) Truing {
	return Truing{
		From: b.Thickness, Faces: shop.FlatteningOf(b, blank), Finishes: shop.AvailableIn(b, blank),
		Hollow: max(0, b.Shift(blank.Length())-blank.Y1), Losses: shop.LossesOf(b, blank),
	}
}
