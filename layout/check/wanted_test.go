package check

import (
	"testing"

	"sawbill/layout"
)

// A file may say anything of what a job wants; the next revision's bill came from that,
// and was blamed on us.
func TestBrokenWanted(t *testing.T) {
	for _, c := range []struct {
		rule, piece string
		wreck       func(r *layout.Record)
	}{
		{"record", "does not say that", func(r *layout.Record) { r.Wanted = r.Wanted[1:] }},
		{"record", "twice that", func(r *layout.Record) { r.Wanted = append(r.Wanted, r.Wanted[0]) }},
		{"record", "otherwise than the bill", func(r *layout.Record) { r.Wanted[0].Thickness++ }},
		{"record", "are wanted", func(r *layout.Record) { r.Wanted[0].Quantity = 0 }},
		{"form", "wanted part", func(r *layout.Record) { r.Wanted = append(r.Wanted, layout.Part{Name: "nothing"}) }},
	} {
		p := begunPlan()
		p.Record.Wanted = append([]layout.Part{}, p.Record.Wanted...)
		c.wreck(p.Record)
		wantViolation(t, p, c.rule, c.piece)
	}
}
