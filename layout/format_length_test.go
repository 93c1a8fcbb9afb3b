package layout

import "testing"

func TestLengthFormat(t *testing.T) {
	for _, test := range []struct {
		length   Length
		unit     Unit
		fraction int
		want     string
	}{
		// Exact to the shop's denominator, in lowest terms.
		{47 * Inch / 8, Inches, 32, `5-7/8"`},
		{96 * Inch, Inches, 32, `96"`},
		{Inch / 2, Inches, 2, `1/2"`},
		{0, Inches, 16, `0"`},
		// Exact to 1/64, finer than the shop asks for.
		{3 * SixtyFourth, Inches, 16, `3/64"`},
		// Not exact: the nearest, halves up. 0.1 mm is 0.126 of 1/32 in; 5 mm is 6.3 of 1/32 in; 1/128 in is half of 1/64.
		{Millimetre / 10, Inches, 32, `~0"`},
		{5 * Millimetre, Inches, 32, `~3/16"`},
		{SixtyFourth/2 + 1, Inches, 64, `~1/64"`},
		{Inch - 1, Inches, 32, `~1"`},
		{-3 * Inch / 4, Inches, 32, `-3/4"`},
		{-Millimetre, Inches, 32, `-~1/32"`},
		// Millimetres have the decimals they need.
		{445 * Millimetre, Millimetres, 32, "445 mm"},
		{Inch, Millimetres, 32, "25.4 mm"},
		{SixtyFourth, Millimetres, 32, "0.396875 mm"},
		{-5 * Millimetre / 2, Millimetres, 32, "-2.5 mm"},
	} {
		if got := test.length.Format(test.unit, test.fraction); got != test.want {
			t.Errorf("%d at 1/%d %v is written %q, want %q", test.length, test.fraction, test.unit, got, test.want)
		}
	}
}

func TestLengthExact(t *testing.T) {
	for _, test := range []struct {
		length Length
		unit   Unit
		want   string
	}{
		{47 * Inch / 8, Inches, `5-7/8"`},
		{3 * SixtyFourth, Inches, `3/64"`},
		{149*Millimetre + 600*Micrometre, Inches, `~5-57/64" (149.6mm)`},
		{149*Millimetre + 1, Millimetres, "149.000001 mm"},
	} {
		if got := test.length.Exact(test.unit); got != test.want {
			t.Errorf("%d in %v is written %q, want %q", test.length, test.unit, got, test.want)
		}
	}
}

func TestStringOfExactNumbers(t *testing.T) {
	for _, test := range []struct{ got, want string }{
		{(6 * Inch).String(), "152.4mm"},
		{Nanometre.String(), "0.000001mm"},
		{(-1500 * Micrometre).String(), "-1.5mm"},
		{Length(0).String(), "0mm"},
		{(22*Degree + Degree/2).String(), "22.5"},
		{(CreditUnity / 10 * 6).String(), "0.6"},
	} {
		if test.got != test.want {
			t.Errorf("got %q, want %q", test.got, test.want)
		}
	}
}

func TestParseAngle(t *testing.T) {
	for _, test := range []struct {
		text string
		want Angle
	}{
		{"0", 0}, {"45", 45 * Degree}, {"22.5", 45 * Degree / 2}, {" 7° ", 7 * Degree},
		{".5", Degree / 2}, {"10.000001", 10*Degree + 1}, {"3.50000000", 7 * Degree / 2},
	} {
		if got, err := ParseAngle(test.text); err != nil || got != test.want {
			t.Errorf("ParseAngle(%q) = %v, %v, want %v", test.text, got, err, test.want)
		}
	}
	for _, text := range []string{"", ".", "-1", "45.000001", "46", "1e1", "ten", "1.0000001", "1.2.3", "99999999999999999999"} {
		if got, err := ParseAngle(text); err == nil {
			t.Errorf("ParseAngle(%q) = %v, want an error", text, got)
		}
	}
}
