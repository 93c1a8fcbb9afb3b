package layout

import (
	"fmt"
	"strconv"
	"strings"
)

// ParseAngle reads degrees, with up to six decimals and with or without a
// degree sign: 0 to 45, as far as a saw blade tilts.
func ParseAngle(text string) (Angle, error) {
	t := strings.TrimSpace(strings.TrimSuffix(strings.TrimSpace(text), "°"))
	whole, part, _ := strings.Cut(t, ".")
	part = strings.TrimRight(part, "0")
	bad := fmt.Errorf("angle %q: want degrees from 0 to 45, with up to six decimals", text)
	if whole+part == "" && !strings.Contains(t, "0") || len(part) > 6 || strings.Trim(whole+part, "0123456789") != "" {
		return 0, bad
	}
	n, err := strconv.ParseInt("0"+whole, 10, 32)
	m, errPart := strconv.ParseInt((part + "000000")[:6], 10, 32)
	a := Angle(n)*Degree + Angle(m)
	if err != nil || errPart != nil || a > 45*Degree {
		return 0, bad
	}
	return a, nil
}

// String writes the angle in degrees with as many decimals as it needs; it
// round-trips exactly.
func (a Angle) String() string { return decimals(int64(a), 6) }
