package column

import (
	"math/rand"
	"testing"

	"sawbill/layout"
)

// tinyWhole is a tiny job in which truing takes nothing and the first part is as
// wide as the board, mostly too short to be ripped.
func tinyWhole(seed int64) (*layout.Problem, []Value) {
	rng := rand.New(rand.NewSource(seed))
	p, price := tiny(rng)
	b, s := &p.Stock[0], p.Shop
	b.TipWidth, b.Edges = b.Width, layout.Edges(rng.Intn(3))
	s.EdgeJoint, s.EndSquare, s.Snipe, s.MinRipLength = 0, 0, 0, mmOf(5)
	p.Bill[0].Width = b.Width
	return p, price
}

// A part as wide as a board from which truing takes nothing is not ripped, so it
// may be shorter than what can be ripped.
func TestWholeBlanksEqualEveryPosition(t *testing.T) {
	short := 0
	for seed := range int64(200) {
		p, price := tinyWhole(seed)
		b := &p.Stock[0]
		want := newBrute(p, b, price, nil).best()[counts{}]
		w := New(p, b, Exact())
		found := new(Bench).Best(w, price)
		checkColumn(t, seed, p, price, found)
		holdWhole(t, seed, found.Value, want)
		if len(w.wholes) > 0 {
			short++
			compareWholeLimits(t, seed, w, price)
		}
	}
	if short < 20 {
		t.Errorf("only %d of the jobs have a part that may be a whole blank", short)
	}
}

// compareWholeLimits allows one piece of each part.
func compareWholeLimits(t *testing.T, seed int64, w *Board, price []Value) {
	t.Helper()
	limits := []int{1, 1, 1}[:len(price)]
	var want Value
	for _, v := range newBrute(w.problem, w.wood, price, limits).best() {
		want = max(want, v)
	}
	found, exact := new(Bench).BestLimited(w, price, limits, 1<<40)
	checkColumn(t, seed, w.problem, price, found)
	checkLimits(t, seed, w.problem, found, limits)
	if !exact {
		t.Errorf("seed %d: not proven best within limits", seed)
	}
	holdWhole(t, seed, found.Value, want)
	cut := new(Bench).Within(w, price, limits, 2)
	checkLimits(t, seed, w.problem, Column{Root: cut.Root}, limits)
}

// holdWhole compares values; the enumeration rounds every offcut by itself.
func holdWhole(t *testing.T, seed int64, found, want Value) {
	t.Helper()
	if found < want-4 || found > want+4 {
		t.Errorf("seed %d: found %d, best is %d", seed, found, want)
	}
}
