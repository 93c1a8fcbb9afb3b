package files

import (
	"fmt"

	"sawbill/layout"
)

// charges reads the table of what a quote holds beside the wood. Hours without a rate
// would be work for nothing that nobody meant to give away.
func (s *shopReader) charges(value any) {
	said, keys := s.entries("quote", value)
	var c layout.Charges
	for _, key := range keys {
		at := "quote." + key
		switch key {
		case "hours":
			c.Hours = layout.Hours(s.millionths(at, said[key], int64(layout.MaxHours), "hours", "14.5"))
		case "rate":
			c.Rate = s.money(at, said[key])
		case "finish":
			c.Finish = s.money(at, said[key])
		case "hardware":
			c.Hardware = s.money(at, said[key])
		case "margin":
			c.Margin = layout.Margin(s.millionths(at, said[key], int64(layout.MaxMargin), "a share", "0.25"))
		default:
			s.fault(at, "", "the key is not known: "+layout.WantOneOf(key, []string{"hours", "rate", "finish", "hardware", "margin"}))
		}
	}
	if _, there := said["rate"]; !there && c.Hours > 0 {
		s.fault("quote", "", "want rate, the money for an hour; 0 where the hours are free")
	}
	s.shop.Charges = &c
}

// millionths reads a number from 0 to most, in millionths of one.
func (s *shopReader) millionths(key string, value any, most int64, what, example string) int64 {
	n, ok := fixed([]byte(textOf(value)), 6)
	if !ok || n < 0 || n > most {
		s.fault(key, textOf(value), fmt.Sprintf("want %s from 0 to %d with up to six decimals, such as %s", what, most/1_000_000, example))
		return 0
	}
	return n
}

func (s *shopReader) money(key string, value any) layout.Money {
	m, err := layout.ParseMoney(textOf(value))
	if err != nil {
		s.fault(key, textOf(value), "want an amount such as 31.50, at most "+layout.MaxMoney.String())
	}
	return m
}
