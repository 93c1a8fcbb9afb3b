package render

import (
	"fmt"
	"slices"
	"strings"

	"sawbill/layout/steps"
)

// setting is one way in which a machine is set, and the steps that it serves.
type setting struct {
	machine string
	steps   []*steps.Step
}

// settings are those of the job, machine by machine. By set-up they are in the order of
// work, so that a machine may come again. Board by board every setting comes back with
// most boards, and is listed once. What is done, and what cuts nothing, needs none.
func (b *booklet) settings() []setting {
	var list []setting
	for _, s := range b.work() {
		same := func(o setting) bool {
			return o.machine == machine(s) && steps.SetupOf(o.steps[0]) == steps.SetupOf(s)
		}
		k := slices.IndexFunc(list, same)
		if b.o.Order == steps.BySetup && (len(list) == 0 || !same(list[len(list)-1])) {
			k = -1
		} else if b.o.Order == steps.BySetup {
			k = len(list) - 1
		}
		if k < 0 {
			list, k = append(list, setting{machine: machine(s)}), len(list)
		}
		list[k].steps = append(list[k].steps, s)
	}
	if b.o.Order != steps.BySetup {
		list = byMachine(list)
	}
	return list
}

// byMachine puts the settings of one machine together, machines in the order in which
// they are first used.
func byMachine(list []setting) []setting {
	var order []string
	for _, s := range list {
		if !slices.Contains(order, s.machine) {
			order = append(order, s.machine)
		}
	}
	list = slices.Clone(list)
	slices.SortStableFunc(list, func(x, y setting) int {
		return slices.Index(order, x.machine) - slices.Index(order, y.machine)
	})
	return list
}

// work are the steps of the job in order that are yet to be done and cut something.
func (b *booklet) work() []*steps.Step {
	var list []*steps.Step
	for _, sheet := range b.sheets {
		for i := range sheet.Steps {
			if s := &sheet.Steps[i]; !s.NoCut && !s.Done {
				list = append(list, s)
			}
		}
	}
	slices.SortFunc(list, func(x, y *steps.Step) int { return x.Number - y.Number })
	return list
}

func machine(s *steps.Step) string {
	switch s.Operation {
	case steps.Crosscut:
		if s.Blank == "" {
			return "rough crosscut"
		}
		return "crosscut, stop"
	case steps.Rip:
		return "rip, fence"
	case steps.BevelRip:
		return "rip, fence, blade at " + degrees(s.Angle)
	case steps.True:
		return "jointer, planer"
	case steps.Plane:
		return "planer"
	}
	return string(s.Operation)
}

// set is what a machine is set to; the rough cuts follow a tape or a line.
func (b *booklet) set(s setting) string {
	if steps.SetupOf(s.steps[0]).Setting == 0 {
		return "by tape"
	}
	return b.reading(s.steps[0].Setting)
}

// serves names the steps of a setting and, by set-up, the pieces that they take in
// hand, each once: there the sheets of the boards do not lie at hand in that order.
func (b *booklet) serves(s setting) string {
	text := stepNumbers(s.steps)
	if b.o.Order != steps.BySetup {
		return text
	}
	var names []string
	for _, st := range s.steps {
		if name := steps.Chalk(st.Piece); !slices.Contains(names, name) {
			names = append(names, name)
		}
	}
	return text + ": " + strings.Join(names, ", ")
}

// stepNumbers lists the numbers of steps, in ranges where they follow each other.
func stepNumbers(list []*steps.Step) string {
	var parts []string
	for i := 0; i < len(list); {
		j := i
		for j+1 < len(list) && list[j+1].Number == list[j].Number+1 {
			j++
		}
		parts = append(parts, numbers(list[i].Number, list[j].Number))
		i = j + 1
	}
	return strings.Join(parts, ", ")
}

// cautionKey gives each caution of the settings a letter, in the order in which they
// are first needed.
type cautionKey []steps.Caution

func keyOf(list []setting) cautionKey {
	var key cautionKey
	for _, s := range list {
		for _, st := range s.steps {
			for _, c := range st.Cautions {
				if !slices.Contains(key, c) {
					key = append(key, c)
				}
			}
		}
	}
	return key
}

// letter counts A, B, … Z, AA, …
func (k cautionKey) letter(c steps.Caution) string { return capital(slices.Index(k, c)) }

func capital(n int) string {
	last := string(rune('A' + n%26))
	if n < 26 {
		return last
	}
	return capital(n/26-1) + last
}

// of are the letters of the cautions of a setting, with the steps that need each where
// those are not all, or many and at least half: to take care at a few more does no harm,
// and the sheets say it of every step.
func (k cautionKey) of(s setting) string {
	var list []string
	for _, c := range k {
		var need []*steps.Step
		for _, st := range s.steps {
			if slices.Contains(st.Cautions, c) {
				need = append(need, st)
			}
		}
		switch {
		case len(need) == 0:
		case len(need) == len(s.steps), len(need) > 3 && 2*len(need) >= len(s.steps), c == steps.CautionDust: // dust is in the air all day
			list = append(list, k.letter(c))
		default:
			list = append(list, fmt.Sprintf("%s%c(%s)", k.letter(c), hold, stepNumbers(need)))
		}
	}
	return strings.Join(list, ", ")
}
