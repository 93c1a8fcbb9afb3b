package ceiling

import (
	"cmp"
	"slices"

	"sawbill/layout"
)

// Counted bounds what one board can give when it is counted what it makes: for every tally of
// pieces the most that the offcuts can be worth beside them. It is the relaxation of Most,
// except that no more is made than some limits. A tally matters where its pieces, at prices
// that are given, and its offcuts are worth nearly as much as the best cutting of the board
// without limits, so labels that are worth less are dropped (state space reduced by bounds on
// completions: Morin & Marsten 1976).
//
// As in Most, the board is divided along into cells, and a tally is worked out to the end
// only where somebody asks (Sharpen).
type Counted struct {
	b         Bench
	w         *Board
	n         *counter
	price     []Value
	least     Value // what is worth less does not matter
	unlimited Value // what the board is worth without limits
	slack     Value // by so much less than that may be worth what matters

	rows    []*countedRow
	strips  []strip // by position behind them
	cells   map[cellKey][]cellStack
	free    map[chainKey]*laid
	chains  map[chainKey]*countedChain
	laid    [][]*countedChain // the same by row, in order along
	kept    int               // values in chains
	keeps   int               // as many at most
	helpers []*Bench
	each    func(n int, do func(k int)) // does things side by side

	cuts   *cuts      // the cells
	fronts [][]*front // of blanks, by cell and cell in which the next piece starts; nil: none matters
	before []Value    // by cell, the most that is worth what lies before it
	beyond []Value    // by cell, the most that is worth what lies in it and beyond
	states [][]state  // by cell in which the next piece starts
	known  []map[tally]int
	found  []Way
}

// state is pieces that the board may hold up to some cell.
type state struct {
	option
	cell, state int // the one before
	kind        stepKind
}

// Way is what a board may hold: pieces that are so much worth at the prices at hand with its
// offcuts, and these alone.
type Way struct {
	tally      tally
	state      int
	All, Worth Value
}

// turnSteps is the work on a board in one go.
const turnSteps = 20_000_000

// mostSteps is the work with which it is found what a board is worth without limits.
const mostSteps = 64_000_000

// newCounted makes a board ready.
func newCounted(w *Board, n *counter, price []Value, keeps, work int, stop func() bool, each func(n int, do func(k int))) *Counted {
	c := &Counted{each: each, keeps: keeps, w: w, n: n, price: price, cells: map[cellKey][]cellStack{}, free: map[chainKey]*laid{}}
	c.b.most, c.b.stop = work, stop
	// With these very heights, so that whoever makes anything of a cutting more does not make it
	// worth more than that.
	c.unlimited, _ = c.b.Most(w, price, 0, mostSteps, stop)
	c.b.most = work
	if !c.b.stopped() {
		c.setStrips()
	}
	return c
}

// mostCells is the most cells that a board is divided into at first.
const mostCells = 100

// begin begins anew, for what is worth least or more. The cells are so narrow that what lies
// in one matters about as little.
func (c *Counted) begin(least Value) {
	c.least, c.slack, c.found = least, max(0, c.unlimited-least), nil
	c.forget()
	n := c.w.fewestCells()
	if worth := c.w.sound(0, c.w.wood.Length); worth > 0 && c.slack > 0 {
		n = max(n, int(min(mostCells, 2*worth/c.slack)))
	}
	c.cuts, c.fronts = newCutsOf(&c.b, 0, n), nil
	for k := range c.cuts.at {
		c.fronts = append(c.fronts, make([]*front, len(c.cuts.at)+1))
		for m := k + 1; m <= len(c.cuts.at); m++ {
			if s := c.cuts.spanOf(k, m); c.w.gives(s) {
				c.fronts[k][m] = &front{list: []option{{all: c.cuts.most[k][m]}}, open: true}
			}
		}
	}
	c.bound()
	for k := range c.fronts {
		for m, f := range c.fronts[k] {
			if f == nil || c.b.ends() {
				continue
			}
			room := c.room(k, m)
			s := c.cuts.spanOf(k, m)
			if most, _ := c.b.blank(s.a, s.e, s.short, room-1); most < room {
				c.fronts[k][m] = nil
			} else {
				f.list[0].all = min(f.list[0].all, most)
			}
		}
		c.bound()
	}
}

