package files

import (
	"fmt"
	"math/big"
	"regexp"
	"strconv"

	"sawbill/layout"
)

// nm is a length in the plan file: a whole number of nanometres, at most
// layout.MaxLength either way.
type nm layout.Length

// UnmarshalJSON reads the number from its text.
func (l *nm) UnmarshalJSON(data []byte) error {
	if isNull(data) {
		return nil
	}
	n, err := strconv.ParseInt(string(data), 10, 64)
	if err != nil || n > int64(layout.MaxLength) || n < -int64(layout.MaxLength) {
		return fmt.Errorf("found %s, want whole nanometres of at most 30 m", short(data))
	}
	*l = nm(n)
	return nil
}

// count is a whole number that counts things.
type count int

// UnmarshalJSON reads the number from its text.
func (c *count) UnmarshalJSON(data []byte) error {
	if isNull(data) {
		return nil
	}
	n, err := strconv.ParseUint(string(data), 10, 32)
	if err != nil || n > 1_000_000 {
		return fmt.Errorf("found %s, want a whole number from 0 to 1000000", short(data))
	}
	*c = count(n)
	return nil
}

// money is an amount in the plan file, exact to four decimals.
type money layout.Money

// MarshalJSON writes as many decimals as needed.
func (m money) MarshalJSON() ([]byte, error) { return []byte(layout.Money(m).String()), nil }

// maxPlanMoney is a thousand of the dearest boards.
const maxPlanMoney = 1000 * layout.MaxMoney

// UnmarshalJSON reads the number from its text, never by way of a float.
func (m *money) UnmarshalJSON(data []byte) error {
	if isNull(data) {
		return nil
	}
	n, ok := fixed(data, 4)
	if !ok || n > int64(maxPlanMoney) || n < -int64(maxPlanMoney) {
		return fmt.Errorf("found %s, want an amount with at most four decimals", short(data))
	}
	*m = money(n)
	return nil
}

// credit is a share in the plan file, exact to nine decimals.
type credit layout.Credit

// MarshalJSON writes as many decimals as needed.
func (c credit) MarshalJSON() ([]byte, error) { return []byte(layout.Credit(c).String()), nil }

// UnmarshalJSON reads the number from its text.
func (c *credit) UnmarshalJSON(data []byte) error {
	if isNull(data) {
		return nil
	}
	n, ok := fixed(data, 9)
	if !ok || n < 0 || n >= int64(layout.CreditUnity) {
		return fmt.Errorf("found %s, want a share from 0 to less than 1", short(data))
	}
	*c = credit(n)
	return nil
}

// rate is a number of hidden defects in the plan file, exact to six decimals.
type rate layout.Rate

// MarshalJSON writes as many decimals as needed.
func (r rate) MarshalJSON() ([]byte, error) { return []byte(layout.Rate(r).String()), nil }

// UnmarshalJSON reads the number from its text.
func (r *rate) UnmarshalJSON(data []byte) error { return setMillionths(r, data, rate(layout.MaxRate)) }

// hours are a time in the plan file, exact to six decimals.
type hours layout.Hours

// MarshalJSON writes as many decimals as needed.
func (h hours) MarshalJSON() ([]byte, error) { return []byte(layout.Hours(h).String()), nil }

// UnmarshalJSON reads the number from its text.
func (h *hours) UnmarshalJSON(data []byte) error {
	return setMillionths(h, data, hours(layout.MaxHours))
}

// margin is a share on top in the plan file, exact to six decimals.
type margin layout.Margin

// MarshalJSON writes as many decimals as needed.
func (m margin) MarshalJSON() ([]byte, error) { return []byte(layout.Margin(m).String()), nil }

// UnmarshalJSON reads the number from its text.
func (m *margin) UnmarshalJSON(data []byte) error {
	return setMillionths(m, data, margin(layout.MaxMargin))
}

// setMillionths reads a number from 0 to most, in millionths of one.
func setMillionths[T ~int64](into *T, data []byte, most T) error {
	if isNull(data) {
		return nil
	}
	n, ok := fixed(data, 6)
	if !ok || n < 0 || n > int64(most) {
		return fmt.Errorf("found %s, want a number from 0 to %d with at most six decimals", short(data), int64(most)/1_000_000)
	}
	*into = T(n)
	return nil
}

// degrees is an angle in the plan file, exact to six decimals.
type degrees layout.Angle

// MarshalJSON writes as many decimals as needed.
func (d degrees) MarshalJSON() ([]byte, error) { return []byte(layout.Angle(d).String()), nil }

// UnmarshalJSON reads the number from its text.
func (d *degrees) UnmarshalJSON(data []byte) error {
	if isNull(data) {
		return nil
	}
	a, err := layout.ParseAngle(string(data))
	if err != nil {
		return fmt.Errorf("found %s, want degrees from 0 to 45", short(data))
	}
	*d = degrees(a)
	return nil
}

var plainNumber = regexp.MustCompile(`^-?\d{1,18}(\.\d{1,18})?$`)

// fixed reads a decimal number as a whole number of 10^-places. It reports
// whether the text is one that needs no more places and fits.
func fixed(data []byte, places int) (int64, bool) {
	if !plainNumber.Match(data) {
		return 0, false
	}
	r, ok := new(big.Rat).SetString(string(data))
	if !ok {
		return 0, false
	}
	r.Mul(r, new(big.Rat).SetInt(new(big.Int).Exp(big.NewInt(10), big.NewInt(int64(places)), nil)))
	return r.Num().Int64(), r.IsInt() && r.Num().IsInt64()
}

// isNull reports a null, which leaves the zero value: checkShape has refused it
// wherever a value is required.
func isNull(data []byte) bool { return string(data) == "null" }

// short keeps what is quoted in an error on one line.
func short(data []byte) string {
	const most = 40
	if len(data) > most {
		return string(data[:most]) + "…"
	}
	return string(data)
}
