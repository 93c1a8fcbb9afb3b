package layout

import "testing"

func TestHiddenOf(t *testing.T) {
	s := DefaultShop(Inches)
	s.Hidden["Ash "] = Hidden{Per10BF: 2 * RateUnity}
	s.Hidden["elm"] = Hidden{Length: Inch, Width: 2 * Inch}
	for _, test := range []struct {
		species    string
		want       Hidden
		rate, size bool
	}{
		// What the shop does not say is guessed: all of beech, the size in ash.
		{"beech", Hidden{RateUnity / 2, 3 * Inch, Inch}, false, false},
		{"ash", Hidden{2 * RateUnity, 3 * Inch, Inch}, true, false},
		{"elm", Hidden{0, Inch, 2 * Inch}, true, true},
		{"White Oak", Hidden{RateUnity, 6 * Inch, Inch}, false, false},
		{"black walnut", Hidden{RateUnity / 2, 6 * Inch, Inch}, false, false},
	} {
		h, rate, size := s.HiddenOf(test.species)
		if h != test.want || rate != test.rate || size != test.size {
			t.Errorf("%s: %+v %v %v, want %+v %v %v", test.species, h, rate, size, test.want, test.rate, test.size)
		}
	}
	if h, _, _ := DefaultShop(Millimetres).HiddenOf("oak"); h != (Hidden{RateUnity, 150 * Millimetre, 25 * Millimetre}) {
		t.Errorf("oak in millimetres: %+v", h)
	}
}
