package files

import (
	"slices"

	"sawbill/layout"
)

// asWritten says of a cell that holds one length or count what was written into it,
// where the checks know only the value that was made of it: 30 rather than 762mm. Of
// an empty one it says that it is empty.
func asWritten(c layout.Complaint, table *sheet) layout.Complaint {
	values := []string{"thickness", "width", "tip_width", "length", "bow", "crook", "cup", "twist", "slices", "slice_thickness"}
	if table == nil || c.Line == 0 || c.Found == "" || !slices.Contains(values, c.Column) {
		return c
	}
	c.Found = shorten(table.cell(c.Line, c.Column))
	if c.Found == "" {
		c.Want = "is empty: " + c.Want
	}
	return c
}

// cell is what stands in a column of the row on a line; nothing where there is no
// such cell.
func (s *sheet) cell(line int, column string) string {
	row := slices.Index(s.lines, line)
	if row < 0 {
		return ""
	}
	at := slices.Index(s.rows[0], column)
	if at < 0 {
		return ""
	}
	return s.rows[row+1][at]
}
