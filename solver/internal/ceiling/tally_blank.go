package ceiling

import (
	"cmp"
	"slices"

	"sawbill/layout"
)

// front is what a blank may hold, the best first.
type front struct {
	list  []option
	known bool // of this very blank, and not of a larger one
	open  bool // it is not told what the blank may hold, only what it is worth at most
}

// most is the most that any of a front is worth at the prices at hand.
func (f *front) most() Value {
	if len(f.list) == 0 {
		return 0
	}
	return f.list[0].all
}

// arc is a strip with what it holds.
type arc struct {
	strip int
	worth Value
}

// laying is the state of filling one blank with strips.
type laying struct {
	c       *Counted
	s       blankSpan
	least   Value // what is worth less does not matter
	kinds   []blankOffcuts
	first   int     // the position across at which the first strip may start
	before  []Value // by position across, the most that lies below it
	beyond  []Value // and from it on
	strips  []int   // that may be laid
	arcs    map[tally][]arc
	order   []tally // of arcs
	tallies []tally
	worth   [][]Value // by tally, by position across
}

// front bounds what a blank may hold that is worth least or more.
func (c *Counted) front(s blankSpan, reach layout.Length, least Value) front {
	f := front{known: true}
	l := c.laying(s, reach, least)
	if l == nil {
		return f
	}
	for i := range l.tallies {
		if worth, _ := l.whole(i); worth >= 0 {
			if o := (option{l.tallies[i], worth, c.n.worth(l.tallies[i], c.price) + worth}); o.all >= least {
				f.list = append(f.list, o)
			}
		}
	}
	slices.SortStableFunc(f.list, func(a, b option) int { return cmp.Compare(b.all, a.all) })
	return f
}

// gives reports whether a blank so long may be trued.
func (w *Board) gives(s blankSpan) bool {
	return len(w.lanes) > 0 && s.e-s.a >= w.briefest && (w.most == 0 || s.short <= w.most)
}

// laying fills a blank; nil where nothing of it can be worth least.
func (c *Counted) laying(s blankSpan, reach layout.Length, least Value) *laying {
	w := c.w
	if !w.gives(s) {
		return nil
	}
	shift := w.shift(s.short)
	l := &laying{c: c, s: s, least: least, arcs: map[tally][]arc{}, first: w.y.down(shift + w.near)}
	l.kinds = slices.Clone(c.b.newBlankOffcuts(s.a, s.e, shift))
	for i, t := range c.strips {
		if r := c.rows[t.row]; t.from >= l.first && s.short <= r.lane.longest {
			l.strips = append(l.strips, i)
		}
	}
	if !l.bound() {
		return nil
	}
	if c.chainAll(l.strips, s.a, max(s.e, reach)); c.b.ends() {
		return nil
	}
	if !l.bound() {
		return nil
	}
	for _, i := range l.strips {
		if c.b.ends() {
			return nil
		}
		l.addArcs(i)
	}
	for _, t := range l.order {
		l.arcs[t] = l.best(l.arcs[t])
	}
	l.fill()
	return l
}

// bound finds what lies below and beyond every position at most, however many pieces that
// are, and drops the strips that do not matter. It reports whether any does.
func (l *laying) bound() bool {
	c, n := l.c, l.c.b.top()
	worth := make([]Value, len(l.strips))
	for k, i := range l.strips {
		worth[k] = c.most(c.strips[i].row, l.s.a, l.s.e)
	}
	l.before, l.beyond = make([]Value, n+1), make([]Value, n+1)
	for k := range l.kinds {
		l.kinds[k].reset()
	}
	k := 0
	for j := 0; j <= n; j++ {
		if j > 0 {
			l.before[j] = l.before[j-1]
		}
		for m := range l.kinds {
			v, _ := l.kinds[m].endingAt(l.before, j)
			l.before[j] = max(l.before[j], v)
		}
		for ; k < len(l.strips) && c.strips[l.strips[k]].to <= j; k++ {
			if t := c.strips[l.strips[k]]; t.to == j {
				l.before[j] = max(l.before[j], l.before[t.from]+worth[k])
			}
		}
	}
	most := l.before[n]
	for m := range l.kinds {
		v, _ := l.kinds[m].last(l.before)
		most = max(most, v)
	}
	if c.b.work += 2 * len(l.strips); most < l.least {
		return false
	}
	l.setBeyond(worth, n)
	keep := l.strips[:0]
	for k, i := range l.strips {
		if t := c.strips[i]; l.before[t.from]+worth[k]+l.beyond[min(t.to, n)] >= l.least {
			keep = append(keep, i)
		}
	}
	l.strips = keep
	return true
}

