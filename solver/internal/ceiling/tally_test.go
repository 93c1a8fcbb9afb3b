package ceiling_test

import (
	"math/rand"
	"testing"

	"sawbill/layout"
	"sawbill/solver/internal/ceiling"
	"sawbill/solver/internal/exhaust"
)

// TestJobOfTiny holds what is proven of tiny jobs by counting what every board makes against
// the best of all their plans: over all sets of boards the least is never more than it, and
// mostly the same. Prices are by chance, and so is how close the plan is to the best of which
// the cost is known.
func TestJobOfTiny(t *testing.T) {
	same, all := 0, 0
	for seed := range int64(400) {
		switch bound, cost := countedAndLeast(t, seed, exhaust.Tiny(seed)); {
		case cost == 0:
		case bound == cost:
			same, all = same+1, all+1
		default:
			all++
		}
	}
	t.Logf("%d of %d bounds are the least cost", same, all)
	if 10*same < 7*all {
		t.Errorf("only %d of %d bounds are the least cost", same, all)
	}
}

// countedAndLeast is what is proven of a job by counting and the least cost of its plans, which
// it holds against each other; 0 where there is no such plan.
func countedAndLeast(t *testing.T, seed int64, p *layout.Problem) (bound, cost ceiling.Value) {
	t.Helper()
	rng := rand.New(rand.NewSource(seed))
	made, missing := make([]int, len(p.Bill)), make([]int, len(p.Bill))
	total := 0
	for i := range made {
		made[i] = rng.Intn(p.Bill[i].Quantity + 1)
		missing[i] = p.Bill[i].Quantity - made[i]
		total += made[i]
	}
	least, ok := exhaust.New(p, exhaust.TinyUnit).Cost(missing)
	if !ok || total == 0 || sparesMachines(p) {
		return 0, 0
	}
	cost = ceiling.Value(least) * 100
	known := []ceiling.Value{cost + 100, 2*cost + 100, 1 << 40}[rng.Intn(3)]
	if bound = leastOfSets(p, made, known, rng); bound > cost {
		t.Errorf("seed %d: bound %d is more than the cost %d of a plan that makes %v", seed, bound, cost, made)
	}
	return bound, cost
}

// sparesMachines reports whether a part may be as thick as a planed board: then making more of
// it may cost less.
func sparesMachines(p *layout.Problem) bool {
	for i := range p.Stock {
		for k := range p.Bill {
			if p.Stock[i].Faces == layout.FacesPlaned && p.Stock[i].Thickness == p.Bill[k].Thickness {
				return true
			}
		}
	}
	return false
}

// leastOfSets is the least that is proven over all sets of boards, at prices by chance.
func leastOfSets(p *layout.Problem, made []int, known ceiling.Value, rng *rand.Rand) ceiling.Value {
	var usable []int
	for i := range p.Stock {
		if p.Takes(&p.Stock[i]) {
			usable = append(usable, i)
		}
	}
	least := ceiling.Value(1 << 50)
	for set := 1; set < 1<<len(usable); set++ {
		if j := jobOf(p, usable, set, made, known, rng); j != nil {
			for j.Step() {
			}
			least = min(least, j.Bound())
		}
	}
	return least
}

func jobOf(p *layout.Problem, usable []int, set int, made []int, known ceiling.Value, rng *rand.Rand) *ceiling.Job {
	price := make([]ceiling.Value, len(p.Bill))
	for i := range price {
		price[i] = ceiling.Value(rng.Intn(3) * rng.Intn(1_000_000)) // nothing for some
	}
	var offers []ceiling.Offer
	for k, b := range usable {
		if set>>k&1 == 0 {
			continue
		}
		wood := &p.Stock[b]
		var bench ceiling.Bench
		board := ceiling.Fine(p, wood)
		most, _ := bench.Most(ceiling.New(p, wood), price, 0, 1<<40, nil)
		cost := ceiling.Value(wood.Cost) * 100
		offers = append(offers, ceiling.Offer{Board: board, Cost: cost, Most: most})
	}
	one := func(n int, do func(k int)) {
		for k := range n {
			do(k)
		}
	}
	return ceiling.NewJob(offers, price, made, known, 1<<40, func() bool { return false }, one)
}
