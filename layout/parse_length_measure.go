package layout

import (
	"math/bits"
	"strconv"
	"strings"
)

// ratio is an exact number that is not negative.
type ratio struct{ num, den uint64 }

// times is r of a unit, in whole nanometres, at most a little over MaxLength.
func (r ratio) times(unit Length) (Length, string) {
	hi, lo := bits.Mul64(r.num, uint64(unit))
	if hi >= r.den {
		return 0, wantShort
	}
	q, rem := bits.Div64(hi, lo, r.den)
	switch {
	case q > uint64(MaxLength):
		return MaxLength + 1, ""
	case rem != 0:
		return 0, wantWhole
	}
	return Length(q), ""
}

func (s *lengthScanner) measure() (ratio, string) {
	whole := s.digits()
	if after, ok := strings.CutPrefix(s.rest, "."); ok {
		s.rest = after
		return decimal(whole, s.digits())
	}
	if whole == "" {
		return ratio{}, wantLength
	}
	if strings.HasPrefix(s.rest, "/") {
		return s.over(whole)
	}
	w, why := decimal(whole, "")
	if why != "" {
		return ratio{}, why
	}
	return s.mixed(w)
}

// mixed adds the fraction that may follow a whole number.
func (s *lengthScanner) mixed(whole ratio) (ratio, string) {
	ahead := lengthScanner{strings.TrimLeft(s.rest, " ")}
	ahead.rest = strings.TrimPrefix(ahead.rest, "-")
	ahead.space()
	if ahead.rest == s.rest {
		return whole, ""
	}
	num := ahead.digits()
	if num == "" || !strings.HasPrefix(ahead.rest, "/") {
		return whole, ""
	}
	f, why := ahead.over(num)
	if why != "" {
		return ratio{}, why
	}
	if f.num >= f.den {
		return ratio{}, wantProper
	}
	hi, lo := bits.Mul64(whole.num, f.den)
	if hi > 0 || lo+f.num < lo {
		return ratio{}, wantShort
	}
	s.rest = ahead.rest
	return ratio{lo + f.num, f.den}, ""
}

// over reads the rest of a fraction, from the slash.
func (s *lengthScanner) over(num string) (ratio, string) {
	s.rest = strings.TrimPrefix(s.rest, "/")
	den := s.digits()
	n, errN := strconv.ParseUint(num, 10, 32)
	d, errD := strconv.ParseUint(den, 10, 32)
	if errN != nil || errD != nil || d == 0 {
		return ratio{}, wantLength
	}
	return ratio{n, d}, ""
}

func (s *lengthScanner) digits() string {
	n := 0
	for n < len(s.rest) && '0' <= s.rest[n] && s.rest[n] <= '9' {
		n++
	}
	d := s.rest[:n]
	s.rest = s.rest[n:]
	return d
}

// decimal is whole.part; eighteen digits of a number that matter fit a ratio.
func decimal(whole, part string) (ratio, string) {
	if whole == "" && part == "" {
		return ratio{}, wantLength
	}
	part = strings.TrimRight(part, "0")
	if len(part) > 18 {
		return ratio{}, wantWhole
	}
	digits := strings.TrimLeft(whole+part, "0")
	if len(digits) > 18 {
		return ratio{}, wantShort
	}
	r := ratio{den: 1}
	for range part {
		r.den *= 10
	}
	for _, d := range digits {
		r.num = r.num*10 + uint64(d-'0')
	}
	return r, ""
}