// bound works out what is worth what lies before and beyond every cell at most, and drops the
// blanks that do not matter.
func (c *Counted) bound() {
	n := len(c.cuts.at)
	gain := func(k, m int) Value {
		gain := c.cuts.kept[k][m]
		if f := c.fronts[k][m]; f != nil {
			gain = max(gain, f.most())
		}
		return gain
	}
	c.beyond = make([]Value, n+1)
	for k := n - 1; k >= 0; k-- {
		c.beyond[k] = c.beyond[k+1]
		for m := k + 1; m <= n; m++ {
			c.beyond[k] = max(c.beyond[k], gain(k, m)+c.beyond[m])
		}
		c.beyond[k] += c.cuts.kept[k][k]
	}
	before := make([]Value, n+1)
	c.before = before
	for k := range n {
		at := before[k] + c.cuts.kept[k][k]
		before[k+1] = max(before[k+1], at)
		for m := k + 1; m <= n; m++ {
			if f := c.fronts[k][m]; f != nil && at+f.most()+c.beyond[m] < c.least {
				c.fronts[k][m] = nil
			}
			before[m] = max(before[m], at+gain(k, m))
		}
	}
	c.b.work += n * n
}

// forget gives up the chains.
func (c *Counted) forget() {
	c.chains, c.laid, c.kept = map[chainKey]*countedChain{}, make([][]*countedChain, len(c.rows)), 0
}

// raise is told that only what is worth so much matters.
func (c *Counted) raise(least Value) {
	if least > c.least && c.cuts != nil {
		c.least, c.slack = least, max(0, c.unlimited-least)
		c.bound()
	}
}

// room is what a blank between two cells must be worth to matter.
func (c *Counted) room(k, m int) Value {
	return c.least - c.before[k] - c.cuts.kept[k][k] - c.beyond[m]
}

// find goes along the board and lists what it may hold; nil where that takes another turn, or
// the work is used up.
func (c *Counted) find() []Way {
	if c.found != nil {
		return c.found
	}
	if !c.workOutBlanks() || c.b.ends() {
		return nil
	}
	n := len(c.cuts.at)
	c.states, c.known = make([][]state, n+1), make([]map[tally]int, n+1)
	for m := range c.known {
		c.known[m] = map[tally]int{}
	}
	c.take(0, state{cell: -1})
	for k := range n {
		for i := range c.states[k] {
			within := c.cuts.kept[k][k]
			if worth := whole(within - 1); worth > 0 {
				c.states[k][i].worth += worth
				c.states[k][i].all += worth
			}
			at := c.states[k][i].option
			c.take(k+1, state{at, k, i, wasted})
			for m := k + 1; m <= n; m++ {
				if v := whole(c.cuts.kept[k][m] - 1); v > 0 {
					c.take(m, state{option{at.tally, at.worth + v, at.all + v}, k, i, kept})
				}
				f := c.fronts[k][m]
				if f == nil {
					continue
				}
				for _, o := range f.list {
					if at.all+o.all+c.beyond[m] < c.least {
						break
					}
					if sum, ok := c.n.sum(at.tally, o.tally); ok {
						c.take(m, state{option{sum, at.worth + o.worth, at.all + o.all}, k, i, trued})
					}
				}
				c.b.work += len(f.list) / 4
			}
		}
	}
	c.found = []Way{}
	for i, s := range c.states[n] {
		if s.tally != 0 && s.all >= c.least {
			c.found = append(c.found, Way{s.tally, i, s.all, s.worth})
		}
	}
	slices.SortStableFunc(c.found, func(a, b Way) int { return cmp.Compare(b.All, a.All) })
	return c.found
}

// take takes a state where it matters and is better than what is known.
func (c *Counted) take(m int, s state) {
	if s.all+c.beyond[m] < c.least {
		return
	}
	i, ok := c.known[m][s.tally]
	switch {
	case !ok:
		c.known[m][s.tally] = len(c.states[m])
		c.states[m] = append(c.states[m], s)
	case s.worth > c.states[m][i].worth:
		c.states[m][i] = s
	}
}

