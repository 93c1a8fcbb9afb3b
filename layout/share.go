package layout

import (
	"fmt"
	"math"
)

// Share is how often something came about in so many draws by chance.
type Share struct{ Count, Of int }

// Value is the share itself, 0 to 1; of no draws it is 0.
func (s Share) Value() float64 {
	if s.Of == 0 {
		return 0
	}
	return float64(s.Count) / float64(s.Of)
}

// Percent is the share for people, to a tenth of a percent; but it says none or all only
// where it is that.
func (s Share) Percent() string {
	v := math.Round(1000*s.Value()) / 10
	switch {
	case s.Count < s.Of && v == 100:
		v = 99.9
	case s.Count > 0 && v == 0:
		v = 0.1
	}
	return fmt.Sprintf("%.1f%%", v)
}

// Interval is where the true chance lies with a confidence of 95 %: the score
// interval of Wilson (1927). With p the share, n the draws and z = 1.959964 it is
//
//	(p + z²/2n ± z √(p(1-p)/n + z²/4n²)) / (1 + z²/n)
//
// It stays between 0 and 1 and is no point where all draws came out alike. Of no draws
// it is 0 to 1.
func (s Share) Interval() (low, high float64) {
	if s.Of == 0 {
		return 0, 1
	}
	const z = 1.959964
	p, n := s.Value(), float64(s.Of)
	middle := p + z*z/(2*n)
	reach := z * math.Sqrt(p*(1-p)/n+z*z/(4*n*n))
	low, high = (middle-reach)/(1+z*z/n), (middle+reach)/(1+z*z/n)
	// Rounding must not leave out a share at the end of the scale.
	if s.Count == 0 {
		low = 0
	}
	if s.Count == s.Of {
		high = 1
	}
	return low, high
}
