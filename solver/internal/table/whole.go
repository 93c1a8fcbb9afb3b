package main

import (
	"context"
	"fmt"
	"io"
	"maps"
	"runtime"
	"strings"
	"time"

	"sawbill/layout"
	"sawbill/solver"
	"sawbill/solver/internal/jobs"
)

// moments are the times at which whole jobs are looked at, besides their end.
func moments() []time.Duration {
	return []time.Duration{time.Second, 10 * time.Second, time.Minute, 5 * time.Minute}
}

// whole prints cost, bound and gap of jobs as time goes by, a row for each seed
// and time, and what the rows of one time come to.
func whole(named func() []jobs.Named) func(context.Context, settings, io.Writer) error {
	return func(ctx context.Context, s settings, out io.Writer) error {
		r, err := newReport(s, out)
		if err != nil {
			return err
		}
		for _, j := range named() {
			if !strings.Contains(j.Name, s.only) {
				continue
			}
			for seed := range int64(s.seeds) {
				if err := r.solve(ctx, j, seed); err != nil {
					return err
				}
				if ctx.Err() != nil {
					return nil
				}
			}
		}
		r.close(out)
		return nil
	}
}

// moments are the times that a solve gets to, its end last.
func (s settings) moments() []time.Duration {
	var times []time.Duration
	for _, d := range moments() {
		if d < s.time {
			times = append(times, d)
		}
	}
	return append(times, s.time)
}

// report is the table of whole jobs.
type report struct {
	settings
	table *sheet
	known costs // what rows are compared with
	found costs // known, and what is found now
	sums  map[time.Duration]*summary
}

func newReport(s settings, out io.Writer) (*report, error) {
	known, err := readBest(s.best)
	if err != nil {
		return nil, err
	}
	r := &report{settings: s, known: known, found: maps.Clone(known), sums: map[time.Duration]*summary{}}
	for _, d := range s.moments() {
		r.sums[d] = &summary{}
	}
	r.table = newSheet(out, "job           ", "seed", "seconds", "    cost", "   bound", "    gap", "    best", "above best", "missing")
	return r, nil
}

// solve solves a job once and prints its rows.
func (r *report) solve(ctx context.Context, j jobs.Named, seed int64) error {
	w, err := observe(ctx, j.Problem, r.time, solver.Options{Seed: seed, Workers: r.workers})
	if err != nil || ctx.Err() != nil {
		return err
	}
	for _, d := range r.moments() {
		m, ok := w.at(d)
		if d == r.time { // what is found while the solve ends counts as well
			m, ok = w.ended, true
		}
		shown := d
		if d == r.time || w.ended.at < d {
			shown = w.ended.at
		}
		r.row(j.Name, seed, d, shown, m, ok)
	}
	if w.ended.missing == 0 {
		r.found.note(j.Name, w.ended.cost, r.time)
	}
	return r.write(r.found)
}

// row prints what was known of a job at time d, if anything was.
func (r *report) row(job string, seed int64, d, shown time.Duration, m moment, ok bool) {
	sum := r.sums[d]
	if !ok {
		sum.short++
		r.table.row(job, seed, seconds(shown), "-", "-", "-", "-", "-", "-")
		return
	}
	sum.short += count(m.missing > 0)
	gap, proven := m.gap()
	best, compares := r.known[job]
	compares = compares && m.missing == 0
	above := float64(m.cost-best.cost) / float64(max(1, best.cost))
	sum.add(gap, proven, above, compares)
	r.table.row(job, seed, seconds(shown), m.cost.Cents(), amount(m.bound), share(gap, proven), best, share(above, compares), m.missing)
}

// close prints what the rows come to.
func (r *report) close(out io.Writer) {
	fmt.Fprintln(out)
	for _, d := range r.moments() {
		fmt.Fprintf(out, "after %v: %v\n", d, r.sums[d])
	}
	fmt.Fprintf(out, "memory: %d MiB asked of the system at most\n", mebibytes())
}

func amount(m *layout.Money) string {
	if m == nil {
		return "-"
	}
	return m.Cents()
}

func share(v float64, known bool) string {
	if !known {
		return "-"
	}
	return percent(v)
}

// mebibytes is the most memory that this process has asked of the system so far.
func mebibytes() uint64 {
	var m runtime.MemStats
	runtime.ReadMemStats(&m)
	return m.Sys >> 20
}
