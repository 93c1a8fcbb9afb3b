package files

import (
	"cmp"
	"io"
	"slices"

	"sawbill/layout"
)

// Source is a file that is open for reading, and its name in complaints.
type Source struct {
	Name   string
	Reader io.Reader
}

// Input is what a job is made of.
type Input struct {
	Shop  Source // without a Reader: the default shop in inches
	Stock Source // without a Reader: no boards
	Bill  Source
	Yard  bool // whether boards of the yard take part
	// More gives further boards of the yard, which no file holds; they come last in the
	// stock of the problem. It sees what was read before it is checked. Nil gives none.
	More func(shop *layout.Shop, stock []layout.Board, bill []layout.Part) []layout.Board
}

// Job is a problem that is right, and what is worth telling about its files.
type Job struct {
	Problem  *layout.Problem
	Warnings layout.Complaints
	Stock    *Stock
	Bill     *Bill
}

// Load reads the files of a job and checks it. The error, of type
// layout.Complaints, has all that is wrong with all of the files.
func Load(in Input) (*Job, error) {
	shop, found := loadShop(in.Shop)
	if shop == nil {
		return nil, found
	}
	stock, more := in.stock(shop.Shop)
	found = append(found, more...)
	bill, more := ReadBill(in.Bill.Reader, in.Bill.Name, shop.Shop)
	found = append(found, more...)
	boards := stock.Boards
	if in.More != nil {
		boards = slices.Concat(boards, in.More(shop.Shop, boards, bill.Parts))
	}
	problem, more := layout.NewProblem(shop.Shop, boards, bill.Parts, in.Yard)
	all := merge(found, more, shop, stock, bill)
	if err := all.Err(); err != nil {
		return nil, err
	}
	return &Job{problem, all.Warnings(), stock, bill}, nil
}

func (in Input) stock(shop *layout.Shop) (*Stock, layout.Complaints) {
	if in.Stock.Reader == nil {
		return &Stock{name: "stock"}, nil
	}
	return ReadStock(in.Stock.Reader, in.Stock.Name, shop)
}

// Rack is a stock that is right, without a bill.
type Rack struct {
	Shop     *layout.Shop
	Boards   []layout.Board
	Warnings layout.Complaints
	Stock    *Stock
}

// LoadStock reads a stock file and checks it, as Load does; the bill of the
// input is not read.
func LoadStock(in Input) (*Rack, error) {
	shop, found := loadShop(in.Shop)
	if shop == nil {
		return nil, found
	}
	stock, more := ReadStock(in.Stock.Reader, in.Stock.Name, shop.Shop)
	found = append(found, more...)
	boards, more := layout.NewStock(shop.Shop, stock.Boards)
	all := merge(found, more, shop, stock, &Bill{})
	if err := all.Err(); err != nil {
		return nil, err
	}
	return &Rack{shop.Shop, boards, all.Warnings(), stock}, nil
}

func loadShop(source Source) (*Shop, layout.Complaints) {
	if source.Reader == nil {
		return &Shop{layout.DefaultShop(layout.Inches), "shop", nil}, nil
	}
	return ReadShop(source.Reader, source.Name)
}

// merge puts what the files and the checks found together, in the order of the
// files and their lines. Where a cell could not be read, what the checks say of
// the same cell is left out; and where anything could not be read, so is what
// they say of a row or a table as a whole, for they have not seen all of it.
func merge(found, checked layout.Complaints, shop *Shop, stock *Stock, bill *Bill) layout.Complaints {
	type cell struct {
		file, column string
		line         int
	}
	unread := map[cell]bool{}
	for _, c := range found {
		if c.Column == "defects" {
			continue // the others of the list were read
		}
		unread[cell{c.File, c.Column, c.Line}] = true
	}
	merged := slices.Clone(found)
	for _, c := range checked {
		c.File, c.Line = whereIs(c, shop, stock, bill)
		switch c.Table {
		case layout.StockTable:
			c = asWritten(c, stock.sheet)
		case layout.BillTable:
			c = asWritten(c, bill.sheet)
		}
		if !unread[cell{c.File, c.Column, c.Line}] && (c.Column != "" || len(found) == 0) {
			merged = append(merged, c)
		}
	}
	slices.SortStableFunc(merged, func(a, b layout.Complaint) int {
		return cmp.Or(cmp.Compare(a.Table, b.Table), cmp.Compare(a.Line, b.Line))
	})
	return merged
}

func whereIs(c layout.Complaint, shop *Shop, stock *Stock, bill *Bill) (file string, line int) {
	file, lines := bill.name, bill.lines
	switch c.Table {
	case layout.ShopTable:
		return shop.name, lineOf(shop.lines, c.Column)
	case layout.StockTable:
		file, lines = stock.name, stock.lines
	}
	if 0 <= c.Row && c.Row < len(lines) {
		line = lines[c.Row]
	}
	return file, line
}
