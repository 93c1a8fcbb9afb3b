package layout

import (
	"slices"
	"strconv"
	"strings"
)

// ParseThickness reads the thickness column of the stock: a length as
// ParseLength reads it, or a rough thickness in quarters of an inch (see
// ParseQuarters).
func ParseThickness(text string, bare Unit) (Length, error) {
	if l, ok := ParseQuarters(text); ok {
		return l, nil
	}
	return ParseLength(text, bare)
}

// ParseQuarters reads a rough thickness in quarters of an inch, as the trade
// counts them: 4/4, 5/4, 6/4, 8/4, 10/4, 12/4, 16/4, or 4q to 16q. It reports
// whether the text is one of these.
func ParseQuarters(text string) (Length, bool) {
	plain := plainMarks(text)
	n, ok := strings.CutSuffix(plain, "/4")
	if !ok {
		n, ok = strings.CutSuffix(plain, "q")
	}
	quarters, err := strconv.Atoi(n)
	if !ok || err != nil || !slices.Contains([]int{4, 5, 6, 8, 10, 12, 16}, quarters) {
		return 0, false
	}
	return Length(quarters) * Inch / 4, true
}
