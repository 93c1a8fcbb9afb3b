package files

import (
	"errors"
	"fmt"
	"regexp"
	"strconv"
	"strings"

	"sawbill/layout"
)

// cells reads the cells of one row, and complains of those that it cannot read.
type cells struct {
	sheet *sheet
	line  int
	units layout.Unit
}

func (c cells) fault(column, found, want string) { c.sheet.fault(c.line, column, found, want) }

// decimalComma reports whether a comma is the decimal mark of the file.
func (c cells) decimalComma() bool { return c.sheet.comma == ';' }

// plain is a text with decimal points.
func (c cells) plain(text string) string {
	if c.decimalComma() {
		return layout.DecimalPoints(text)
	}
	return text
}

// length reads a length that must be there.
func (c cells) length(column, text string) layout.Length {
	if text == "" {
		c.fault(column, "", `is empty: want a length such as 5-7/8" or 149mm`)
		return 0
	}
	parse := layout.ParseLength
	if c.decimalComma() {
		parse = layout.ParseLengthComma
	}
	l, err := parse(text, c.units)
	c.lengthError(column, text, err)
	return l
}

func (c cells) lengthError(column, text string, err error) {
	var bad *layout.LengthError
	if errors.As(err, &bad) {
		c.fault(column, text, bad.Want)
	}
}

// lengthOr reads a length that may be left out.
func (c cells) lengthOr(column, text string, otherwise layout.Length) layout.Length {
	if text == "" {
		return otherwise
	}
	return c.length(column, text)
}

// unused reports whether an optional cell says that it is not used.
func unused(text string) bool {
	return text == "" || text == "0" || strings.EqualFold(text, "no")
}

// lengthOrNone reads a length that may be left out, no or 0.
func (c cells) lengthOrNone(column, text string) layout.Length {
	if unused(text) {
		return 0
	}
	return c.length(column, text)
}

// textOrNone is a word that may be left out, no or 0.
func textOrNone(text string) string {
	if unused(text) {
		return ""
	}
	return text
}

// whole reads a whole number from 1 to most.
func (c cells) whole(column, text string, most int) int {
	n, err := strconv.Atoi(text)
	if err != nil || n < 1 || n > most {
		want := fmt.Sprintf("want a whole number from 1 to %d", most)
		if text == "" {
			want = "is empty: " + want
		}
		c.fault(column, text, want)
		return 0
	}
	return n
}

var groupedMoney = regexp.MustCompile(`^[1-9]\d{0,2}\.\d{3}$`)

// money reads an amount.
func (c cells) money(column, text string) layout.Money {
	if c.decimalComma() && groupedMoney.MatchString(text) {
		c.fault(column, text, "want 1234 or 1,234 rather than 1.234, which can be read as either")
		return 0
	}
	m, err := layout.ParseMoney(c.plain(text))
	if err != nil {
		c.fault(column, text, "want an amount such as 31.50, at most "+layout.MaxMoney.String())
	}
	return m
}

// word reads one of the known words, without regard to case; an empty cell is
// the first of them.
func (c cells) word(column, text string, known []string) string {
	for _, k := range known {
		if text == "" || strings.EqualFold(text, k) {
			return k
		}
	}
	c.fault(column, text, layout.WantOneOf(text, known))
	return known[0]
}

// yes reads a cell that says yes or no.
func (c cells) yes(column, text string) bool {
	return !unused(text) && c.word(column, text, []string{"no", "yes"}) == "yes"
}
