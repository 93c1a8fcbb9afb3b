package layout

import (
	"regexp"
	"strconv"
)

// wantText is said of what a spreadsheet made of a fraction.
const wantText = `which a spreadsheet made of a fraction: give the column the format "text", ` +
	`then write 7/8", 0 7/8 or 0.875, and quarters as 4q`

var (
	// Months by their first three letters, in the languages of the spreadsheets
	// most often met: 4-Apr, Apr-04, 4. Mai, 8-Jul-26.
	monthDate = regexp.MustCompile(`^(\d{1,4}[-./ ]+)?(jan|feb|fev|mar|mär|mrz|apr|avr|may|mai|` +
		`jun|jul|aug|aou|aoû|sep|oct|okt|oct|nov|dec|dez|déc)[a-zé]*\.?([-./ ]+\d{1,4}){0,2}$`)
	// 1/2/2026, 2026-01-02, 01.02.2026, 7/8/26, with or without a time.
	numberDate = regexp.MustCompile(`^(\d{1,4}/\d{1,2}/\d{1,4}|\d{1,4}-\d{1,2}-\d{1,4}|` +
		`\d{1,4}\.\d{1,2}\.\d{1,4})([ t]\d{1,2}:\d{2}(:\d{2})?)?$`)
)

// looksLikeDate reports whether a text that is no length is a date.
func looksLikeDate(plain string) bool {
	return monthDate.MatchString(plain) || numberDate.MatchString(plain)
}

// looksLikeSerial reports whether a number is what spreadsheets keep for a day
// between 1982 and 2064, counted from 1900. Read as a length, in inches or in
// millimetres, each of these is far too long.
func looksLikeSerial(plain string) bool {
	n, err := strconv.Atoi(plain)
	return err == nil && 30_001 <= n && n <= 60_000
}
