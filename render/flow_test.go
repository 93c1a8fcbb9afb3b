package render

import (
	"strings"
	"testing"

	"sawbill/layout"
	"sawbill/layout/steps"
)

// pagesThatSay lists the pages on which some label begins with words.
func pagesThatSay(t *testing.T, sheets map[string]Page, words string) map[string]bool {
	t.Helper()
	found := map[string]bool{}
	for name, page := range sheets {
		for _, l := range page.Scene.Labels {
			if strings.HasPrefix(l.Text, words) {
				found[name] = true
			}
		}
	}
	return found
}

// What is resawn stands on one sheet: its heading, its pictures and what they mean.
// They were on three once, and two of these nearly empty.
func TestResawIsNotTornApart(t *testing.T) {
	sheets := drawAll(t, "panels", panels(), Options{})
	heads, notes := pagesThatSay(t, sheets, "Resaw, standing"), pagesThatSay(t, sheets, "Black: the kerf")
	pictures := pagesThatSay(t, sheets, "P3-1a, 18")
	if len(heads) != 1 || len(notes) != 1 || len(pictures) == 0 {
		t.Fatalf("headings on %v, pictures on %v, notes on %v", heads, pictures, notes)
	}
	for page := range heads {
		if !notes[page] || !pictures[page] {
			t.Errorf("heading on %s, pictures on %v, note on %v", page, pictures, notes)
		}
	}
}

// A square rip beside a bevelled edge may leave nothing of either face: the lath of
// 30 next to an edge that is 33.2 from its far edge on face A and 30 on face B. What
// is left was said to be -2.9 wide.
func TestNothingLeftOfAWedge(t *testing.T) {
	const mm = layout.Millimetre
	w := words{layout.DefaultShop(layout.Millimetres)}
	for _, c := range []struct {
		a, b layout.Length
		want string
	}{
		{0, -3200 * layout.Micrometre, "a shaving"},
		{0, 3 * mm, "wedge, 3 wide on B"},
		{3 * mm, 0, "wedge, 3 wide on A"},
		{124541 * layout.Micrometre, 121326 * layout.Micrometre, "~124.5 wide on A, ~121.3 on B"},
	} {
		s := steps.Section{A: layout.Span{Hi: c.a}, B: layout.Span{Hi: c.b}}
		if got := strings.ReplaceAll(w.faceWidths(s), "\u00a0", " "); got != c.want {
			t.Errorf("%v on A and %v on B: %q, want %q", c.a, c.b, got, c.want)
		}
	}
}
