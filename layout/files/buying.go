package files

import (
	"encoding/csv"
	"io"
	"strconv"

	"sawbill/layout"
)

// Buying is boards to buy, for another program or for a spreadsheet.
type Buying struct {
	Shop    *layout.Shop
	Boards  []*layout.Board
	Paid    layout.Money
	Bound   *layout.Money // nil: nothing is proven
	Proof   string        // in words
	Missing []layout.Missing
}

func buyingColumns() []string {
	return []string{
		"board", "species", "thickness", "width", "tip_width", "length", "price", "board_feet", "as_tallied", "m3",
		"edges", "faces", "place", "grade", "note", "defects",
	}
}

// WriteBuyingTable writes a row a board. Cells of words are such that a spreadsheet
// leaves them as they are. Errors are those of w.
func WriteBuyingTable(w io.Writer, b Buying) error {
	rows := [][]string{buyingColumns()}
	for _, board := range b.Boards {
		s := toStockRow(b.Shop, board)
		m := measured(board)
		rows = append(rows, []string{
			s.Board, s.Species, s.Thickness, s.Width, s.TipWidth, s.Length, board.Cost.String(),
			decimal(m.BoardFeet, 4), strconv.FormatInt(m.Tallied, 10), decimal(m.Volume/1e9, 6),
			s.Edges, s.Faces, s.Place, s.Grade, s.Note, s.Defects,
		})
	}
	return csv.NewWriter(w).WriteAll(rows)
}

func decimal(v float64, places int) string { return strconv.FormatFloat(v, 'f', places, 64) }

// bought1 is the JSON of a board to buy: lengths in nanometres, volume in cubic
// millimetres.
type bought1 struct {
	Board     string `json:"board"`
	Species   string `json:"species"`
	Thickness nm     `json:"thickness"`
	Width     nm     `json:"width"`
	TipWidth  nm     `json:"tip_width"`
	Length    nm     `json:"length"`
	Price     money  `json:"price"`
	measured1
	Edges   string `json:"edges"`
	Faces   string `json:"faces"`
	Place   string `json:"place,omitempty"`
	Grade   string `json:"grade,omitempty"`
	Note    string `json:"note,omitempty"`
	Defects string `json:"defects,omitempty"`
}

// measured1 is how much wood there is: exact, and as hardwood sellers tally it.
type measured1 struct {
	Volume    float64 `json:"volume"`
	BoardFeet float64 `json:"board_feet"`
	Tallied   int64   `json:"as_tallied"`
}

func measured(b *layout.Board) measured1 {
	return measured1{b.Volume().MM3(), b.Volume().BoardFeet(), layout.TradeFeet([]*layout.Board{b})}
}

type buying1 struct {
	Paid    money        `json:"paid"`
	Bound   *money       `json:"bound"`
	Gap     *float64     `json:"gap"`
	Proof   string       `json:"proof"`
	Boards  []bought1    `json:"boards"`
	Groups  []buyingSum1 `json:"groups"`
	Missing []missing1   `json:"missing"`
}

// buyingSum1 is the boards of one species and thickness.
type buyingSum1 struct {
	Species   string `json:"species"`
	Thickness nm     `json:"thickness"`
	Faces     string `json:"faces"`
	Boards    int    `json:"boards"`
	Price     money  `json:"price"`
	measured1
}

// WriteBuying writes boards to buy, with sums by species and thickness, as one JSON
// object. Errors are those of w.
func WriteBuying(w io.Writer, b Buying) error {
	out := buying1{
		Paid: money(b.Paid), Bound: (*money)(b.Bound), Proof: b.Proof,
		Boards:  each(b.Boards, toBought1),
		Groups:  each(layout.Tally(b.Shop, soldBoards(b.Boards)), toBuyingSum1),
		Missing: each(b.Missing, toMissing1),
	}
	if gap, ok := (layout.Totals{Cost: b.Paid, Bound: b.Bound}).Gap(); ok {
		out.Gap = &gap
	}
	return writeJSON(w, out)
}

func toBought1(b *layout.Board) bought1 {
	return bought1{
		Board: b.Mark, Species: b.Species, Thickness: nm(b.Thickness), Width: nm(b.Width), TipWidth: nm(b.TipWidth),
		Length: nm(b.Length), Price: money(b.Cost), measured1: measured(b), Edges: b.Edges.String(), Faces: b.Faces.String(),
		Place: b.Place, Grade: b.Grade, Note: b.Note, Defects: WrittenDefects(b, layout.Millimetres),
	}
}

func toBuyingSum1(g layout.TallyGroup) buyingSum1 {
	return buyingSum1{
		Species: g.Species, Thickness: nm(g.Thickness), Faces: g.Faces.String(), Boards: len(g.Boards), Price: money(g.Worth),
		measured1: measured1{g.Volume.MM3(), g.Volume.BoardFeet(), g.Trade},
	}
}

func soldBoards(list []*layout.Board) []layout.Board {
	return each(list, func(b *layout.Board) layout.Board { return *b })
}
