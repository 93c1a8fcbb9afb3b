package layout

import (
	"errors"
	"regexp"
	"strings"
)

// ParseLengthComma is ParseLength for text in which a comma is the decimal mark,
// as in files whose cells are separated by semicolons. A point is read as a
// decimal mark too, but not where it could be meant to group thousands: 2.440
// in millimetres is refused.
func ParseLengthComma(text string, bare Unit) (Length, error) {
	l, err := ParseLength(DecimalPoints(text), bare)
	if err == nil && groupsThousands(text, bare) {
		return 0, &LengthError{text, "want 2440 or 2,44 rather than 2.440, which can be read as either"}
	}
	var bad *LengthError
	if errors.As(err, &bad) {
		return 0, &LengthError{text, bad.Want}
	}
	return l, err
}

var (
	commaInNumber = regexp.MustCompile(`(\d),(\d)`)
	pointedGroup  = regexp.MustCompile(`^([1-9]\d{0,2}\.\d{3}) *(mm)?$`)
)

// DecimalPoints writes the decimal commas of a text as points.
func DecimalPoints(text string) string {
	// Twice, because matches do not overlap: "1,2,3" is no number either way.
	return commaInNumber.ReplaceAllString(commaInNumber.ReplaceAllString(text, "$1.$2"), "$1.$2")
}

func groupsThousands(text string, bare Unit) bool {
	m := pointedGroup.FindStringSubmatch(strings.ToLower(strings.TrimSpace(text)))
	return m != nil && (m[2] != "" || bare == Millimetres)
}
