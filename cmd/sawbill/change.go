package main

import (
	"cmp"
	"errors"
	"fmt"
	"os"
	"slices"
	"time"

	"github.com/urfave/cli/v2"

	"sawbill/layout"
	"sawbill/layout/record"
	"sawbill/layout/steps"
	"sawbill/render"
)

func jobFlag() cli.Flag {
	return &cli.PathFlag{TakesFile: true, Name: "job", Usage: "the folder `DIR` of the job"}
}

// changeFlags are those of every command that tells what happened to a job.
func changeFlags() []cli.Flag {
	return []cli.Flag{
		jobFlag(),
		&cli.DurationFlag{Name: "time", Value: 3 * time.Second, Usage: "think no longer than `TIME` about what is to be planned again"},
		&cli.IntFlag{Name: "rounds", Usage: "think for `N` rounds, however long they take unless --time is given too"},
		paperFlag(), byFlag(), jsonFlag(),
	}
}

// change takes what a person tells of a job the way of all changes: under the lock,
// from a plan that passes its check to the next revision, which does, too. The former
// one is kept beside it before it is replaced.
func change(c *cli.Context, tell func(*record.Draft) error) error {
	return revise(c, func(j job, former *layout.Plan) (*layout.Plan, error) {
		draft := record.Open(former)
		if err := tell(draft); err != nil {
			return nil, inputError(err)
		}
		limits, err := limitsOf(c)
		if err != nil {
			return nil, err
		}
		return draft.Complete(limits.inTurn(c))
	})
}

// inTurn plans problems one after another within the time for all: each gets half of
// what is left, the last one all, and ends early when its plan is proven to be within a
// hundredth.
func (l limits) inTurn(c *cli.Context) record.Solve {
	end := time.Now().Add(l.time)
	l.within = 1
	return func(p *layout.Problem, last bool) (*layout.Plan, error) {
		next, left := l, time.Until(end)
		switch {
		case l.time == 0:
		case last:
			next.time = max(leastTime, left)
		default:
			next.time = max(leastTime, left/2)
		}
		plan, _, err := next.solve(c, p)
		return plan, err
	}
}

// leastTime is what every question gets, so that some plan is made.
const leastTime = 50 * time.Millisecond

// revise replaces the plan of a job by the next one.
func revise(c *cli.Context, next func(j job, former *layout.Plan) (*layout.Plan, error)) error {
	out := onlyJSON(c)
	j := job{c.Path("job")}
	former, unlock, err := j.locked(c)
	if err != nil {
		return err
	}
	defer unlock()
	o, print, err := drawingOf(c, former.Print)
	if err != nil {
		return err
	}
	plan, err := next(j, former)
	if err != nil {
		return err
	}
	plan.Made, plan.Print = now(), print
	if err := checkPlan(c, "the new plan", plan); err != nil {
		return err
	}
	if _, err := j.setAside(former.Revision); err != nil {
		return err
	}
	if err := writePlan(j.planPath(), plan); err != nil {
		return err
	}
	tellChange(c, former, plan)
	if err := j.redrawChanged(c, former, plan, o); err != nil {
		return err
	}
	return writeReport(out, changeReport(former, plan), shortOf(plan))
}

// tellChange names what is new about a revision.
func tellChange(c *cli.Context, former, plan *layout.Plan) {
	w := c.App.Writer
	fmt.Fprintf(w, "job %s, revision %d, check word %s\n", plan.Job, plan.Revision, steps.CheckWord(plan))
	for _, line := range plan.Record.Told {
		fmt.Fprintln(w, line)
	}
	fmt.Fprintf(w, "pieces: %d cut, %d to cut, %s missing\n", len(plan.Record.Cut), toCut(plan), cmp.Or(missingWords(plan), "0"))
	fmt.Fprintf(w, "cost: %s; %s\n", costOf(plan), steps.Proof(plan))
	if changed := record.Changed(plan); len(changed) > 0 {
		fmt.Fprintf(w, "new sheets for %s: away with older ones\n", listed(changed))
	} else {
		fmt.Fprintln(w, "all sheets stay good")
	}
	if marks := gone(former, plan); len(marks) > 0 {
		fmt.Fprintf(w, "no longer to be cut: %s\n", listed(marks))
	}
	if marks := newWood(former, plan); len(marks) > 0 {
		fmt.Fprintf(w, "now in the stock: %s\n", listed(marks))
	}
	printShort(w, plan)
	if len(plan.Boards) > 0 {
		fmt.Fprintln(w, "caution:", steps.SafetyFirst)
	}
}

// gone are the boards that a plan no longer cuts.
func gone(former, plan *layout.Plan) []string {
	var marks []string
	for _, b := range former.Boards {
		if plan.Board(b.Board) == nil {
			marks = append(marks, b.Board)
		}
	}
	return marks
}

// newWood are the boards that are new in the stock.
func newWood(former, plan *layout.Plan) []string {
	var marks []string
	for _, b := range plan.Problem.Stock {
		if former.Problem.Board(b.Mark) == nil {
			marks = append(marks, b.Mark)
		}
	}
	return marks
}

// toCut is how many pieces a plan has yet to make.
func toCut(plan *layout.Plan) int {
	n := 0
	for _, b := range plan.Boards {
		for _, leaf := range b.Root.Leaves() {
			if leaf.Part != "" && !plan.Record.IsCut(leaf.PieceIDs()[0]) {
				n += leaf.Pieces()
			}
		}
	}
	return n
}

// redrawChanged draws what is no longer true of the drawings of the former plan,
// and removes those of boards that are not to be cut any more.
func (j job) redrawChanged(c *cli.Context, former, plan *layout.Plan, o render.Options) error {
	stale := j.drawn(former)
	for path := range j.drawn(plan) {
		delete(stale, path)
	}
	anew := record.Changed(plan)
	var boards []*layout.BoardPlan
	for i := range plan.Boards {
		mark := plan.Boards[i].Board
		if slices.Contains(anew, mark) || plan.Record.IsStarted(mark) {
			boards = append(boards, &plan.Boards[i])
		}
	}
	// Pages of a board that is drawn anew may be fewer than before.
	old := j.drawn(&layout.Plan{Problem: former.Problem, Boards: pick(former, boards)})
	written, err := j.drawBoards(c, plan, boards, o)
	if err != nil {
		return err
	}
	for path := range old {
		if !slices.Contains(written, path) {
			stale[path] = true
		}
	}
	for path := range stale {
		if err := os.Remove(path); err != nil && !errors.Is(err, os.ErrNotExist) {
			return err
		}
	}
	return j.drawWhole(c, plan, o)
}

// pick are the boards of a plan that are among others.
func pick(plan *layout.Plan, among []*layout.BoardPlan) []layout.BoardPlan {
	var boards []layout.BoardPlan
	for _, b := range plan.Boards {
		if slices.ContainsFunc(among, func(a *layout.BoardPlan) bool { return a.Board == b.Board }) {
			boards = append(boards, b)
		}
	}
	return boards
}

// jobWords are the words of a command that needs some, for a job.
func jobWords(c *cli.Context, least int, what string) ([]string, error) {
	if err := checkWords(c, manyWords, "job"); err != nil {
		return nil, err
	}
	words := c.Args().Slice()
	if len(words) < least {
		return nil, usageError("say %s", what).withHint(seeHelp(c))
	}
	return words, nil
}
