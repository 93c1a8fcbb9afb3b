package files

import (
	"encoding/csv"
	"io"
	"reflect"
	"strings"

	"sawbill/layout"
)

// WriteStock writes boards as a stock file that ReadStock reads back: the same
// marks, sizes and defects, to the nanometre. A cost is left out where it is what the
// shop's prices give. Errors are those of w.
func WriteStock(w io.Writer, shop *layout.Shop, boards []layout.Board) error {
	out := csv.NewWriter(w)
	var head []string
	row := reflect.TypeFor[stockRow]()
	for i := range row.NumField() {
		head = append(head, row.Field(i).Tag.Get("csv"))
	}
	if err := out.Write(head); err != nil {
		return err
	}
	for i := range boards {
		cells := reflect.ValueOf(toStockRow(shop, &boards[i]))
		var record []string
		for k := range cells.NumField() {
			record = append(record, cells.Field(k).String())
		}
		if err := out.Write(record); err != nil {
			return err
		}
	}
	out.Flush()
	return out.Error()
}

func toStockRow(shop *layout.Shop, b *layout.Board) stockRow {
	size := func(l layout.Length) string { return writtenLength(l, shop.Units) }
	gap := func(l layout.Length) string { return nonZero(l != 0, size(l)) }
	return stockRow{
		Board: asText(b.Mark), Species: asText(b.Species), Thickness: size(b.Thickness),
		Width: size(b.Width), TipWidth: nonZero(b.TipWidth != b.Width, size(b.TipWidth)), Length: size(b.Length),
		Cost: ownCost(shop, b), Edges: b.Edges.String(), Faces: b.Faces.String(),
		Bow: gap(b.Bow), Crook: gap(b.Crook), Cup: gap(b.Cup), Twist: gap(b.Twist),
		Source: b.Source.String(), Place: asText(b.Place), Grade: asText(b.Grade), Note: asText(b.Note),
		Defects: WrittenDefects(b, shop.Units),
	}
}

// WrittenDefects lists the defects of a board as a stock file does.
func WrittenDefects(b *layout.Board, units layout.Unit) string {
	size := func(l layout.Length) string { return writtenLength(l, units) }
	return strings.Join(each(b.Defects, func(d layout.Defect) string { return writtenDefect(d, size) }), "; ")
}

// writtenLength is a length that is read back exactly: a fraction of an inch with
// its mark, which no spreadsheet takes for a date, or millimetres.
func writtenLength(l layout.Length, unit layout.Unit) string {
	if unit == layout.Inches && l%layout.SixtyFourth == 0 {
		return l.Format(layout.Inches, 64)
	}
	return l.String()
}

func writtenDefect(d layout.Defect, size func(layout.Length) string) string {
	text := string(d.Kind) + " " + size(d.Rect.X1) + ".." + size(d.Rect.X2) + " x " + size(d.Rect.Y1) + ".." + size(d.Rect.Y2)
	if d.Face != layout.Through {
		text += " /" + d.Face.String()
	}
	return text
}

// ownCost is the cost of a board where it is not what the shop's prices give.
func ownCost(shop *layout.Shop, b *layout.Board) string {
	if usual, ok := shop.DefaultCost(b); ok && usual == b.Cost {
		return ""
	}
	return b.Cost.String()
}
