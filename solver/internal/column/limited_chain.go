package column

import "sawbill/layout"

// chain is one level of the recursion: steps from position to position, each
// over something that is cut off there. It may have two layers; a step may lead
// from the first to the second.
type chain struct {
	level       level
	layers      int
	first, last int
	arcs        []arc // by position

	// before is the most that a label can have when it comes to each state, and
	// arrived says that an arc ends there; both up to the position at.
	at      int
	before  []Value
	arrived []bool
}

// level says what the steps of a chain are.
type level uint8

const (
	levelDirect level = iota // the part that fills a cell
	levelStack               // parts and offcuts across a cell
	levelStrip               // cells and offcuts along a strip
	levelNode                // strips and offcuts across a trued node
	levelRough               // trued nodes and offcuts across a crosscut piece
	levelBoard               // crosscut pieces and offcuts along the board
	levelJob                 // columns of one board after the other
)

// arc is one step of a chain, over lo..hi of what is cut, measured from its
// near side.
type arc struct {
	lo, hi   layout.Length
	bound    Value // the most that its labels can have as rest
	source   *source
	piece    *piece // nil: not a part
	from, to int32  // states: position after the first times layers, plus layer
	strip    int32  // of a strip
	level    level
	offcut   bool
	// anew says that the step is of use only right after another one: had the
	// label come here earlier, the same step was open to it there.
	anew bool
	// filled says that only labels that hold a part take the step.
	filled bool
}

// source gives the labels that fill a step, when they are first asked for.
type source struct {
	find  func(least Value) []*label
	least Value // the least rest that can be of use to any step
	found []*label
	asked bool
}

func newSource(find func(least Value) []*label) *source {
	return &source{find: find, least: 1 << 62}
}

// sourceOf gives the one label of a part or an offcut.
func sourceOf(l *label) *source { return &source{found: []*label{l}, asked: true} }

func (s *source) labels() []*label {
	if !s.asked {
		s.found, s.asked = s.find(s.least), true
	}
	return s.found
}

func newChain(level level, layers, first, last int) *chain {
	c := &chain{level: level, layers: layers, first: first, last: last, at: first}
	c.before = size(c.before, c.states(), none)
	c.arrived = make([]bool, c.states())
	c.before[0], c.arrived[0] = 0, true
	return c
}

// open moves on to position i and reports whether arcs may start there in some
// layer; without fresh arrivals, only those that are not anew.
func (c *chain) open(i int) (any, fresh bool) {
	for ; c.at < i; c.at++ {
		s := (c.at - c.first) * c.layers
		for ; s < (c.at-c.first+1)*c.layers; s++ {
			c.before[s+c.layers] = max(c.before[s+c.layers], c.before[s])
		}
	}
	for s := (i - c.first) * c.layers; s < (i-c.first+1)*c.layers; s++ {
		any = any || c.before[s] > none
		fresh = fresh || c.arrived[s]
	}
	return any, fresh
}

// step adds an arc from position i, the one that is open, to j.
func (c *chain) step(a arc, i, j int) { c.stepAcross(a, i, j, 0, 0) }

// stepAcross adds an arc from layer k at position i to layer m at j, where a
// label can take it.
func (c *chain) stepAcross(a arc, i, j, k, m int) {
	a.from, a.to = int32((i-c.first)*c.layers+k), int32((j-c.first)*c.layers+m)
	if j > c.last || c.before[a.from] <= none || a.anew && !c.arrived[a.from] {
		return
	}
	a.level = c.level
	c.before[a.to] = max(c.before[a.to], c.before[a.from]+a.bound)
	c.arrived[a.to] = true
	c.arcs = append(c.arcs, a)
}

func (c *chain) states() int { return (c.last - c.first + 1) * c.layers }

// usable drops the arcs that no label of rest least or more can take, and tells
// for each state the most that can be added after it:
//
//	ahead[s] = max over arcs from s of bound + ahead[to], ahead one position on
func (c *chain) usable(least Value) (ahead []Value) {
	c.open(c.last)
	n := c.states()
	ahead = size[Value](nil, n, none)
	ahead[n-1] = 0
	k := len(c.arcs) - 1
	for s := n - 1; s >= 0; s-- {
		if s+c.layers < n {
			ahead[s] = max(ahead[s], ahead[s+c.layers])
		}
		for ; k >= 0 && int(c.arcs[k].from) == s; k-- {
			if a := &c.arcs[k]; ahead[a.to] > none {
				ahead[s] = max(ahead[s], a.bound+ahead[a.to])
			}
		}
	}
	kept := c.arcs[:0]
	for _, a := range c.arcs {
		if ahead[a.to] <= none || c.before[a.from]+a.bound+ahead[a.to] < least {
			continue
		}
		kept = append(kept, a)
		a.source.least = min(a.source.least, least-c.before[a.from]-ahead[a.to])
	}
	c.arcs = kept
	return ahead
}

// run finds the labels of the whole chain that have rest least or more.
func (c *chain) run(s *limited, least Value) []*label {
	ahead := c.usable(least)
	if ahead[0] < least {
		return nil
	}
	n := c.states()
	arrivals := make([][]*label, n)
	arrivals[0] = []*label{{}}
	current := make([][]*label, c.layers)
	k := 0
	for at := range n {
		if s.spent() {
			break
		}
		layer := at % c.layers
		current[layer] = s.prune(current[layer], least-ahead[at])
		fresh := s.merge(&current[layer], arrivals[at])
		arrivals[at] = nil
		for ; k < len(c.arcs) && int(c.arcs[k].from) == at; k++ {
			a := &c.arcs[k]
			if a.anew {
				s.extend(arrivals, a, fresh, least-ahead[a.to])
			} else {
				s.extend(arrivals, a, current[layer], least-ahead[a.to])
			}
		}
	}
	return byRest(current[c.layers-1])
}

// prune takes out the labels whose rest is below least.
func (s *limited) prune(front []*label, least Value) []*label {
	kept := front[:0]
	for _, l := range front {
		if l.rest >= least {
			kept = append(kept, l)
		}
	}
	return kept
}

// extend takes labels over one arc.
func (s *limited) extend(arrivals [][]*label, a *arc, labels []*label, least Value) {
	if len(labels) == 0 {
		return
	}
	kids := a.source.labels()
	for _, l := range labels {
		for _, kid := range kids {
			if l.rest+kid.rest < least || s.spent() {
				break
			}
			s.work++
			if a.filled && !kid.parts {
				continue
			}
			made := l.made.plus(&kid.made)
			if !s.ledger.fits(&made) {
				continue
			}
			s.add(&arrivals[a.to], &label{
				value: l.value + kid.value, rest: l.rest + kid.rest, made: made,
				parts: l.parts || kid.parts, arc: a, prev: l, kid: kid,
			})
		}
	}
}
