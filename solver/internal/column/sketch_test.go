package column

import (
	"math/rand"
	"testing"

	"sawbill/layout"
	"sawbill/layout/check"
	"sawbill/solver/internal/ceiling"
	"sawbill/solver/internal/jobs"
)

// TestSketchesAreValid lets the checker pass what is made of the cuttings with which
// boards of every kind are bounded, and holds it against the bounds.
func TestSketchesAreValid(t *testing.T) {
	var bench ceiling.Bench
	made := 0
	for seed := range int64(60) {
		rng := rand.New(rand.NewSource(seed))
		size := jobs.Size{Boards: 3, Kinds: 8, Pieces: 40}
		p := jobs.Varied(size, seed)
		if seed%3 == 0 {
			p = jobs.Warped(size, seed)
		}
		for i := range p.Bill {
			p.Bill[i].Quantity = 1000
		}
		price := byVolume(p)
		high := make([]ceiling.Value, len(price))
		for i := range price {
			price[i] = Value(float64(price[i]) * (0.6 + rng.Float64()))
			high[i] = ceiling.Value(price[i])
		}
		for i := range p.Stock {
			b := &p.Stock[i]
			if !p.Takes(b) {
				continue
			}
			for _, work := range []int{100_000, 5_000_000} {
				most, _ := bench.Most(ceiling.New(p, b), high, 0, work, nil)
				sketch, _ := bench.Sketch()
				if sketch == nil {
					continue
				}
				c := New(p, b, Quick()).FromSketch(sketch, price)
				if Value(most) < c.Gain() {
					t.Errorf("seed %d, board %s: a cut is worth %d, above the ceiling %d", seed, b.Mark, c.Gain(), most)
				}
				if !holdsPart(c.Root) {
					continue
				}
				made++
				for _, v := range check.Plan(layout.Assemble(p, []layout.BoardCut{{Board: b.Mark, Root: c.Root}})) {
					t.Errorf("seed %d, board %s: %v", seed, b.Mark, v)
				}
			}
		}
	}
	if made < 150 {
		t.Errorf("only %d sketches hold parts", made)
	}
}

// TestSketchesReachTheCeiling: where the relaxation has nothing to relax, as on flat boards
// in whole marks, what it tells is a cutting that is hardly less than its bound, and far
// better than what few positions give.
func TestSketchesReachTheCeiling(t *testing.T) {
	var high ceiling.Bench
	var bench Bench
	var bound, copied, quick Value
	for _, j := range jobs.Shop()[:3] {
		p := j.Problem
		price := byVolume(p)
		exact := make([]ceiling.Value, len(price))
		limits := make([]int, len(price))
		for i, v := range price {
			exact[i], limits[i] = ceiling.Value(v), 1000
		}
		for i := range p.Stock[:12] {
			b := &p.Stock[i]
			if b.Width != b.TipWidth {
				continue
			}
			w := New(p, b, Quick())
			most, _ := high.Most(ceiling.New(p, b), exact, 0, 1e9, nil)
			sketch, whole := high.Sketch()
			if !whole {
				t.Errorf("%s, board %s: the sketch does not tell everything", j.Name, b.Mark)
			}
			c := w.FromSketch(sketch, price)
			few := bench.Within(w, price, limits, 1)
			bound, copied, quick = bound+Value(most), copied+c.Gain(), quick+few.Gain()
		}
	}
	if copied < bound/1000*985 || copied < quick {
		t.Errorf("the bounds add up to %d, what is made of their sketches to %d, quick cuts to %d", bound, copied, quick)
	}
}