// workOutBlanks works out the blanks of which nothing is known by what they hold. It reports
// false when the steps of a turn were made before.
func (c *Counted) workOutBlanks() bool {
	for turn := c.b.work + turnSteps; ; {
		var best *front
		var at [2]int
		for k := range c.fronts {
			for m, f := range c.fronts[k] {
				if f != nil && f.open && (best == nil || f.most() > best.most()) {
					best, at = f, [2]int{k, m}
				}
			}
		}
		if best == nil {
			return true
		}
		if c.b.work >= turn || c.b.ends() {
			return false
		}
		c.workOut(at[0], at[1])
		c.bound()
	}
}

// workOut works out the blank between two cells.
func (c *Counted) workOut(k, m int) {
	if c.kept > c.keeps {
		c.forget()
		clear(c.free)
	}
	if f := c.front(c.cuts.spanOf(k, m), c.reach(k), c.room(k, m)); len(f.list) > 0 {
		c.fronts[k][m] = &f
	} else {
		c.fronts[k][m] = nil
	}
}

// reach is the furthest that a blank which starts in a cell and matters may end.
func (c *Counted) reach(k int) layout.Length {
	m := len(c.cuts.at)
	for m > k+1 && c.fronts[k][m] == nil {
		m--
	}
	return c.cuts.spanOf(k, m).e
}

// Sharpen looks more closely at a way, as far as it takes steps; it reports false when nothing
// more can be known of it.
func (c *Counted) Sharpen(v Way) bool {
	changed := false
	var split []int
	widest := layout.Length(0)
	first := 1
	if c.cuts.shortens() {
		first = 0
	}
	for m, s := len(c.cuts.at), c.states[len(c.cuts.at)][v.state]; s.cell >= 0; m, s = s.cell, c.states[s.cell][s.state] {
		if f := c.fronts[s.cell][m]; s.kind == trued && (f == nil || !f.known) {
			if changed = true; f != nil {
				c.workOut(s.cell, m)
			}
		}
		if s.kind == wasted {
			continue
		}
		for _, cell := range []int{m, s.cell} {
			if first <= cell && cell < len(c.cuts.at) && c.cuts.wide(cell) >= 2*c.cuts.finest() {
				split = append(split, cell)
				widest = max(widest, c.cuts.wide(cell))
			}
		}
	}
	if !changed && len(split) > 0 {
		slices.Sort(split)
		split = slices.Compact(split)
		for i := len(split) - 1; i >= 0; i-- {
			if 2*c.cuts.wide(split[i]) > widest {
				c.split(split[i])
			}
		}
		changed = true
	}
	if changed {
		c.bound()
		c.found = nil
	}
	return changed
}

// split divides a cell in two, as cuts.split does.
func (c *Counted) split(cell int) {
	u, shortens := c.cuts, c.cuts.shortens()
	u.at = slices.Insert(u.at, cell+1, u.mark(u.at[cell]+u.wide(cell)/2))
	n := len(u.at)
	again := func(f *front) *front { // it is known only that it is no more
		if f == nil || !f.known {
			return f
		}
		return &front{list: f.list}
	}
	fronts := make([][]*front, n)
	for k := range fronts {
		fronts[k] = make([]*front, n+1)
		for m := k; m <= n; m++ {
			was := c.fronts[less(k, cell)][less(m, cell)]
			if same := k != cell+1 && m != cell; !same || shortens {
				was = again(was)
			}
			if k == m { // nothing ends before it starts
				was = nil
			}
			fronts[k][m] = was
		}
	}
	c.fronts = fronts
	u.kept = make([][]Value, n)
	for k := range u.kept {
		u.kept[k] = make([]Value, n+1)
		for m := k; m <= n; m++ {
			u.kept[k][m] = u.offcut(k, m)
		}
	}
}

// less is what a cell was called before the one was divided.
func less(k, cell int) int {
	if k > cell {
		return k - 1
	}
	return k
}
