package files

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"

	"sawbill/layout"
)

func TestReadShop(t *testing.T) {
	const text = `units = "mm"
fraction = 16
rip_kerf = 2.8
crosscut_kerf = "1/8in"
max_blank = "none"
min_blank = "0.25m"
offcut_credit = 0.123456789
rip_again = false
price_unit = "m3"

[price]
ash = 1250.50
"red elm" = "990"

[clearance]
metal = [20, "1/2\""]
worm = [0.1, 0.3]

[kinds]
worm = "unsound"
Fleck = "sound"

[grades.shelf]
show = ["fleck"]
back = ["knot", "worm"]

[hidden.ash]
per_10bf = 1.25
length = 60
width = "1in"

[hidden."white oak"]
per_10bf = 0

[quote]
hours = 14.5
rate = "42"
finish = 18.25
hardware = 0
margin = 0.25
`
	want := layout.DefaultShop(layout.Millimetres)
	want.Fraction = 16
	want.RipKerf, want.CrosscutKerf, want.MinBlank = 2800*layout.Micrometre, layout.Inch/8, 250*layout.Millimetre
	want.OffcutCredit, want.RipAgain, want.PriceUnit = 123456789, false, layout.PerCubicMetre
	want.Price = map[string]layout.Money{"ash": 12505000, "red elm": 9900000}
	want.Clearance[layout.Metal] = layout.Clearance{Along: 20 * layout.Millimetre, Across: layout.Inch / 2}
	want.Clearance["worm"] = layout.Clearance{Along: layout.Millimetre / 10, Across: 300 * layout.Micrometre}
	want.Kinds["worm"], want.Kinds["fleck"] = false, true
	sound := []layout.Kind{"burl", "fleck", "gum", "knot", "pin", "sap", "stain"}
	want.Grades["one-face"] = layout.Grade{Back: sound}
	want.Grades["sound"] = layout.Grade{Show: sound, Back: sound}
	want.Grades["shelf"] = layout.Grade{Show: []layout.Kind{"fleck"}, Back: []layout.Kind{"knot", "worm"}}

	want.Hidden = map[string]layout.Hidden{
		"ash":       {Per10BF: 1250000, Length: 60 * layout.Millimetre, Width: layout.Inch},
		"white oak": {},
	}
	want.Charges = &layout.Charges{
		Hours: 29 * layout.Hour / 2, Rate: 42 * layout.Unity, Finish: 182500, Margin: layout.MarginUnity / 4,
	}

	shop, cs := ReadShop(strings.NewReader(text), "shop.toml")
	if len(cs) > 0 {
		t.Fatal(cs)
	}
	if diff := cmp.Diff(want, shop.Shop, cmpopts.EquateEmpty()); diff != "" {
		t.Errorf("(-want +got):\n%s", diff)
	}
}

// No key is needed.
func TestReadEmptyShop(t *testing.T) {
	shop, cs := ReadShop(strings.NewReader("\r\n# nothing yet\r\n"), "shop.toml")
	if len(cs) > 0 {
		t.Fatal(cs)
	}
	if diff := cmp.Diff(layout.DefaultShop(layout.Inches), shop.Shop); diff != "" {
		t.Errorf("(-want +got):\n%s", diff)
	}
}

