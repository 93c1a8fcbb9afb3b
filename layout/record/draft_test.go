package record_test

import (
	"strings"
	"testing"

	"sawbill/layout"
	"sawbill/layout/check"
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
	plan, err := d.Complete(always(plainly))
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
		{func(d *record.Draft) error { return d.Cut("A4") }, `"A4": no board and no piece bears that name (did you mean "A1"?)`},
		{func(d *record.Draft) error { return d.Cut("A3") }, `"A3": the plan does not cut it`},
		{func(d *record.Draft) error { return d.Spoiled("A1") }, `"A1": it is a board of the stock, no piece of the bill`},
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

// idle is a solver that has no time at all: it cuts nothing.
func idle(p *layout.Problem) (*layout.Plan, error) { return layout.Assemble(p, nil), nil }

// Whatever the former plan made, and the change does not forbid, the next one makes,
// even if nobody has time to plan: of a board with a defect that spoils one piece the
// others stay, of one that is shorter by a blank those of its other blanks.
func TestNothingIsMissedForLackOfTime(t *testing.T) {
	for _, c := range []struct {
		name    string
		tell    func(*record.Draft) error
		missing int
	}{
		{"a defect in one piece", func(d *record.Draft) error {
			return d.Found("A1", []layout.Defect{{Kind: layout.Rot, Rect: layout.Rect{X1: 5 * in, X2: 6 * in, Y1: in, Y2: 2 * in}}})
		}, 1},
		{"a defect in the waste", func(d *record.Draft) error {
			return d.Found("A1", []layout.Defect{{Kind: layout.Rot, Rect: layout.Rect{X1: 44 * in, X2: 45 * in, Y1: 3 * in, Y2: 4 * in}}})
		}, 0},
		{"a little narrower", func(d *record.Draft) error { return d.Measured("A1", record.Sizes{Width: 15 * in / 4}) }, 0},
		{"a piece spoiled", func(d *record.Draft) error { return d.Spoiled("A1-1b") }, 1},
		{"one more", func(d *record.Draft) error { return d.More("rail", 1) }, 1},
	} {
		t.Run(c.name, func(t *testing.T) {
			d := record.Open(railsOf(t))
			if err := c.tell(d); err != nil {
				t.Fatal(err)
			}
			plan, err := d.Complete(always(idle))
			if err != nil {
				t.Fatal(err)
			}
			missing := 0
			for _, m := range plan.Missing {
				missing += m.Quantity
			}
			if missing != c.missing {
				t.Errorf("%d pieces are missing, want %d", missing, c.missing)
			}
			if faults := check.Plan(plan); len(faults) > 0 {
				t.Error(faults)
			}
		})
	}
}

// twoBlanks is a plan that cuts two rails of 20 in out of two blanks of a board of 96 in,
// from 1 in and from so far on.
func twoBlanks(t *testing.T, second layout.Length) *layout.Plan {
	t.Helper()
	board := layout.Board{
		Mark: "A1", Base: "A1", Species: "ash", Thickness: in, Width: 4 * in, TipWidth: 4 * in, Length: 96 * in,
		Cost: layout.Unpriced, Edges: layout.EdgesBoth, Faces: layout.FacesPlaned,
	}
	p, faults := layout.NewProblem(layout.DefaultShop(layout.Inches), []layout.Board{board}, []layout.Part{{
		Name: "rail", Species: []string{"ash"}, Thickness: 3 * in / 4, Width: 3 * in, Length: 20 * in, Quantity: 2, Grade: layout.Clear,
	}}, false)
	if p == nil {
		t.Fatal(faults)
	}
	root := &layout.Node{Rect: board.Frame(), Cut: layout.Crosscut}
	for _, x := range []layout.Length{in, second} {
		rail := &layout.Node{Rect: layout.Rect{X1: x, X2: x + 20*in, Y2: 3 * in}, Part: "rail"}
		root.Children = append(root.Children, &layout.Node{
			Rect: layout.Rect{X1: x, X2: x + 20*in, Y2: 4 * in}, Cut: layout.Rip, Trued: true, Thickness: 3 * in / 4, Children: []*layout.Node{rail},
		})
	}
	plan := layout.Assemble(p, []layout.BoardCut{{Board: "A1", Root: root}})
	if faults := check.Plan(plan); len(faults) > 0 {
		t.Fatal(faults)
	}
	return plan
}

// A board that is 60 in long keeps its first blank, whether the second one lies partly
// beyond its end or wholly; that once cost the first one, too.
func TestAShorterBoardKeepsTheBlanksThatLieOnIt(t *testing.T) {
	for _, second := range []layout.Length{50 * in, 70 * in} {
		d := record.Open(twoBlanks(t, second))
		if err := d.Measured("A1", record.Sizes{Length: 60 * in}); err != nil {
			t.Fatal(err)
		}
		plan, err := d.Complete(always(idle))
		if err != nil {
			t.Fatal(err)
		}
		if len(plan.Missing) != 1 || plan.Missing[0].Quantity != 1 {
			t.Errorf("with a second blank from %v on: missing %v, want one rail", second, plan.Missing)
		}
		if faults := check.Plan(plan); len(faults) > 0 {
			t.Error(faults)
		}
	}
}

// With two strips of a copy of six slices cut, a third one that is spoiled is wanted
// again with six slices, and nothing else changes.
func TestASpoiledStripIsMadeAgainForItsCopy(t *testing.T) {
	p, faults := layout.NewProblem(layout.DefaultShop(layout.Inches), []layout.Board{
		{Mark: "A1", Base: "A1", Species: "ash", Thickness: in, Width: 3 * in / 2, TipWidth: 3 * in / 2, Length: 48 * in, Cost: layout.Unpriced, Edges: layout.EdgesBoth, Faces: layout.FacesPlaned},
		{Mark: "A2", Base: "A2", Species: "ash", Thickness: in, Width: 3 * in / 2, TipWidth: 3 * in / 2, Length: 48 * in, Cost: layout.Unpriced, Edges: layout.EdgesBoth, Faces: layout.FacesPlaned},
	}, []layout.Part{{
		Name: "light", Species: []string{"ash"}, Thickness: 3 * in / 4, Width: in, Quantity: 3, Grade: layout.Clear, Set: "tray", Slices: 6, SliceThickness: 2 * in,
	}}, false)
	if p == nil {
		t.Fatal(faults)
	}
	plan, err := plainly(p)
	if err != nil || len(plan.Boards) != 1 {
		t.Fatal(plan.Boards, err)
	}
	var ids []string
	for _, leaf := range plan.Boards[0].Root.Leaves() {
		if leaf.Part != "" {
			ids = append(ids, leaf.ID)
		}
	}
	d := record.Open(plan)
	if err := d.Cut(ids[0], ids[1]); err != nil {
		t.Fatal(err)
	}
	plan = complete(t, d, d.Spoiled(ids[2]))
	if len(plan.Missing) > 0 || len(plan.Boards) != 1 { // A1 is all cut
		t.Fatalf("missing %v, boards %v", plan.Missing, plan.Boards)
	}
	for _, leaf := range plan.Board("A2").Root.Leaves() {
		if leaf.Part != "" && leaf.Slices != 6 {
			t.Errorf("%s has %d slices", leaf.ID, leaf.Slices)
		}
	}
	d = record.Open(plan)
	if err := d.Measured("A2", record.Sizes{Width: in / 2}); err != nil {
		t.Fatal(err)
	}
	if plan, err = d.Complete(always(plainly)); err != nil || len(plan.Waiting()) != 2 || len(plan.Missing) != 1 {
		t.Errorf("%v wait, missing %v (%v)", plan.Waiting(), plan.Missing, err)
	}
	if faults := check.Plan(plan); len(faults) > 0 {
		t.Error(faults)
	}
}
