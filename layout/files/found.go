package files

import (
	"fmt"
	"slices"

	"sawbill/layout"
)

// ParseDefects reads a list of defects on wood that fills a frame, in the notation
// of the stock file. Bare numbers count in the units of the shop, and kinds are
// those that it knows. The error is about the first defect that cannot be read.
func ParseDefects(text string, frame layout.Rect, shop *layout.Shop) ([]layout.Defect, error) {
	s := &sheet{comma: ','}
	list := cells{s, 0, shop.Units}.defects(text, frame)
	for _, fault := range s.faults {
		return nil, fmt.Errorf("found %q, %s", fault.Found, fault.Want)
	}
	for _, d := range list {
		if _, known := shop.Kinds[d.Kind]; !known {
			var kinds []string
			for k := range shop.Kinds {
				kinds = append(kinds, string(k))
			}
			slices.Sort(kinds)
			return nil, fmt.Errorf("found %q, %s", d.Kind, layout.WantOneOf(string(d.Kind), kinds))
		}
	}
	if len(list) == 0 {
		return nil, fmt.Errorf("found %q, %s", text, wantDefect)
	}
	return list, nil
}