func TestShopComplaints(t *testing.T) {
	for _, test := range []struct {
		name, text string
		want       []string
	}{
		{"no TOML", "units = \"in\"\nrip_kerf = 1/8\n", []string{
			`shop.toml:2: is not TOML: expected a top-level item to end with a newline, comment, or EOF, but got '/' instead; text and fractions are written in quotes, such as "1/8"`,
		}},
		{"units", "units = \"inch\"\nrip_kerf = \"x\"\n", []string{
			`shop.toml:1: units: found "inch", want one of in, mm (did you mean "in"?)`,
			`shop.toml:2: rip_kerf: found "x", want a length such as 5-7/8, 5-7/8", 8' 2-1/2" or 149.5mm`,
		}},
		{"keys and values", `rip_kerf = "x"
rip_kref = 1
end_trim = -1
fraction = 12
offcut_credit = 1.0
rip_again = "maybe"
price_unit = "ft"
max_blank = 3
edge_joint = [1]
[price]
ash = "dear"
[clearance]
check = 1
chek = [1, "1/3"]
[kinds]
worm = "bad"
[grades.shelf]
show = "knot"
bakc = []
[hidden.ash]
per_10bf = -1
length = 0
[hidden.elm]
per10bf = 1
`, []string{
			`shop.toml:1: rip_kerf: found "x", want a length such as 5-7/8, 5-7/8", 8' 2-1/2" or 149.5mm`,
			`shop.toml:2: rip_kref: the key is not known: want one of crosscut_kerf, edge_joint, end_square, end_trim, face_skim, jointer_width, length_allowance, max_blank, min_blank, min_crosscut, min_offcut_length, min_offcut_width, min_rip, min_rip_length, panel_square, planer_width, resaw_kerf, rip_kerf, rough_rip_kerf, snipe, thickness_allowance, width_allowance, units, kinds, fraction, offcut_credit, rip_again, price_unit, price, clearance, grades, hidden, quote (did you mean "rip_kerf"?)`,
			`shop.toml:3: end_trim: found "-1", want a length that is not negative`,
			`shop.toml:4: fraction: found "12", want 2, 4, 8, 16, 32 or 64`,
			`shop.toml:5: offcut_credit: found "1", want a share from 0 to less than 1, such as 0.6`,
			`shop.toml:6: rip_again: found "maybe", want true or false`,
			`shop.toml:7: price_unit: found "ft", want one of bf, m3`,
			`shop.toml:8: max_blank: found "3\"", want at least min_blank, 12"`,
			`shop.toml:9: edge_joint: found "[1]", want a length such as 5-7/8, 5-7/8", 8' 2-1/2" or 149.5mm`,
			`shop.toml:11: price.ash: found "dear", want a price such as 7.50`,
			`shop.toml:13: clearance.check: found "1", want [along, across], such as [1, "1/2"]`,
			`shop.toml:14: clearance.chek: found "1/3", want an exact length: sixty-fourths of an inch, or millimetres with up to six decimals`,
			`shop.toml:16: kinds.worm: found "bad", want one of unsound, sound`,
			`shop.toml:18: grades.shelf.show: found "knot", want a list of kinds, such as ["knot", "pin"]`,
			`shop.toml:19: grades.shelf.bakc: the key is not known: want one of show, back (did you mean "back"?)`,
			`shop.toml:21: hidden.ash.per_10bf: found "-1", want a number from 0 to 1000 with up to six decimals, such as 0.5`,
			`shop.toml:22: hidden.ash.length: found "0", want a length of more than 0`,
			`shop.toml:23: hidden.elm: want per_10bf, the mean number of hidden defects in ten board feet`,
			`shop.toml:24: hidden.elm.per10bf: the key is not known: want one of per_10bf, length, width (did you mean "per_10bf"?)`,
		}},
		{"quotes", "[quote]\nhours = 1e9\nfinish = \"-1\"\nmargin = \"25%\"\nhardwear = 1\n[price]\nash = 7\n", []string{
			`shop.toml:2: quote.hours: found "1000000000", want hours from 0 to 10000 with up to six decimals, such as 14.5`,
			`shop.toml:3: quote.finish: found "-1", want an amount such as 31.50, at most 1000000000`,
			`shop.toml:4: quote.margin: found "25%", want a share from 0 to 10 with up to six decimals, such as 0.25`,
			`shop.toml:5: quote.hardwear: the key is not known: want one of hours, rate, finish, hardware, margin (did you mean "hardware"?)`,
		}},
		{"hidden, and no table", "[hidden]\nash = 3\n[price]\nash = 7\n", []string{
			`shop.toml:2: hidden.ash: found "3", want a table [hidden.ash]`,
		}},
		{"hours at no rate", "[quote]\nhours = 2\n[price]\nash = 7\n", []string{
			`shop.toml:1: quote: want rate, the money for an hour; 0 where the hours are free`,
		}},
	} {
		t.Run(test.name, func(t *testing.T) {
			_, err := Load(Input{
				Shop:  Source{"shop.toml", strings.NewReader(test.text)},
				Stock: Source{"stock.csv", strings.NewReader(goodStock)},
				Bill:  Source{"bill.csv", strings.NewReader(goodBill)},
			})
			if diff := cmp.Diff(strings.Join(test.want, "\n"), errorText(err)); diff != "" {
				t.Errorf("(-want +got):\n%s", diff)
			}
		})
	}
}

func errorText(err error) string {
	if err == nil {
		return ""
	}
	return err.Error()
}

func FuzzReadShop(f *testing.F) {
	f.Add("units = \"mm\"\nrip_kerf = 2.8\n[price]\nash = 7\n[clearance]\ncheck = [1, \"1/2\"]\n[hidden.ash]\nper_10bf = 0.5\nlength = 3\n[quote]\nhours = 2.5\nrate = 40\nmargin = 0.25\n")
	f.Add("[grades.x]\nshow = [\"knot\"]\n[kinds]\nworm = \"sound\"\n")
	f.Add("units = 1979-05-27\nclearance = { check = [1, 0] }\na.b.c = inf\n")
	f.Fuzz(func(t *testing.T, text string) {
		shop, cs := ReadShop(strings.NewReader(text), "shop.toml")
		if shop == nil && len(cs) == 0 {
			t.Fatal("neither a shop nor a complaint")
		}
		if shop != nil {
			layout.NewStock(shop.Shop, nil)
		}
	})
}
