package main

import (
	"errors"
	"fmt"
	"io/fs"
	"path/filepath"
	"slices"
	"strings"

	"github.com/urfave/cli/v2"

	"sawbill/layout"
	"sawbill/layout/check"
	"sawbill/render"
)

// job is the folder that holds the plan of one job and its drawings.
type job struct{ dir string }

// openJob makes sure, before anybody thinks, that nothing has happened to the job
// that a plan from the beginning would forget, that the folder can be written and
// that the plan in it, if there is one, can be read: what cannot be read cannot
// be judged, and is not overwritten. A folder that is not there is made.
func openJob(dir string) (job, error) {
	j := job{dir}
	if err := makeWritable(dir); err != nil {
		return j, err
	}
	former, err := j.former()
	if err == nil && former != nil && former.Record != nil {
		return j, usageError("the job in %q goes on: it is at revision %d", dir, former.Revision).
			withHint("more pieces are asked for with sawbill more; for other boards or parts choose another folder for --job")
	}
	return j, err
}

func (j job) planPath() string { return filepath.Join(j.dir, "plan.json") }

// name is what the job is called on paper: the name of its folder.
func (j job) name() (string, error) {
	path, err := filepath.Abs(j.dir)
	return strings.TrimLeft(filepath.Base(path), "."), err
}

// former is the plan that the folder holds, or nil.
func (j job) former() (*layout.Plan, error) {
	plan, err := readPlan(j.planPath())
	if errors.Is(err, fs.ErrNotExist) {
		return nil, nil
	}
	if f := new(failure); errors.As(err, &f) {
		return nil, f.withHint("move it away, or choose another folder for --job")
	}
	return plan, err
}

// deliver takes a plan the way of all plans: it is checked, saved unless the
// folder holds a better one, drawn, and told in a few words, of which stopped is
// one. It gives the plan that the folder then holds.
func (j job) deliver(c *cli.Context, plan *layout.Plan, stopped string, o render.Options) (*layout.Plan, error) {
	if err := checkPlan(c, "the new plan", plan); err != nil {
		return nil, err
	}
	former, err := j.former()
	if err != nil {
		return nil, err
	}
	kept, err := j.save(c, former, plan)
	if err != nil {
		return nil, err
	}
	if err := j.redraw(c, former, kept, o); err != nil {
		return nil, err
	}
	printSummary(c.App.Writer, kept, stopped)
	return kept, shortOf(kept)
}

// shortOf is an error where parts are missing.
func shortOf(plan *layout.Plan) error {
	if len(plan.Missing) == 0 {
		return nil
	}
	err := fmt.Errorf("%s missing", missingOfWanted(plan))
	short := &failure{class: partsShort, err: err}
	if !plan.Problem.Yard && slices.ContainsFunc(plan.Missing, func(m layout.Missing) bool { return yardHolds(&plan.Problem, m.Part) }) {
		return short.withHint("boards of the yard may be bought with --yard")
	}
	return short.withHint("give it longer with --time, or add boards to the stock")
}

// yardHolds reports whether a board of the yard could give a part, or strips of the
// set that has this name.
func yardHolds(p *layout.Problem, name string) bool {
	return slices.ContainsFunc(p.Bill, func(part layout.Part) bool {
		piece := &part
		switch {
		case part.Set == name:
			strip := p.Shop.Strip(piece, p.Shop.LeastSlices(piece))
			piece = &strip
		case part.Set != "" || part.Name != name:
			return false
		}
		return slices.ContainsFunc(p.Stock, func(b layout.Board) bool {
			return b.Source == layout.Yard && p.CouldHold(piece, &b)
		})
	})
}

// checkPlan lists on standard output what is wrong with a plan.
func checkPlan(c *cli.Context, what string, plan *layout.Plan) error {
	found := check.Plan(plan)
	if len(found) == 0 {
		return nil
	}
	for _, v := range found {
		fmt.Fprintln(c.App.Writer, v)
	}
	return &failure{class: planBroken, err: fmt.Errorf("%s fails its check: %s", what, count(len(found), "violation"))}
}

// save writes a plan unless the former one answers the same question as well or
// better. Which of the two the folder then holds is returned. A former plan that
// is no rival is kept beside the new one.
func (j job) save(c *cli.Context, former, plan *layout.Plan) (*layout.Plan, error) {
	if former == nil {
		return j.write(plan, 1)
	}
	why, err := whyAside(former, plan)
	switch {
	case err != nil:
		return nil, err
	case why != "":
		aside, err := j.setAside(former.Revision)
		if err != nil {
			return nil, err
		}
		fmt.Fprintf(c.App.ErrWriter, "kept the former plan as %s: it %s\n", aside, why)
	case former.Score().Compare(plan.Score()) <= 0:
		return j.keep(c, former, plan)
	default:
		if _, err := j.setAside(former.Revision); err != nil {
			return nil, err
		}
		plan = withBetterProof(plan, former)
	}
	return j.write(plan, former.Revision+1)
}

// whyAside says why a former plan is no rival of a new one; it is empty when it
// is one.
func whyAside(former, plan *layout.Plan) (string, error) {
	if len(check.Plan(former)) > 0 {
		return "fails its check", nil
	}
	same, err := sameProblem(former, plan)
	if err != nil || same {
		return "", err
	}
	return "is for another stock, bill, shop or --yard", nil
}

// keep leaves a former plan where it is, with what the new one proves of it where
// that is more. The cuts are the same: so are the revision, the check word and
// the sheets of the boards.
func (j job) keep(c *cli.Context, former, plan *layout.Plan) (*layout.Plan, error) {
	kept := withBetterProof(former, plan)
	if kept == former {
		fmt.Fprintf(c.App.ErrWriter, "kept revision %d: the new plan is no better\n", former.Revision)
		return former, nil
	}
	fmt.Fprintf(c.App.ErrWriter, "kept revision %d: the new plan is no better, but more is proven now\n", former.Revision)
	return kept, writePlan(j.planPath(), kept)
}

// write makes a plan the one that the folder holds.
func (j job) write(plan *layout.Plan, revision int) (*layout.Plan, error) {
	name, err := j.name()
	if err != nil {
		return nil, err
	}
	next := *plan
	next.Job, next.Revision, next.Made = name, revision, now()
	return &next, writePlan(j.planPath(), &next)
}
