package buy

import (
	"slices"
	"testing"

	"sawbill/layout"
)

// Of boards for 10, 14 and 14 out of a yard with others for 10: without a dear one 24,
// without the cheap one 28; with one for 10 in the place of a dear one 34.
func TestSwapsCheapestFirst(t *testing.T) {
	p := alikeYard()
	p.Stock = append(p.Stock[:2:2], p.Stock[8:]...) // L.1 L.2 M1 M2
	d := newDecision(p, Options{})
	have := []string{"L.1", "M1", "M2"}
	var sets [][]string
	var prices []layout.Money
	for _, s := range d.swaps(have) {
		sets, prices = append(sets, s.of(have)), append(prices, s.price/layout.Unity)
	}
	want := [][]string{{"L.1", "M2"}, {"L.1", "M1"}, {"M1", "M2"}, {"L.1", "M2", "L.2"}, {"L.1", "M1", "L.2"}}
	if !slices.EqualFunc(sets, want, slices.Equal) {
		t.Errorf("sets %v, want %v", sets, want)
	}
	if want := []layout.Money{24, 24, 28, 34, 34}; !slices.Equal(prices, want) {
		t.Errorf("prices %v, want %v", prices, want)
	}
}
