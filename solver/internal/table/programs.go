package main

import (
	"context"
	"fmt"
	"io"
	"math"
	"slices"
	"strings"
	"time"

	"sawbill/layout"
	"sawbill/solver"
	"sawbill/solver/internal/jobs"
	"sawbill/solver/internal/mip"
)

// stated is a job with its integer program.
type stated struct {
	jobs.Named
	model *mip.Model
}

func statedJobs() []stated {
	var all []stated
	for _, j := range jobs.Bars() {
		all = append(all, stated{j, mip.Bars(j.Problem)})
	}
	for _, j := range jobs.Panels() {
		all = append(all, stated{j, mip.Panels(j.Problem)})
	}
	return all
}

// programs prints our costs and times beside those of the general solvers for
// integer programs that the machine has. Both may take the same time. Ours is
// the time in which the plan was found, or, where it is proven, the time to its
// proof; theirs is the time to their end.
func programs(ctx context.Context, s settings, out io.Writer) error {
	found := mip.Programs()
	if len(found) == 0 {
		fmt.Fprintln(out, "no solver for integer programs on the path: nothing to compare with")
		return nil
	}
	table := newSheet(out, "job        ", "solver", "variables", "  rows", "    ours", "seconds", "proven", "  theirs", "seconds", "proven", "  ratio", "as good")
	var good int
	var ratios []float64
	for _, j := range statedJobs() {
		if !strings.Contains(j.Name, s.only) {
			continue
		}
		w, err := observe(ctx, j.Problem, s.time, solver.Options{Workers: s.workers})
		if err != nil {
			return err
		}
		for _, program := range found {
			if ctx.Err() != nil {
				return nil
			}
			start := time.Now()
			answer, err := program.Solve(ctx, j.model, s.time)
			match := compare(table, j, w, program.Name, theirs{answer, err, time.Since(start)})
			good, ratios = good+count(match.good), append(ratios, match.ratio)
		}
	}
	slices.Sort(ratios)
	if n := len(ratios); n > 0 {
		fmt.Fprintf(out, "\nours as good in %d of %d runs; the ratio of times is %.1f at the median\n", good, n, ratios[n/2])
	}
	return nil
}

// theirs is what became of one run of a program.
type theirs struct {
	answer mip.Answer
	err    error // no answer in time, among others
	took   time.Duration
}

// match is what one row comes to. The ratio is their time over ours.
type match struct {
	good  bool
	ratio float64
}

// compare prints one row. Ours is as good when it is complete and not dearer.
func compare(table *sheet, j stated, w *watch, program string, t theirs) match {
	ours := w.found()
	if w.ended.proven() {
		ours = w.ended.at
	}
	cost, ratio := "none", t.took.Seconds()/max(ours, time.Millisecond).Seconds()
	good := w.ended.missing == 0
	if t.err == nil {
		c := layout.Money(math.Round(t.answer.Cost))
		cost, good = c.Cents(), good && w.ended.cost <= c
	}
	table.row(j.Name, program, j.model.Variables(), j.model.Rows(), w.ended.cost.Cents(), seconds(ours), yes(w.ended.proven()),
		cost, seconds(t.took), yes(t.answer.Proven), fmt.Sprintf("%.1f", ratio), yes(good))
	return match{good, ratio}
}
