package risk

import (
	"context"
	"math"
	"testing"

	"sawbill/layout"
	"sawbill/layout/record"
	"sawbill/solver"
	"sawbill/solver/internal/column"
)

// onePiece is a job of one board, 40 by 8 in of ash, planed with straight edges, and one
// part of 24 by 4 in; saws take nothing, and nothing is worth keeping, so that a lost
// piece stays lost. A board foot is 144 cubic inches: there are 320/144 of them.
func onePiece(t *testing.T, per10BF layout.Rate) *layout.Plan { return shelves(t, per10BF, 1) }

// shelves is the same with so many parts.
func shelves(t *testing.T, per10BF layout.Rate, quantity int) *layout.Plan {
	t.Helper()
	shop := layout.DefaultShop(layout.Inches)
	shop.RipKerf, shop.CrosscutKerf, shop.RoughRipKerf = 0, 0, 0
	shop.EndTrim, shop.EdgeJoint, shop.EndSquare = 0, 0, 0
	shop.MinOffcutLength = layout.MaxLength
	shop.Hidden["ash"] = layout.Hidden{Per10BF: per10BF, Length: 6 * layout.Inch, Width: 2 * layout.Inch}
	stock := []layout.Board{{
		Mark: "A1", Base: "A1", Species: "ash", Thickness: layout.Inch, Width: 8 * layout.Inch, TipWidth: 8 * layout.Inch,
		Length: 40 * layout.Inch, Edges: layout.EdgesBoth, Faces: layout.FacesPlaned, Cost: layout.Unity,
	}}
	bill := []layout.Part{{
		Name: "shelf", Species: []string{"ash"}, Thickness: layout.Inch, Width: 4 * layout.Inch, Length: 24 * layout.Inch,
		Quantity: quantity, Grade: layout.Clear,
	}}
	return planFor(t, &layout.Problem{Shop: shop, Stock: stock, Bill: bill})
}

func planFor(t *testing.T, p *layout.Problem) *layout.Plan {
	t.Helper()
	plan, _, err := solver.Solve(context.Background(), p, solver.Options{Rounds: 1, Workers: 1})
	if err != nil {
		t.Fatal(err)
	}
	return plan
}

// touching is the share of all places of the centre of a defect, 6 by 2 in, at which it
// spoils the piece: it may lie up to 3 in before and beyond the piece and 1 in beside
// it, as far as the board goes. At the corner of the board, 0..24 x 0..4, that is
// 27 x 5 of 40 x 8 in.
func touching(t *testing.T, plan *layout.Plan) float64 {
	t.Helper()
	leaf := plan.Boards[0].Root.Leaves()[0]
	if leaf.Part != "shelf" {
		t.Fatalf("the first leaf is %+v", leaf)
	}
	b := plan.Problem.Stock[0]
	r := leaf.Rect.Grow(3*layout.Inch, layout.Inch).Intersect(b.Frame())
	return square(r.Length(), r.Width()) / square(b.Length, b.Width)
}

// wantChance fails a test where a share of draws is further from a chance than four
// standard errors.
func wantChance(t *testing.T, what string, got layout.Share, want float64) {
	t.Helper()
	if err := math.Sqrt(want * (1 - want) / float64(got.Of)); math.Abs(got.Value()-want) > 4*err {
		t.Errorf("%s: %.4f of %d draws, want %.4f", what, got.Value(), got.Of, want)
	}
}

// One defect spoils the piece with the chance that its centre is where it touches.
func TestOneDefectInOneBoard(t *testing.T) {
	plan := onePiece(t, layout.RateUnity)
	j := newJob(plan, plan.Problem.Shop)
	bench := new(column.Bench)
	got := layout.Share{Of: 20_000}
	for i := range got.Of {
		if j.judge([]spot{{0, j.roots[0].place(source(1, i, 0)), 0.5}}, bench).need == nil {
			got.Count++
		}
	}
	wantChance(t, "one defect", got, 1-touching(t, plan))
}

// A Poisson number of defects, with the mean m, of which each touches with the chance a
// by itself: those that touch are Poisson in number with the mean m a, and none of them
// does with the chance exp(-m a). Here m = rate * 320/144/10.
func TestHiddenDefectsInOneBoard(t *testing.T) {
	for _, rate := range []layout.Rate{layout.RateUnity, 5 * layout.RateUnity} {
		plan := onePiece(t, rate)
		r, err := Of(context.Background(), plan, Options{Draws: 20_000, Seed: 7})
		if err != nil {
			t.Fatal(err)
		}
		mean := rate.Float() * 320 / 144 / 10
		finished := math.Exp(-mean * touching(t, plan))
		wantChance(t, rate.String(), r.Finished, finished)
		if low, high := r.Finished.Interval(); finished < low || finished > high {
			t.Errorf("%v: the chance %.4f is not within %.4f to %.4f", rate, finished, low, high)
		}
		// One more board is as good as the first; with one more piece at hand all is made.
		wantChance(t, "with one more board", r.Spares[0].Finished, 1-(1-finished)*(1-finished))
		if r.Parts[0].Spared.Count != r.Finished.Of {
			t.Errorf("with one more piece at hand %v are finished", r.Parts[0].Spared)
		}
	}
}

