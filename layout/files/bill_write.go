package files

import (
	"encoding/csv"
	"fmt"
	"io"
	"strconv"
	"strings"

	"sawbill/layout"
)

// billColumns are the columns of a bill that is written.
func billColumns() []string {
	return []string{
		"part", "species", "thickness", "width", "length", "quantity", "grade", "bevel",
		"set", "slices", "slice_thickness", "note",
	}
}

// WriteBill writes a bill that ReadBill reads back exactly, under a comment of one
// line. Every length bears its unit, so that the bill means the same in any shop:
// inches in an inch shop where a 1/64 is exact, millimetres otherwise. Only the
// columns that glue-ups need are written. Errors are those of w.
func WriteBill(w io.Writer, comment string, units layout.Unit, bill []layout.Part) error {
	if comment = strings.Join(strings.Fields(comment), " "); comment != "" {
		if _, err := fmt.Fprintf(w, "# %s\n", comment); err != nil {
			return err
		}
	}
	out := csv.NewWriter(w)
	if err := out.Write(billColumns()); err != nil {
		return err
	}
	for i := range bill {
		if err := out.Write(billCells(&bill[i], units)); err != nil {
			return err
		}
	}
	out.Flush()
	return out.Error()
}

func billCells(p *layout.Part, units layout.Unit) []string {
	length := func(l layout.Length) string { return nonZero(l != 0, withUnit(l, units)) }
	return []string{
		p.Name, strings.Join(p.Species, "|"), length(p.Thickness), length(p.Width), length(p.Length),
		strconv.Itoa(p.Quantity), p.Grade, nonZero(p.Bevel != 0, p.Bevel.String()),
		p.Set, nonZero(p.Slices != 0, strconv.Itoa(p.Slices)), length(p.SliceThickness), p.Note,
	}
}

// withUnit is a length that ParseLength reads exactly, whatever the shop's unit.
func withUnit(l layout.Length, units layout.Unit) string {
	if units == layout.Inches && l%layout.SixtyFourth == 0 {
		return strings.TrimSuffix(l.Format(units, 64), `"`) + "in"
	}
	return l.String()
}
