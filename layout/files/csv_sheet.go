package files

import (
	"fmt"
	"io"
	"regexp"
	"strings"

	"github.com/gocarina/gocsv"

	"sawbill/layout"
)

// Skipped counts the rows of a table that hold nothing to read.
type Skipped struct {
	Blank    int
	Comments int
}

// sheet is a table of cells whose columns are known, before anybody has asked
// what the cells mean.
type sheet struct {
	name    string
	table   layout.Table
	comma   rune
	rows    [][]string // the header first, in lower case
	lines   []int      // of the rows after the header
	skipped Skipped
	faults  layout.Complaints
}

// fault complains of a line, or of the whole file if line is 0.
func (s *sheet) fault(line int, column, found, want string) {
	s.faults = append(s.faults, layout.Complaint{
		Table: s.table, Row: layout.WholeTable, Column: column, Found: found, Want: want, File: s.name, Line: line,
	})
}

// readRows reads a table into structs of text cells, whose csv tags name the
// columns; those with a tag needed must be there. The sheet has the line of
// every row and all that is wrong with the table as such.
func readRows[T any](r io.Reader, name string, table layout.Table) ([]T, *sheet) {
	s := &sheet{name: name, table: table}
	lines, err := readLines(r)
	if err != nil {
		s.fault(0, "", "", err.Error())
		return nil, s
	}
	s.read(lines, columnsOf[T]())
	if len(s.rows) == 0 {
		return nil, s
	}
	var rows []T
	if err := gocsv.UnmarshalCSV(textRows(s.rows), &rows); err != nil {
		s.fault(0, "", "", err.Error())
	}
	return rows, s
}

// textRows gives gocsv rows that are already taken apart.
type textRows [][]string

// ReadAll gives all rows.
func (t textRows) ReadAll() ([][]string, error) { return t, nil }

// Read is never called: gocsv reads row by row only from streams.
func (t textRows) Read() ([]string, error) { return nil, io.EOF }

var separatorHint = regexp.MustCompile(`^"?sep=([,;\t])"?[,;\t]*$`)

func (s *sheet) read(lines []string, columns []column) {
	at := 0
	for at < len(lines) && s.skip(lines[at]) {
		at++
	}
	if at < len(lines) {
		if m := separatorHint.FindStringSubmatch(strings.ToLower(lines[at])); m != nil {
			s.comma = rune(m[1][0])
			for at++; at < len(lines) && s.skip(lines[at]); {
				at++
			}
		}
	}
	if at == len(lines) {
		s.fault(0, "", "", "is empty: want a row with the names of the columns, "+namesOf(columns))
		return
	}
	if s.comma == 0 {
		s.comma = separatorOf(lines[at])
	}
	good, bad := splitRecords(lines, at, s.comma)
	for _, b := range bad {
		s.fault(b.line, "", shorten(b.text), `want quotes in pairs: leave them out around a cell with an inch mark, or write "96"""`)
	}
	if len(good) == 0 || good[0].line != at+1 || !s.setHeader(good[0], columns) {
		return
	}
	for _, rec := range good[1:] {
		s.addRow(rec)
	}
}

// skip counts a line that holds nothing to read.
func (s *sheet) skip(line string) bool {
	switch {
	case isComment(line):
		s.skipped.Comments++
	case isBlank(line):
		s.skipped.Blank++
	default:
		return false
	}
	return true
}

// addRow adds a row with a cell for each column.
func (s *sheet) addRow(rec record) {
	width := len(s.rows[0])
	for i, cell := range rec.cells {
		rec.cells[i] = strings.TrimSpace(strings.ReplaceAll(cell, "\u00a0", " "))
	}
	if s.skip(strings.Join(rec.cells, ",")) {
		return
	}
	for i, cell := range rec.cells[min(width, len(rec.cells)):] {
		if cell != "" {
			s.fault(rec.line, "", shorten(cell), fmt.Sprintf("in cell %d, beyond the last column: "+
				"want a cell with a separator in it in quotes", width+i+1))
			break
		}
	}
	for i, cell := range rec.cells[:min(width, len(rec.cells))] {
		if cell != "" && strings.HasSuffix(s.rows[0][i], ", which has no name") {
			s.fault(rec.line, s.rows[0][i], shorten(cell), "want a name in the header")
		}
	}
	row := make([]string, width)
	copy(row, rec.cells)
	s.rows = append(s.rows, row)
	s.lines = append(s.lines, rec.line)
}

// shorten keeps what is quoted of a long text readable.
func shorten(text string) string {
	const most = 60
	if r := []rune(text); len(r) > most {
		return string(r[:most]) + "…"
	}
	return text
}
