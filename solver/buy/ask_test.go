package buy

import (
	"context"
	"reflect"
	"slices"
	"testing"

	"sawbill/layout"
	"sawbill/solver"
	"sawbill/solver/internal/jobs"
)

const in = layout.Inch

func part(name string, thickness, width, length layout.Length, n int) layout.Part {
	return layout.Part{
		Name: name, Species: []string{"elm"}, Thickness: thickness, Width: width, Length: length, Quantity: n, Grade: layout.Clear,
	}
}

func ask(t *testing.T, p *layout.Problem, o AskOptions) *Advice {
	t.Helper()
	if o.Solve.Rounds == 0 {
		o.Solve.Rounds = 2
	}
	a, err := Ask(context.Background(), p, o)
	if err != nil {
		t.Fatal(err)
	}
	return a
}

// A leg of 1-3/4 x 1-3/4 x 28 wants 8/4, which is a quarter over. Its blank loses an
// eighth at each edge: 2 wide. It loses a quarter at each end, and the board an inch:
// 30-1/2 long. A shelf of 3/4 x 5 x 40 wants 4/4, 5-1/4 wide and 42-1/2 long.
func TestAskSizes(t *testing.T) {
	p := &layout.Problem{Shop: layout.DefaultShop(layout.Inches), Bill: []layout.Part{
		part("leg", 7*in/4, 7*in/4, 28*in, 4), part("shelf", 3*in/4, 5*in, 40*in, 3),
	}}
	a := ask(t, p, AskOptions{Piles: 10})
	if len(a.Woods) != 2 || len(a.Not) != 0 {
		t.Fatalf("%+v", a)
	}
	want := []Wanted{
		{Thickness: 2 * in, Width: 2 * in, Length: 61 * in / 2, Parts: []string{"leg"}},
		{Thickness: in, Width: 21 * in / 4, Length: 85 * in / 2, Parts: []string{"shelf"}},
	}
	for i, w := range a.Woods {
		k := want[i]
		if w.Thickness != k.Thickness || w.Width != k.Width || w.Length != k.Length || !slices.Equal(w.Parts, k.Parts) {
			t.Errorf("got %+v, want %+v", w, k)
		}
		if w.Piles != 10 || w.Short != 0 || w.Half.Volume.Cmp(w.Most.Volume) > 0 {
			t.Errorf("of %+v: half %+v, most %+v", w, w.Half, w.Most)
		}
		rough := layout.NewVolume(3*40*in, 5*in, in)
		if i == 1 && w.Half.Volume.Cmp(rough) < 0 {
			t.Errorf("half of the piles gave shelves out of less wood than is in them: %v board feet", w.Half.Volume.BoardFeet())
		}
	}
}

// The boards that a pile is said to need complete the order, and one fewer do not.
func TestPilesNeedNoMore(t *testing.T) {
	u := UsualBoards(layout.Inches)
	r := &order{w: wood{"elm", in}, u: &u, p: layout.Problem{
		Shop: layout.DefaultShop(layout.Inches), Bill: []layout.Part{part("rail", 3*in/4, 3*in, 40*in, 30)},
	}}
	few := 0
	for k := range 8 {
		from := newPile(&u, r.w, 5, k)
		n, err := r.plan(context.Background(), from)
		if err != nil || n == 0 {
			t.Fatal(n, err)
		}
		if least := r.atLeast(from); n > least+1 {
			few++
		}
		for boards, want := range map[int]bool{n: true, n - 1: false} {
			if got, err := r.completed(context.Background(), from.first(boards)); err != nil || got != want {
				t.Errorf("pile %d, %d of %d boards: completed %v, %v", k, boards, n, got, err)
			}
		}
	}
	if few == 0 {
		t.Error("no pile needed more than two steps")
	}
}

