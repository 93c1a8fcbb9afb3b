package files

import (
	"bytes"
	"encoding/csv"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"
	"pgregory.net/rapid"

	"sawbill/layout"
)

func TestWrittenStockIsReadBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		shop := layout.DefaultShop(rapid.SampledFrom([]layout.Unit{layout.Inches, layout.Millimetres}).Draw(t, "units"))
		boards := []layout.Board{drawBoard(t, "1"), drawBoard(t, "2")}
		var file bytes.Buffer
		if err := WriteStock(&file, shop, boards); err != nil {
			t.Fatal(err)
		}
		text := file.String()
		read, faults := ReadStock(&file, "stock.csv", shop)
		if len(faults) > 0 {
			t.Fatalf("%v\n%s", faults, text)
		}
		for i := range read.Boards {
			if b := &read.Boards[i]; b.Cost == layout.Unpriced {
				b.Cost, _ = shop.DefaultCost(b)
			}
		}
		if diff := cmp.Diff(boards, read.Boards, cmpopts.EquateEmpty()); diff != "" {
			t.Fatalf("(-written +read):\n%s\n%s", diff, text)
		}
	})
}

func drawBoard(t *rapid.T, number string) layout.Board {
	size := func(what string) layout.Length { return layout.Length(rapid.Int64Range(1e7, 1e9).Draw(t, what)) }
	words := rapid.SampledFrom([]string{"", "=SUM(A1)", "-wall", "3-4", "4-Apr", "jun 26", "007", "1e5", "left, high", "9:30", "12", "x"})
	b := layout.Board{
		Mark: words.Draw(t, "mark") + "." + number, Species: "ash", Thickness: size("thickness"), Width: size("width"), TipWidth: size("tip"),
		Length: size("length"), Cost: layout.Money(rapid.Int64Range(0, 1e7).Draw(t, "cost")),
		Edges: layout.Edges(rapid.IntRange(0, 2).Draw(t, "edges")), Faces: layout.Faces(rapid.IntRange(0, 1).Draw(t, "faces")),
		Bow: size("bow") / 100, Source: layout.Source(rapid.IntRange(0, 2).Draw(t, "source")),
		Place: words.Draw(t, "place"), Grade: words.Draw(t, "grade"), Note: words.Draw(t, "note"),
	}
	b.Base = b.Mark
	if rapid.Bool().Draw(t, "defect") {
		b.Defects = []layout.Defect{{Kind: layout.Knot, Face: layout.Face(rapid.IntRange(0, 2).Draw(t, "face")), Rect: layout.Rect{X1: 1, X2: size("x"), Y1: 0, Y2: size("y")}}}
	}
	return b
}

// What a spreadsheet would change is written so that it does not, and nothing else
// is touched.
func TestCellsForSpreadsheets(t *testing.T) {
	for _, cell := range []string{"=1+1", "+3", "-3", "@A1", "3-4", "1/2", "4-Apr", "Apr 4", "007", "1.50", "1e5", "12:30", "1/2/2026"} {
		if got := asText(cell); got != "\u00a0"+cell {
			t.Errorf("%q is written as %q", cell, got)
		}
	}
	for _, cell := range []string{"", "M4", "M4-K1", "12", "0", "march wood", "left wall", "4/4 pile", "K3-4"} {
		if got := asText(cell); got != cell {
			t.Errorf("%q is written as %q", cell, got)
		}
	}
}

// No cell of a size can be taken for a number or a date.
func TestSizesAreNoDates(t *testing.T) {
	shop := layout.DefaultShop(layout.Inches)
	board := layout.Board{Mark: "A", Base: "A", Species: "ash", Thickness: layout.Inch, Width: layout.Inch / 2, TipWidth: 3 * layout.Inch / 4, Length: 4*layout.Inch + 1}
	var file bytes.Buffer
	if err := WriteStock(&file, shop, []layout.Board{board}); err != nil {
		t.Fatal(err)
	}
	rows, err := csv.NewReader(strings.NewReader(file.String())).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	want := []string{`1"`, `1/2"`, `3/4"`, "101.600001mm"}
	if diff := cmp.Diff(want, rows[1][2:6]); diff != "" {
		t.Error(diff)
	}
}

func TestParseDefects(t *testing.T) {
	shop := layout.DefaultShop(layout.Inches)
	frame := layout.Rect{X2: 30 * layout.Inch, Y2: 4 * layout.Inch}
	got, err := ParseDefects("knot 3..5 x 1..2 /B; check 28..", frame, shop)
	want := []layout.Defect{
		{Kind: layout.Knot, Face: layout.FaceB, Rect: layout.Rect{X1: 3 * layout.Inch, X2: 5 * layout.Inch, Y1: layout.Inch, Y2: 2 * layout.Inch}},
		{Kind: layout.Check, Rect: layout.Rect{X1: 28 * layout.Inch, X2: 30 * layout.Inch, Y2: 4 * layout.Inch}},
	}
	if diff := cmp.Diff(want, got); err != nil || diff != "" {
		t.Errorf("%v\n%s", err, diff)
	}
	for text, want := range map[string]string{
		"":            `found "", want a kind and a place`,
		"nkot 3..5":   `found "nkot", want one of `,
		"knot 5..3":   `found "knot 5..3", want a range that ends after it begins`,
		"knot 3..5 x": `found "knot 3..5 x", want`,
	} {
		if _, err := ParseDefects(text, frame, shop); err == nil || !strings.HasPrefix(err.Error(), want) {
			t.Errorf("%q: %v, want %s…", text, err, want)
		}
	}
}
