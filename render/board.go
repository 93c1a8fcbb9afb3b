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
	work := steps.Of(plan, bp)
	d := &boardSheet{
		sheet: &sheet{types: newTypesetter(), paper: o.Paper, plan: plan},
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
}

func (d *boardSheet) draw() {
	d.newPage()
	d.put(d.head())
	d.put(d.assumptions())
	d.add(d.wholeBoard(), 0)
	rough := d.stepsOf("")
	d.list("Rough cuts, measured from the butt; the tape holds until the last of them", rough)
	for i := range d.work.Blanks {
		blank := &d.work.Blanks[i]
		mine := d.stepsOf(blank.Name)
		d.add(d.blank(blank, mine), tableHead+2*rowHeight)
		d.list("", mine)
	}
}

// stepsOf are the steps on one blank, or with "" the rough cuts.
func (d *boardSheet) stepsOf(blank string) []steps.Step {
	return slices.DeleteFunc(slices.Clone(d.work.Steps), func(s steps.Step) bool { return s.Blank != blank })
}

// chalk is a name as it is written on the wood and printed here.
func chalk(id string) string { return steps.Chalk(id) }
