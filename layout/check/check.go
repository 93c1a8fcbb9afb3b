package check

import (
	"sawbill/layout"
)

// Plan lists every violation of p in the order of its boards, then those of the
// plan as a whole; none means that the plan is valid. It never panics, whatever
// p holds: a part of the plan that is too malformed to replay is reported as
// "form" and left out of what follows.
func Plan(p *layout.Plan) []Violation {
	if faults := problemForm(p); len(faults) > 0 {
		return faults
	}
	j := newJob(p)
	for _, s := range j.boards {
		for _, r := range boardRules() {
			r.check(s, s.reporter(r.name))
		}
	}
	for _, r := range planRules() {
		r.check(j, j.reporter(r.name))
	}
	return j.found
}

// boardRule is a rule that looks at one board alone.
type boardRule struct {
	name  string
	check func(*sawn, report)
}

func boardRules() []boardRule {
	return []boardRule{
		{"V1", v1}, {"V2", v2}, {"V3", v3}, {"V4", v4}, {"V5", v5}, {"V6", v6}, {"V7", v7},
		{"V8", v8}, {"V9", v9}, {"V10", v10}, {"V12", v12}, {"V13", v13}, {"V14", v14},
		{"cost", boardCost}, {"account", account},
	}
}

// planRule is a rule that looks at the plan as a whole.
type planRule struct {
	name  string
	check func(*job, note)
}

func planRules() []planRule {
	return []planRule{
		{"name", names}, {"record", recorded}, {"record", begun}, {"record", wanted}, {"V11", v11}, {"cost", totalCost}, {"bound", bound}, {"yield", yield},
	}
}
