package layout

import (
	"maps"
	"slices"
	"strings"
	"unicode"
)

// Unpriced is the Cost of a board that has none of its own: NewProblem gives it
// the shop's default cost.
const Unpriced Money = -1

// newStock checks the boards and gives copies of them with their cost filled in
// and their defects clipped.
func newStock(cs *Complaints, shop *Shop, stock []Board) []Board {
	if len(stock) == 0 {
		about{cs, StockTable, WholeTable}.fault("", "", "there are no boards in it")
	}
	checked := make([]Board, len(stock))
	for i, b := range stock {
		a := about{cs, StockTable, i}
		if counted := b.Base != b.Mark; counted && i > 0 && stock[i-1].Base == b.Base {
			a.to = new(Complaints) // the same was said of the first board of the row
		} else if counted && len(b.Defects) > 0 {
			a.warn("count", "", "every one of these boards is taken to have the same defects")
		}
		checkBoard(a, &b)
		checkCost(a, shop, &b)
		b.Defects = checkDefects(a, shop, &b)
		checked[i] = b
	}
	checkMarks(cs, stock)
	return checked
}

// checkMarks sees to it that every mark means one board, and every mark before
// count one row.
func checkMarks(cs *Complaints, stock []Board) {
	seen := map[string]bool{}
	claim := func(row int, mark string) {
		if fold := strings.ToLower(strings.TrimSpace(mark)); seen[fold] {
			about{cs, StockTable, row}.fault("board", mark, "want a mark that no other board bears")
		} else {
			seen[fold] = true
		}
	}
	for i, b := range stock {
		first := i == 0 || stock[i-1].Base != b.Base
		if b.Base != b.Mark && first && b.Base != "" {
			claim(i, b.Base)
		}
		claim(i, b.Mark)
	}
}

func checkBoard(a about, b *Board) {
	checkName(a, "board", b.Mark)
	checkName(a, "species", b.Species)
	checkSize(a, "thickness", b.Thickness)
	checkSize(a, "width", b.Width)
	if b.TipWidth != b.Width { // otherwise it was said of the width
		checkSize(a, "tip_width", b.TipWidth)
	}
	checkSize(a, "length", b.Length)
	for _, gap := range []shopLength{{"bow", b.Bow}, {"crook", b.Crook}, {"cup", b.Cup}, {"twist", b.Twist}} {
		if gap.length < 0 || gap.length > MaxLength {
			a.fault(gap.key, gap.length.String(), "want a length from 0 to 30 m")
		}
	}
}

// checkName wants a name that can be printed on one line.
func checkName(a about, column, name string) {
	if strings.TrimSpace(name) == "" {
		a.fault(column, "", "is empty: want a name")
	} else if strings.ContainsFunc(name, unicode.IsControl) {
		a.fault(column, name, "want a name on one line")
	}
}

func checkSize(a about, column string, l Length) {
	if l <= 0 || l > MaxLength {
		a.fault(column, l.String(), "want a length of more than 0 and at most 30 m")
	}
}

func checkCost(a about, shop *Shop, b *Board) {
	if b.Cost == Unpriced {
		cost, ok := shop.DefaultCost(b)
		switch {
		case ok && len(shop.Price) == 0 && shop.Charges != nil:
			a.fault("cost", "", "is empty, and the shop has no prices, though its quote counts in money: give the board a cost or the species a price")
		case !ok:
			a.fault("cost", "", "is empty, and the shop has prices but none for "+b.Species+
				nearPrice(shop, b.Species)+": give the board a cost or the species a price")
		}
		b.Cost = cost
	}
	if b.Cost < 0 || b.Cost > MaxMoney {
		a.fault("cost", b.Cost.String(), "want an amount from 0 to "+MaxMoney.String())
	}
}

// checkPriced warns of prices for species that no board has, for they may be
// misspelt.
func checkPriced(cs *Complaints, shop *Shop, stock []Board) {
	species, complete := speciesOf(stock)
	if !complete {
		return
	}
	for _, name := range slices.Sorted(maps.Keys(shop.Price)) {
		if !slices.ContainsFunc(species, func(s string) bool { return SameSpecies(s, name) }) {
			about{cs, ShopTable, WholeTable}.warn("price."+name, name, "of which the stock has no board"+didYouMean(name, species))
		}
	}
}

func nearPrice(shop *Shop, species string) string {
	var priced []string
	for name := range shop.Price {
		priced = append(priced, name)
	}
	return didYouMean(species, priced)
}
