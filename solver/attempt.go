package solver

import (
	"cmp"
	"slices"

	"sawbill/layout"
	"sawbill/solver/internal/ceiling"
	"sawbill/solver/internal/column"
)

// attempt is a proof at one choice of prices.
type attempt struct {
	s       *search
	dual    *dual
	prices  []layout.Money
	boards  []int           // one of each that are alike
	most    []ceiling.Value // by index into boards
	held    []ceiling.Value // the same where limits are heeded
	without []ceiling.Value // and of cuttings without a piece of any match word
	told    []bool          // by index into boards: the programme knows the cutting that it is bounded with
	beyond  []float64       // the same: how many times the best cut that the programme knew
	sharp   []bool          // the same: no more work makes it less
	done    bool            // every board was looked at
	next    int             // the board that is looked at next
	lent    bool            // sets of boards know what it proves
	rough   bool            // looks are quicker, and less sharp
	further bool            // limits and words are heeded, which takes further looks
	made    []int           // limits are heeded in plans that make so many
	words   int             // how many match words are heeded
	less    []float64       // by limit: what is taken off a price
}

func (s *search) newAttempt(d *dual) *attempt {
	a := &attempt{s: s, dual: d, boards: d.m.boards(), made: d.m.demand, words: len(d.m.heeds.words)}
	for _, v := range d.prices()[:len(s.p.Bill)] {
		a.prices = append(a.prices, layout.Money(v/float64(column.Cash)))
	}
	n := len(a.boards)
	a.most, a.sharp, a.told, a.beyond = slices.Repeat([]ceiling.Value{unseen}, n), make([]bool, n), make([]bool, n), slices.Repeat([]float64{1}, n)
	a.held, a.without = slices.Clone(a.most), slices.Clone(a.most)
	return a
}

// unseen stands for what is not known of a board that was not looked at.
const unseen ceiling.Value = -1

func (a *attempt) cost(k int) ceiling.Value {
	return ceiling.Value(column.FromMoney(a.s.p.Stock[a.boards[k]].Cost))
}

// enough is the value of the k-th board below which no sharper look proves more:
// a board need not be cut that is not worth its cost.
func (a *attempt) enough(k int) ceiling.Value {
	if a.dual.m.forced {
		return 0
	}
	return a.cost(k)
}

// open reports whether a sharper look at the k-th board may prove more.
func (a *attempt) open(k int) bool {
	return !a.done || !a.sharp[k] && a.most[k] > a.enough(k)
}

// look bounds a few boards. The cuts with which they come near to their bounds are
// offered to the master and remembered.
func (a *attempt) look(batch []int, work int) {
	price := make([]column.Value, len(a.prices))
	for i, m := range a.prices {
		price[i] = column.FromMoney(m)
	}
	batch = a.s.longestFirst(a.boards, batch)
	steps, found, heeded := make([]int, len(batch)), make([]*copied, len(batch)), make([][]look, len(batch))
	a.s.each(len(batch), func(w *worker, i int) {
		k := batch[i]
		if w.stop() {
			return
		}
		b := a.boards[k]
		most, sharp := w.high.Most(a.ready(b), exactly(price), a.enough(k), work, w.stop)
		if !a.done || most <= a.most[k] {
			a.most[k], a.sharp[k] = most, sharp
		}
		if !a.done {
			a.held[k], a.without[k] = most, most
		}
		a.held[k], a.without[k] = min(a.held[k], most), min(a.without[k], most)
		steps[i] = w.high.Work()
		w.looks += steps[i]
		if most <= a.enough(k) || w.stop() {
			return
		}
		found[i] = w.copied(a.s.quick.board(b), price)
		if a.further && slices.Equal(a.made, a.dual.m.demand) {
			heeded[i] = a.heed(w, k, price, found[i].pieces(), work)
		}
	})
	for i, n := range steps {
		a.s.lookSteps[a.boards[batch[i]]] = n
	}
	for i, f := range found {
		if f != nil {
			a.offer(batch[i], f, price)
		}
		for _, l := range heeded[i] {
			if l.found != nil {
				a.tell(batch[i], l)
			}
		}
	}
}

// ready is a board ready to be looked at.
func (a *attempt) ready(board int) *ceiling.Board {
	if a.rough {
		return ceiling.Rough(a.s.p, &a.s.p.Stock[board])
	}
	return ceiling.New(a.s.p, &a.s.p.Stock[board])
}

// longestFirst puts the boards first that took the most steps when they were last looked at,
// and before that those that taper: then the workers end at about the same time.
func (s *search) longestFirst(boards, batch []int) []int {
	steps := func(k int) int {
		b := boards[k]
		if n := s.lookSteps[b]; n > 0 {
			return n
		}
		wood := &s.p.Stock[b]
		if wood.Width != wood.TipWidth {
			return firstLook
		}
		return 1
	}
	batch = slices.Clone(batch)
	slices.SortStableFunc(batch, func(i, j int) int { return cmp.Compare(steps(j), steps(i)) })
	return batch
}

