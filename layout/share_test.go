package layout

import (
	"math"
	"testing"
)

func TestInterval(t *testing.T) {
	for _, test := range []struct {
		share     Share
		low, high float64
	}{
		// Of none and of all the formula is 0 to z²/(n+z²), with z² = 3.841459.
		{Share{0, 10}, 0, 3.841459 / 13.841459},
		{Share{10, 10}, 10 / 13.841459, 1},
		// Half of 100: 1/2 ± z √(1/400 + z²/40000) / (1 + z²/100) = 1/2 ± 0.0961685.
		{Share{50, 100}, 0.5 - 0.0961685, 0.5 + 0.0961685},
		{Share{0, 0}, 0, 1},
	} {
		low, high := test.share.Interval()
		if math.Abs(low-test.low) > 1e-6 || math.Abs(high-test.high) > 1e-6 {
			t.Errorf("%v: %.7f to %.7f, want %.7f to %.7f", test.share, low, high, test.low, test.high)
		}
	}
}

// The interval holds the true chance about as often as it says: counted exactly, with
// the binomial probability of every outcome of n draws, on average over all chances,
// and nowhere much less.
func TestIntervalCovers(t *testing.T) {
	for _, n := range []int{20, 100, 1000} {
		sum, least := 0.0, 1.0
		for i := 1; i < 200; i++ {
			c := coverage(n, float64(i)/200)
			sum, least = sum+c, min(least, c)
		}
		if mean := sum / 199; math.Abs(mean-0.95) > 0.01 || least < 0.83 {
			t.Errorf("of %d draws the interval holds the chance in %.4f of all cases, at worst %.4f", n, mean, least)
		}
	}
}

// coverage is how probable it is that the interval of n draws holds their chance.
func coverage(n int, p float64) float64 {
	sum := 0.0
	whole, _ := math.Lgamma(float64(n + 1))
	for k := 0; k <= n; k++ {
		low, high := Share{k, n}.Interval()
		if low > p || p > high {
			continue
		}
		a, _ := math.Lgamma(float64(k + 1))
		b, _ := math.Lgamma(float64(n - k + 1))
		sum += math.Exp(whole - a - b + float64(k)*math.Log(p) + float64(n-k)*math.Log(1-p))
	}
	return sum
}

func TestPercent(t *testing.T) {
	for share, want := range map[Share]string{
		{0, 2000}: "0.0%", {1, 2000}: "0.1%", {1, 3000}: "0.1%", {1381, 2000}: "69.1%", {2999, 3000}: "99.9%", {7, 7}: "100.0%",
	} {
		if got := share.Percent(); got != want {
			t.Errorf("%v: %s, want %s", share, got, want)
		}
	}
}
