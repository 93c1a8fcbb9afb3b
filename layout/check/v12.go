package check

import (
	"slices"
	"strings"

	"sawbill/layout"
)

// v12: a part comes only from species and boards that it allows, and no board
// is cut that is on hold, or in the yard when the plan does not buy.
func v12(s *sawn, wrong report) {
	switch {
	case s.wood.Source == layout.Hold:
		wrong(nil, "the board is on hold and must not be cut")
	case s.wood.Source == layout.Yard && !s.job.plan.Problem.Yard:
		wrong(nil, "the board is in the yard, and the plan does not buy from there")
	}
	for _, at := range s.spots {
		if at.part != nil {
			v12Part(s, at, wrong)
		}
	}
}

func v12Part(s *sawn, at *spot, wrong report) {
	p := at.part
	sameWood := func(name string) bool {
		return strings.EqualFold(strings.TrimSpace(name), strings.TrimSpace(s.wood.Species))
	}
	named := func(mark string) bool { return mark == s.wood.Mark || mark == s.wood.Base && mark != "" }
	if !slices.ContainsFunc(p.Species, sameWood) {
		wrong(at, "the part is to be of %s; the board is %s", strings.Join(p.Species, " or "), s.wood.Species)
	}
	if len(p.From) > 0 && !slices.ContainsFunc(p.From, named) {
		wrong(at, "the part is to come from %s only", strings.Join(p.From, " or "))
	}
	if slices.ContainsFunc(p.NotFrom, named) {
		wrong(at, "the part must not come from this board")
	}
}
