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

// progress shows a solve on a terminal. It follows the clock where that bounds
// the solve, otherwise the rounds.
type progress struct {
	bar     *progressbar.ProgressBar
	byClock bool
	stop    chan struct{}
}

// newProgress is nil, which hears nothing, where w is no terminal. A limit of 0
// stands for as long as the rounds take.
func newProgress(w io.Writer, rounds int, limit time.Duration) *progress {
	f, ok := w.(*os.File)
	if !ok || !term.IsTerminal(int(f.Fd())) {
		return nil
	}
	whole := int64(rounds)
	if limit > 0 {
		whole = limit.Milliseconds()
	}
	p := &progress{
		bar: progressbar.NewOptions64(whole,
			progressbar.OptionSetWriter(w),
			progressbar.OptionSetDescription("looking for a first plan"),
			progressbar.OptionSetPredictTime(false),
			progressbar.OptionClearOnFinish(),
		),
		byClock: limit > 0,
		stop:    make(chan struct{}),
	}
	if p.byClock {
		go p.follow(time.Now())
	}
	return p
}

// follow moves the bar with the clock until the solve is done. A bar that cannot
// be drawn is no reason to stop sawing.
func (p *progress) follow(began time.Time) {
	tick := time.NewTicker(200 * time.Millisecond)
	defer tick.Stop()
	for {
		select {
		case <-p.stop:
			return
		case <-tick.C:
			_ = p.bar.Set64(min(time.Since(began).Milliseconds(), p.bar.GetMax64()-1))
		}
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

// Proven takes no room yet.
func (p *progress) Proven(int, layout.Money) {}

// Round moves the bar where the rounds bound the solve.
func (p *progress) Round(round int) {
	if !p.byClock {
		_ = p.bar.Set64(min(int64(round), p.bar.GetMax64()-1))
	}
}

// done clears the bar away.
func (p *progress) done() {
	if p != nil {
		close(p.stop)
		_ = p.bar.Finish()
	}
}
