package layout

import (
	"errors"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

func TestParseLengthAccepts(t *testing.T) {
	const in, mm = Inch, Millimetre
	for _, test := range []struct {
		text string
		bare Unit
		want Length
	}{
		// In the unit of the file.
		{"96", Inches, 96 * in},
		{"96", Millimetres, 96 * mm},
		{"0", Inches, 0},
		{" 12 ", Inches, 12 * in},
		{"445.5", Millimetres, 445*mm + mm/2},
		{".5", Inches, in / 2},
		{"5.", Inches, 5 * in},
		{"0.000001", Millimetres, 1},
		{"1.50000000000000000000000", Inches, 3 * in / 2},
		// Inches.
		{`96"`, Millimetres, 96 * in},
		{"96in", Millimetres, 96 * in},
		{"96 in.", Millimetres, 96 * in},
		{"96 inches", Millimetres, 96 * in},
		{"96''", Millimetres, 96 * in},
		{"1.875in", Inches, 15 * in / 8},
		// Fractions.
		{"5-7/8", Inches, 47 * in / 8},
		{`5 7/8"`, Inches, 47 * in / 8},
		{"5 - 7/8", Inches, 47 * in / 8},
		{"7/8", Inches, 7 * in / 8},
		{"0 7/8", Inches, 7 * in / 8},
		{"5/4", Inches, 5 * in / 4},
		{"63/64", Inches, 63 * SixtyFourth},
		{"1/2 mm", Inches, mm / 2},
		{"6/3", Inches, 2 * in},
		// Feet and inches.
		{"8'", Inches, 8 * Foot},
		{`8' 2-1/2"`, Inches, 8*Foot + 5*in/2},
		{"8ft 2-1/2in", Inches, 8*Foot + 5*in/2},
		{`8'-2 1/2"`, Inches, 8*Foot + 5*in/2},
		{"8' 2", Millimetres, 8*Foot + 2*in},
		{`5'7/8"`, Inches, 5*Foot + 7*in/8},
		{"8-1/2 feet", Inches, 8*Foot + 6*in},
		{"1 foot", Inches, Foot},
		// Metric.
		{"2440mm", Inches, 2440 * mm},
		{"244cm", Inches, 2440 * mm},
		{"2.44m", Inches, 2440 * mm},
		{"2.44 M", Inches, 2440 * mm},
		// As word processors, spreadsheets and telephones write them.
		{"5⅞", Inches, 47 * in / 8},
		{"5 ⅞″", Inches, 47 * in / 8},
		{"5-½", Inches, 11 * in / 2},
		{"½", Inches, in / 2},
		{"5–7/8", Inches, 47 * in / 8},
		{"5‑7/8”", Inches, 47 * in / 8},
		{"5\u00a07⁄8 “", Inches, 47 * in / 8},
		{"8′\u202f2½″", Inches, 8*Foot + 5*in/2},
		{"8’ 2“", Inches, 8*Foot + 2*in},
		// The limits.
		{"30m", Inches, MaxLength},
		{"1/64", Inches, SixtyFourth},
	} {
		got, err := ParseLength(test.text, test.bare)
		if err != nil || got != test.want {
			t.Errorf("ParseLength(%q, %v) = %v, %v, want %v", test.text, test.bare, got, err, test.want)
		}
	}
}

func TestParseLengthRefuses(t *testing.T) {
	for _, test := range []struct {
		want  string
		texts []string
	}{
		{wantLength, []string{
			"", " ", "x", `"`, "in", "5-", "5-7", "5 7", "5.5-7/8", "5-7/8-1/2", "7/", "/8", "7/0", "1/2/3/4",
			"5 7.5/8", "5 in 3 in", "8' 2'", "8' 2mm", "2in 8ft", "5,5", "1e3", "NaN", "Inf", "--5", "5 x 3",
			"½½", "5..6", "٣", "9999999999/3", "5 yards", "8' -",
		}},
		{wantPositive, []string{"-1", "-7/8", "−3", "-0.5mm"}},
		{wantShort, []string{"30001mm", "30.000000001m", "1182", "99'", "99999999999999999999", "4294967295 1/4294967295"}},
		{wantWhole, []string{"1/3", "1/128", "0.0000001mm", "5⅓", "1.0000000000000000001"}},
		{wantProper, []string{"5 9/8", "5-8/8"}},
		{wantText, []string{
			"4-Apr", "Apr-4", "apr 04", "8-Jul-26", "4. Mai", "04. Okt", "7-Aug-2026", "3-Dez",
			"1/2/2026", "7/8/26", "2026-01-02", "01.02.2026", "2026-01-02 00:00:00", "46116", "45877",
		}},
	} {
		for _, text := range test.texts {
			got, err := ParseLength(text, Inches)
			var bad *LengthError
			if !errors.As(err, &bad) || bad.Want != test.want || bad.Text != text {
				t.Errorf("ParseLength(%q) = %v, %v, want %q", text, got, err, test.want)
			}
		}
	}
}

func TestLengthErrorQuotesTheText(t *testing.T) {
	_, err := ParseLength("4-Apr", Millimetres)
	const want = `length "4-Apr": which a spreadsheet made of a fraction: give the column the format "text", ` +
		`then write 7/8", 0 7/8 or 0.875, and quarters as 4q`
	if err == nil || err.Error() != want {
		t.Errorf("got  %v\nwant %s", err, want)
	}
}

func TestParseLengthComma(t *testing.T) {
	for _, test := range []struct {
		text string
		want Length // -1: refused
	}{
		{"19,5", 39 * Millimetre / 2},
		{"1,875in", 15 * Inch / 8},
		{"1.875in", 15 * Inch / 8}, // 1875 inches would be absurd
		{"19.5", 39 * Millimetre / 2},
		{"0.125", Millimetre / 8},
		{"2,440m", 2440 * Millimetre},
		// Thousands or decimals: nobody can know.
		{"2.440", -1}, {"2.440 mm", -1}, {"1.200,5", -1}, {"1,2,3", -1}, {",5", -1},
	} {
		got, err := ParseLengthComma(test.text, Millimetres)
		if test.want < 0 {
			if err == nil || !strings.Contains(err.Error(), "\""+test.text+"\"") {
				t.Errorf("ParseLengthComma(%q) = %v, %v, want an error that quotes it", test.text, got, err)
			}
		} else if err != nil || got != test.want {
			t.Errorf("ParseLengthComma(%q) = %v, %v, want %v", test.text, got, err, test.want)
		}
	}
}

func TestParseThickness(t *testing.T) {
	for _, test := range []struct {
		text string
		bare Unit
		want Length
	}{
		{"4/4", Millimetres, Inch}, {"5/4", Millimetres, 5 * Inch / 4}, {"6q", Millimetres, 3 * Inch / 2},
		{" 16Q ", Inches, 4 * Inch}, {"8⁄4", Inches, 2 * Inch},
		// No quarters that the trade saws to: fractions.
		{"3/4", Inches, 3 * Inch / 4}, {"9/4", Inches, 9 * Inch / 4}, {"7/4", Millimetres, 7 * Millimetre / 4},
		{"27", Millimetres, 27 * Millimetre}, {"1-1/8", Inches, 9 * Inch / 8},
	} {
		got, err := ParseThickness(test.text, test.bare)
		if err != nil || got != test.want {
			t.Errorf("ParseThickness(%q, %v) = %v, %v, want %v", test.text, test.bare, got, err, test.want)
		}
	}
	for _, text := range []string{"7q", "q", "4-Apr", "-4/4", "4/4/4"} {
		if got, err := ParseThickness(text, Inches); err == nil {
			t.Errorf("ParseThickness(%q) = %v, want an error", text, got)
		}
	}
}

func TestLengthRoundTrips(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := Length(rapid.Int64Range(0, int64(MaxLength)).Draw(t, "length"))
		for _, unit := range []Unit{Inches, Millimetres} {
			if got, err := ParseLength(l.String(), unit); err != nil || got != l {
				t.Fatalf("%d is written %q and read back as %d, %v", l, l.String(), got, err)
			}
		}
		// Sixty-fourths are written exactly too, and so are millimetres.
		s := l / SixtyFourth * SixtyFourth
		if got, err := ParseLength(s.Format(Inches, 32), Millimetres); err != nil || got != s {
			t.Fatalf("%d is written %q and read back as %d, %v", s, s.Format(Inches, 32), got, err)
		}
		if got, err := ParseLength(l.Format(Millimetres, 32), Inches); err != nil || got != l {
			t.Fatalf("%d is written %q and read back as %d, %v", l, l.Format(Millimetres, 32), got, err)
		}
	})
}

// Reading may refuse anything, but what it accepts is a length of a shop, the
// same in its own writing.
func FuzzParseLength(f *testing.F) {
	for _, text := range []string{"5-7/8", `8' 2-1/2"`, "2,44m", "4-Apr", "½", "1/2/2026", "0.1mm", "9'9/9"} {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		for _, parse := range []func(string, Unit) (Length, error){ParseLength, ParseLengthComma, ParseThickness} {
			l, err := parse(text, Millimetres)
			if err != nil {
				continue
			}
			if l < 0 || l > MaxLength {
				t.Fatalf("%q is read as %d", text, l)
			}
			if again, err := ParseLength(l.String(), Inches); err != nil || again != l {
				t.Fatalf("%q is read as %d, written %q and read as %d, %v", text, l, l.String(), again, err)
			}
		}
	})
}
