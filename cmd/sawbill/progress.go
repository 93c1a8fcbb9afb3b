package main

import (
	"fmt"
	"io"
	"os"
	"time"

	"github.com/schollz/progressbar/v3"
	"golang.org/x/term"

	"sawbill/layout"
	"sawbill/solver"
)

// progress shows a solve on a terminal. It follows the rounds where they bound
// the solve, otherwise the time.
type progress struct {
	bar    *progressbar.ProgressBar
	rounds int
	began  time.Time
}

// newProgress is nil, which hears nothing, where w is no terminal.
func newProgress(w io.Writer, rounds int, limit time.Duration) *progress {
	f, ok := w.(*os.File)
	if !ok || !term.IsTerminal(int(f.Fd())) {
		return nil
	}
	whole := int64(limit / time.Millisecond)
	if limit == 0 {
		whole = int64(rounds)
	}
	return &progress{
		bar: progressbar.NewOptions64(whole,
			progressbar.OptionSetWriter(w),
			progressbar.OptionSetDescription("looking for a first plan"),
			progressbar.OptionSetPredictTime(false),
			progressbar.OptionClearOnFinish(),
		),
		rounds: rounds,
		began:  time.Now(),
	}
}

// observer is p as the solver wants it: without a terminal none at all.
func (p *progress) observer() solver.Observer {
	if p == nil {
		return nil
	}
	return p
}

// Improved says how good the best plan is.
func (p *progress) Improved(_ int, plan *layout.Plan) {
	text := "costs " + plan.Totals.Cost.Cents()
	if n := missingPieces(plan); n > 0 {
		text += fmt.Sprintf(", %s missing", count(n, "piece"))
	}
	p.bar.Describe(text)
}

// Round moves the bar.
func (p *progress) Round(round int) {
	at := time.Since(p.began).Milliseconds()
	if p.bar.GetMax64() == int64(p.rounds) {
		at = int64(round)
	}
	// A bar that cannot be drawn is no reason to stop sawing.
	_ = p.bar.Set64(min(at, p.bar.GetMax64()))
}

// done clears the bar away.
func (p *progress) done() {
	if p != nil {
		_ = p.bar.Finish()
	}
}
