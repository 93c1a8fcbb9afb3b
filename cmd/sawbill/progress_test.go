package main

import (
	"bytes"
	"testing"

	"sawbill/layout"
)

func TestStandingInWords(t *testing.T) {
	amount := func(m layout.Money) *layout.Money { return &m }
	for _, c := range []struct {
		s    standing
		want string
	}{
		{standing{}, "looking for a first plan"},
		{standing{begun: true, totals: layout.Totals{Cost: 12_5000}}, "costs 12.50"},
		{
			standing{begun: true, totals: layout.Totals{Cost: 12_5000, Bound: amount(12_0000)}},
			"costs 12.50, at least 12.00 (4%)",
		},
		{
			standing{begun: true, totals: layout.Totals{Cost: 12_5000, Bound: amount(12_5000)}, missing: "1 piece"},
			"costs 12.50, proven, 1 piece missing",
		},
	} {
		if got := c.s.String(); got != c.want {
			t.Errorf("%q, want %q", got, c.want)
		}
	}
}

// What is piped or kept in a file holds no bar.
func TestProgressNeedsATerminal(t *testing.T) {
	var out bytes.Buffer
	bar := newProgress(&out, 5, 0)
	if bar.observer() != nil {
		t.Error("without a terminal there is an observer")
	}
	bar.done()
	if out.Len() > 0 {
		t.Errorf("it wrote %q", &out)
	}
}
