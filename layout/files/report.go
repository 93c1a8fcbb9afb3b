package files

import (
	"encoding/json"
	"io"
	"time"

	"sawbill/layout"
)

// Report is what a command says of a plan, for another program to read.
type Report struct {
	Plan      *layout.Plan
	CheckWord string
	Stopped   string // why the thinking ended, where that is worth a word
	// Cut and ToCut count finished pieces and those that the plan will make.
	Cut, ToCut int
	// Offcuts are the marks of what the plan keeps.
	Offcuts []string
	// Changed are the boards whose sheets are new, Gone those no longer cut, Wood
	// those that are new in the stock; all nil where nothing was changed.
	Changed, Gone, Wood []string
	// Broken are the rules that the plan breaks, a line each.
	Broken []string
}

// report1 is the JSON of a report. Money is in decimals, yield a fraction.
type report1 struct {
	Job       string     `json:"job"`
	Revision  int        `json:"revision"`
	CheckWord string     `json:"check_word"`
	Made      string     `json:"made"`
	Valid     bool       `json:"valid"`
	Broken    []string   `json:"broken,omitempty"`
	Stopped   string     `json:"stopped,omitempty"`
	Cost      money      `json:"cost"`
	Bound     *money     `json:"bound"`
	Gap       *float64   `json:"gap"`
	Yield     *float64   `json:"yield"`
	Cut       int        `json:"cut"`
	ToCut     int        `json:"to_cut"`
	Spare     int        `json:"spare,omitempty"`
	Missing   []missing1 `json:"missing"`
	Boards    []string   `json:"boards"`
	Offcuts   []string   `json:"offcuts"`
	Told      []string   `json:"told,omitempty"`
	Changed   []string   `json:"new_sheets,omitempty"`
	Gone      []string   `json:"no_longer_cut,omitempty"`
	Wood      []string   `json:"new_stock,omitempty"`
}

// WriteReport writes a report as one JSON object. Errors are those of w.
func WriteReport(w io.Writer, r Report) error { return writeJSON(w, toReport1(r)) }

// WriteReports writes reports as a JSON list. Errors are those of w.
func WriteReports(w io.Writer, list []Report) error { return writeJSON(w, each(list, toReport1)) }

func writeJSON(w io.Writer, v any) error {
	out := json.NewEncoder(w)
	out.SetEscapeHTML(false)
	out.SetIndent("", " ")
	return out.Encode(v)
}

func toReport1(r Report) report1 {
	p := r.Plan
	out := report1{
		Job: p.Job, Revision: p.Revision, CheckWord: r.CheckWord, Made: p.Made.UTC().Format(time.RFC3339),
		Valid: len(r.Broken) == 0, Broken: r.Broken, Stopped: r.Stopped,
		Cost: money(p.Totals.Cost), Bound: (*money)(p.Totals.Bound), Yield: p.Totals.Yield, Cut: r.Cut, ToCut: r.ToCut, Spare: len(p.Spares()),
		Missing: each(p.Missing, toMissing1),
		Boards:  each(p.Boards, func(b layout.BoardPlan) string { return b.Board }),
		Offcuts: each(r.Offcuts, func(mark string) string { return mark }),
		Changed: r.Changed, Gone: r.Gone, Wood: r.Wood,
	}
	if p.Record != nil {
		out.Told = p.Record.Told
	}
	if gap, ok := p.Totals.Gap(); ok {
		out.Gap = &gap
	}
	return out
}