// setBeyond works back from the far edge.
func (l *laying) setBeyond(worth []Value, n int) {
	c := l.c
	byStart := make([][]int, n+1)
	for k, i := range l.strips {
		if t := c.strips[i]; t.to <= n {
			byStart[t.from] = append(byStart[t.from], k)
		}
	}
	type ends struct{ low, end []Value }
	all := make([]ends, len(l.kinds))
	for m := range l.kinds {
		o := &l.kinds[m]
		for j := 0; j <= n+1; j++ {
			end := min(c.w.y.upTo(j)-o.behind, o.top)
			if j == n+1 {
				end = o.top
			}
			low, e := none, none
			if j <= n && j >= o.first {
				low = Value(o.below(o.start(j)))
			}
			if end >= 0 {
				e = Value(o.below(end)) + 2
			}
			all[m].low, all[m].end = append(all[m].low, low), append(all[m].end, e)
		}
	}
	for j := n; j >= 0; j-- {
		if j < n {
			l.beyond[j] = l.beyond[j+1]
		}
		for _, k := range byStart[j] {
			l.beyond[j] = max(l.beyond[j], worth[k]+l.beyond[c.strips[l.strips[k]].to])
		}
		for m := range l.kinds {
			low := all[m].low[j]
			if low == none {
				continue
			}
			for to := j + 1; to <= n+1; to++ {
				if e := all[m].end[to]; e > low {
					l.beyond[j] = max(l.beyond[j], e-low+l.beyond[min(to, n)])
				}
			}
		}
	}
	c.b.work += n * n * len(l.kinds)
}

// addArcs adds what a strip may hold.
func (l *laying) addArcs(i int) {
	c, t := l.c, l.c.strips[i]
	ch := c.chain(t.row, l.s.a, l.s.e)
	room := l.least - l.before[t.from] - l.beyond[min(t.to, len(l.beyond)-1)]
	for k := range ch.list {
		own := &ch.list[k]
		worth := own.in(c.w, l.s.e)
		if worth < 0 || own.price+worth < room {
			continue
		}
		if _, ok := l.arcs[own.tally]; !ok {
			l.order = append(l.order, own.tally)
		}
		l.arcs[own.tally] = append(l.arcs[own.tally], arc{i, worth})
	}
	c.b.work += len(ch.list)
}

// best drops the arcs of one tally that are not better than lower ones from the same place.
func (l *laying) best(arcs []arc) []arc {
	s := l.c.strips
	slices.SortStableFunc(arcs, func(a, b arc) int {
		return cmp.Or(cmp.Compare(s[a.strip].from, s[b.strip].from), cmp.Compare(s[a.strip].to, s[b.strip].to), cmp.Compare(b.worth, a.worth))
	})
	keep := arcs[:0]
	for _, a := range arcs {
		if n := len(keep); n == 0 || s[keep[n-1].strip].from != s[a.strip].from || a.worth > keep[n-1].worth {
			keep = append(keep, a)
		}
	}
	slices.SortStableFunc(keep, func(a, b arc) int { return cmp.Compare(s[a.strip].to, s[b.strip].to) })
	return keep
}

// fill fills the programme across the blank, as Bench.across does, by what is laid.
func (l *laying) fill() {
	c, n := l.c, l.c.b.top()
	q := newQueue(c.n)
	q.index(0)
	l.tallies, l.worth = []tally{0}, [][]Value{make([]Value, n+1)}
	for i := q.next(); i >= 0; i = q.next() {
		t, v := l.tallies[i], l.worth[i]
		l.settle(t, v)
		price := c.n.worth(t, c.price)
		for _, o := range l.order {
			if o == 0 {
				continue
			}
			sum, ok := c.n.sum(t, o)
			if !ok {
				continue
			}
			var to []Value
			for _, a := range l.arcs[o] {
				s := c.strips[a.strip]
				if v[s.from] < 0 || s.to > n {
					continue
				}
				if worth := v[s.from] + a.worth; worth+price+c.n.worth(o, c.price)+l.beyond[s.to] >= l.least {
					if to == nil {
						k, isNew := q.index(sum)
						if isNew {
							l.tallies, l.worth = append(l.tallies, sum), append(l.worth, slices.Repeat([]Value{none}, n+1))
						}
						to = l.worth[k]
					}
					to[s.to] = max(to[s.to], worth)
				}
			}
			c.b.work += len(l.arcs[o])
		}
	}
}

// settle adds offcuts, and strips of offcuts alone, to what holds a tally.
func (l *laying) settle(t tally, v []Value) {
	c := l.c
	for k := range l.kinds {
		l.kinds[k].reset()
	}
	bare, k := l.arcs[0], 0
	for j := range v {
		if j > 0 {
			v[j] = max(v[j], v[j-1])
		}
		for m := range l.kinds {
			s, _ := l.kinds[m].endingAt(v, j)
			v[j] = max(v[j], whole(s-1))
		}
		for ; k < len(bare) && c.strips[bare[k].strip].to <= j; k++ {
			if s := c.strips[bare[k].strip]; s.to == j && v[s.from] >= 0 {
				v[j] = max(v[j], v[s.from]+bare[k].worth)
			}
		}
	}
}

// whole is what the blank is worth with the i-th tally, and the state that it ends in.
func (l *laying) whole(i int) (worth Value, last int) {
	v := l.worth[i]
	worth, last = v[len(v)-1], len(v)-1
	for k := range l.kinds {
		l.kinds[k].reset()
	}
	for j := range v { // so that the kinds know all starts
		for k := range l.kinds {
			l.kinds[k].endingAt(v, j)
		}
	}
	for k := range l.kinds {
		if s, at := l.kinds[k].last(v); whole(s-1) > worth {
			worth, last = whole(s-1), at
		}
	}
	return worth, last
}
