package record

import (
	"fmt"
	"slices"

	"sawbill/layout"
)

// Back is an earlier revision of a plan as the next one, with all that was true of
// it: what was told since is told no more. The sheets of that revision are good
// again.
func Back(earlier, now *layout.Plan) *layout.Plan {
	next := *earlier
	next.Revision = now.Revision + 1
	record := layout.Record{Wanted: slices.Clone(earlier.Problem.Bill)}
	if earlier.Record != nil {
		record = *earlier.Record
	}
	record.Told = []string{fmt.Sprintf("back to revision %d", earlier.Revision)}
	record.Papers = papers(earlier, earlier)
	next.Record = &record
	return &next
}

// Before is the revision that a plan goes on from, 0 for the first.
func Before(plan *layout.Plan) int {
	if plan.Record != nil {
		return plan.Record.From
	}
	return plan.Revision - 1
}
