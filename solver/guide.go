package solver

import (
	"slices"

	"sawbill/layout"
)

// guide knows all strips of a job with glue-ups at once: the linear programme over
// columns and copies says at which prices strips come cheap, and what the prices
// prove.
type guide struct {
	s    *search
	e    *strips
	sets []layout.Set
	// steps is how often the proof was taken further.
	steps int
}

// mostStrips is the most rows of strips of a job for which there is a guide.
const mostStrips = 400

// newGuide is nil for a job with more kinds of strips than can be priced at once.
func newGuide(asked *layout.Problem, sets []layout.Set, o Options, stop func() bool) *guide {
	e, c := newStrips(asked), &copies{}
	for k, set := range sets {
		counts := asked.SliceCounts(set)
		if len(e.p.Bill)+len(counts)*len(set.Rows) > mostStrips {
			return nil
		}
		for _, n := range counts {
			e.add(sets, k, n, 1)
		}
		c.sets = append(c.sets, copySet{lo: asked.Shop.LeastSlices(&asked.Bill[set.Rows[0]])})
	}
	for i := range e.groups {
		set := &c.sets[e.groups[i].set]
		set.groups = append(set.groups, &e.groups[i])
	}
	g := &guide{s: newSearch(e.p, o, stop), e: e, sets: sets}
	g.s.copies = c
	g.s.start = slices.Clone(g.s.start)
	for k := range c.sets {
		g.s.start = append(g.s.start, 1)
		if set := &c.sets[k]; len(set.groups) > 0 {
			g.s.start[len(e.p.Bill)+k] = costs(set, g.s.start)[0] / float64(set.lo)
		}
	}
	return g
}

// settle seeks prices for what a plan is to make.
func (g *guide) settle(goal []int) {
	g.s.copies.goal = goal
	g.s.master = g.s.newDual(g.s.newMaster(g.s.usable, goal, false))
	g.s.master.run(g.s.master.rounds(), firstEffort)
	g.s.proof, g.s.sets = g.s.newProof(), g.s.newSets()
}

// follow makes a plan the one that the proof is about.
func (g *guide) follow(plan *layout.Plan) {
	g.s.copies.goal, g.s.copies.cost = g.without(plan.Missing), plan.Totals.Cost
}

// step takes the proof further: by the prices or, every other time once these have
// proven something, by sets of boards.
func (g *guide) step() {
	g.steps++
	if _, proven := g.s.proof.bound(g.s.copies.goal); proven && g.steps%2 == 0 && g.s.sets.step() {
		return
	}
	g.s.proof.step()
}

// all is what is made when nothing is missing.
func (g *guide) all() []int { return g.without(nil) }

// without is what is made when so much is missing.
func (g *guide) without(missing []layout.Missing) []int {
	short := map[string]int{}
	for _, m := range missing {
		short[m.Part] += m.Quantity
	}
	goal := make([]int, len(g.e.p.Bill))
	for i := range g.e.p.Bill {
		if part := &g.e.p.Bill[i]; part.SliceThickness == 0 {
			goal[i] = part.Quantity - short[part.Name]
		}
	}
	for _, set := range g.sets {
		goal = append(goal, set.Slices-short[set.Name])
	}
	return goal
}

// costs are what the copies of each set cost at the prices settled on, from the
// shortest on.
func (g *guide) costs() [][]float64 {
	var list [][]float64
	for k := range g.s.copies.sets {
		list = append(list, costs(&g.s.copies.sets[k], g.s.master.prices()))
	}
	return list
}

// state writes into a plan's totals what is proven of it.
func (g *guide) state(t *layout.Totals) {
	priced, ok := g.s.proof.bound(g.s.copies.goal)
	bound := priced.bound
	if !ok || bound > t.Cost {
		return
	}
	held := heldBack(priced, t.Cost)
	t.PriceBound = &held
	t.Prices, t.StripPrices = map[string]layout.Money{}, map[string]map[int]layout.Money{}
	for i, m := range priced.prices {
		name := g.e.p.Bill[i].Name
		o, strip := g.e.from[name]
		if !strip {
			t.Prices[name] = m
			continue
		}
		if t.StripPrices[o.row] == nil {
			t.StripPrices[o.row] = map[int]layout.Money{}
		}
		t.StripPrices[o.row][o.slices] = m
	}
	if more, ok := g.s.sets.bound(); ok && bound < more && more <= t.Cost {
		bound = more
	}
	t.Bound = &bound
	if up := g.s.wholeCosts(bound); up <= t.Cost {
		t.Bound = &up
	}
}

// values are the prices settled on, by row of a composition's bill.
func (g *guide) values(e *strips) []float64 {
	known := map[string]float64{}
	for i, v := range g.s.master.prices()[:len(g.e.p.Bill)] {
		known[g.e.p.Bill[i].Name] = v
	}
	list := make([]float64, len(e.p.Bill))
	for i := range e.p.Bill {
		list[i] = known[e.p.Bill[i].Name]
	}
	return list
}
