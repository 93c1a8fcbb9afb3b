package layout

import (
	"strconv"
	"strings"
)

// String writes the length in millimetres with as many decimals as it needs, at
// most six, such as 152.4mm. ParseLength reads it back exactly.
func (l Length) String() string { return decimals(int64(l), 6) + "mm" }

// Format writes the length for people: 5-7/8" or 149.225 mm. Inches are written
// in lowest terms where 1/64 is exact; otherwise as the nearest 1/fraction (2,
// 4, 8, 16, 32 or 64), halves up, with ~ in front.
// Millimetres are always exact.
func (l Length) Format(unit Unit, fraction int) string {
	switch {
	case unit == Millimetres:
		return decimals(int64(l), 6) + " mm"
	case l < 0:
		return "-" + (-l).Format(unit, fraction)
	case l%SixtyFourth == 0: // so is every coarser fraction
		return inches64(l / SixtyFourth)
	}
	return "~" + l.nearest(fraction)
}

// Exact writes the length as the step files do: a fraction of an inch to 1/64
// or millimetres; where no such fraction is exact the nearest one with the
// exact value in brackets, such as ~5-57/64" (149.6mm).
func (l Length) Exact(unit Unit) string {
	if text := l.Format(unit, 64); !strings.HasPrefix(strings.TrimPrefix(text, "-"), "~") {
		return text
	}
	return l.Format(unit, 64) + " (" + l.String() + ")"
}

// nearest is the nearest fraction of an inch, halves up, of a length that is
// not negative.
func (l Length) nearest(fraction int) string {
	step := Inch / Length(fraction)
	return inches64((l + step/2) / step * step / SixtyFourth)
}

// inches64 writes n sixty-fourths of an inch as a mixed number in lowest terms.
func inches64(n Length) string {
	whole, num, den := n/64, n%64, Length(64)
	for num != 0 && num%2 == 0 {
		num, den = num/2, den/2
	}
	w := strconv.FormatInt(int64(whole), 10)
	f := strconv.FormatInt(int64(num), 10) + "/" + strconv.FormatInt(int64(den), 10)
	switch {
	case num == 0:
		return w + `"`
	case whole == 0:
		return f + `"`
	}
	return w + "-" + f + `"`
}

// String writes the share as a decimal with as many places as it needs; it
// round-trips exactly.
func (c Credit) String() string { return decimals(int64(c), 9) }

// decimals writes n units of 10^-places with as many decimals as it needs.
func decimals(n int64, places int) string {
	sign := ""
	if n < 0 {
		sign, n = "-", -n
	}
	digits := strconv.FormatInt(n, 10)
	if len(digits) <= places {
		digits = strings.Repeat("0", places+1-len(digits)) + digits
	}
	whole, part := digits[:len(digits)-places], strings.TrimRight(digits[len(digits)-places:], "0")
	if part == "" {
		return sign + whole
	}
	return sign + whole + "." + part
}
