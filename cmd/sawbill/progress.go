package main

import (
	"io"
	"os"
	"time"

	"github.com/schollz/progressbar/v3"
	"golang.org/x/term"

	"sawbill/layout"
	"sawbill/layout/steps"
	"sawbill/solver"
)

// progress shows a solve on a terminal: one line with how it stands and the time.
// The bar follows the clock where that bounds the solve, otherwise the rounds,
// and where nothing does there is none.
type progress struct {
	bar      *progressbar.ProgressBar
	follows  pace
	stop     chan struct{}
	standing standing
}

// pace is what a bar follows.
type pace uint8

const (
	byNothing pace = iota
	byClock
	byRounds
)

// newProgress is nil, which hears nothing, where w is no terminal. A limit of 0
// is none.
func newProgress(w io.Writer, most int, limit time.Duration) *progress {
	f, ok := w.(*os.File)
	if !ok || !term.IsTerminal(int(f.Fd())) {
		return nil
	}
	p := &progress{stop: make(chan struct{})}
	whole := int64(-1) // not known
	switch {
	case limit > 0:
		whole, p.follows = limit.Milliseconds(), byClock
	case most > 0:
		whole, p.follows = int64(most), byRounds
	}
	p.bar = progressbar.NewOptions64(whole,
		progressbar.OptionSetWriter(w),
		progressbar.OptionSetDescription(p.standing.String()),
		progressbar.OptionSetWidth(20),
		progressbar.OptionSetPredictTime(false),
		progressbar.OptionSetElapsedTime(true),
		progressbar.OptionClearOnFinish(),
	)
	if p.follows == byClock {
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
	p.standing = standing{begun: true, totals: plan.Totals, missing: missingWords(plan)}
	p.bar.Describe(p.standing.String())
}

// Proven says how far it can be from the best.
func (p *progress) Proven(_ int, bound layout.Money) {
	p.standing.totals.Bound = &bound
	p.bar.Describe(p.standing.String())
}

// Round moves the bar where the rounds bound the solve.
func (p *progress) Round(round int) {
	if p.follows == byRounds {
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

// standing is how a solve stands: its best plan and what is proven of it.
type standing struct {
	begun   bool // there is a plan
	totals  layout.Totals
	missing string // in words; empty when nothing is
}

// String is short, for it shares one line with a bar.
func (s standing) String() string {
	if !s.begun {
		return "looking for a first plan"
	}
	text := "costs " + s.totals.Cost.Cents()
	switch {
	case s.totals.Bound == nil:
	case *s.totals.Bound == s.totals.Cost:
		text += ", proven"
	default:
		text += ", at least " + steps.Bound(s.totals)
	}
	if s.missing != "" {
		text += ", " + s.missing + " missing"
	}
	return text
}
