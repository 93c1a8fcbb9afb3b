package solver

import (
	"slices"

	"sawbill/layout"
	"sawbill/solver/internal/column"
)

// dual seeks part values at which no board is worth more than it costs and yet
// everything is wanted: the prices p that make
//
//	L(p) = sum of wanted * p - sum over boards of max(0, best(board, p) - cost)
//
// large, by column generation. The boards are priced between the best prices so
// far and the dual values of the master, for those jump about at first
// (Wentges 1997); when nothing new is found there, nearer to the dual values.
// The quick routine prices, so what comes out steers the search and proves
// nothing.
type dual struct {
	s      *search
	m      *master
	best   float64   // the largest L
	center []float64 // the prices of it
	appeal []float64 // of boards at the center: what they are worth over their cost
}

const (
	dualPull  = 0.7    // how far towards the center boards are priced
	closeDual = 0.0005 // of the value: the master and L are near enough
)

// settle finds the values that the search goes on with, and which boards appeal
// at them.
func (s *search) settle(from *state) {
	d := &dual{s: s, m: s.newMaster(made(s.p, from))}
	for b, c := range from.cuts {
		if c != nil {
			d.m.offerCut(b, c)
		}
	}
	for range d.rounds() {
		if s.workers[0].stop() || !d.round() {
			break
		}
	}
	s.master = d
	if d.center == nil {
		return
	}
	s.appeal = d.appeal
	for i, v := range d.center {
		s.values[i] = max(v, leastShare*s.start[i])
	}
	s.anchor = slices.Clone(s.values)
}

// leastShare is how much of its first value a part is worth to the search at
// least, for a part worth nothing would be left out.
const leastShare = 0.1

// made is what a plan makes, by row of the bill.
func made(p *layout.Problem, st *state) []int {
	made := make([]int, len(p.Bill))
	for i := range p.Bill {
		made[i] = p.Bill[i].Quantity - st.missing[i]
	}
	return made
}

// rounds is how many rounds are spent at most, fewer when there are many boards.
func (d *dual) rounds() int { return max(12, min(80, 8000/max(1, len(d.s.usable)))) }

// round prices all boards once; it reports false when there is nothing more to
// find.
func (d *dual) round() bool {
	own, ok := d.m.solve()
	if !ok {
		return false
	}
	for pull := dualPull; ; pull = max(0, pull-dualPull/2) {
		added, ok := d.price(d.between(own.parts, pull), own)
		switch {
		case !ok:
			return false
		case added > 0:
			return own.value-d.best > closeDual*own.value
		case pull == 0:
			return false
		}
	}
}

// between is prices that lie so far from the master's towards the center.
func (d *dual) between(own []float64, pull float64) []float64 {
	if d.center == nil {
		return own
	}
	target := make([]float64, len(own))
	for i := range target {
		target[i] = pull*d.center[i] + (1-pull)*own[i]
	}
	return target
}

// price prices all boards at some prices and offers to the master what is
// attractive at its own. It reports how many columns those were.
func (d *dual) price(target []float64, own *duals) (added int, ok bool) {
	s := d.s
	price := make([]column.Value, len(target))
	lower := 0.0
	for i, v := range target {
		price[i] = column.Value(v)
		lower += v * float64(d.m.demand[i])
	}
	boards := d.m.boards()
	found := s.priceAll(boards, price, d.m.demand)
	if found == nil {
		return 0, false
	}
	appeal := make([]float64, len(s.p.Stock))
	sums := make([]sum, len(d.m.clusters))
	for k, b := range boards {
		c := d.m.of[b]
		cost := float64(column.FromMoney(s.p.Stock[b].Cost))
		worth := float64(found[k].Value)
		d.m.eachTwin(b, func(twin int) { appeal[twin] = worth / max(cost, 1) })
		if worth > cost {
			lower -= (worth - cost) * d.m.share(c)
			sums[c].add(cost, price, &found[k])
		}
		if cut := &found[k].Cut; cut.Root != nil {
			s.pool.add(b, cut)
		}
	}
	for c := range sums {
		if sums[c].counts != nil && sums[c].cost-valueOf(sums[c].counts, own.parts) < own.clusters[c]-minGain {
			d.m.offer(c, sums[c].cost, sums[c].counts)
			added++
		}
	}
	if lower > d.best || d.center == nil {
		d.best, d.center, d.appeal = lower, target, appeal
	}
	return added, true
}

// minGain is the least gain for which a column is added, as a value.
const minGain = 10

// sum is a column of a cluster.
type sum struct {
	cost   float64
	counts []int
}

// add adds what was found for a board at some prices.
func (s *sum) add(cost float64, price []column.Value, found *column.Priced) {
	if s.counts == nil {
		s.counts = make([]int, len(price))
	}
	s.cost += cost - float64(found.Value)
	for i, n := range found.Counts {
		s.cost += float64(n) * float64(price[i])
		s.counts[i] += n
	}
}

// prices are those with the largest L, or where there was no time for any those
// that the search began with.
func (d *dual) prices() []float64 {
	if d.center == nil {
		return d.s.start
	}
	return d.center
}
