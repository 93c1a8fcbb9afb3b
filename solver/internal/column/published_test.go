package column

import (
	"testing"

	"sawbill/solver/internal/published"
)

const root = "../../.." // the project's root, from this package

// TestPublishedPlates meets the exact values of the unlimited plates of the
// literature, with and without a last rip.
func TestPublishedPlates(t *testing.T) {
	for _, set := range []string{"gcut-unbounded", "small-unbounded"} {
		cases, err := published.Read(published.Dir(root), set)
		if err != nil {
			t.Fatal(err)
		}
		if len(cases) == 0 {
			t.Skipf("no published cases in %s", published.Dir(root))
		}
		for _, c := range cases {
			t.Run(c.Name, func(t *testing.T) {
				comparePlate(t, c, "board_2", false)
				comparePlate(t, c, "board_3", true)
			})
		}
	}
}

func comparePlate(t *testing.T, c published.Case, key string, again published.RipAgain) {
	t.Helper()
	p := c.Problem(again)
	price := make([]Value, len(c.Items))
	for i, it := range c.Items {
		price[i] = Value(it.Value)
	}
	got := new(Bench).Best(New(p, &p.Stock[0], Exact()), price).Value
	low, known := c.Computed[key]
	high := low
	if !known { // between two levels of freedom that were worked out
		low, high = c.Computed["3stage_cross"], c.Computed["guillotine"]
		if !bool(again) {
			low = c.Computed["2stage_cross"]
		}
	}
	if got < Value(low.Low) || got > Value(high.High) {
		t.Errorf("%s: found %d, want %v to %v", key, got, low.Low, high.High)
	}
}
