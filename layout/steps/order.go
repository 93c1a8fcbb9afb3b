package steps

import (
	"slices"

	"sawbill/layout"
)

// Order is the order of work of a whole job.
type Order uint8

// The two orders: one board after the other, or all cuts at one set-up of a
// machine together as far as the wood allows.
const (
	ByBoard Order = iota
	BySetup
)

// String gives the word for an order: board or setup.
func (o Order) String() string { return [...]string{"board", "setup"}[o] }

// List is the work of a whole job, step by step in an order of work. The plan
// must have passed its check.
func List(plan *layout.Plan, order Order) []*Step { return inOrder(AllIn(plan, order)) }

// inOrder lists the steps of sheets by their numbers.
func inOrder(sheets []*Sheet) []*Step {
	n := 0
	for _, s := range sheets {
		n += len(s.Steps)
	}
	list := make([]*Step, n)
	for _, s := range sheets {
		for i := range s.Steps {
			list[s.Steps[i].Number-1] = &s.Steps[i]
		}
	}
	return list
}

// finalLast puts the final planing, for which the wood must have rested, behind all
// else.
func finalLast(a, b *Step) int {
	switch {
	case a.Final == b.Final:
		return 0
	case b.Final:
		return -1
	}
	return 1
}

// AllIn is the work of a whole job, a sheet for each board. Steps bear the numbers
// of an order of work, and count finished pieces in it; within a sheet they stand
// blank by blank. The plan must have passed its check.
func AllIn(plan *layout.Plan, order Order) []*Sheet {
	var sheets []*Sheet
	var list []*Step
	names, tally := newNames(plan), newTally(plan)
	for i := range plan.Boards {
		s := newSheet(plan, &plan.Boards[i], names)
		s.markDone(plan.Record)
		s.spares = tally.spares
		sheets = append(sheets, s)
		for j := range s.Steps {
			list = append(list, &s.Steps[j])
		}
	}
	if order == BySetup {
		list = bySetup(list)
	}
	slices.SortStableFunc(list, finalLast)
	for i, s := range list {
		s.Number = i + 1
		tally.count(s)
	}
	return sheets
}
