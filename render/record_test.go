package render

import (
	"strings"
	"testing"
	"time"

	"sawbill/layout"
	"sawbill/layout/steps"
)

// The sheets of a board whose cuts are older than the plan bear the word that they
// always bore, and what is done is crossed off.
func TestSheetsOfABoardThatIsBeingCut(t *testing.T) {
	plan := *example(t, "ash")
	mark := plan.Boards[0].Board
	work := steps.Of(&plan, &plan.Boards[0])
	var id string
	for _, s := range work.Steps {
		if s.Part != "" {
			id = s.Off
		}
	}
	plan.Record = &layout.Record{
		Cut:    []layout.CutPiece{{Board: mark, Wood: layout.Board{Mark: id}}},
		Papers: []layout.Paper{{Board: mark, Revision: 7, Word: "miso-guve", Made: time.Date(2026, 2, 3, 0, 0, 0, 0, time.UTC)}},
	}
	pages, err := Board(&plan, &plan.Boards[0], Options{})
	if err != nil {
		t.Fatal(err)
	}
	for _, p := range pages {
		if text := texts(p.Scene); !strings.Contains(text, "Check word miso-guve · revision 7 · 2026-02-03") {
			t.Errorf("a sheet says %q", text)
		}
	}
	if text := flat(newBooklet(&plan, Options{}).cover()); !strings.Contains(text, "miso-guve") {
		t.Error("the cover does not tell the word of the board")
	}
	plan.Record.Wanted = plan.Problem.Bill
	plan.Record.Cut[0].Part = sheetPart(work, id)
	cut, toCut := newBooklet(&plan, Options{}).pieces()
	if part := plan.Record.Cut[0].Part; cut[part] != 1 || toCut[part]+1 > plan.Problem.Part(part).Quantity {
		t.Errorf("%d of %s are cut, %d to cut", cut[part], part, toCut[part])
	}
	// A row is crossed off when the last of its steps is done.
	d := &boardSheet{sheet: &sheet{types: newTypesetter(), plan: &plan}, words: words{plan.Problem.Shop}, shop: plan.Problem.Shop}
	d.work = steps.Of(&plan, &plan.Boards[0])
	d.board = d.work.Board
	done := 0
	for list := d.work.Steps; len(list) > 0; {
		_, n := d.row(list)
		if list[n-1].Done {
			done++
		}
		list = list[n:]
	}
	if ticks := len(crosses(pages)); done == 0 || ticks != done {
		t.Errorf("%d rows are done, %d are crossed off", done, ticks)
	}
}

// sheetPart is the part that a piece is.
func sheetPart(work *steps.Sheet, id string) string {
	for _, s := range work.Steps {
		if s.Off == id && s.Part != "" {
			return s.Part
		}
	}
	return ""
}

// crosses are the lines that cross a box to tick off from its upper left corner.
func crosses(pages []Page) []Shape {
	var list []Shape
	for _, p := range pages {
		for _, s := range p.Scene.Shapes {
			if s.Open && abs(s.Points[1].X-s.Points[0].X-tickSize) < 1e-9 && abs(s.Points[1].Y-s.Points[0].Y-tickSize) < 1e-9 {
				list = append(list, s)
			}
		}
	}
	return list
}
