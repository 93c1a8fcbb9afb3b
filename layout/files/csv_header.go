package files

import (
	"fmt"
	"reflect"
	"slices"
	"strings"

	"sawbill/layout"
)

// column is one that a table may have.
type column struct {
	name   string
	needed bool
}

func columnsOf[T any]() []column {
	var columns []column
	for _, f := range reflect.VisibleFields(reflect.TypeFor[T]()) {
		columns = append(columns, column{f.Tag.Get("csv"), f.Tag.Get("needed") != ""})
	}
	return columns
}

// setHeader checks the names of the columns. It reports whether the rows can be
// read: columns too many are told of, but do not hide what else is wrong.
func (s *sheet) setHeader(rec record, columns []column) bool {
	var header []string
	for _, cell := range rec.cells {
		header = append(header, strings.ToLower(strings.TrimSpace(strings.ReplaceAll(cell, "\u00a0", " "))))
	}
	for len(header) > 0 && header[len(header)-1] == "" {
		header = header[:len(header)-1]
	}
	known := make([]string, len(columns))
	complete := true
	for i, c := range columns {
		known[i] = c.name
		if c.needed && !slices.Contains(header, c.name) {
			s.fault(rec.line, c.name, "", "the column is missing: want "+namesOf(columns))
			complete = false
		}
	}
	for i, name := range header {
		switch {
		case name == "":
			header[i] = fmt.Sprintf("column %d, which has no name", i+1)
		case !slices.Contains(known, name):
			s.fault(rec.line, "", rec.cells[i], "which is no column: "+layout.WantOneOf(name, known))
		case slices.Contains(header[:i], name):
			s.fault(rec.line, name, "", "the column is there twice")
			complete = false
		}
	}
	s.rows = [][]string{header}
	if !complete {
		s.rows = nil
	}
	return complete
}

func namesOf(columns []column) string {
	var needed, other []string
	for _, c := range columns {
		if c.needed {
			needed = append(needed, c.name)
		} else {
			other = append(other, c.name)
		}
	}
	return strings.Join(needed, ", ") + " and, if you like, " + strings.Join(other, ", ")
}

// separatorOf is the separator that the header has most of, outside quotes.
func separatorOf(header string) rune {
	best, most := ',', 0
	for _, comma := range "\t;," {
		n := 0
		for i, part := range strings.Split(header, `"`) {
			if i%2 == 0 {
				n += strings.Count(part, string(comma))
			}
		}
		if n > most {
			best, most = comma, n
		}
	}
	return best
}
