package check

import (
	"fmt"
	"strconv"

	"sawbill/layout"
)

// v11: nothing is made more often than the bill asks, with what it lets be spare, what
// is missing without the spares is listed, and pieces of one match word are from one
// board.
func v11(j *job, note note) {
	made := j.made()
	want := map[string]int{} // what must be listed as missing
	for i := range j.plan.Problem.Bill {
		p := &j.plan.Problem.Bill[i]
		if p.Set != "" {
			continue
		}
		if made[p.Name] > p.Quantity+p.Spare {
			note("", "", "%s is made %d times; the bill asks for %s", p.Name, made[p.Name], asked(p))
		}
		want[p.Name] = max(0, p.Quantity-made[p.Name])
	}
	j.missingSlices(want, note)
	if j.whole {
		v11Listed(j, want, note)
	}
	v11Match(j, note)
}

func asked(p *layout.Part) string {
	if p.Spare > 0 {
		return fmt.Sprintf("%d and %d spare", p.Quantity, p.Spare)
	}
	return strconv.Itoa(p.Quantity)
}

func (j *job) made() map[string]int {
	made := map[string]int{}
	j.eachPart(func(_ *sawn, at *spot) { made[at.Part] += at.pieces() })
	return made
}

func (j *job) eachPart(visit func(*sawn, *spot)) {
	for _, s := range j.boards {
		for _, at := range s.spots {
			if at.part != nil {
				visit(s, at)
			}
		}
	}
}

func v11Listed(j *job, want map[string]int, note note) {
	listed := map[string]int{}
	for _, m := range j.plan.Missing {
		if _, known := want[m.Part]; !known {
			note("", "", "missing lists %q, which the bill does not ask for", m.Part)
		}
		listed[m.Part] += m.Quantity
	}
	for i := range j.plan.Problem.Bill {
		p := &j.plan.Problem.Bill[i]
		name := p.Name
		if p.Set != "" {
			name = p.Set
		}
		if n, asked := want[name]; asked && listed[name] != n {
			note("", "", "%s: %d missing, but the plan lists %d", name, n, listed[name])
		}
		delete(want, name) // a set is judged once, at its first row
	}
}

func v11Match(j *job, note note) {
	home := map[string]*layout.Board{}
	j.eachPart(func(s *sawn, at *spot) {
		word := at.part.Match
		if word == "" {
			return
		}
		if first := home[word]; first == nil {
			home[word] = s.wood
		} else if first != s.wood {
			note(s.wood.Mark, j.place(at), "pieces of %q are all to be of one board; one is of %s", word, first.Mark)
		}
	})
}