// Where nothing hides, the stock is enough in every draw.
func TestNothingHidden(t *testing.T) {
	r, err := Of(context.Background(), onePiece(t, 0), Options{})
	if err != nil {
		t.Fatal(err)
	}
	if r.Finished != (layout.Share{Count: usualDraws, Of: usualDraws}) {
		t.Errorf("finished are %v", r.Finished)
	}
	if r.Parts[0].Missing.Count != 0 || len(r.Bought) != 1 || r.Order[0].Lost != 0 {
		t.Errorf("%+v", r)
	}
}

// A tip narrower than the butt gets fewer defects: none lies beyond the far edge, and
// their centres are even over the wood. Of a triangle of wood three quarters lie in the
// half with the butt.
func TestPlacesAreEvenOverTheWood(t *testing.T) {
	b := &layout.Board{Length: 100, Width: 1000, TipWidth: 0}
	place := &root{board: b, size: layout.Hidden{Length: 1, Width: 1}}
	butt := layout.Share{Of: 20_000}
	for i := range butt.Of {
		r := place.place(source(3, i, 0))
		if r.Y1 >= b.Far(r.X1) {
			t.Fatalf("%v lies off the wood", r)
		}
		if r.X1 < 50 {
			butt.Count++
		}
	}
	wantChance(t, "the half with the butt", butt, 0.75)
}

// A piece that is cut is sound, and so is the wood near it: a defect that reached into it
// would have been seen. Of two shelves side by side in 0..24 x 0..8, the one that is yet
// to be cut is spoiled by centres in 27 x 5 in, less those in 27 x 2 in that would have
// spoiled the other, too.
func TestWhatIsCutIsSound(t *testing.T) {
	plan := shelves(t, 5*layout.RateUnity, 2)
	plan = cutOff(t, plan, plan.Boards[0].Root.Leaves()[0].ID)
	r, err := Of(context.Background(), plan, Options{Draws: 20_000})
	if err != nil {
		t.Fatal(err)
	}
	mean := 5.0 * 320 / 144 / 10
	wantChance(t, "one of two", r.Finished, math.Exp(-mean*27*3/320))
	if len(r.Order) != 0 {
		t.Errorf("a board that is being cut is advised to be begun: %v", r.Order)
	}
	plan = cutOff(t, plan, "A1")
	if r, err = Of(context.Background(), plan, Options{}); err != nil || r.Finished.Count != usualDraws {
		t.Errorf("with all cut %v are finished (%v)", r.Finished, err)
	}
}

// cutOff is the next revision of a plan, once something is cut.
func cutOff(t *testing.T, plan *layout.Plan, name string) *layout.Plan {
	t.Helper()
	d := record.Open(plan)
	if err := d.Cut(name); err != nil {
		t.Fatal(err)
	}
	next, err := d.Complete(func(p *layout.Problem, _ bool) (*layout.Plan, error) { return planFor(t, p), nil })
	if err != nil {
		t.Fatal(err)
	}
	return next
}

// A strip of a glue-up that is spoiled is wanted again as long as it was. Of strips, the
// row of the bill is told.
func TestStripsOfAGlueUp(t *testing.T) {
	p := onePiece(t, 0).Problem
	p.Bill = []layout.Part{{
		Name: "light", Species: []string{"ash"}, Thickness: 3 * layout.Inch / 4, Width: layout.Inch, Quantity: 3,
		Grade: layout.Clear, Set: "tray", Slices: 8, SliceThickness: 2 * layout.Inch,
	}}
	plan := planFor(t, &p)
	if len(plan.Missing) > 0 {
		t.Fatalf("missing are %v", plan.Missing)
	}
	for _, test := range []struct {
		rate  layout.Rate
		least int
		most  int
	}{{0, 200, 200}, {20 * layout.RateUnity, 0, 150}} {
		rates := *p.Shop
		rates.Hidden = map[string]layout.Hidden{"ash": {Per10BF: test.rate}}
		r, err := Of(context.Background(), plan, Options{Draws: 200, Rates: &rates})
		if err != nil {
			t.Fatal(err)
		}
		if n := r.Finished.Count; n < test.least || n > test.most || len(r.Parts) != 1 || r.Parts[0].Part != "light" {
			t.Errorf("at %v: %d are finished; %+v", test.rate, n, r.Parts)
		}
	}
}
