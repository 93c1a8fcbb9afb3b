package layout

import (
	"fmt"
	"strings"
)

// ParseLength reads a length as people write it at a bench:
//
//	length   = measure [ unit ] | measure feet [ "-" ] measure [ inch ]
//	measure  = whole | decimal | fraction | whole ( "-" | " " ) fraction
//	fraction = whole "/" whole | "½" | "⅛" | …
//	decimal  = [ whole ] "." [ whole ]
//	unit     = inch | feet | "mm" | "cm" | "m"
//	inch     = `"` | "''" | "in" | "inch" | "inches"
//	feet     = "'" | "ft" | "foot" | "feet"
//
// A measure without a unit counts in bare, after feet in inches. Spaces may
// stand anywhere between these; typographic primes, quotes, dashes, spaces and
// fractions are read as what they stand for. The arithmetic is exact.
//
// The error is a *LengthError: for text that is no length, for a negative one,
// for more than MaxLength, for one that is no whole number of nanometres
// (1/3 in), and for what a spreadsheet makes of a fraction.
func ParseLength(text string, bare Unit) (Length, error) {
	plain := plainMarks(text)
	l, why := parsePlain(plain, bare)
	if why == "" {
		return l, nil
	}
	if looksLikeDate(plain) {
		why = wantText
	}
	return 0, &LengthError{text, why}
}

// LengthError says what is wrong with a text that should be a length.
type LengthError struct {
	Text string
	Want string // such as `want a length of at most 30 m`
}

// Error is one line for people.
func (e *LengthError) Error() string { return fmt.Sprintf("length %q: %s", e.Text, e.Want) }

const (
	wantLength   = `want a length such as 5-7/8, 5-7/8", 8' 2-1/2" or 149.5mm`
	wantPositive = `want a length that is not negative`
	wantShort    = `want a length of at most 30 m`
	wantWhole    = `want an exact length: sixty-fourths of an inch, or millimetres with up to six decimals`
	wantProper   = `want a fraction less than one after the whole number`
)

func parsePlain(plain string, bare Unit) (Length, string) {
	if len(plain) > 1 && plain[0] == '-' && plain[1] != '-' {
		return 0, wantPositive
	}
	s := lengthScanner{rest: plain}
	l, why := s.length(bare)
	switch {
	case why != "":
		return 0, why
	case s.rest != "":
		return 0, wantLength
	case l > MaxLength && looksLikeSerial(plain):
		return 0, wantText
	case l > MaxLength:
		return 0, wantShort
	}
	return l, ""
}

// lengthScanner takes a length apart from the left.
type lengthScanner struct{ rest string }

func (s *lengthScanner) length(bare Unit) (Length, string) {
	first, why := s.measure()
	if why != "" {
		return 0, why
	}
	unit, named := s.unit()
	if !named {
		unit = bare.length()
	}
	l, why := first.times(unit)
	if why != "" || unit != Foot || s.rest == "" {
		return l, why
	}
	s.rest = strings.TrimLeft(s.rest, " -")
	second, why := s.measure()
	if why != "" {
		return 0, why
	}
	if unit, named = s.unit(); named && unit != Inch {
		return 0, wantLength
	}
	inches, why := second.times(Inch)
	return l + inches, why
}

// length is one of the unit.
func (u Unit) length() Length {
	if u == Millimetres {
		return Millimetre
	}
	return Inch
}

// unitMarks are tried in order, so that no mark hides a longer one.
var unitMarks = [...]struct {
	mark string
	unit Length
}{
	{"inches", Inch}, {"inch", Inch}, {"in.", Inch}, {"in", Inch}, {`"`, Inch}, {"''", Inch},
	{"feet", Foot}, {"foot", Foot}, {"ft.", Foot}, {"ft", Foot}, {"'", Foot},
	{"mm", Millimetre}, {"cm", Centimetre}, {"m", Metre},
}

func (s *lengthScanner) unit() (Length, bool) {
	s.space()
	for _, u := range unitMarks {
		if rest, ok := strings.CutPrefix(s.rest, u.mark); ok {
			s.rest = rest
			s.space()
			return u.unit, true
		}
	}
	return 0, false
}

func (s *lengthScanner) space() { s.rest = strings.TrimLeft(s.rest, " ") }
