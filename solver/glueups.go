package solver

import (
	"math/rand"
	"slices"

	"sawbill/layout"
)

// glueUps solves a job with glue-up sets: compositions are tried one after another,
// each as a job of its own with a row for every strip, beginning with the copies that
// come cheapest at the prices of the guide and going on with neighbours of the best.
// The best few are searched on as all jobs are.
type glueUps struct {
	asked *layout.Problem
	o     Options
	stop  func() bool
	rng   *rand.Rand
	sets  []layout.Set
	kinds []glueUp
	guide *guide // nil where there are too many kinds of strips
	tried map[string]bool
	alive []*trial // the best few, best first
	plan  *layout.Plan
	round int
}

const (
	mostAlive   = 3 // trials that are searched on
	drawnAtOnce = 6 // neighbours of which the one is tried that comes cheapest
	proveEvery  = 8 // rounds to a step of the proof, once something is proven
)

func newGlueUps(p *layout.Problem, sets []layout.Set, o Options, stop func() bool) *glueUps {
	q := &glueUps{
		asked: p, o: o, stop: stop, rng: rand.New(rand.NewSource(o.Seed)), sets: sets, tried: map[string]bool{},
	}
	q.guide = newGuide(p, sets, q.inner(), stop)
	for _, set := range sets {
		u := glueUp{wanted: set.Slices}
		if counts := p.SliceCounts(set); len(counts) > 0 {
			u.lo = counts[0]
			u.hi = min(counts[len(counts)-1], max(u.lo, set.Slices))
		}
		q.kinds = append(q.kinds, u)
	}
	return q
}

// inner are the options of searches within this one: nobody hears of them.
func (q *glueUps) inner() Options {
	o := q.o
	o.Observer = nil
	return o
}

// solve is Solve of a job with glue-ups.
func (q *glueUps) solve() (*layout.Plan, Status, error) {
	status, err := q.run()
	if err == nil {
		err = q.tidy()
	}
	if err != nil {
		return nil, status, err
	}
	return q.plan, status, nil
}

// run searches until there is a reason to end, and says which.
func (q *glueUps) run() (Status, error) {
	if q.guide != nil {
		q.guide.settle(q.guide.all())
	}
	if err := q.try(q.cheapest(), 0); err != nil {
		return Stopped, err
	}
	for n := 1; ; n++ {
		switch {
		case len(q.alive[0].s.usable) == 0 && q.next() == nil:
			return Settled, nil
		case q.near():
			return Near, nil
		case q.stop() || q.o.Rounds > 0 && n > q.o.Rounds:
			return Stopped, nil
		}
		if err := q.step(n); err != nil {
			return Stopped, err
		}
		if n%proveEvery == 0 || q.plan.Totals.Bound == nil {
			q.prove(n)
		}
		if q.o.Observer != nil {
			q.o.Observer.Round(n)
		}
	}
}

// cheapest are the copies that come cheapest, of sets of which some board gives every
// strip.
func (q *glueUps) cheapest() composition {
	c := make(composition, len(q.kinds))
	for k, u := range q.kinds {
		if u.lo > 0 {
			_, copies := cheapest(u.lo, u.wanted, q.costs(k))
			c[k] = u.settled(copies)
		}
	}
	return c
}

// costs are what copies of a set are taken to cost, from the shortest on: without a
// guide, as much as their strips are long.
func (q *glueUps) costs(set int) []float64 {
	u := q.kinds[set]
	if q.guide != nil {
		return q.guide.costs()[set][:u.hi-u.lo+1]
	}
	row := &q.asked.Bill[q.sets[set].Rows[0]]
	var list []float64
	for k := u.lo; k <= u.hi; k++ {
		list = append(list, float64(q.asked.Shop.StripLength(row, k)))
	}
	return list
}

// step tries another composition in every second round and searches on for one of the
// best in the others.
func (q *glueUps) step(n int) error {
	if n%2 == 1 {
		if c := q.next(); c != nil {
			return q.try(c, n)
		}
	}
	t := q.alive[0]
	if n%6 == 0 {
		t = q.alive[q.rng.Intn(len(q.alive))]
	}
	if !t.advance() {
		return nil
	}
	t.finish(q)
	return q.rank(n)
}

// next draws a composition that was not tried yet; nil when all neighbours of the best
// ones were.
func (q *glueUps) next() composition {
	for _, t := range q.alive {
		var list []composition
		for _, c := range append(t.made.neighbours(q.kinds), t.made) {
			if !q.tried[c.key()] {
				list = append(list, c)
			}
		}
		if len(list) == 0 {
			continue
		}
		if !q.tried[t.made.key()] {
			return t.made
		}
		return q.draw(list)
	}
	return nil
}

// draw draws one of a list, mostly a cheap one; where slices are missing all the same.
func (q *glueUps) draw(list []composition) composition {
	best := list[q.rng.Intn(len(list))]
	if q.plan != nil && len(q.plan.Missing) > 0 {
		return best
	}
	for range drawnAtOnce - 1 {
		if c := list[q.rng.Intn(len(list))]; q.cost(c) < q.cost(best) {
			best = c
		}
	}
	return best
}

// cost is what a composition is taken to cost.
func (q *glueUps) cost(c composition) float64 {
	var sum float64
	for set, list := range c {
		if len(list) == 0 {
			continue
		}
		costs := q.costs(set)
		for _, k := range list {
			sum += costs[k-q.kinds[set].lo]
		}
	}
	return sum
}

// rank keeps the best few trials and takes over the plan of the best where it is
// better than what there was.
func (q *glueUps) rank(n int) error {
	slices.SortStableFunc(q.alive, func(a, b *trial) int { return a.plan.Score().Compare(b.plan.Score()) })
	q.alive = q.alive[:min(len(q.alive), mostAlive)]
	best := q.alive[0].plan
	if q.plan != nil && best.Score().Compare(q.plan.Score()) >= 0 {
		return nil
	}
	return q.take(best, n)
}

// near reports whether nothing is missing that some board could give and the plan is
// proven to be near enough to the best.
func (q *glueUps) near() bool {
	gap, ok := q.plan.Totals.Gap()
	return ok && gap <= q.o.Within && !slices.ContainsFunc(q.plan.Missing, func(m layout.Missing) bool { return q.givable(m.Part) })
}

// givable reports whether boards that may be cut could hold a part, or a copy of the
// set that has this name.
func (q *glueUps) givable(name string) bool {
	for k, set := range q.sets {
		if set.Name == name {
			return q.kinds[k].lo > 0
		}
	}
	part := q.asked.Part(name)
	return slices.ContainsFunc(q.asked.Stock, func(b layout.Board) bool { return mayGive(q.asked, part, &b) })
}
