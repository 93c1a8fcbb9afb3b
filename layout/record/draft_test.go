package record_test

import (
	"strings"
	"testing"

	"sawbill/layout"
	"sawbill/layout/record"
)

// railsOf is a plan for two boards of ash, of which each gives two rails of 20 in.
func railsOf(t *testing.T) *layout.Plan {
	t.Helper()
	board := layout.Board{Species: "ash", Thickness: in, Width: 4 * in, TipWidth: 4 * in, Length: 48 * in, Cost: layout.Unpriced, Edges: layout.EdgesBoth, Faces: layout.FacesPlaned}
	var stock []layout.Board
	for _, mark := range []string{"A1", "A2", "A3"} {
		b := board
		b.Mark, b.Base = mark, mark
		stock = append(stock, b)
	}
	p, faults := layout.NewProblem(layout.DefaultShop(layout.Inches), stock, []layout.Part{{
		Name: "rail", Species: []string{"ash"}, Thickness: 3 * in / 4, Width: 3 * in, Length: 20 * in, Quantity: 4, Grade: layout.Clear,
	}}, false)
	if p == nil {
		t.Fatal(faults)
	}
	plan, err := plainly(p)
	if err != nil {
		t.Fatal(err)
	}
	return plan
}

func complete(t *testing.T, d *record.Draft, err error) *layout.Plan {
	t.Helper()
	if err != nil {
		t.Fatal(err)
	}
	plan, err := d.Complete(plainly)
	if err != nil {
		t.Fatal(err)
	}
	return plan
}

// A board that is being cut stays with all its cuts; its sheets stay good, and so do
// those of the others.
func TestABoardThatIsBeingCutStays(t *testing.T) {
	d := record.Open(railsOf(t))
	plan := complete(t, d, d.Cut("a1-1a"))
	if len(plan.Boards) != 2 || len(plan.Record.Cut) != 1 || !plan.Record.IsStarted("A1") || len(record.Changed(plan)) != 0 {
		t.Errorf("%d boards, %d pieces cut, new sheets for %q", len(plan.Boards), len(plan.Record.Cut), record.Changed(plan))
	}
	d = record.Open(plan)
	plan = complete(t, d, d.Cut("A1-1b"))
	if plan.Problem.Board("A1") != nil || plan.Record.IsStarted("A1") || len(plan.Record.Cut) != 2 {
		t.Error("A1 is all cut, and still there")
	}
}

// A spoiled piece is made again of a board that was not needed before, and nothing
// else changes.
func TestASpoiledPieceIsMadeAgain(t *testing.T) {
	d := record.Open(railsOf(t))
	plan := complete(t, d, d.Spoiled("A1-1b"))
	if got := strings.Join(record.Changed(plan), " "); got != "A1 A3" || len(plan.Missing) > 0 {
		t.Errorf("new sheets for %s, missing %v; want A1 A3 and nothing", got, plan.Missing)
	}
	wood := plan.Problem.Board("A1-1b")
	if wood == nil || wood.Length != 20*in || wood.Width != 3*in || wood.Thickness != 3*in/4 || wood.Edges != layout.EdgesBoth {
		t.Errorf("its wood is %+v", wood)
	}
	now, _ := record.Now(plan)
	for _, b := range now {
		if b.Mark == "A1" {
			t.Error("A1 is being cut, and still a whole board")
		}
	}
}

// Each name that is not known, and each thing that cannot be, is refused.
func TestWhatCannotBeTold(t *testing.T) {
	plan := railsOf(t)
	for _, c := range []struct {
		tell func(*record.Draft) error
		want string
	}{
		{func(d *record.Draft) error { return d.Cut("A4") }, `"A4": want one of A1`},
		{func(d *record.Draft) error { return d.Cut("A3") }, `"A3": the plan does not cut it`},
		{func(d *record.Draft) error { return d.Spoiled("A1") }, `"A1": it is no piece of the bill`},
		{func(d *record.Draft) error { return d.More("rial", 1) }, `part "rial": want one of rail`},
		{func(d *record.Draft) error { return d.More("rail", 0) }, `rail: found 0 more, want 1 to 99996`},
		{func(d *record.Draft) error {
			return d.Found("A1", []layout.Defect{{Kind: layout.Rot, Rect: layout.Rect{X1: 50 * in, X2: 51 * in, Y2: in}}})
		}, `rot: it lies wholly off "A1"`},
		{func(d *record.Draft) error {
			if err := d.Cut("A1-1a"); err != nil {
				return err
			}
			return d.Found("A1", []layout.Defect{{Kind: layout.Rot, Rect: layout.Rect{X1: 5 * in, X2: 6 * in, Y1: in, Y2: 2 * in}}})
		}, `A1-1a is cut already, and the defect lies in it`},
	} {
		err := c.tell(record.Open(plan))
		if err == nil || !strings.HasPrefix(err.Error(), c.want) {
			t.Errorf("%v, want %s", err, c.want)
		}
	}
}
