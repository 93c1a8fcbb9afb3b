package solver

import (
	"slices"

	"sawbill/layout"
	"sawbill/solver/internal/column"
	"sawbill/solver/internal/lp"
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
	by     *pricer   // of the boards
	best   float64   // the largest L
	center []float64 // the prices of that
	worth  []float64 // of boards at the center
	held   float64   // the largest L where match words are heeded
	scale  []float64 // by board: what its columns count for; nil: 1
	count  int       // rounds made
	steps  int       // with which boards were priced
	ended  bool      // nothing more was found
	value  float64   // of the programme, when it was last solved for a proof
}

const (
	dualPull  = 0.7    // how far towards the center boards are priced
	closeDual = 0.0005 // of the value: the master and L are near enough
)

func (s *search) newDual(m *master) *dual { return &dual{s: s, m: m, by: s.pricing()} }

// settle finds the values that the search goes on with, and which boards appeal
// at them.
func (s *search) settle(from *state) {
	d := s.newDual(s.newMaster(s.usable, wanted(s.p), false))
	for b, c := range from.cuts {
		if c != nil {
			d.m.offerRaw(rawColumn{board: b, worth: float64(column.FromMoney(c.Worth)), counts: c.Counts}, 1)
		}
	}
	d.run(d.rounds(), firstEffort)
	s.settleOn(d)
}

// settleAt goes on with values that are known already.
func (s *search) settleAt(values []float64) {
	d := s.newDual(s.newMaster(s.usable, wanted(s.p), false))
	d.price(values, nil)
	s.settleOn(d)
}

// settleLike goes on from the columns and prices of the same job with parts allowed on
// fewer boards.
func (s *search) settleLike(like *dual) {
	d := s.newDual(s.newMaster(s.usable, wanted(s.p), false))
	for _, c := range like.m.raw {
		known := map[int]bool{} // boards alike may be so no longer
		like.m.eachTwin(c.board, func(b int) {
			if c.board = b; s.allows(&c) && !known[d.m.of[b]] {
				known[d.m.of[b]] = true
				d.m.offerRaw(c, 1)
			}
		})
	}
	if like.center != nil {
		d.price(like.center, nil)
	}
	d.run(likeRounds, firstEffort)
	s.settleOn(d)
}

// likeRounds is how many rounds are made from the columns of the same job.
const likeRounds = 5

// allows reports whether the board of a column may give its pieces.
func (s *search) allows(c *rawColumn) bool {
	some := false
	for i, n := range c.counts {
		if n > 0 && !s.gives[c.board][i] {
			return false
		}
		some = some || n > 0
	}
	return some
}

func (s *search) settleOn(d *dual) {
	s.master = d
	if d.center == nil {
		return
	}
	for b, worth := range d.worth {
		s.appeal[b] = worth / max(s.cost(b), 1)
	}
	for i, v := range d.center {
		s.values[i] = max(v, leastShare*s.start[i])
	}
	s.anchor = slices.Clone(s.values)
}

// copied is the same programme for another demand, to which cuts may be added without
// adding them to d.
func (d *dual) copied(demand []int) *dual { return d.remade(demand, nil) }

// rescaled is the same programme with every column counted for more by a factor for its
// board, unless there is nothing to be scaled.
func (d *dual) rescaled(factors []float64, scaled bool) *dual {
	if !scaled {
		factors = nil
	}
	return d.remade(d.m.demand, factors)
}

// remade is the programme anew. Columns that were not kept as they were found are sought
// anew.
func (d *dual) remade(demand []int, factors []float64) *dual {
	n := d.s.newDual(d.s.newMaster(d.m.usable, demand, d.m.forced))
	n.scale = factors
	for _, c := range d.m.raw {
		n.m.offerRaw(c, n.factor(c.board))
	}
	n.center, n.worth, n.count = d.center, d.worth, d.count
	if !n.m.keepsAll() {
		n.count = 0
		n.run(n.rounds(), firstEffort)
	}
	return n
}

func (d *dual) factor(board int) float64 {
	if d.scale == nil {
		return 1
	}
	return d.scale[board]
}

// run seeks until nothing more is found, so many rounds were made in all, or so much
// was done for a board.
func (d *dual) run(most, effort int) {
	for !d.ended && d.count < most && !d.tired(effort) && !d.s.workers[0].stop() {
		d.count++
		before := d.s.steps()
		d.ended = !d.round()
		d.steps += d.s.steps() - before
	}
}

// tired reports whether so many steps were made for each kind of board. A few rounds
// are made at any rate.
func (d *dual) tired(effort int) bool {
	return d.count >= fewDualRounds && d.steps > effort*len(d.m.boards())
}

// How many steps are made for a board before the search begins, and where the prices of a
// few boards alone are sought; warped boards take a hundred times as many for a pricing as
// simple ones.
const (
	fewDualRounds = 6
	firstEffort   = 15_000_000
	fullEffort    = 30_000_000
	noLimit       = 1 << 40 // times the boards of a job that is no overflow
)

// cost is what a board costs, as a value.
func (s *search) cost(board int) float64 {
	return float64(column.FromMoney(s.p.Stock[board].Cost))
}

// leastShare is how much of its first value a part is worth to the search at
// least, for a part worth nothing would be left out.
const leastShare = 0.1

// wanted is what the bill asks for, by row.
func wanted(p *layout.Problem) []int {
	n := make([]int, len(p.Bill))
	for i := range p.Bill {
		n[i] = p.Bill[i].Quantity
	}
	return n
}

