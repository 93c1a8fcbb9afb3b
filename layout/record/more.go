package record

import (
	"fmt"
	"strings"

	"sawbill/layout"
)

// More notes that so many more pieces of a part of the bill are wanted, or so many
// more slices of the glue-up that has this name, at least 1. The error says that the
// bill has no such part, or that it would grow beyond layout.MaxQuantity.
func (d *Draft) More(part string, n int) error {
	var names []string
	same := func(name string) bool { return name != "" && strings.EqualFold(name, strings.TrimSpace(part)) }
	found := ""
	for i := range d.record.Wanted {
		p := &d.record.Wanted[i]
		name, many, what := p.Name, &p.Quantity, "of "+p.Name
		if p.Set != "" {
			name, many, what = p.Set, &p.Slices, "slices of "+p.Set
		}
		names = append(names, name)
		switch {
		case same(name):
			if n < 1 || n > layout.MaxQuantity-*many {
				return fmt.Errorf("%s: found %d more, want 1 to %d", name, n, layout.MaxQuantity-*many)
			}
			*many += n
			found = what
		case same(p.Name):
			return fmt.Errorf("part %q is glued in strips: ask for more slices of %q", p.Name, p.Set)
		}
	}
	if found == "" {
		return fmt.Errorf("part %q: %s", part, layout.WantOneOf(part, names))
	}
	d.tell("%d more %s", n, found)
	return nil
}
