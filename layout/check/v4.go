package check

import "sawbill/layout"

// v4: exactly one trued node on the way to a part, at most one on the way to
// anything else; rough cuts above it (crosscut, then rip), and below it rip,
// crosscut, rip again, in this order and none skipped.
func v4(s *sawn, wrong report) {
	for _, at := range s.spots {
		if len(at.kids) > 0 {
			v4Order(s, at, wrong)
		}
		if at.Trued && at.trued != at {
			wrong(at, "it is trued a second time, within %v", at.trued.Rect)
		}
		if at.Part != "" && at.trued == nil {
			wrong(at, "this part is cut from wood that has not been trued")
		}
	}
}

func v4Order(s *sawn, at *spot, wrong report) {
	order, stage := []layout.Cut{layout.Crosscut, layout.Rip}, "before truing"
	if at.trued != nil {
		order, stage = []layout.Cut{layout.Rip, layout.Crosscut}, "after truing"
		if s.job.shop.RipAgain {
			order = append(order, layout.Rip)
		}
	}
	switch {
	case at.cuts >= len(order):
		wrong(at, "a %v as cut %d %s; no more than %d are allowed", at.Cut, at.cuts+1, stage, len(order))
	case at.Cut != order[at.cuts]:
		wrong(at, "a %v as cut %d %s; this must be a %v", at.Cut, at.cuts+1, stage, order[at.cuts])
	}
}
