package files

import (
	"fmt"
	"io"
	"strings"

	"sawbill/layout"
)

// Stock is what a stock file holds.
type Stock struct {
	// Boards are as they were written, with rows expanded by count, for
	// layout.NewProblem or layout.NewStock to check.
	Boards  []layout.Board
	Rows    int // that hold boards
	Skipped Skipped

	name  string
	lines []int // of the boards
	sheet *sheet
}

// stockRow is one row of a stock file.
type stockRow struct {
	Board     string `csv:"board" needed:"yes"`
	Species   string `csv:"species" needed:"yes"`
	Thickness string `csv:"thickness" needed:"yes"`
	Width     string `csv:"width" needed:"yes"`
	TipWidth  string `csv:"tip_width"`
	Length    string `csv:"length" needed:"yes"`
	Count     string `csv:"count"`
	Cost      string `csv:"cost"`
	Edges     string `csv:"edges"`
	Faces     string `csv:"faces"`
	Bow       string `csv:"bow"`
	Crook     string `csv:"crook"`
	Cup       string `csv:"cup"`
	Twist     string `csv:"twist"`
	Source    string `csv:"source"`
	Place     string `csv:"place"`
	Grade     string `csv:"grade"`
	Note      string `csv:"note"`
	Defects   string `csv:"defects"`
}

// maxCount is the most boards that one row may stand for.
const maxCount = 10_000

// ReadStock reads a stock file; name is the file's name in complaints. Bare
// numbers count in the units of the shop. What could be read is returned even
// where there are complaints.
func ReadStock(r io.Reader, name string, shop *layout.Shop) (*Stock, layout.Complaints) {
	rows, sheet := readRows[stockRow](r, name, layout.StockTable)
	stock := &Stock{Rows: len(rows), Skipped: sheet.skipped, name: name, sheet: sheet}
	for i, row := range rows {
		c := cells{sheet, sheet.lines[i], shop.Units}
		boards := c.boards(row)
		stock.Boards = append(stock.Boards, boards...)
		for range boards {
			stock.lines = append(stock.lines, c.line)
		}
	}
	return stock, sheet.faults
}

// boards reads a row and expands it by its count.
func (c cells) boards(row stockRow) []layout.Board {
	board := c.board(row)
	if row.Count == "" {
		return []layout.Board{board}
	}
	n := c.whole("count", row.Count, maxCount)
	if n <= 1 {
		return []layout.Board{board}
	}
	boards := make([]layout.Board, n)
	for i := range boards {
		boards[i] = board
		boards[i].Mark = fmt.Sprintf("%s.%d", board.Base, i+1)
	}
	return boards
}

func (c cells) board(row stockRow) layout.Board {
	b := layout.Board{
		Mark: row.Board, Base: row.Board, Species: row.Species,
		Length: c.length("length", row.Length), Width: c.length("width", row.Width),
		Cost: layout.Unpriced,
		Bow:  c.lengthOrNone("bow", row.Bow), Crook: c.lengthOrNone("crook", row.Crook),
		Cup: c.lengthOrNone("cup", row.Cup), Twist: c.lengthOrNone("twist", row.Twist),
		Source: c.source(row.Source),
		Place:  row.Place, Grade: row.Grade, Note: row.Note,
	}
	b.TipWidth = c.lengthOr("tip_width", row.TipWidth, b.Width)
	if row.Cost != "" {
		b.Cost = c.money("cost", row.Cost)
	}
	b.Faces, b.Edges = c.surfaces(row)
	b.Thickness = c.thickness(row.Thickness, b.Faces)
	b.Defects = c.defects(row.Defects, b.Frame())
	return b
}

func (c cells) source(text string) layout.Source {
	switch c.word("source", text, []string{"rack", "yard", "hold"}) {
	case "yard":
		return layout.Yard
	case "hold":
		return layout.Hold
	}
	return layout.Rack
}

// surfaces reads faces and edges together, because S4S says both.
func (c cells) surfaces(row stockRow) (layout.Faces, layout.Edges) {
	edges := layout.EdgesRough
	switch c.word("edges", row.Edges, []string{"rough", "one", "both", "SLR1E"}) {
	case "one", "SLR1E":
		edges = layout.EdgesOne
	case "both":
		edges = layout.EdgesBoth
	}
	switch c.word("faces", row.Faces, []string{"rough", "planed", "S2S", "S4S"}) {
	case "planed", "S2S":
		return layout.FacesPlaned, edges
	case "S4S":
		if row.Edges != "" && edges != layout.EdgesBoth {
			c.fault("edges", row.Edges, "want both, or nothing, for a board that is S4S")
		}
		return layout.FacesPlaned, layout.EdgesBoth
	}
	return layout.FacesRough, edges
}

// thickness reads rough quarters for rough boards only: what a planed board
// measures is less, and by how much nobody can know.
func (c cells) thickness(text string, faces layout.Faces) layout.Length {
	quarters, ok := layout.ParseQuarters(text)
	switch {
	case ok && faces == layout.FacesPlaned:
		c.fault("thickness", text, "which is a rough thickness: want what the planed board measures, such as 13/16")
		return 0
	case ok:
		return quarters
	}
	return c.length("thickness", strings.TrimSpace(text))
}
