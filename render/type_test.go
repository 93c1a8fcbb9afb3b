package render

import "testing"

// A name once broke into HO and 1-1/2/1, and the second half read like a size.
func TestNamesBreakBehindTheirMarks(t *testing.T) {
	types := newTypesetter()
	for _, name := range []string{"HO1-1/2/1", "SY3"} {
		if got := types.breakName(name, doColumn-pieceColumn-2); got != name {
			t.Errorf("%s is broken: %q", name, got)
		}
	}
	for name, want := range map[string]string{
		"WM12-2/2/2":     "WM12-2/2/ 2",
		"LOFT12-12/2/10": "LOFT12- 12/2/10",
		"WORKBENCHTOP12": "WORKBENCHTOP12",
	} {
		if got := types.breakName(name, doColumn-pieceColumn-2); got != want {
			t.Errorf("%s becomes %q, want %q", name, got, want)
		}
	}
}
