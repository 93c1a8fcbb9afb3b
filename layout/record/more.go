package record

import (
	"fmt"
	"strings"

	"sawbill/layout"
)

// More notes that so many more pieces of a part of the bill are wanted, at least 1.
// The error says that the bill has no such part, or that the bill would grow beyond
// layout.MaxQuantity.
func (d *Draft) More(part string, n int) error {
	var names []string
	for i := range d.record.Wanted {
		p := &d.record.Wanted[i]
		names = append(names, p.Name)
		if !strings.EqualFold(p.Name, strings.TrimSpace(part)) {
			continue
		}
		if n < 1 || n > layout.MaxQuantity-p.Quantity {
			return fmt.Errorf("%s: found %d more, want 1 to %d", p.Name, n, layout.MaxQuantity-p.Quantity)
		}
		p.Quantity += n
		d.tell("%d more of %s", n, p.Name)
		return nil
	}
	return fmt.Errorf("part %q: %s", part, layout.WantOneOf(part, names))
}