// copied is a cutting with which a bound was found: the pieces that the relaxation makes,
// and a cut as near to it as can be.
type copied struct {
	sketch *layout.Node
	counts []int
	cut    column.Cut
}

// copied is the cutting with which the worker has just bounded a board; nil where there is
// none.
func (w *worker) copied(board *column.Board, price []column.Value) *copied {
	sketch, whole := w.high.Sketch()
	if sketch == nil {
		return nil
	}
	c := &copied{sketch: sketch, cut: board.FromSketch(sketch, price)}
	lots := slices.Repeat([]int{1 << 20}, len(price))
	if other := w.bench.Priced(board.Along(sketch), price, lots).Cut; other.Gain() > c.cut.Gain() {
		c.cut = other
	}
	if whole {
		c.counts = board.CountParts(sketch)
	}
	return c
}

// pieces are those that the relaxation makes; nil where that is not known.
func (c *copied) pieces() []int {
	if c == nil {
		return nil
	}
	return c.counts
}

// offer gives the master what the k-th board is bounded with, and remembers what of the
// cut is wanted.
func (a *attempt) offer(k int, f *copied, price []column.Value) {
	b := a.boards[k]
	keeps := a.dual.m.alike(a.dual.m.of[b])
	known := max(a.dual.m.mostKnown(b, price), float64(f.cut.Gain()))
	if !keeps && a.dual.worth != nil { // the programme cannot take it in
		known = a.dual.worth[b] / a.dual.factor(b)
	}
	a.beyond[k] = float64(a.most[k]) / max(1, known)
	a.told[k] = a.tell(k, look{price, a.most[k], a.sharp[k], f})
	a.s.pool.sketch(b, f.sketch)
}

// How far the prices of a pass lie from those of the master towards the best so far: further
// the more the master promises beyond what these prove, as a share of that, for then it knows
// least of what the boards are worth at its own.
const (
	centerPull    = 0.3
	pullByPromise = 4
	mostPull      = 0.7
)

// pullFor is how far that is where so much is promised.
func pullFor(promised, proven float64) float64 {
	return min(mostPull, centerPull+pullByPromise*max(0, promised-proven)/max(1, proven))
}

// sameValue is by how much of it the value of the programme falls at least when a pass
// taught it anything.
const sameValue = 1e-6

// reprice is an attempt at prices that fit what the attempt showed: between those of the
// programme, where every board counts for as much more as it is not known how it could be
// worth, and those of the best attempt, if there is one.
func (a *attempt) reprice(d *dual, best *attempt) *attempt {
	former := d.value
	if d.m.heedsLess() || d.scale != nil {
		former = 0 // with more to heed, or columns that count for less, the value rises
	}
	if factors, scaled := a.factors(); scaled || d.scale != nil || d.m.heedsLess() {
		d = d.rescaled(factors, scaled)
	}
	d.ended = false
	d.run(d.count+1, noLimit)
	next := a.s.newAttempt(d)
	own, ok := d.m.solve()
	if !ok {
		return next
	}
	pull := 0.0 // between the same prices nothing new would be found
	if best != nil && (former == 0 || own.value <= former*(1-sameValue)) {
		pull = pullFor(own.value, float64(column.FromMoney(best.bound(a.made).bound)))
	}
	if d.value = own.value; !d.m.keepsAll() { // its own prices jump about
		return next
	}
	for i := range next.prices {
		v := own.parts[i]
		if pull > 0 {
			v += pull * (float64(column.FromMoney(best.prices[i])) - v)
		}
		next.prices[i] = layout.Money(v / float64(column.Cash))
	}
	for n := range d.m.heeds.limits {
		v := max(0, -own.heeded[len(d.m.heeds.words)+n])
		if pull > 0 && n < len(best.less) {
			v += pull * (best.less[n] - v)
		}
		next.less = append(next.less, v)
	}
	return next
}

// factors is by how much each board is worth more than the cuts that the programme knows
// of it, and scaled whether any is: those of which no look told everything. Of boards that
// were not looked at the mean of the others stands for it.
func (a *attempt) factors() (f []float64, scaled bool) {
	f = slices.Repeat([]float64{1}, len(a.s.p.Stock))
	sum, n := 0.0, 0.0
	for k := range a.boards {
		if a.most[k] != unseen && a.most[k] > a.enough(k) {
			sum, n = sum+a.beyond[k], n+1
		}
	}
	for k, b := range a.boards {
		own := 1.0
		switch {
		case a.most[k] == unseen:
			own = sum / max(n, 1)
		case !a.told[k] && a.most[k] > a.enough(k):
			own = a.beyond[k]
		}
		if own = max(1, own); own > 1 {
			scaled = true
			a.dual.m.eachTwin(b, func(twin int) { f[twin] = own })
		}
	}
	return f, scaled
}

