package render

import (
	"fmt"
	"slices"

	"sawbill/layout"
	"sawbill/layout/steps"
)

// Board draws the sheets of one board of a checked plan: the whole board with
// its rough cuts first, then each blank with its own tape, drawing and steps.
// The error names a board that the plan does not hold.
func Board(plan *layout.Plan, bp *layout.BoardPlan, o Options) ([]Page, error) {
	if plan.Problem.Board(bp.Board) == nil {
		return nil, fmt.Errorf("draw board %q: not in the stock of the plan", bp.Board)
	}
	if plan.Board(bp.Board) == nil {
		return nil, fmt.Errorf("draw board %q: not cut by the plan", bp.Board)
	}
	work := steps.OfIn(plan, bp, o.Order)
	d := &boardSheet{
		sheet: &sheet{types: newTypesetter(), paper: o.Paper, plan: plan, of: bp.Board},
		words: words{plan.Problem.Shop}, shop: plan.Problem.Shop,
		work: work, board: work.Board,
	}
	d.running = d.runningHead
	d.draw()
	return d.finish("board " + bp.Board), nil
}

// boardSheet draws the sheets of one board.
type boardSheet struct {
	*sheet
	words
	shop  *layout.Shop
	work  *steps.Sheet
	board *layout.Board
	// current is the blank that the pages are about, empty for the rough cuts.
	current string
}

func (d *boardSheet) draw() {
	d.newPage()
	d.put(d.head())
	d.put(d.assumptions())
	d.add(d.wholeBoard(), 0)
	for _, run := range d.runs() {
		d.current = run[0].Blank
		switch {
		case run[0].Operation == steps.RoughRip:
			d.roughRipWork(run)
		case d.current == "":
			d.list(roughHeading, run)
		default:
			d.blankWork(run)
		}
	}
}

// roughRipWork draws a blank that is ripped before truing and lists its rips.
func (d *boardSheet) roughRipWork(run []steps.Step) {
	heading := "Rough rip of " + chalk(run[0].Piece) + ", before truing"
	d.add(d.roughRip(run), d.listHeight(heading, run))
	d.list(heading, run)
}

// blankWork draws a blank and lists its steps: on one sheet when they fit there.
func (d *boardSheet) blankWork(run []steps.Step) {
	list := d.listHeight("", run)
	beside := append(d.sections(d.blankOf(run[0].Blank), run), d.layers(run)...)
	next, below := min(list, listStart), list
	for i, b := range beside {
		below += b.height
		if i == 0 {
			next = b.height
		}
	}
	drawings, together := d.fitting(run, next, below)
	drawings = append(drawings, beside...)
	for i, b := range drawings {
		after := 0.0
		switch {
		case together && i == 0:
			after = below
		case i == len(drawings)-1:
			after = min(list, listStart)
		}
		d.add(b, after)
	}
	d.list("", run)
}

// listStart is the least that is set of a list of steps on the sheet of its drawing.
const listStart = tableHead + 3*rowHeight

// fitting draws a blank, lower where that lets what stands below it, with its
// steps, be on the same sheet; together says that it does. Where nothing does, it is
// drawn lower where it then finds room on the sheet at hand with what comes next.
func (d *boardSheet) fitting(run []steps.Step, next, below float64) (drawings []*block, together bool) {
	blank := d.blankOf(run[0].Blank)
	lower := []float64{blankMost, 0.75 * blankMost, 0.55 * blankMost, 0.4 * blankMost}
	for _, most := range lower {
		drawings = d.blank(blank, run, most)
		if len(drawings) == 1 && drawings[0].height+below <= d.wholePage() {
			return drawings, true
		}
	}
	for _, most := range lower {
		drawings = d.blank(blank, run, most)
		if len(drawings) == 1 && d.room(drawings[0].height+next) {
			return drawings, false
		}
	}
	return d.blank(blank, run, blankMost), false
}

// wholePage is the height between the head of a page after the first and its
// foot.
func (d *boardSheet) wholePage() float64 { return d.bottom() - margin - d.runningHead().height }

const roughHeading = "Rough cuts, measured from the butt; the tape holds until the last of them"

// runs are the steps in their order, taken apart where the work goes from the
// rough board to a blank or from one blank to the next. Each blank's rough rips
// are a run of their own.
func (d *boardSheet) runs() [][]steps.Step {
	var runs [][]steps.Step
	for rest := d.work.Steps; len(rest) > 0; {
		n := 1
		for n < len(rest) && sameRun(&rest[n], &rest[0]) {
			n++
		}
		runs = append(runs, rest[:n])
		rest = rest[n:]
	}
	return runs
}

func sameRun(a, b *steps.Step) bool {
	rough := a.Operation == steps.RoughRip
	return a.Blank == b.Blank && rough == (b.Operation == steps.RoughRip) && (!rough || a.Wood.X1 == b.Wood.X1)
}

func (d *boardSheet) blankOf(name string) *steps.Blank {
	for i := range d.work.Blanks {
		if d.work.Blanks[i].Name == name {
			return &d.work.Blanks[i]
		}
	}
	panic("render: no blank " + name)
}

// stepsOf are the steps on one blank, or with "" the rough cuts.
func (d *boardSheet) stepsOf(blank string) []steps.Step {
	return slices.DeleteFunc(slices.Clone(d.work.Steps), func(s steps.Step) bool { return s.Blank != blank })
}

// chalk is a name as it is written on the wood and printed here.
func chalk(id string) string { return steps.Chalk(id) }
