package column

import (
	"math/rand"
	"testing"

	"sawbill/layout"
)

// tinyWays is a tiny warped job whose parts may stand on edge or be resawn.
func tinyWays(seed int64) (*layout.Problem, []Value) {
	rng := rand.New(rand.NewSource(seed))
	p, price := tinyWarped(seed)
	p.Shop.ResawKerf, p.Shop.FaceSkim = mmOf(rng.Intn(2)), mmOf(rng.Intn(2))
	p.Shop.MinBlank = mmOf([]int{0, 2, 4}[rng.Intn(3)])
	for i := range p.Bill {
		part := &p.Bill[i]
		part.Thickness = mmOf(1 + rng.Intn(5))
		part.OnEdge, part.Resaw = rng.Intn(2) == 0, rng.Intn(2) == 0
		if part.OnEdge {
			part.Width = mmOf(2 + rng.Intn(5))
		}
	}
	p.Stock[0].Thickness = mmOf(6 + rng.Intn(5))
	return p, price
}

// TestWaysEqualEveryPosition compares parts that lie flat or on edge, in one layer or
// several, with an enumeration of every position and every way.
func TestWaysEqualEveryPosition(t *testing.T) {
	layered, standing := 0, 0
	for seed := range int64(100) {
		p, price := tinyWays(seed)
		want := newBrute(p, &p.Stock[0], price, nil).best()[counts{}]
		found := new(Bench).Best(New(p, &p.Stock[0], Exact()), price)
		checkColumn(t, seed, p, price, found)
		holdWarped(t, seed, p, found.Value, want)
		if found.Root == nil {
			continue
		}
		for _, leaf := range found.Root.Leaves() {
			if leaf.Layers > 1 {
				layered++
			}
			if leaf.OnEdge {
				standing++
			}
		}
	}
	if layered < 20 || standing < 20 {
		t.Errorf("only %d leaves are resawn, %d stand on edge", layered, standing)
	}
}

// TestWaysWithinLimits does so within limits: a leaf of more layers than are wanted is
// of no use.
func TestWaysWithinLimits(t *testing.T) {
	for seed := range int64(50) {
		p, price := tinyWays(seed)
		limits := []int{3, 2, 1}[:len(price)]
		found, want := besideBrute(t, seed, p, price, limits)
		holdWarped(t, seed, p, found.Value, want)
		cut := new(Bench).Within(New(p, &p.Stock[0], Exact()), price, limits, 2)
		checkLimits(t, seed, p, Column{Root: cut.Root}, limits)
	}
}
