package files

import (
	"bytes"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"

	"sawbill/layout"
	"sawbill/layout/glueup"
)

const goodDesign = `name = "Trivet"
pattern = "grid"
units = "mm"
thickness = 28
trim = "4mm"
flatten = 2
panel_flatten = 1.5
spare_slices = 1
moisture_change = 3.5
food = true

[woods]
a = "alder"
s = "Sycamore"

[grid]
rows = [
  "aas s",
  "saas",
]
cell_width = [30, 30, "1-1/4in", 30]
row_height = 30
join = true

[frame]
width = 20
wood = "a"
`

func readIt(t testing.TB, text string) (*designReader, layout.Complaints) {
	t.Helper()
	return readDesign(strings.NewReader(text), "design.toml", layout.DefaultShop(layout.Inches))
}

func TestReadDesign(t *testing.T) {
	const mm = layout.Millimetre
	want := &glueup.Design{
		Name: "Trivet", Units: layout.Millimetres, Woods: map[string]string{"a": "alder", "s": "Sycamore"},
		Thickness: 28 * mm, Trim: 4 * mm, Flatten: 2 * mm, PanelFlatten: 3 * mm / 2, SpareSlices: 1, Moisture: 35, Food: true,
		Frame: &glueup.Frame{Width: 20 * mm, Wood: "a"},
		Pattern: &glueup.Grid{
			Rows: []string{"aass", "saas"}, RowHeights: []layout.Length{30 * mm}, Join: true,
			CellWidths: []layout.Length{30 * mm, 30 * mm, 5 * layout.Inch / 4, 30 * mm},
		},
	}
	got, faults := readIt(t, goodDesign)
	if len(faults) > 0 {
		t.Fatal(faults)
	}
	if diff := cmp.Diff(want, got.design); diff != "" {
		t.Errorf("(-want +got):\n%s", diff)
	}
}

func TestReadPatterns(t *testing.T) {
	const in = layout.Inch
	for _, test := range []struct {
		text string
		want glueup.Pattern
	}{
		{"pattern = \"cubes\"\n[cubes]\nstrip_thickness = \"7/8\"\ntop = \"a\"\nleft = \"b\"\nright = \"c\"\n",
			&glueup.Cubes{StripThickness: 7 * in / 8, Top: "a", Left: "b", Right: "c"}},
		{"pattern = \"chevron\"\n[chevron]\nangle = 22.5\nslice_width = 2\nrow_height = 1.25\nstripes = \"ab\"\nstripe_width = [1, 2]\n",
			&glueup.Chevron{Angle: 22_500_000, SliceWidth: 2 * in, RowHeight: 5 * in / 4, Stripes: "ab", StripeWidths: []layout.Length{in, 2 * in}}},
		{"pattern = \"herringbone\"\n[herringbone]\nblock_width = 1\nblock_length = 3\nlying = \"a\"\nstanding = \"bc\"\ndiagonal = true\n",
			&glueup.Herringbone{BlockWidth: in, BlockLength: 3 * in, Lying: "a", Standing: "bc", Diagonal: true}},
	} {
		got, faults := readIt(t, test.text)
		if len(faults) > 0 {
			t.Fatal(faults)
		}
		if diff := cmp.Diff(test.want, got.design.Pattern); diff != "" {
			t.Errorf("(-want +got):\n%s", diff)
		}
	}
}

// Everything that is wrong is told at once, with file, line, key and the text found.
func TestDesignComplaints(t *testing.T) {
	for _, test := range []struct {
		name, text string
		want       []string
	}{
		{"no TOML", "pattern = \"grid\"\nthickness = 1/2\n", []string{
			`design.toml:2: is not TOML: expected a top-level item to end with a newline, comment, or EOF, but got '/' instead; text and fractions are written in quotes, such as "1/8"`,
		}},
		{"no pattern", "thickness = 1\n", []string{
			`design.toml: pattern: is missing: want one of grid, cubes, chevron, herringbone`,
		}},
		{"unknown pattern", "pattern = \"chevrons\"\ntrim = -1\n[chevron]\nangle = 30\n", []string{
			`design.toml:1: pattern: found "chevrons", want one of grid, cubes, chevron, herringbone (did you mean "chevron"?)`,
			`design.toml:2: trim: found "-1", want a length that is not negative`,
		}},
		{"letters in a list", "pattern = \"herringbone\"\nthickness = 1\nlength = 9\nwidth = 9\n[woods]\na = \"ash\"\n" +
			"[herringbone]\nblock_width = 1\nblock_length = 3\nlying = [\"a\"]\nstanding = \"a\"\n", []string{
			`design.toml:10: herringbone.lying: found "[a]", want text in quotes, such as "ab"`,
		}},
		{"keys and values", `pattern = "grid"
thickness = "thick"
thicknes = 1
trim = -1
food = "yes"
spare_slices = 1.5
moisture_change = 4.25
width = 3

[woods]
a = "ash"

[grid]
rows = ["ab", "aaa"]
cell_width = [1, "x"]
row_height = 1
mirror = true

[cubes]
top = "a"

[frame]
width = 1
wood = "z"
`, []string{
			`design.toml:2: thickness: found "thick", want a length such as 5-7/8, 5-7/8", 8' 2-1/2" or 149.5mm`,
			`design.toml:3: thicknes: the key is not known: want one of flatten, food, frame, grid, length, moisture_change, name, panel_flatten, pattern, spare_slices, spare_strips, thickness, trim, units, width, woods (did you mean "thickness"?)`,
			`design.toml:4: trim: found "-1", want a length that is not negative`,
			`design.toml:5: food: found "yes", want true or false`,
			`design.toml:6: spare_slices: found "1.5", want a whole number`,
			`design.toml:7: moisture_change: found "4.25", want percentage points, with at most one decimal, such as 4`,
			`design.toml:8: width: found "3\"", a grid has its size from its cells, less the trim: leave it out`,
			`design.toml:14: grid.rows[1]: found "b", want a letter of [woods]: a`,
			`design.toml:14: grid.rows[2]: found "aaa", want 2 letters, as in the first row`,
			`design.toml:15: grid.cell_width: found "x", want a length such as 5-7/8, 5-7/8", 8' 2-1/2" or 149.5mm`,
			`design.toml:17: grid.mirror: the key is not known: want one of cell_width, join, row_height, rows`,
			`design.toml:19: cubes: the key is not known: want one of flatten, food, frame, grid, length, moisture_change, name, panel_flatten, pattern, spare_slices, spare_strips, thickness, trim, units, width, woods`,
			`design.toml:24: frame.wood: found "z", want a letter of [woods]: a`,
		}},
	} {
		t.Run(test.name, func(t *testing.T) {
			_, err := LoadDesign(Source{"design.toml", strings.NewReader(test.text)}, Source{})
			if diff := cmp.Diff(strings.Join(test.want, "\n"), errorText(err)); diff != "" {
				t.Errorf("(-want +got):\n%s", diff)
			}
		})
	}
}

