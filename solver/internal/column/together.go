package column

import "math"

// Together seeks the best columns of several boards, at most one each, that make
// no more than some limits together: those whose values less the costs of the
// boards that are cut come to the most. Where a price is so high that no offcuts
// make up for a piece, that is the plan that makes the most and then costs the
// least.
//
// It is the search of BestLimited carried on from board to board: labels run
// through one more level, whose steps are the columns of a board. What completes
// them is bounded by relaxed prices u (Geoffrion 1974),
//
//	value <= sum of (price - u)*limit + sum over boards of max(0, best(board, u) - cost),
//
// so that of every board only those columns are gone through that are worth nearly
// as much at the relaxed prices as its best one.
type Together struct {
	boards  []*limited // boards that are alike share one
	costs   []Value
	price   []Value
	limits  []int
	relaxed []Value
	offset  Value // sum of (price - relaxed)*limit
	bests   []Value
	set     bool // the boards are ready for labels at the relaxed prices
	*effort
}

// NewTogether makes a search ready: boards, which may be the same ones several
// times, what each costs, the prices, the relaxed prices to begin with, and the
// limits, by row of the bill. It does at most most units of work, and stops
// where stop says so, which may be nil.
func NewTogether(boards []*Board, costs []Value, price, relaxed []Value, limits []int, most int, stop func() bool) *Together {
	t := &Together{costs: costs, price: price, limits: limits, effort: &effort{most: most, stop: stop}}
	known := map[*Board]*limited{}
	for _, w := range boards {
		if known[w] == nil {
			known[w] = newLimited(new(Bench), w, price, limits, 0)
			known[w].effort = t.effort
		}
		t.boards = append(t.boards, known[w])
	}
	t.setRelaxed(relaxed)
	return t
}

// Exact reports whether the columns that are gone through are all that can matter:
// every position is tried, and no board restricts what is sought.
func (t *Together) Exact() bool {
	for _, s := range t.boards {
		if !s.w.exact() || s.w.restricts() {
			return false
		}
	}
	return true
}

// setRelaxed takes prices between 1, or 0 where nothing is wanted, and those
// asked, and prices all boards at them without limits. It returns what the boards
// that are worth their cost then make.
func (t *Together) setRelaxed(relaxed []Value) (counts []int) {
	t.set = false
	t.relaxed, t.offset = make([]Value, len(relaxed)), 0
	for i, v := range relaxed {
		if t.limits[i] > 0 && t.price[i] > 0 {
			t.relaxed[i] = max(1, min(v, t.price[i]))
			t.offset += (t.price[i] - t.relaxed[i]) * Value(t.limits[i])
		}
	}
	counts = make([]int, len(relaxed))
	t.bests = t.bests[:0]
	priced := map[*limited][]int{}
	worth := map[*limited]Value{}
	for b, s := range t.boards {
		if _, ok := priced[s]; !ok {
			c := s.b.Best(s.w, t.relaxed)
			t.work += s.w.steps() / stepsPerWork
			priced[s], worth[s] = make([]int, len(relaxed)), c.Value
			if c.Root != nil {
				priced[s] = s.w.CountParts(c.Root)
			}
		}
		t.bests = append(t.bests, worth[s]-t.costs[b])
		if t.bests[b] > 0 {
			for i, n := range priced[s] {
				counts[i] += n
			}
		}
	}
	return counts
}

// Bound is what no columns come to more than, as the relaxed prices prove.
func (t *Together) Bound() Value {
	bound := t.offset
	for _, v := range t.bests {
		bound += max(0, v)
	}
	return bound
}

// Relax moves the relaxed prices so that the bound falls towards a value known to
// be possible, by subgradient steps (Held, Wolfe & Crowder 1974).
func (t *Together) Relax(rounds int, known Value) {
	at := make([]float64, len(t.relaxed))
	for i, v := range t.relaxed {
		at[i] = float64(v)
	}
	best, least := t.relaxed, t.Bound()
	counts := t.setRelaxed(t.relaxed)
	pace := 1.0
	for range rounds {
		if t.spent() || least <= known || !t.move(at, counts, pace*float64(t.Bound()-known)) {
			break
		}
		counts = t.setRelaxed(rounded(at))
		if b := t.Bound(); b < least {
			best, least = t.relaxed, b
		} else {
			pace *= 0.8
		}
	}
	t.setRelaxed(best)
}

