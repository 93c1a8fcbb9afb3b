package render

import (
	"fmt"
	"slices"

	"sawbill/layout/quote"
)

// quote is what the job costs, where its shop or its bill asks for that.
func (b *booklet) quote() []Page {
	if !quote.Asked(b.plan) {
		return nil
	}
	q := quote.Of(b.plan)
	s := b.newSheet()
	head := newBlock(s.types)
	y := head.lines("What the job costs", 0, titleCap+1, s.width(), style{titleCap, true})
	notes := "Each board counts with its cost less the worth of what is kept of it; its pieces share that by how much of its face they take. " +
		"Rounded to cents; quote.csv has the exact amounts."
	if why := b.shop.WithoutPrices(b.plan.Problem.Stock); why != "" {
		notes += " " + sentence(why)
	}
	head.height = head.lines(notes, 0, y+7, s.width(), plain()) + 4
	s.put(head)
	b.quotedLines(s, q)
	b.quotedPieces(s, q)
	b.quotedParts(s, q)
	b.quotedBoards(s, q)
	s.missing(b.plan.Missing)
	return s.finish("quote")
}

// quotedLines are the wood, the shop's own lines and the total.
func (b *booklet) quotedLines(s *sheet, q *quote.Quote) {
	rows := [][]string{{"wood", "", q.Wood.Cents()}}
	if c := q.Charges; c != nil {
		rows = append(rows, []string{"work", fmt.Sprintf("%s h at %s", c.Hours, c.Rate.Cents()), q.Labour.Cents()},
			[]string{"finish", "", c.Finish.Cents()}, []string{"hardware", "", c.Hardware.Cents()},
			[]string{"margin", q.MarginShare() + " of all these", q.Margin.Cents()},
			[]string{"total", "", q.Total.Cents()})
	}
	s.table("In all", amounts(columns(s.width(), []string{"", "", "amount"}, []float64{60, 100, 40}), 1), rows)
}

func (b *booklet) quotedPieces(s *sheet, q *quote.Quote) {
	var rows [][]string
	for i := range q.Pieces {
		rows = append(rows, []string{q.Pieces[i].Says(), q.Pieces[i].Wood.Cents()})
	}
	if len(rows) > 0 {
		cols := amounts(columns(s.width(), []string{"finished piece", "wood"}, []float64{160, 40}), 1)
		s.table("Wood by finished piece", cols, withLoose(rows, cols, q))
	}
}

func (b *booklet) quotedParts(s *sheet, q *quote.Quote) {
	cols := amounts(columns(s.width(), []string{"part", "finished piece", "pieces", "wood", "each"}, []float64{80, 80, 40, 30, 30}), 2)
	var rows [][]string
	for i := range q.Parts {
		p := &q.Parts[i]
		each := ""
		if p.Needed > 0 {
			each = p.Each().Cents()
		}
		rows = append(rows, []string{p.Name, p.Piece, p.Count(), p.Wood.Cents(), each})
	}
	s.table("Wood by part", cols, withLoose(rows, cols, q))
}

// withLoose adds a row for wood that gave no piece, in the column of wood.
func withLoose(rows [][]string, cols []column, q *quote.Quote) [][]string {
	if q.Loose == 0 {
		return rows
	}
	row := make([]string, len(cols))
	row[0] = quote.LooseWords
	row[slices.IndexFunc(cols, func(c column) bool { return c.head == "wood" })] = q.Loose.Cents()
	return append(rows, row)
}

func (b *booklet) quotedBoards(s *sheet, q *quote.Quote) {
	cols := amounts(columns(s.width(), []string{"board", "species", "cost", "returned", "net"}, []float64{80, 80, 40, 30, 30}), 3)
	var rows [][]string
	for i := range q.Boards {
		x := &q.Boards[i]
		rows = append(rows, []string{x.Says(), x.Species, x.Cost.Cents(), x.Returned.Cents(), x.Net().Cents()})
	}
	s.table("Boards", cols, rows)
}