// The bill of a design is read back as it was, in a shop of the other unit too, and
// a problem is made of it.
func TestBillOfADesignComesBack(t *testing.T) {
	cubes := "pattern = \"cubes\"\nlength = 12\nwidth = 9\nthickness = 1\nspare_strips = 1\n" +
		"[woods]\na = \"ash\"\nb = \"elm\"\nc = \"alder\"\n[cubes]\nstrip_thickness = \"7/8\"\ntop = \"a\"\nleft = \"b\"\nright = \"c\"\n"
	for _, text := range []string{goodDesign, cubes} {
		work, err := LoadDesign(Source{"design.toml", strings.NewReader(text)}, Source{})
		if err != nil {
			t.Fatal(err)
		}
		for _, units := range []layout.Unit{layout.Inches, layout.Millimetres} {
			shop := layout.DefaultShop(units)
			var b bytes.Buffer
			if err := WriteBill(&b, "a comment\nof two lines", work.Design.Units, work.Bill); err != nil {
				t.Fatal(err)
			}
			bill, faults := ReadBill(&b, "bill.csv", shop)
			if len(faults) > 0 || bill.Skipped.Comments != 1 {
				t.Fatalf("faults %v, %d comments", faults, bill.Skipped.Comments)
			}
			if diff := cmp.Diff(work.Bill, bill.Parts, cmpopts.EquateEmpty()); diff != "" {
				t.Errorf("(-written +read):\n%s", diff)
			}
			makesAProblem(t, shop, bill.Parts)
		}
	}
}

// makesAProblem holds a bill against a stock of thick boards of its species.
func makesAProblem(t *testing.T, shop *layout.Shop, bill []layout.Part) {
	t.Helper()
	var stock []layout.Board
	for _, p := range bill {
		mark := p.Name
		stock = append(stock, layout.Board{
			Mark: mark, Base: mark, Species: p.Species[0], Thickness: 2 * layout.Inch, Width: 8 * layout.Inch, TipWidth: 8 * layout.Inch,
			Length: 96 * layout.Inch,
		})
	}
	_, cs := layout.NewProblem(shop, stock, bill, false)
	for _, c := range cs.Faults() {
		t.Error(c)
	}
}

func FuzzReadDesign(f *testing.F) {
	f.Add(goodDesign)
	f.Add("pattern = \"cubes\"\nlength = 9\nwidth = 9\nthickness = 1\n[woods]\na = \"ash\"\n[cubes]\nstrip_thickness = 1\ntop = \"a\"\nleft = \"a\"\nright = \"a\"\n")
	f.Add("pattern = \"chevron\"\nlength = 9\nwidth = 9\nthickness = 1\n[woods]\na = \"ash\"\n[chevron]\nangle = 30\nslice_width = 2\nrow_height = 1\nstripes = \"aa\"\nstripe_width = 1\n")
	f.Add("pattern = \"herringbone\"\nwoods = { a = 1979-05-27 }\nlength = inf\n")
	f.Fuzz(func(t *testing.T, text string) {
		work, err := LoadDesign(Source{"design.toml", strings.NewReader(text)}, Source{})
		if (work == nil) == (err == nil) {
			t.Fatal("neither work nor a complaint, or both")
		}
		if work != nil && (len(work.Bill) == 0 || len(work.Face.Blocks) == 0) {
			t.Fatal("a design without strips or blocks")
		}
	})
}