// move takes a step that would lower the bound by gap were it straight: what is
// made too often gets a lower price. It reports false when there is nowhere to go.
func (t *Together) move(at []float64, counts []int, gap float64) bool {
	sum := 0.0
	slope := make([]float64, len(at))
	for i, n := range counts {
		slope[i] = float64(t.limits[i] - n)
		if t.price[i] <= 0 || t.limits[i] == 0 || slope[i] > 0 && t.relaxed[i] >= t.price[i] || slope[i] < 0 && t.relaxed[i] <= 1 {
			slope[i] = 0
		}
		sum += slope[i] * slope[i]
	}
	if sum == 0 {
		return false
	}
	for i := range at {
		at[i] = min(max(1, at[i]+slope[i]*gap/sum), float64(t.price[i]))
	}
	return true
}

func rounded(at []float64) []Value {
	v := make([]Value, len(at))
	for i, x := range at {
		v[i] = Value(math.Round(x))
	}
	return v
}

// Search goes through all columns that together come to least or more. It returns
// the best of them by board, nil where one is not cut, and what they come to; none
// where there are none. all is false when the work allowed ended it: there may then
// be better ones.
func (t *Together) Search(least Value) (found []Column, value Value, all bool) {
	if !t.ready() || t.spent() {
		return nil, 0, false
	}
	labels := t.chain().run(t.boards[0], least-t.offset)
	var best *label
	for _, l := range labels {
		if l.value >= least && (best == nil || l.value > best.value) {
			best = l
		}
	}
	if best == nil {
		return nil, 0, !t.spent()
	}
	return t.columns(best), best.value, !t.spent()
}

// stepsPerWork is how many steps of a pricing take as long as one unit of work.
const stepsPerWork = 4

// ready prepares the boards for labels at the relaxed prices, which count
// everything that is wanted. It reports false when that is too many kinds.
func (t *Together) ready() bool {
	if t.set {
		return true
	}
	all := make([]bool, len(t.price))
	for i := range all {
		all[i] = t.relaxed[i] > 0
	}
	l, ok := newLedger(all, t.limits)
	if !ok {
		return false
	}
	done := map[*limited]bool{}
	for _, s := range t.boards {
		if !done[s] {
			s.ready(t.relaxed, l)
			t.work += 2 * s.w.steps() / stepsPerWork
			done[s] = true
		}
	}
	t.set = true
	return true
}

// ready prepares one board for labels at relaxed prices.
func (s *limited) ready(relaxed []Value, l *ledger) {
	s.relaxed, s.ledger = relaxed, l
	s.cells, s.strips = map[cellKey]frontFrom{}, map[stripKey]frontFrom{}
	s.parts = make([]*source, len(s.w.pieces))
	s.b.Best(s.w, relaxed)
	s.b.setPrices(relaxed)
	s.filled = -1
	s.setBlanks()
}

// chain offers the columns of one board after the other.
func (t *Together) chain() *chain {
	c := newChain(levelJob, 1, 0, len(t.boards))
	type shared struct {
		s    *limited
		cost Value
	}
	sources := map[shared]*source{}
	for b, s := range t.boards {
		c.open(b)
		key := shared{s, t.costs[b]}
		if sources[key] == nil {
			sources[key] = newSource(func(least Value) []*label { return s.columns(least, key.cost) })
		}
		c.step(arc{strip: int32(b), bound: t.bests[b], source: sources[key]}, b, b+1)
	}
	return c
}

// columns finds the labels of a whole board that have rest least or more once its
// cost is taken off.
func (s *limited) columns(least, cost Value) []*label {
	var all []*label
	for _, l := range s.holding(s.boardChain().run(s, least+cost)) {
		own := *l
		own.value, own.rest = l.value-cost, l.rest-cost
		all = append(all, &own)
	}
	return all
}

// columns makes the cut trees of a label of the whole job.
func (t *Together) columns(l *label) []Column {
	columns := make([]Column, len(t.boards))
	for _, step := range l.steps() {
		b := step.arc.strip
		columns[b] = Column{Value: step.kid.value + t.costs[b], Root: t.boards[b].layBoard(step.kid)}
	}
	return columns
}
