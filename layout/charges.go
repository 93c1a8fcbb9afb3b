package layout

import "strings"

// Charges are the shop's own lines of a quote, beside the wood: table quote of the
// shop file.
type Charges struct {
	Hours            Hours
	Rate             Money // an hour
	Finish, Hardware Money
	// Margin is added on top of all the rest: of the wood, the hours, finish and
	// hardware together.
	Margin Margin
}

// Hours are a time at the bench, in millionths of an hour.
type Hours int64

// Hour is one hour.
const Hour Hours = 1_000_000

// MaxHours is the longest time that a quote may hold, some years of work.
const MaxHours = 10_000 * Hour

// String writes the hours with as many decimals as they need; it round-trips exactly.
func (h Hours) String() string { return decimals(int64(h), 6) }

// Margin is a share of what a job costs that is added on top of it, in millionths.
type Margin int64

// MarginUnity is a share of one: it doubles what a job costs.
const MarginUnity Margin = 1_000_000

// MaxMargin is the largest share that a quote may hold.
const MaxMargin = 10 * MarginUnity

// String writes the share with as many decimals as it needs; it round-trips exactly.
func (m Margin) String() string { return decimals(int64(m), 6) }

// SamePiece reports whether two names mean the same finished piece: they are compared
// as species are.
func SamePiece(a, b string) bool {
	return strings.EqualFold(strings.TrimSpace(a), strings.TrimSpace(b))
}

func checkCharges(a about, c *Charges) {
	if c == nil {
		return
	}
	if c.Hours < 0 || c.Hours > MaxHours {
		a.fault("quote.hours", c.Hours.String(), "want hours from 0 to "+MaxHours.String())
	}
	for _, m := range []struct {
		key    string
		amount Money
	}{{"rate", c.Rate}, {"finish", c.Finish}, {"hardware", c.Hardware}} {
		if m.amount < 0 || m.amount > MaxMoney {
			a.fault("quote."+m.key, m.amount.String(), "want an amount from 0 to "+MaxMoney.String())
		}
	}
	if c.Margin < 0 || c.Margin > MaxMargin {
		a.fault("quote.margin", c.Margin.String(), "want a share from 0 to "+MaxMargin.String())
	}
}
