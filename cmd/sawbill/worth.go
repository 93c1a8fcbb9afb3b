package main

import "sawbill/layout"

// unpriced says what the boards of a shop count where that is no money; otherwise it
// is empty.
func unpriced(shop *layout.Shop, boards []layout.Board) string { return shop.WithoutPrices(boards) }
