package files

import (
	"encoding/csv"
	"io"
	"math"
	"strconv"
	"strings"

	"sawbill/layout"
)

// Asking is how much wood to ask for, for another program or for a spreadsheet.
type Asking struct {
	Shop    *layout.Shop
	Woods   []Asked
	Missing []layout.Missing // that the rack leaves
	Not     []layout.Missing // that no bought board helps
	Assumed []string         // a sentence each
}

// Asked is how much to ask for of one species and rough thickness.
type Asked struct {
	Species   string
	Thickness layout.Length
	Parts     []string
	// Of so many Piles, so many were Short of wood however much was taken.
	Piles, Short int
	// Half is what half of the piles needed no more than, Most what nine in ten did; nil
	// where it is not known.
	Half, Most *AskedWood
	// Width and Length are those of the least board that is of use.
	Width, Length layout.Length
}

// AskedWood is an amount of wood, with what the Amount of it costs at the shop's price:
// nil where the shop has none.
type AskedWood struct {
	Boards int
	Volume *layout.Volume
	Price  *layout.Money
}

// Amount is a volume in thousandths of a board foot or of a cubic metre, as the shop
// prices wood, rounded up to a whole board foot or a thousandth of a cubic metre, and
// the unit.
func Amount(shop *layout.Shop, v *layout.Volume) (thousandths int64, unit string) {
	if shop.PriceUnit == layout.PerCubicMetre {
		return int64(math.Ceil(v.MM3() / 1e6)), "m3"
	}
	return 1000 * int64(math.Ceil(v.BoardFeet())), "board feet"
}

// Thousandths writes an amount with as many decimals as it needs.
func Thousandths(n int64) string { return strconv.FormatFloat(float64(n)/1000, 'f', -1, 64) }

func askingColumns() []string {
	return []string{"species", "thickness", "ask_for", "half_needed", "unit", "boards", "price", "least_width", "least_length", "parts"}
}

// WriteAskingTable writes a row a species and thickness; ask_for is what nine in ten
// piles needed. Errors are those of w.
func WriteAskingTable(w io.Writer, a Asking) error {
	rows := [][]string{askingColumns()}
	for _, k := range a.Woods {
		size := func(l layout.Length) string { return nonZero(l > 0, writtenLength(l, a.Shop.Units)) }
		row := []string{asText(k.Species), size(k.Thickness), "", "", "", "", "", size(k.Width), size(k.Length), asText(strings.Join(k.Parts, "; "))}
		if k.Half != nil {
			half, _ := Amount(a.Shop, k.Half.Volume)
			row[3] = Thousandths(half)
		}
		if k.Most != nil {
			most, unit := Amount(a.Shop, k.Most.Volume)
			row[2], row[4], row[5] = Thousandths(most), unit, strconv.Itoa(k.Most.Boards)
			if k.Most.Price != nil {
				row[6] = k.Most.Price.String()
			}
		}
		rows = append(rows, row)
	}
	return csv.NewWriter(w).WriteAll(rows)
}

// asking1 is the JSON of an Asking: lengths in nanometres, volumes in cubic
// millimetres, exact.
type asking1 struct {
	Woods   []asked1   `json:"woods"`
	Missing []missing1 `json:"rack_lacks"`
	Not     []missing1 `json:"not_to_be_bought"`
	Assumed []string   `json:"assumed"`
}

type asked1 struct {
	Species   string      `json:"species"`
	Thickness nm          `json:"thickness"`
	Parts     []string    `json:"parts"`
	Piles     int         `json:"piles"`
	Short     int         `json:"piles_short"`
	Half      *askedWood1 `json:"half_needed"`
	Most      *askedWood1 `json:"nine_in_ten_needed"`
	Width     nm          `json:"least_width"`
	Length    nm          `json:"least_length"`
}

type askedWood1 struct {
	Boards    int     `json:"boards"`
	Volume    float64 `json:"volume"`
	BoardFeet float64 `json:"board_feet"`
	Price     *money  `json:"price"`
}

// WriteAsking writes how much to ask for as one JSON object. Errors are those of w.
func WriteAsking(w io.Writer, a Asking) error {
	return writeJSON(w, asking1{
		Woods: each(a.Woods, toAsked1), Missing: each(a.Missing, toMissing1), Not: each(a.Not, toMissing1), Assumed: a.Assumed,
	})
}

func toAsked1(k Asked) asked1 {
	return asked1{
		Species: k.Species, Thickness: nm(k.Thickness), Parts: k.Parts, Piles: k.Piles, Short: k.Short,
		Half: toAskedWood1(k.Half), Most: toAskedWood1(k.Most), Width: nm(k.Width), Length: nm(k.Length),
	}
}

func toAskedWood1(a *AskedWood) *askedWood1 {
	if a == nil {
		return nil
	}
	return &askedWood1{a.Boards, a.Volume.MM3(), a.Volume.BoardFeet(), (*money)(a.Price)}
}