// Same seed, same advice, whatever the number of workers.
func TestAskIsReproducible(t *testing.T) {
	p := &layout.Problem{Shop: layout.DefaultShop(layout.Inches), Bill: []layout.Part{part("rail", 3*in/4, 3*in, 40*in, 8)}}
	say := func(seed int64, workers int) []Wanted {
		return ask(t, p, AskOptions{Solve: solver.Options{Seed: seed, Workers: workers}, Piles: 6}).Woods
	}
	if a, b := say(1, 1), say(1, 3); !reflect.DeepEqual(a, b) {
		t.Errorf("one worker: %+v, three: %+v", a, b)
	}
	if a, b := say(1, 1), say(2, 1); a[0].Half.Volume.Cmp(b[0].Half.Volume) == 0 && a[0].Most.Volume.Cmp(b[0].Most.Volume) == 0 {
		t.Error("another seed drew no other piles")
	}
}

// Nothing need be bought for what the rack gives; what it does not give is asked for.
func TestAskForWhatTheRackLacks(t *testing.T) {
	board := clearBoard("elm", in, 6*in, 100*in)
	board.Mark, board.Base, board.Source = "E1", "E1", layout.Rack
	p := &layout.Problem{Shop: layout.DefaultShop(layout.Inches), Stock: []layout.Board{board}}
	p.Bill = []layout.Part{part("rail", 3*in/4, 5*in, 30*in, 2)}
	if a := ask(t, p, AskOptions{Piles: 2}); len(a.Rack.Missing) != 0 || len(a.Woods) != 0 {
		t.Errorf("the rack suffices: %+v", a)
	}
	p.Bill[0].Quantity = 5
	if a := ask(t, p, AskOptions{Piles: 2}); a.Rack.Missing[0].Quantity != 2 || len(a.Woods) != 1 || a.Woods[0].Half == nil {
		t.Errorf("two are missing: %+v", a)
	}
	p.Bill[0].From = []string{"E1"}
	if a := ask(t, p, AskOptions{Piles: 2}); len(a.Not) != 1 || len(a.Woods) != 0 {
		t.Errorf("no other board may give it: %+v", a)
	}
}

// Of pieces that match, all are wanted anew where one is missing; of a glue-up, what is
// missing of its slices; spares never.
func TestWantedAnew(t *testing.T) {
	a, b, c := part("a", in, in, in, 3), part("b", in, in, in, 4), part("c", in, in, 0, 2)
	a.Match, b.Match, b.Spare = "pair", "pair", 2
	c.Set, c.Slices = "board", 9
	plan := &layout.Plan{
		Problem: layout.Problem{Bill: []layout.Part{a, b, c, part("d", in, in, in, 7)}},
		Missing: []layout.Missing{{Part: "a", Quantity: 1}, {Part: "board", Quantity: 4}},
	}
	bill := wantedAnew(plan)
	if len(bill) != 3 || bill[0].Quantity != 3 || bill[1].Quantity != 4 || bill[2].Slices != 4 {
		t.Errorf("%+v", bill)
	}
}

// Parts that match are bought as one wood: thick enough for the thickest, of a species
// that all of them may be made of, though another is cheaper.
func TestWoodForParts(t *testing.T) {
	s := layout.DefaultShop(layout.Inches)
	s.Price = map[string]layout.Money{"elm": 8, "ash": 5, "oak": 9}
	u := UsualBoards(layout.Inches)
	thin, thick := part("thin", in/2, in, 20*in, 1), part("thick", in, in, 20*in, 1)
	thin.Species, thick.Species = []string{"oak", "elm", "ash"}, []string{"oak", "elm"}
	bill := []layout.Part{thin, thick}
	if got := u.woodFor(s, &thin, bill); got != (wood{"ash", in}) {
		t.Errorf("by itself: %v", got)
	}
	bill[0].Match, bill[1].Match = "pair", "pair"
	for i := range bill {
		if got := u.woodFor(s, &bill[i], bill); got != (wood{"elm", 5 * in / 4}) {
			t.Errorf("%s, matching: %v", bill[i].Name, got)
		}
	}
	s.Price = nil
	if got := u.woodFor(s, &thin, bill[:0]); got != (wood{"oak", in}) {
		t.Errorf("without prices: %v", got)
	}
}

