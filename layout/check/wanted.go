package check

import (
	"reflect"

	"sawbill/layout"
)

// wanted: what the record says the job wants in all has a name each, and holds every
// row of the bill, with at least as many pieces.
func wanted(j *job, note note) {
	if j.plan.Record == nil {
		return
	}
	all := map[string]*layout.Part{}
	for i := range j.plan.Record.Wanted {
		p := &j.plan.Record.Wanted[i]
		if all[p.Name] != nil {
			note("", "", "the record says twice that %q is wanted", p.Name)
		}
		all[p.Name] = p
	}
	for i := range j.plan.Problem.Bill {
		p := &j.plan.Problem.Bill[i]
		switch whole := all[p.Name]; {
		case whole == nil:
			note("", "", "the record does not say that %q is wanted", p.Name)
		case !sameKind(*p, *whole):
			note("", "", "the record says otherwise than the bill what %q is", p.Name)
		case p.Quantity > whole.Quantity:
			note("", "", "%d of %q are in the bill; the record says that %d are wanted", p.Quantity, p.Name, whole.Quantity)
		}
	}
}

// sameKind reports whether two rows differ in how many pieces they want and in the
// boards that may give them at most: what is left of those has marks of its own.
func sameKind(a, b layout.Part) bool {
	a.Quantity, a.Spare, a.From, a.NotFrom = b.Quantity, b.Spare, b.From, b.NotFrom
	return reflect.DeepEqual(a, b)
}
