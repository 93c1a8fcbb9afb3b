package files

import (
	"bytes"
	"encoding/json"
	"fmt"
	"strconv"

	"sawbill/layout"
)

// price1 is what one piece of a part is priced at: an amount, kept under the empty
// key, or of a row of a set an object with an amount for a strip by its slices.
type price1 map[string]money

// MarshalJSON writes the amount or the object.
func (p price1) MarshalJSON() ([]byte, error) {
	if m, plain := p[""]; plain {
		return m.MarshalJSON()
	}
	return json.Marshal(map[string]money(p))
}

// UnmarshalJSON reads either of them.
func (p *price1) UnmarshalJSON(data []byte) error {
	*p = price1{}
	if !bytes.HasPrefix(data, []byte("{")) {
		var m money
		if err := m.UnmarshalJSON(data); err != nil {
			return err
		}
		(*p)[""] = m
		return nil
	}
	var strips map[string]money
	if err := json.Unmarshal(data, &strips); err != nil {
		return err
	}
	for key, m := range strips {
		if k, err := strconv.Atoi(key); err != nil || k < 1 || strconv.Itoa(k) != key || k > maxSlices {
			return fmt.Errorf("found a price for %q slices, want a whole number from 1 to %d", short([]byte(key)), maxSlices)
		}
		(*p)[key] = m
	}
	return nil
}

// maxSlices is beyond the slices of any strip.
const maxSlices = 1_000_000

func toPrices1(t layout.Totals) map[string]price1 {
	if t.Prices == nil {
		return nil
	}
	out := make(map[string]price1, len(t.Prices)+len(t.StripPrices))
	for part, m := range t.Prices {
		out[part] = price1{"": money(m)}
	}
	for row, strips := range t.StripPrices {
		out[row] = price1{}
		for k, m := range strips {
			out[row][strconv.Itoa(k)] = money(m)
		}
	}
	return out
}

// setPrices takes the prices of a plan file over.
func setPrices(t *layout.Totals, prices map[string]price1) {
	if prices == nil {
		return
	}
	t.Prices = map[string]layout.Money{}
	for name, p := range prices {
		if m, plain := p[""]; plain {
			t.Prices[name] = layout.Money(m)
			continue
		}
		if t.StripPrices == nil {
			t.StripPrices = map[string]map[int]layout.Money{}
		}
		t.StripPrices[name] = map[int]layout.Money{}
		for key, m := range p {
			k, _ := strconv.Atoi(key) // it was read as a number
			t.StripPrices[name][k] = layout.Money(m)
		}
	}
}
