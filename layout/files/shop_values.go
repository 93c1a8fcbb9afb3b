package files

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"sawbill/layout"
)

// length reads a number in the shop's units, or a text such as "1/8" or "3mm".
// A float has the shortest decimals that give it: what the person typed.
func (s *shopReader) length(key string, value any, into *layout.Length) {
	text := textOf(value)
	if text == "none" && slices.Contains([]string{"max_blank", "jointer_width", "planer_width"}, key) {
		*into = 0
		return
	}
	l, err := layout.ParseLength(text, s.shop.Units)
	if err != nil {
		s.fault(key, text, err.(*layout.LengthError).Want)
		return
	}
	*into = l
}

// textOf is a value of the file as text.
func textOf(value any) string {
	switch v := value.(type) {
	case float64:
		return strconv.FormatFloat(v, 'f', -1, 64)
	case string:
		return strings.TrimSpace(v)
	}
	return fmt.Sprint(value)
}

// word reads one of the known words and gives its place among them; a missing
// value is the first.
func (s *shopReader) word(key string, value any, known []string) int {
	text := textOf(value)
	i, ok := placeOf(text, known)
	if !ok && value != nil {
		s.fault(key, text, layout.WantOneOf(text, known))
	}
	return i
}

func (s *shopReader) fraction(value any) {
	n, ok := value.(int64)
	if !ok || !slices.Contains([]int64{2, 4, 8, 16, 32, 64}, n) {
		s.fault("fraction", textOf(value), "want 2, 4, 8, 16, 32 or 64")
		return
	}
	s.shop.Fraction = int(n)
}

func (s *shopReader) credit(value any) {
	n, ok := fixed([]byte(textOf(value)), 9)
	if !ok || n < 0 || n >= int64(layout.CreditUnity) {
		s.fault("offcut_credit", textOf(value), "want a share from 0 to less than 1, such as 0.6")
		return
	}
	s.shop.OffcutCredit = layout.Credit(n)
}
