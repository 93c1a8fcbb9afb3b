package files

import (
	"regexp"
	"strings"
)

// likeNumber is what a spreadsheet reads as a number, a time or a date, or may: a
// figure first, and then nothing but figures, what parts them, and a month.
var likeNumber = regexp.MustCompile(`(?i)^[0-9][0-9.,:/ e-]*((jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*)?[0-9.,:/ %-]*$`)

// likeMonth is a month with a day or a year.
var likeMonth = regexp.MustCompile(`(?i)^(jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*[ ./-]*[0-9]+$`)

var plainCount = regexp.MustCompile(`^([1-9][0-9]{0,8}|0)$`)

// asText writes a cell of words so that a spreadsheet leaves it as it is: in front
// of what it would take for a formula, a date, or a number that it would write
// otherwise, stands a no-break space. Spreadsheets take that for text, and ReadStock
// and ReadBill drop it.
func asText(cell string) string {
	if cell == "" || plainCount.MatchString(cell) {
		return cell
	}
	if strings.ContainsAny(cell[:1], "=+-@\t") || likeNumber.MatchString(cell) || likeMonth.MatchString(cell) {
		return "\u00a0" + cell
	}
	return cell
}
