package layout

import (
	"fmt"
	"math/big"
	"strconv"
	"strings"
)

// Money is an exact amount: a whole number of ten-thousandths of the shop's
// currency.
type Money int64

// Unity is one unit of the currency.
const Unity Money = 10_000

// MaxMoney is the largest amount that a file may hold, a thousand million.
const MaxMoney = 1_000_000_000 * Unity

// ParseMoney reads a decimal amount such as 31.5, rounded half up to 1/10 000.
// Amounts are not negative and at most MaxMoney.
func ParseMoney(text string) (Money, error) {
	t := strings.TrimSpace(text)
	if t == "" || strings.Trim(t, "0123456789.") != "" || strings.Count(t, ".") > 1 || t == "." {
		return 0, fmt.Errorf("money %q: want a decimal number such as 31.50", text)
	}
	r, ok := new(big.Rat).SetString(t)
	if !ok {
		return 0, fmt.Errorf("money %q: want a decimal number such as 31.50", text)
	}
	if r.Cmp(new(big.Rat).SetInt64(int64(MaxMoney/Unity))) > 0 {
		return 0, fmt.Errorf("money %q: more than %d", text, int64(MaxMoney/Unity))
	}
	return roundHalfUp(r.Mul(r, new(big.Rat).SetInt64(int64(Unity)))), nil
}

// roundHalfUp rounds a non-negative r to the nearest integer, halves up.
func roundHalfUp(r *big.Rat) Money {
	twice := new(big.Int).Lsh(r.Num(), 1)
	twice.Add(twice, r.Denom())
	q := twice.Div(twice, new(big.Int).Lsh(r.Denom(), 1))
	return Money(q.Int64())
}

// String writes the amount with as many decimals as it needs, at most four; it
// round-trips exactly.
func (m Money) String() string {
	s := m.fixed(4)
	return strings.TrimSuffix(strings.TrimRight(s, "0"), ".")
}

// Cents writes the amount rounded half away from zero to two decimals, for
// people.
func (m Money) Cents() string {
	if m < 0 {
		return "-" + (-m).Cents()
	}
	return ((m + 50) / 100 * 100).fixed(4)[:len(((m+50)/100*100).fixed(4))-2]
}

// CentsDown writes the amount rounded down to two decimals, so that what is said
// of a lower bound stays true.
func (m Money) CentsDown() string {
	cent := Unity / 100
	return (m - ((m%cent)+cent)%cent).Cents()
}

func (m Money) fixed(decimals int) string {
	sign := ""
	if m < 0 {
		sign, m = "-", -m
	}
	frac := strconv.FormatInt(int64(m%Unity), 10)
	frac = strings.Repeat("0", decimals-len(frac)) + frac
	return sign + strconv.FormatInt(int64(m/Unity), 10) + "." + frac
}

// Float is the amount in whole units, for plots and ratios only.
func (m Money) Float() float64 { return float64(m) / float64(Unity) }
