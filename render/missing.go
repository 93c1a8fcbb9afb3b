package render

import (
	"fmt"
	"slices"

	"sawbill/layout"
)

// missing tells what the plan does not make, and why.
func (s *sheet) missing(list []layout.Missing) {
	for _, m := range list {
		text := fmt.Sprintf("%d of %s MISSING", m.Quantity, m.Part)
		if s.isSet(m.Part) {
			text = fmt.Sprintf("%s of %s MISSING", counted(m.Quantity, "slice"), m.Part)
		}
		if m.Why != "" {
			text += ": " + m.Why
		}
		line := newBlock(s.types)
		line.height = line.lines(text, 0, textCap+1, s.width(), strong()) + 2
		s.add(line, 0)
	}
	if len(list) > 0 {
		s.y += 2
	}
}

func (s *sheet) isSet(name string) bool {
	return slices.ContainsFunc(s.plan.Problem.Sets(), func(set layout.Set) bool { return set.Name == name })
}