// made is what a plan makes, by row of the bill.
func made(p *layout.Problem, st *state) []int {
	made := make([]int, len(p.Bill))
	for i := range p.Bill {
		made[i] = p.Bill[i].Quantity - st.missing[i]
	}
	return made
}

// rounds is how many rounds are made before the search begins: fewer when there
// are many boards, and more when there are few to be priced, because most are
// alike.
func (d *dual) rounds() int {
	n := max(1, len(d.m.boards()))
	return max(12, min(firstDualRounds, 8000/n), firstPricings/n)
}

// most is how many rounds are made where the prices of a few boards alone are sought.
func (d *dual) most() int { return max(mostDualRounds, 3*firstPricings/max(1, len(d.m.boards()))) }

const (
	firstDualRounds = 15
	mostDualRounds  = 80
	firstPricings   = 600 // of boards, before the search begins
)

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
			return own.value-d.held > closeDual*own.value
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
// attractive at its own, or everything when they are nil. It reports how many
// columns those were.
func (d *dual) price(target []float64, own *duals) (added int, ok bool) {
	s := d.s
	price := make([]column.Value, len(s.p.Bill))
	lower := 0.0
	for i, v := range target {
		if i < len(price) {
			price[i] = column.Value(v)
		}
		lower += v * float64(d.m.demand[i])
	}
	boards, worths := d.m.boards(), make([]float64, len(s.p.Stock))
	found, added, ok := d.priceAt(boards, price, own)
	if !ok {
		return 0, false
	}
	for k, b := range boards {
		worth := d.factor(b) * float64(found[k].Value)
		d.m.eachTwin(b, func(twin int) { worths[twin] = worth })
	}
	gains, more, ok := d.priceWithout(boards, worths, price, own)
	if !ok {
		return 0, false
	}
	added += more
	for _, b := range boards {
		if over := worths[b] - s.cost(b); over > 0 || d.m.forced {
			lower -= over * d.m.share(d.m.of[b])
		}
	}
	if d.held = max(d.held, lower+gains); d.center == nil {
		d.held = lower + gains
	}
	if lower > d.best || d.center == nil {
		d.best, d.center, d.worth = lower, target, worths
	}
	return added, true
}

// priceWithout prices boards again without pieces of words, where words are heeded. As many
// boards as there are words may give any; by so much less than worths are all others worth
// above their cost in all.
func (d *dual) priceWithout(boards []int, worths []float64, price []column.Value, own *duals) (gains float64, added int, ok bool) {
	if len(d.m.heeds.words) == 0 {
		return 0, 0, true
	}
	free, added, ok := d.priceAt(boards, d.m.without(price), own)
	if !ok {
		return 0, 0, false
	}
	var each []float64
	for k, b := range boards {
		cost := d.s.cost(b)
		gain := max(0, worths[b]-cost) - max(0, d.factor(b)*float64(free[k].Value)-cost)
		for range int(d.m.share(d.m.of[b])) {
			each = append(each, gain)
		}
	}
	slices.Sort(each)
	for _, gain := range each[:max(0, len(each)-len(d.m.heeds.words))] {
		gains += gain
	}
	return gains, added, true
}

// priceAt prices boards at some prices and offers to the master what is attractive at its
// own, or everything when they are nil.
func (d *dual) priceAt(boards []int, price []column.Value, own *duals) (found []column.Priced, added int, ok bool) {
	s := d.s
	if found = s.priceAll(d.by, boards, price, d.m.demand[:len(price)]); found == nil {
		return nil, 0, false
	}
	sums := make([]sum, len(d.m.clusters))
	for k, b := range boards {
		c, scale := d.m.of[b], d.factor(b)
		if scale*float64(found[k].Value) > s.cost(b) || d.m.forced {
			sums[c].add(s.cost(b), scale, price, &found[k])
			sums[c].board = b
		}
		if cut := &found[k].Cut; cut.Root != nil {
			s.pool.add(b, cut)
		}
	}
	for c := range sums {
		if sums[c].counts != nil && (own == nil || sums[c].reduced(own, d.m.heeded(c, sums[c].counts)) < own.clusters[c]-minGain) {
			d.take(c, &sums[c])
			added++
		}
	}
	return found, added, true
}

// minGain is the least gain for which a column is added, as a value.
const minGain = 10

// sum is a column of a cluster.
type sum struct {
	cost   float64
	counts []float64
	board  int // the last that is part of it
	raw    rawColumn
}

// add adds what was found for a board at some prices.
func (s *sum) add(cost, scale float64, price []column.Value, found *column.Priced) {
	if s.counts == nil {
		s.counts = make([]float64, len(price))
	}
	worth := float64(found.Value)
	for i, n := range found.Counts {
		worth -= float64(n) * float64(price[i])
		s.counts[i] += scale * float64(n)
	}
	s.cost += cost - scale*worth
	s.raw = rawColumn{worth: worth, counts: found.Counts}
}

// reduced is the cost of the column less what its pieces are worth at the
// master's prices.
func (s *sum) reduced(own *duals, heeded []lp.Entry) float64 {
	cost := s.cost
	for _, e := range heeded {
		cost -= e.Coef * own.heeded[e.Row-len(own.clusters)-len(own.parts)]
	}
	for i, n := range s.counts {
		cost -= n * own.parts[i]
	}
	return cost
}

// take gives a column to the master.
func (d *dual) take(c int, s *sum) {
	at := d.m.offer(c, s.cost, s.counts)
	if d.m.alike(c) {
		s.raw.board, s.raw.at = s.board, at
		d.m.raw = append(d.m.raw, s.raw)
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
