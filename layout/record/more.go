package record

import (
	"fmt"
	"slices"
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
		if !slices.Contains(names, name) {
			names = append(names, name)
		}
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

// MoreParts notes that parts are wanted which the bill did not have. They must have
// passed the checks of a bill by themselves. The error says that a name is taken.
func (d *Draft) MoreParts(parts []layout.Part) error {
	for _, p := range parts {
		for i := range d.record.Wanted {
			was := &d.record.Wanted[i]
			for _, taken := range []string{was.Name, was.Set} {
				for _, name := range []string{p.Name, p.Set} {
					if name != "" && strings.EqualFold(strings.TrimSpace(taken), strings.TrimSpace(name)) {
						return fmt.Errorf("%q is in the bill of the job: ask for more of it by its name and a number, or choose another name", name)
					}
				}
			}
		}
	}
	for _, p := range parts {
		if p.Set == "" {
			d.tell("%d of %s, new in the bill", p.Quantity, p.Name)
		} else {
			d.tell("strips of %s for %d slices of %s, new in the bill", p.Name, p.Slices, p.Set)
		}
	}
	d.record.Wanted = append(d.record.Wanted, parts...)
	return nil
}

// Stock is the stock as it is in the draft.
func (d *Draft) Stock() []layout.Board { return slices.Clone(d.stock) }
