package files

import (
	"encoding/csv"
	"io"
	"strconv"

	"sawbill/layout"
	"sawbill/layout/quote"
)

// quoteColumns are the columns of a quote. What a line is of stands in the first: a
// board, a part, wood of no part, a finished piece, all wood, hours, finish, hardware,
// margin or the total. The lines of boards, those of parts with the wood of no part, and
// those of pieces, if there are any, with the wood of no part, each add up to all wood.
func quoteColumns() []string {
	return []string{"line", "name", "piece", "quantity", "spare", "cost", "returned", "amount"}
}

// WriteQuote writes a quote as a table, with exact amounts. Errors are those of w.
func WriteQuote(w io.Writer, q *quote.Quote) error {
	rows := [][]string{quoteColumns()}
	for i := range q.Boards {
		b := &q.Boards[i]
		rows = append(rows, []string{"board", asText(b.Mark), "", "", "", b.Cost.String(), b.Returned.String(), b.Net().String()})
	}
	for _, p := range q.Parts {
		rows = append(rows, []string{
			"part", asText(p.Name), asText(p.Piece), strconv.Itoa(p.Needed), nonZero(p.Spares > 0, strconv.Itoa(p.Spares)), "", "", p.Wood.String(),
		})
	}
	line := func(what, name, quantity string, amount layout.Money) {
		rows = append(rows, []string{what, name, "", quantity, "", "", "", amount.String()})
	}
	if q.Loose != 0 {
		line("no part", "", "", q.Loose)
	}
	for _, p := range q.Pieces {
		line("piece", asText(p.Name), "", p.Wood)
	}
	line("wood", "", "", q.Wood)
	if c := q.Charges; c != nil {
		line("hours", "at "+c.Rate.String(), c.Hours.String(), q.Labour)
		line("finish", "", "", c.Finish)
		line("hardware", "", "", c.Hardware)
		line("margin", "", c.Margin.String(), q.Margin)
		line("total", "", "", q.Total)
	}
	return csv.NewWriter(w).WriteAll(rows)
}

// quoteReport1 is the JSON of a quote. Money is in decimals.
type quoteReport1 struct {
	Job       string          `json:"job"`
	Revision  int             `json:"revision"`
	CheckWord string          `json:"check_word"`
	Boards    []quotedBoard1  `json:"boards"`
	Parts     []quotedPart1   `json:"parts"`
	NoPart    money           `json:"no_part,omitempty"`
	Pieces    []quotedPiece1  `json:"pieces,omitempty"`
	Wood      money           `json:"wood"`
	Charges   *quotedCharges1 `json:"quote,omitempty"`
	Total     money           `json:"total"`
	Missing   []missing1      `json:"missing"`
}

type quotedBoard1 struct {
	Board    string `json:"board"`
	Bought   bool   `json:"bought,omitempty"`
	Cost     money  `json:"cost"`
	Returned money  `json:"returned"`
	Net      money  `json:"net"`
}

type quotedPart1 struct {
	Part   string `json:"part"`
	Piece  string `json:"piece,omitempty"`
	Pieces int    `json:"pieces"`
	Spare  int    `json:"spare,omitempty"`
	Wood   money  `json:"wood"`
}

type quotedPiece1 struct {
	Piece string `json:"piece"`
	Wood  money  `json:"wood"`
}

type quotedCharges1 struct {
	quote1
	Labour money `json:"labour"`
	Amount money `json:"margin_amount"`
}

// WriteQuoteReport writes the quote of a report's plan as one JSON object. Errors are
// those of w.
func WriteQuoteReport(w io.Writer, r Report, q *quote.Quote) error {
	out := quoteReport1{
		Job: r.Plan.Job, Revision: r.Plan.Revision, CheckWord: r.CheckWord,
		Boards: each(q.Boards, func(b quote.Board) quotedBoard1 {
			return quotedBoard1{b.Mark, b.Bought, money(b.Cost), money(b.Returned), money(b.Net())}
		}),
		Parts: each(q.Parts, func(p quote.Part) quotedPart1 {
			return quotedPart1{p.Name, p.Piece, p.Needed, p.Spares, money(p.Wood)}
		}),
		NoPart: money(q.Loose),
		Pieces: each(q.Pieces, func(p quote.Piece) quotedPiece1 { return quotedPiece1{p.Name, money(p.Wood)} }),
		Wood:   money(q.Wood), Total: money(q.Total),
		Missing: each(r.Plan.Missing, toMissing1),
	}
	if c := toQuote1(q.Charges); c != nil {
		out.Charges = &quotedCharges1{*c, money(q.Labour), money(q.Margin)}
	}
	return writeJSON(w, out)
}
