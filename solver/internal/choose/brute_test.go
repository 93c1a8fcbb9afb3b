package choose

import (
	"math/rand"
	"testing"
)

// job is a call of Best.
type job struct {
	groups  int
	demand  []int
	penalty []int64
	columns []Column
}

func (q *job) best(start []int, nodes int) ([]int, int64, bool) {
	return Best(q.groups, q.demand, q.penalty, q.columns, start, nodes)
}

// costOf is the cost of a choice by the definition.
func (q *job) costOf(t *testing.T, choice []int) int64 {
	t.Helper()
	var cost int64
	made := make([]int, len(q.demand))
	for g, j := range choice {
		if j < 0 {
			continue
		}
		if q.columns[j].Group != g {
			t.Fatalf("group %d has column %d, which is of group %d", g, j, q.columns[j].Group)
		}
		cost += q.columns[j].Cost
		for i, n := range q.columns[j].Counts {
			made[i] += n
		}
	}
	for i, n := range q.demand {
		cost += int64(max(n-made[i], 0)) * q.penalty[i]
	}
	return cost
}

// brute is the least cost over all choices.
func (q *job) brute(t *testing.T) int64 {
	t.Helper()
	choice := make([]int, q.groups)
	for g := range choice {
		choice[g] = -1
	}
	best := q.costOf(t, choice)
	var choose func(g int)
	choose = func(g int) {
		if g == q.groups {
			best = min(best, q.costOf(t, choice))
			return
		}
		choice[g] = -1
		choose(g + 1)
		for j, c := range q.columns {
			if c.Group == g {
				choice[g] = j
				choose(g + 1)
			}
		}
	}
	choose(0)
	return best
}

// tiny draws jobs of all kinds: free and dear shortfall, costs below 0, columns
// that make nothing or too much, groups alike.
func tiny(rng *rand.Rand) *job {
	q := &job{groups: rng.Intn(5)}
	high := []int64{3, 30, 1e12}[rng.Intn(3)]
	low := []int64{0, 0, -5}[rng.Intn(3)]
	for range rng.Intn(4) {
		q.demand = append(q.demand, rng.Intn(7))
		q.penalty = append(q.penalty, rng.Int63n(high+1))
	}
	for g := range q.groups {
		if g > 0 && rng.Intn(3) == 0 {
			q.repeat(g)
			continue
		}
		for range rng.Intn(6) {
			q.columns = append(q.columns, Column{g, low + rng.Int63n(21), counts(rng, len(q.demand))})
		}
	}
	rng.Shuffle(len(q.columns), func(i, j int) { q.columns[i], q.columns[j] = q.columns[j], q.columns[i] })
	return q
}

// repeat gives group g the columns of the group before it.
func (q *job) repeat(g int) {
	for _, c := range q.columns {
		if c.Group == g-1 {
			q.columns = append(q.columns, Column{g, c.Cost, c.Counts})
		}
	}
}

func counts(rng *rand.Rand, kinds int) []int {
	c := make([]int, kinds)
	for i := range c {
		c[i] = max(rng.Intn(6)-2, 0)
	}
	return c
}

// randomChoice draws a choice to start from, or none.
func (q *job) randomChoice(rng *rand.Rand) []int {
	if rng.Intn(2) == 0 {
		return nil
	}
	choice := make([]int, q.groups)
	for g := range choice {
		choice[g] = -1
	}
	for range q.groups {
		if len(q.columns) > 0 {
			j := rng.Intn(len(q.columns))
			choice[q.columns[j].Group] = j
		}
	}
	return choice
}

func TestEqualsEveryChoice(t *testing.T) {
	for seed := range int64(6000) {
		rng := rand.New(rand.NewSource(seed))
		q := tiny(rng)
		want := q.brute(t)
		choice, cost, proven := q.best(q.randomChoice(rng), 1000)
		if got := q.costOf(t, choice); got != cost {
			t.Errorf("seed %d: says %d, costs %d", seed, cost, got)
		}
		if cost != want || !proven {
			t.Errorf("seed %d: cost %d, proven %v, best is %d", seed, cost, proven, want)
		}
	}
}

// Whatever the limit: the choice is one, it is no worse than the start, and what
// is called proven is the best.
func TestLimitsKeepWhatIsSaid(t *testing.T) {
	open := 0
	for seed := range int64(2000) {
		rng := rand.New(rand.NewSource(seed))
		q := tiny(rng)
		start := q.randomChoice(rng)
		choice, cost, proven := q.best(start, rng.Intn(3))
		if got := q.costOf(t, choice); got != cost {
			t.Errorf("seed %d: says %d, costs %d", seed, cost, got)
		}
		if start != nil && cost > q.costOf(t, start) {
			t.Errorf("seed %d: %d from a start of %d", seed, cost, q.costOf(t, start))
		}
		if !proven {
			open++
		}
		if want := q.brute(t); cost < want || proven && cost > want {
			t.Errorf("seed %d: cost %d, proven %v, best is %d", seed, cost, proven, want)
		}
	}
	if open == 0 {
		t.Error("every one was proven, so the limits were not tried")
	}
}
