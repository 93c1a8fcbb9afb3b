package column

import (
	"fmt"
	"math/rand"
	"testing"

	"sawbill/layout"
	"sawbill/layout/check"
	"sawbill/solver/internal/jobs"
	"sawbill/solver/internal/published"
)

// TestLimitedEqualsEveryPosition compares the routine with limits with an
// enumeration of every position and every vector of counts. On tapered boards
// that credit offcuts it is a restriction, as Best is.
func TestLimitedEqualsEveryPosition(t *testing.T) {
	for part := range int64(2) {
		t.Run(fmt.Sprint(part), func(t *testing.T) {
			t.Parallel()
			for seed := part; seed < 400; seed += 2 {
				compareLimited(t, seed)
			}
		})
	}
}

func compareLimited(t *testing.T, seed int64) {
	t.Helper()
	rng := rand.New(rand.NewSource(seed))
	p, price := tiny(rng)
	limits := make([]int, len(price))
	for i := range limits {
		limits[i] = rng.Intn(4)
	}
	b := &p.Stock[0]
	found, want := besideBrute(t, seed, p, price, limits)
	if b.Width != b.TipWidth && p.Shop.OffcutCredit > 0 {
		if found.Value > want+4 || found.Value < want/2 {
			t.Errorf("seed %d: found %d on a tapered board, best is %d", seed, found.Value, want)
		}
		return
	}
	if found.Value != want {
		t.Errorf("seed %d: found %d, best is %d", seed, found.Value, want)
	}
}

// besideBrute is the best column within limits, which must be valid and proven, and
// what the best of all positions is worth.
func besideBrute(t *testing.T, seed int64, p *layout.Problem, price []Value, limits []int) (found Column, want Value) {
	t.Helper()
	b := &p.Stock[0]
	for _, v := range newBrute(p, b, price, limits).best() {
		want = max(want, v)
	}
	found, exact := new(Bench).BestLimited(New(p, b, Exact()), price, limits, 1<<40)
	checkColumn(t, seed, p, price, found)
	checkLimits(t, seed, p, found, limits)
	if !exact {
		t.Errorf("seed %d: not proven best", seed)
	}
	return found, want
}

func checkLimits(t *testing.T, seed int64, p *layout.Problem, c Column, limits []int) {
	t.Helper()
	if c.Root == nil {
		return
	}
	made := map[string]int{}
	for _, leaf := range c.Root.Leaves() {
		made[leaf.Part] += leaf.Pieces()
	}
	for i := range p.Bill {
		if n := made[p.Bill[i].Name]; n > limits[i] {
			t.Errorf("seed %d: %d of %s, at most %d wanted", seed, n, p.Bill[i].Name, limits[i])
		}
	}
}

// TestLimitedOnRealBoards lets the checker pass columns within limits of boards
// of real size, and finds most of them best within little work.
func TestLimitedOnRealBoards(t *testing.T) {
	proven, all := 0, 0
	for seed := range int64(4) {
		p := jobs.New(jobs.Size{Boards: 5, Kinds: 10, Pieces: 60}, seed)
		price := byVolume(p)
		limits := make([]int, len(price))
		for i := range p.Bill {
			limits[i] = p.Bill[i].Quantity
		}
		for i := range p.Stock {
			c, exact := new(Bench).BestLimited(New(p, &p.Stock[i], Quick()), price, limits, 300_000)
			if exact {
				proven++
			}
			all++
			checkLimits(t, seed, p, c, limits)
			if c.Root == nil || !holdsPart(c.Root) {
				continue
			}
			for _, v := range check.Plan(layout.Assemble(p, []layout.BoardCut{{Board: p.Stock[i].Mark, Root: c.Root}})) {
				t.Errorf("seed %d: %v", seed, v)
			}
		}
	}
	if proven*4 < all*3 {
		t.Errorf("only %d of %d proven best", proven, all)
	}
}

// TestPublishedLimits meets the values of the plates of the literature with
// limited copies, those of the smaller ones that need little work.
func TestPublishedLimits(t *testing.T) {
	proven := 0
	for _, c := range limitedPlates(t) {
		if c.Stock[0].Length > 250 {
			continue
		}
		r := solvePlate(c, 1_500_000)
		want := c.Computed["board_3"]
		if r.exact {
			proven++
		}
		if r.exact && r.found != want.Low || r.found > want.High || r.bound < want.Low {
			t.Errorf("%s: found %v, bound %v, want %v", c.Name, r.found, r.bound, want.Low)
		}
	}
	if proven < 20 {
		t.Errorf("only %d plates proven best", proven)
	}
}

// BenchmarkLimitedPlates prints what is found on every plate with limited
// copies. One run of it (-benchtime 1x) is the whole table.
func BenchmarkLimitedPlates(b *testing.B) {
	for _, c := range limitedPlates(b) {
		b.Run(c.Name, func(b *testing.B) {
			var r plateResult
			for b.Loop() {
				r = solvePlate(c, 600_000_000)
			}
			b.Logf("%-9s best %v, found %v, exact %v, first %v, bound %.1f, work %d and %d",
				c.Name, c.Computed["board_3"].Low, r.found, r.exact, r.first, r.bound, r.relaxing, r.searching)
		})
	}
}

// limitedPlates are the published plates with limited copies whose best column
// is known.
func limitedPlates(t testing.TB) []published.Case {
	t.Helper()
	var all []published.Case
	for _, set := range []string{"classic-bounded", "gcut-bounded"} {
		cases, err := published.Read(published.Dir(root), set)
		if err != nil {
			t.Fatal(err)
		}
		if len(cases) == 0 {
			t.Skipf("no published cases in %s", published.Dir(root))
		}
		for _, c := range cases {
			if _, known := c.Computed["board_3"]; known {
				all = append(all, c)
			}
		}
	}
	return all
}

// plateResult is what became of one plate, in the values of its items.
type plateResult struct {
	found, first, bound float64 // first: by trimming; bound: after relaxing
	exact               bool
	relaxing, searching int // work
}

func solvePlate(c published.Case, most int) plateResult {
	p := c.Problem(true)
	price := make([]Value, len(c.Items))
	limits := make([]int, len(c.Items))
	for i, it := range c.Items {
		price[i] = FromMoney(layout.Money(it.Value) * layout.Unity)
		limits[i] = *it.Copies
	}
	amount := func(v Value) float64 { return float64(v) / float64(FromMoney(layout.Unity)) }
	s := newLimited(new(Bench), New(p, &p.Stock[0], Exact()), price, limits, most)
	s.relax()
	r := plateResult{first: amount(s.best.Value), bound: amount(s.bound), relaxing: s.work}
	r.exact = s.search()
	r.found, r.searching = amount(s.best.Value), s.work-r.relaxing
	return r
}
