package files

import (
	"encoding/csv"
	"strings"
)

// record is one row of cells and the line on which it starts.
type record struct {
	line  int
	cells []string
}

// badRecord is a row that cannot be told apart into cells for certain.
type badRecord struct {
	line int
	text string
}

// maxCellLines is how many lines one quoted cell may hold.
const maxCellLines = 50

// splitRecords takes lines apart into rows of cells. Inch marks may be typed
// bare, 96" as well as "96""", which the csv package reads in its lazy mode
// only; and there a cell that opens with a quote and goes on can swallow other
// cells and rows. So every row is read by itself and grows by a line only while
// a quote is open, and a row with cells that look swallowed is bad.
func splitRecords(lines []string, from int, comma rune) (good []record, bad []badRecord) {
	for i := from; i < len(lines); i++ {
		if isBlank(lines[i]) || isComment(lines[i]) {
			good = append(good, record{i + 1, []string{lines[i]}})
			continue
		}
		cells, used := takeRecord(lines[i:], comma)
		if used == 0 {
			bad = append(bad, badRecord{i + 1, lines[i]})
			continue
		}
		good = append(good, record{i + 1, cells})
		i += used - 1
	}
	return good, bad
}

// takeRecord reads the row that starts the lines, and says how many of them it
// takes; none if its quotes do not pair.
func takeRecord(lines []string, comma rune) (cells []string, used int) {
	for n := 1; n <= min(len(lines), maxCellLines); n++ {
		text := strings.Join(lines[:n], "\n")
		if cells, ok := readRecord(text, comma, strictQuotes); ok && !swallows(cells, comma, "") {
			return cells, n
		}
		if cells, ok := readRecord(text, comma, bareQuotes); ok {
			if swallows(cells, comma, `"`) {
				return nil, 0
			}
			return cells, n
		}
	}
	return nil, 0
}

// quoting says how quotes inside cells are read.
type quoting uint8

const (
	strictQuotes quoting = iota
	bareQuotes           // a quote inside a cell may stand for itself
)

// endMark is a row of its own after the text: when it comes back as such, no
// quote was left open.
const endMark = "\x01"

func readRecord(text string, comma rune, q quoting) ([]string, bool) {
	r := csv.NewReader(strings.NewReader(text + "\n" + endMark))
	r.Comma = comma
	r.FieldsPerRecord = -1
	r.LazyQuotes = q == bareQuotes
	r.TrimLeadingSpace = comma != '\t' // it would trim the separator too
	cells, err := r.Read()
	if err != nil {
		return nil, false
	}
	end, err := r.Read()
	return cells, err == nil && len(end) == 1 && end[0] == endMark
}

// swallows reports whether a cell seems to hold what should be cells or rows of
// their own: quote and separator together, or, after a line end, at least as
// many separators as stand before the cell.
func swallows(cells []string, comma rune, quote string) bool {
	for i, cell := range cells {
		if quote != "" && strings.Contains(cell, quote+string(comma)) {
			return true
		}
		for _, line := range strings.Split(cell, "\n")[1:] {
			if strings.Count(line, string(comma)) >= i {
				return true
			}
		}
	}
	return false
}

// isBlank reports whether a line has nothing but empty cells.
func isBlank(line string) bool { return strings.Trim(line, " \t,;\"\u00a0") == "" }

// isComment reports whether the first cell begins with a hash and a space; #12
// is a mark.
func isComment(line string) bool {
	first := strings.TrimLeft(line, " ")
	first = strings.TrimLeft(strings.TrimPrefix(first, `"`), " ")
	return strings.HasPrefix(first, "# ") || strings.TrimRight(first, " \t,;\"") == "#"
}
