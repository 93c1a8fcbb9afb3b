package render

import (
	"fmt"
	"slices"
	"strings"

	"sawbill/layout/steps"
)

// settings lists how the machines are set, in the order of work, with the steps and
// pieces that each setting serves and the cautions that belong to them.
func (b *booklet) settings(s *sheet) {
	cols := columns(s.width(), []string{"steps", "machine", "set", "pieces", "caution"}, []float64{22, 34, 42, 56, 106})
	var rows [][]string
	for _, run := range b.setupRuns() {
		rows = append(rows, []string{
			numbers(run[0].Number, run[len(run)-1].Number), machine(run[0]), b.set(run), piecesOf(run), cautionsOf(run),
		})
	}
	if len(rows) > 0 {
		s.table("Settings of fence, stop and planer, in order", cols, rows)
	}
}

// mostListed is how many steps are listed together, so that a row has room on a
// page.
const mostListed = 12

// setupRuns are the steps that are listed together: by set-up those that one
// setting serves, by board those of one machine. Steps without a cut need none.
func (b *booklet) setupRuns() [][]*steps.Step {
	var runs [][]*steps.Step
	at := map[string]int{}
	var before steps.Setup
	for _, s := range b.work() {
		key := s.Board + " " + machine(s)
		if now := steps.SetupOf(s); b.o.Order == steps.BySetup && now != before {
			at, before = map[string]int{}, now
		}
		if b.o.Order == steps.BySetup {
			key = ""
		}
		k, found := at[key]
		if !found || len(runs[k]) == mostListed {
			k, at[key] = len(runs), len(runs)
			runs = append(runs, nil)
		}
		runs[k] = append(runs[k], s)
	}
	return runs
}

// work are the steps of the job in order, without those that cut nothing.
func (b *booklet) work() []*steps.Step {
	var list []*steps.Step
	for _, sheet := range b.sheets {
		for i := range sheet.Steps {
			if s := &sheet.Steps[i]; !s.NoCut {
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

// set are the settings of a run, with the steps that each serves where there are
// several; the rough cuts follow a tape or a line.
func (b *booklet) set(run []*steps.Step) string {
	if steps.SetupOf(run[0]).Setting == 0 {
		return "by tape"
	}
	serves := map[string][]string{}
	var order []string
	for _, s := range run {
		text := b.reading(s.Setting)
		if serves[text] == nil {
			order = append(order, text)
		}
		serves[text] = append(serves[text], fmt.Sprint(s.Number))
	}
	if len(order) == 1 {
		return order[0]
	}
	for i, text := range order {
		order[i] = text + " (" + strings.Join(serves[text], ", ") + ")"
	}
	return strings.Join(order, "; ")
}

// piecesOf names the pieces that a run takes in hand, each once.
func piecesOf(run []*steps.Step) string {
	var names []string
	for _, s := range run {
		if name := steps.Chalk(s.Piece); !slices.Contains(names, name) {
			names = append(names, name)
		}
	}
	return strings.Join(names, ", ")
}

// cautionsOf are the cautions of a run, each once, with the steps that need it
// where those are not all.
func cautionsOf(run []*steps.Step) string {
	need := map[steps.Caution][]string{}
	var order []steps.Caution
	for _, s := range run {
		for _, c := range s.Cautions {
			if need[c] == nil {
				order = append(order, c)
			}
			need[c] = append(need[c], fmt.Sprint(s.Number))
		}
	}
	var lines []string
	for _, c := range order {
		text := string(c)
		if len(need[c]) < len(run) {
			text = fmt.Sprintf("Step %s: %s", strings.Join(need[c], ", "), c)
		}
		lines = append(lines, text)
	}
	return strings.Join(lines, " ")
}
