package main

import (
	"path/filepath"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"sawbill/layout"
)

func TestFileStems(t *testing.T) {
	tests := []struct {
		marks, want []string
	}{
		{[]string{"M4", "m4.1", "blaue Eiche"}, []string{"M4", "m4.1", "blaue_Eiche"}},
		{[]string{"../../etc/passwd", `..\x`, "..", "."}, []string{"_.._.._etc_passwd_", "_.._x_", "_.._", "_._"}},
		// Where case is ignored, M4 and m4 would be one file.
		{[]string{"M4", "m4", "M4 "}, []string{"M4", "m4~2", "M4_"}},
		{[]string{"a/b", "a:b", "a_b"}, []string{"a_b", "a_b~2", "a_b~3"}},
		{[]string{"", "con", "Aux.1", "lpt1"}, []string{"__", "_con_", "_Aux.1_", "_lpt1_"}},
		// An umlaut in one sign or in two.
		{[]string{"M\u00fc1", "Mu\u03081"}, []string{"M\u00fc1", "M\u00fc1~2"}},
		{[]string{strings.Repeat("x", 300)}, []string{strings.Repeat("x", longestStem)}},
	}
	for _, tt := range tests {
		stems := fileStems(stockOf(tt.marks))
		for i, mark := range tt.marks {
			if stems[mark] != tt.want[i] {
				t.Errorf("of %q: stem of %q is %q, want %q", tt.marks, mark, stems[mark], tt.want[i])
			}
		}
	}
}

func TestPageFile(t *testing.T) {
	tests := []struct {
		stem string
		page int
		want string
	}{
		{"M4", 1, "M4.png"},
		{"M4", 2, "M4-2.png"},
		{"M4-2", 1, "M4-2-1.png"}, // not the second page of M4
		{"M4-2", 2, "M4-2-2.png"},
		{"M4-K1", 1, "M4-K1.png"},
	}
	for _, tt := range tests {
		if got := pageFile(tt.stem, tt.page); got != tt.want {
			t.Errorf("page %d of %q is %q, want %q", tt.page, tt.stem, got, tt.want)
		}
	}
}

// Whatever people call their boards, no page leaves the folder and no two pages
// are one file.
func TestEveryPageHasAFileOfItsOwn(t *testing.T) {
	mark := rapid.OneOf(
		rapid.StringMatching(`[mM][12](-[12]){0,2}[~. ]?`),
		rapid.StringMatching(`[./\\:a]{0,4}`),
		rapid.String(),
	)
	rapid.Check(t, func(t *rapid.T) {
		marks := rapid.SliceOfNDistinct(mark, 1, 12, rapid.ID[string]).Draw(t, "marks")
		stems := fileStems(stockOf(marks))
		owner := map[string]string{}
		for _, m := range marks {
			for page := 1; page <= 3; page++ {
				name := pageFile(stems[m], page)
				if !filepath.IsLocal(name) || filepath.Base(name) != name || len(name) > 255 {
					t.Fatalf("page %d of %q is %q, which is no plain name of a file", page, m, name)
				}
				if other, taken := owner[foldStem(name)]; taken {
					t.Fatalf("%q and %q share %q", m, other, name)
				}
				owner[foldStem(name)] = m
			}
		}
	})
}

func stockOf(marks []string) []layout.Board {
	var stock []layout.Board
	for _, m := range marks {
		stock = append(stock, layout.Board{Mark: m})
	}
	return stock
}