// loose is how much more the attempt might prove if its looks were sharp.
func (a *attempt) loose() float64 {
	sum := 0.0
	for k := range a.boards {
		if a.open(k) {
			sum += float64(a.most[k]) * (1 - 1/max(1, a.beyond[k]))
		}
	}
	return sum
}

// leastScale is the lowest prices that are tried, in thousandths of those settled
// on.
const leastScale = 700

// proven is what an attempt proves.
type proven struct {
	bound  layout.Money   // no plan costs less
	priced layout.Money   // the same without regard to limits and words: what prices alone prove
	prices []layout.Money // by part
	blur   layout.Money   // by so much, whoever proves that again may be the less sharp on boards that taper
}

// bound is what is proven at the best scale of the prices. No prices at all prove that no plan
// costs less than nothing.
func (a *attempt) bound(made []int) proven {
	best := a.boundAt(0, made)
	for t := int64(1000); t >= leastScale; t-- {
		best.take(a.boundAt(t, made))
	}
	return best
}

// take takes over what else is proven, where that is more.
func (p *proven) take(q proven) {
	bound := max(p.bound, q.bound)
	if q.priced > p.priced {
		*p = q
	}
	p.bound = bound
}

// rounding is kept back for every board, for whoever proves the bound again may
// round the worth of its offcuts up a little further.
const rounding = ceiling.Value(column.Cash)

// tapersBlur is the share of what a tapered board can be worth that is kept back for it, one
// in so many, for there the second proof takes offcuts by bands of heights: on small boards
// that taper a great deal it has found up to a thousandth more than the first.
const tapersBlur = 400

// boundAt is what some thousandths of the prices prove.
func (a *attempt) boundAt(t int64, made []int) proven {
	prices := make([]layout.Money, len(a.prices))
	var blur ceiling.Value
	for i, p := range a.prices {
		prices[i] = p * layout.Money(t) / 1000
	}
	left := a.s.worthMade(prices, made)
	bound := left
	var gains []ceiling.Value
	for k, b := range a.boards {
		scaled := func(most ceiling.Value) ceiling.Value {
			return (ceiling.Value(t)*most + ceiling.Value(1000-t)*a.offcuts(k) + 999) / 1000
		}
		most := scaled(a.most[k])
		if over := most - a.cost(k); over > 0 || a.dual.m.forced {
			heldOver, freeOver := over, over
			if !a.dual.m.forced && slices.Equal(made, a.made) {
				heldOver, freeOver = max(0, scaled(a.held[k])-a.cost(k)), max(0, scaled(a.without[k])-a.cost(k))
			}
			a.dual.m.eachTwin(b, func(int) {
				left -= over + rounding
				bound -= freeOver + rounding
				if heldOver > freeOver {
					gains = append(gains, heldOver-freeOver)
				}
				if wood := &a.s.p.Stock[b]; wood.Width != wood.TipWidth {
					blur += most / tapersBlur
				}
			})
		}
	}
	bound -= largest(a.words, gains)
	return proven{money(bound), money(left), prices, money(blur)}
}

// money is a value that proves something, rounded down, and 0 where it proves nothing.
func money(v ceiling.Value) layout.Money {
	return layout.Money(max(0, v) / ceiling.Value(column.Cash))
}

// boundOf is what the prices prove of plans that cut these boards and no others.
func (a *attempt) boundOf(boards, made []int) layout.Money {
	left := a.s.worthMade(a.prices, made)
	for k, b := range a.boards {
		a.dual.m.eachTwin(b, func(twin int) {
			if slices.Contains(boards, twin) {
				left -= a.most[k] - a.cost(k) + rounding
			}
		})
	}
	return money(left)
}

// boundWithin is what the prices prove of plans that cut no others than these boards.
func (a *attempt) boundWithin(boards, made []int) layout.Money {
	left := a.s.worthMade(a.prices, made)
	for k, b := range a.boards {
		over := a.most[k] - a.cost(k)
		if over <= 0 {
			continue
		}
		a.dual.m.eachTwin(b, func(twin int) {
			if slices.Contains(boards, twin) {
				left -= over + rounding
			}
		})
	}
	return money(left)
}

// offcuts is what a board is worth at most when no part has a price.
func (a *attempt) offcuts(k int) ceiling.Value {
	credit := int64(a.s.p.Shop.OffcutCredit)
	whole := int64(layout.CreditUnity)
	cost := int64(a.cost(k))
	return ceiling.Value(cost/whole*credit+(cost%whole*credit+whole-1)/whole) + 1
}
