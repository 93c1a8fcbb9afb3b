package layout

import "testing"

func TestNearest(t *testing.T) {
	known := []string{"ash", "beech", "elm", "red oak"}
	for _, test := range []struct{ word, want string }{
		{"bech", "beech"}, {"BEECH ", "beech"}, {"beach", "beech"}, {"elms", "elm"}, {"redoak", "red oak"},
		// Too far from all to have been meant.
		{"mahogany", ""}, {"", ""}, {"ebony", ""},
	} {
		if got := Nearest(test.word, known); got != test.want {
			t.Errorf("Nearest(%q) = %q, want %q", test.word, got, test.want)
		}
	}
}

func TestWantOneOf(t *testing.T) {
	known := []string{"rough", "one", "both"}
	if got, want := WantOneOf("bth", known), `want one of rough, one, both (did you mean "both"?)`; got != want {
		t.Errorf("got %q, want %q", got, want)
	}
	if got, want := WantOneOf("left edge", known), `want one of rough, one, both`; got != want {
		t.Errorf("got %q, want %q", got, want)
	}
}