// A board of the least size is planned to give a part, and one a step smaller to give
// none. Bevelled parts, and shops that mix inches and millimetres, may want a step more,
// for there planning tries few positions.
func TestLeastSizeByPlanning(t *testing.T) {
	plans := func(s *layout.Shop, piece layout.Part, b layout.Board) bool {
		b.Source = layout.Rack
		p := &layout.Problem{Shop: s, Stock: []layout.Board{b}, Bill: []layout.Part{piece}}
		plan, _, err := solver.Solve(context.Background(), p, solver.Options{Rounds: 1, Workers: 1, Unproven: true})
		if err != nil {
			t.Fatal(err)
		}
		return len(plan.Missing) == 0
	}
	held := 0
	for seed := range int64(60) {
		p := jobs.Warped(jobs.Size{Boards: 2, Kinds: 2, Pieces: 4}, seed)
		u := UsualBoards(layout.Inches)
		w := wood{p.Bill[0].Species[0], u.thickness(p.Shop, &p.Bill[0])}
		if w.thickness == 0 {
			continue
		}
		held++
		piece := p.Bill[0]
		piece.Species, piece.From, piece.NotFrom, piece.Quantity = []string{w.species}, nil, nil, 1
		r := &order{w: w, u: &u, p: layout.Problem{Shop: p.Shop, Bill: []layout.Part{piece}}}
		width, length := r.leastSize()
		// The other measure is small as well, so that planning tries every position.
		for _, step := range []layout.Length{0, r.step()} {
			narrow := clearBoard(w.species, w.thickness, width+step, length+6*in)
			brief := clearBoard(w.species, w.thickness, width+6*in, length+step)
			if step == 0 && (piece.Bevel > 0 || p.Shop.RipKerf%layout.SixtyFourth != 0) {
				continue
			}
			if width == 0 || length == 0 || !plans(p.Shop, piece, narrow) || !plans(p.Shop, piece, brief) {
				t.Errorf("seed %d: boards of %v and %v or wider by %v give none of %+v", seed, width, length, step, piece)
			}
		}
		narrow := clearBoard(w.species, w.thickness, width-r.step(), length+6*in)
		brief := clearBoard(w.species, w.thickness, width+6*in, length-r.step())
		if plans(p.Shop, piece, narrow) || plans(p.Shop, piece, brief) {
			t.Errorf("seed %d: boards less than %v wide or %v long give one of %+v", seed, width, length, piece)
		}
	}
	if held < 30 {
		t.Errorf("only %d parts were held", held)
	}
}

// A pile is what it is said to be.
func TestPile(t *testing.T) {
	for _, units := range []layout.Unit{layout.Inches, layout.Millimetres} {
		u := UsualBoards(units)
		boards := newPile(&u, wood{"elm", in}, 3, 0).first(2000)
		common, defects := 0, 0
		var face float64
		for _, b := range boards {
			if b.Width < u.Narrowest || b.Width > u.Widest || b.Length < u.Shortest || b.Length > u.Longest+u.Over {
				t.Fatalf("a board %v wide and %v long", b.Width, b.Length)
			}
			if u.Narrow <= b.Width && b.Width <= u.Wide {
				common++
			}
			for _, d := range b.Defects {
				if d.Rect.Empty() || d.Rect != d.Rect.Intersect(b.Frame()) {
					t.Fatalf("a defect at %v of a board %v by %v", d.Rect, b.Length, b.Width)
				}
			}
			defects += len(b.Defects)
			face += float64(b.Length) / 1e6 * float64(b.Width) / 1e6
		}
		if common < 1500 {
			t.Errorf("%v: of 2000 boards %d are of common widths", units, common)
		}
		if apart := face / float64(defects); apart < float64(u.Poorest) || apart > float64(u.Clearest) {
			t.Errorf("%v: a defect on every %.0f mm²", units, apart)
		}
	}
}
