package column

import (
	"fmt"
	"math/rand"
	"testing"

	"sawbill/layout"
	"sawbill/solver/internal/ceiling"
)

// kinds are the tiny jobs of these tests, by what is turned on in them.
var tinyKinds = []struct {
	name string
	make func(seed int64) (*layout.Problem, []Value)
}{
	{"flat", func(seed int64) (*layout.Problem, []Value) { return tiny(rand.New(rand.NewSource(seed))) }},
	{"warped", tinyWarped},
	{"ways", tinyWays},
	{"bevels", tinyBevels},
	{"all", tinyAll},
}

// tinyAll is a tiny warped job with ways and bevels, where offcuts are credited as often
// as not.
func tinyAll(seed int64) (*layout.Problem, []Value) {
	p, price := tinyWays(seed)
	rng := rand.New(rand.NewSource(seed + 1))
	for i := range p.Bill {
		if part := &p.Bill[i]; rng.Intn(3) == 0 {
			part.Bevel, part.OnEdge, part.Resaw = layout.Angle(5+rng.Intn(20))*layout.Degree, false, false
		}
	}
	return p, price
}

// TestCeilingIsNeverBelowTheBest holds the bound on what a board is worth against an
// enumeration of every position, coarse and fine.
func TestCeilingIsNeverBelowTheBest(t *testing.T) {
	for _, kind := range tinyKinds {
		t.Run(kind.name, func(t *testing.T) {
			t.Parallel()
			for seed := range int64(100) {
				p, price := kind.make(seed)
				holdCeiling(t, fmt.Sprint(kind.name, " ", seed), p, price)
			}
		})
	}
}

func holdCeiling(t *testing.T, name string, p *layout.Problem, price []Value) {
	t.Helper()
	b := &p.Stock[0]
	best := newBrute(p, b, price, nil).best()[counts{}]
	high := make([]ceiling.Value, len(price))
	for i, v := range price {
		high[i] = ceiling.Value(v)
	}
	var bench ceiling.Bench
	for _, w := range []*ceiling.Board{ceiling.New(p, b), ceiling.Rough(p, b)} {
		for _, work := range []int{0, 1_000_000} {
			if most, _ := bench.Most(w, high, 0, work, nil); Value(most)+4 < best { // the enumeration rounds each offcut
				t.Errorf("%s: the best column is worth %d, the ceiling after %d steps is %d", name, best, work, most)
			}
		}
	}
}

// On this tapered board, a defect that is marked beyond the far edge was taken off what
// the wood is worth.
func TestCeilingCountsWoodAlone(t *testing.T) {
	for _, seed := range []int64{59, 418} {
		p, price := tiny(rand.New(rand.NewSource(seed)))
		holdCeiling(t, fmt.Sprint(seed), p, price)
	}
}

// TestProofReachesTheCeiling has the proof from prices prove, of every tiny job, what the
// ceiling says: else a plan could state a bound that its prices do not prove.
func TestProofReachesTheCeiling(t *testing.T) {
	for _, kind := range tinyKinds {
		for seed := range int64(40) {
			p, price := kind.make(seed)
			high := make([]ceiling.Value, len(price))
			for i, v := range dear(price) {
				high[i] = ceiling.Value(v)
			}
			b := &p.Stock[0]
			cost := FromMoney(b.Cost)
			most, _ := new(ceiling.Bench).Most(ceiling.New(p, b), high, ceiling.Value(cost), 50_000_000, nil)
			if allowed := -FromMoney(proven(t, p, price)); allowed > max(0, Value(most)-cost)+Cash {
				t.Errorf("%s %d: the ceiling says %d beyond the cost, the proof allows %d", kind.name, seed, Value(most)-cost, allowed)
			}
		}
	}
}
