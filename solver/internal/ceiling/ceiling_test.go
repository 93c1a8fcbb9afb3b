package ceiling_test

import (
	"math/rand"
	"testing"

	"sawbill/layout"
	"sawbill/solver/internal/ceiling"
	"sawbill/solver/internal/column"
	"sawbill/solver/internal/exhaust"
	"sawbill/solver/internal/jobs"
)

// prices are about what the wood of a part costs, each by chance up to twice
// that, some nothing.
func prices(p *layout.Problem, rng *rand.Rand) ([]ceiling.Value, []column.Value) {
	a, b := make([]ceiling.Value, len(p.Bill)), make([]column.Value, len(p.Bill))
	for i := range p.Bill {
		if rng.Intn(6) == 0 {
			continue
		}
		feet := float64(p.Bill[i].Length) * float64(p.Bill[i].Width) / float64(layout.Inch) / float64(layout.Inch) / 144
		v := int64(feet * 9e6 * (0.7 + 1.3*rng.Float64()))
		a[i], b[i] = ceiling.Value(v), column.Value(v)
	}
	return a, b
}

// Whatever the quick routine finds is a valid cutting, so the ceiling is above
// it, coarse and fine.
func TestNoColumnIsAboveTheCeiling(t *testing.T) {
	var quick column.Bench
	var bench ceiling.Bench
	for seed := range int64(16) {
		rng := rand.New(rand.NewSource(seed))
		p := jobs.Varied(jobs.Size{Boards: 4, Kinds: 7, Pieces: 30}, seed)
		if seed%2 == 1 {
			p = jobs.Warped(jobs.Size{Boards: 4, Kinds: 7, Pieces: 30}, seed)
		}
		for i := range p.Stock {
			b := &p.Stock[i]
			if !p.Takes(b) {
				continue
			}
			high, price := prices(p, rng)
			cfg := []column.Config{column.Quick(), {MostX: 1600, MostY: 400, MostStarts: 6, MostHeights: 16, InnerOffcuts: true, Beside: true, RoughRips: true}}[rng.Intn(2)]
			board := column.New(p, b, cfg)
			cut := board.CutOf(quick.Best(board, price), price)
			worth := cut.Value + column.FromMoney(cut.Worth)
			for _, w := range []*ceiling.Board{ceiling.New(p, b), ceiling.Rough(p, b)} {
				for _, starts := range []int{0, 1_000_000} {
					if most, _ := bench.Most(w, high, 0, starts, nil); column.Value(most) < worth {
						t.Errorf("seed %d, board %s, %d steps: a column is worth %d, above the ceiling %d", seed, b.Mark, starts, worth, most)
					}
				}
			}
		}
	}
}

// On tiny boards every cutting is known.
func TestNothingIsAboveTheCeiling(t *testing.T) {
	var bench ceiling.Bench
	for seed := range int64(50) {
		rng := rand.New(rand.NewSource(seed))
		p := exhaust.Tiny(seed)
		for i := range p.Stock {
			b := &p.Stock[i]
			if !p.Takes(b) {
				continue
			}
			high, _ := prices(p, rng)
			most, _ := bench.Most(ceiling.New(p, b), high, 0, 1_000_000, nil)
			rough, _ := bench.Most(ceiling.Rough(p, b), high, 0, 1_000_000, nil)
			most = min(most, rough)
			for _, pair := range exhaust.Pairs(p, b, exhaust.TinyUnit) {
				worth := ceiling.Value(pair.Worth) * 100
				for row, n := range pair.Made {
					worth += ceiling.Value(n) * high[row]
				}
				if worth > most {
					t.Errorf("seed %d, board %s: %v pieces and offcuts of %v are worth %d, above the ceiling %d", seed, b.Mark, pair.Made, pair.Worth, worth, most)
				}
			}
		}
	}
}
