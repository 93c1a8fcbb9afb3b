package files

import (
	"encoding/json"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"sawbill/layout"
)

// A part has one price, a row of a set one for every number of slices.
func TestPricesComeBack(t *testing.T) {
	want := layout.Totals{
		Prices:      map[string]layout.Money{"rail": 5000},
		StripPrices: map[string]map[int]layout.Money{"light": {8: 12_500, 9: 0}, "dark": {}},
	}
	text, err := json.Marshal(toPrices1(want))
	if err != nil {
		t.Fatal(err)
	}
	if got := string(text); got != `{"dark":{},"light":{"8":1.25,"9":0},"rail":0.5}` {
		t.Errorf("written as %s", got)
	}
	var read map[string]price1
	if err := json.Unmarshal(text, &read); err != nil {
		t.Fatal(err)
	}
	var got layout.Totals
	setPrices(&got, read)
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("(-want +got):\n%s", diff)
	}
}

func TestPricesRefused(t *testing.T) {
	for _, c := range []struct{ text, want string }{
		{`{"light": {"0": 1}}`, `found a price for "0" slices`},
		{`{"light": {"08": 1}}`, `found a price for "08" slices`},
		{`{"light": {"many": 1}}`, `found a price for "many" slices`},
		{`{"light": {"": 1}}`, `found a price for "" slices`},
		{`{"light": {"8": 1.00001}}`, "want an amount with at most four decimals"},
		{`{"light": "1"}`, "want an amount with at most four decimals"},
	} {
		var read map[string]price1
		if err := json.Unmarshal([]byte(c.text), &read); err == nil || !strings.Contains(err.Error(), c.want) {
			t.Errorf("%s: error %v, want one that says %s", c.text, err, c.want)
		}
	}
}
