package render

import (
	"fmt"
	"strings"
	"testing"

	"sawbill/layout"
)

// shortOfAll lacks two dozen parts, each for a reason that takes more than a line.
func shortOfAll() *layout.Plan {
	shop := layout.DefaultShop(layout.Inches)
	b := board("C15", 6*in, 96*in)
	b.Species = "wild service tree from the far side of the valley"
	var bill []layout.Part
	for i := range 24 {
		part := peg(fmt.Sprint("slat of the back, row ", i+1), 2*in, 120*in, 3)
		part.Species = []string{b.Species}
		bill = append(bill, part)
	}
	return onePlan(shop, b, bill)
}

// Why a part is missing stands in full on the sheet of the job and on the cover of
// its booklet.
func TestSheetsSayWhyPartsAreMissing(t *testing.T) {
	plan := shortOfAll()
	job, err := Job(plan, Options{})
	if err != nil {
		t.Fatal(err)
	}
	for what, pages := range map[string][]Page{"job": job, "cover": newBooklet(plan, Options{}).cover()} {
		said := strings.Join(strings.Fields(flat(pages)), " ")
		for _, m := range plan.Missing {
			want := fmt.Sprintf("3 of %s MISSING: %s", m.Part, m.Why)
			if m.Why == "" || !strings.Contains(said, want) {
				t.Errorf("%s: nothing says %q", what, want)
			}
		}
	}
}
