package solver

import (
	"math/rand"
	"slices"

	"sawbill/layout"
	"sawbill/solver/internal/column"
)

// search is a large neighbourhood search (Shaw 1998; Pisinger & Ropke 2007): in
// every round a few boards are taken out of the plan and planned again at
// slightly other values; what is not worse is kept. The tasks of one round touch
// different boards, so that all their gains count.
type search struct {
	p       *layout.Problem
	o       Options
	swift   *pricer // for the first plan
	quick   *pricer
	fine    *pricer // for one board at a time
	workers []*worker
	values  []float64 // of the parts, adapted as the search goes on
	start   []float64
	rng     *rand.Rand
	appeal  []float64 // of boards; what they are worth at settled values over their cost
	current *state
	best    *state
}

// tasksARound is how many tasks a round has; it does not depend on the number
// of workers, so that they never change the answer.
const tasksARound = 4

func newSearch(p *layout.Problem, o Options, stop func() bool) *search {
	s := &search{
		p: p, o: o,
		swift: newPricer(p, swift()), quick: newPricer(p, column.Quick()), fine: newPricer(p, fine()),
		start: startValues(p), rng: rand.New(rand.NewSource(o.Seed)),
	}
	s.values, s.appeal = slices.Clone(s.start), make([]float64, len(p.Stock))
	for i := range s.appeal {
		s.appeal[i] = 1
	}
	for range o.workers() {
		s.workers = append(s.workers, &worker{p: p, quick: s.quick, fine: s.fine, stop: stop})
	}
	return s
}

// swift is a configuration for the first plan of a large job: mostly one long
// blank a board, in about a thousandth of a second.
func swift() column.Config {
	return column.Config{MostX: 800, MostY: 300, MostStarts: 3, MostHeights: 12}
}

// fine is a configuration for cutting one board over again.
func fine() column.Config {
	return column.Config{MostX: 1600, MostY: 400, MostStarts: 14, MostHeights: 40}
}

// round makes one round and reports whether a better plan than the best was
// found.
func (s *search) round(n int) bool {
	tasks := s.tasks(n)
	for k, a := range s.solve(tasks) {
		s.take(tasks[k], a)
	}
	s.correctValues()
	if s.current.score().Compare(s.best.score()) >= 0 {
		return false
	}
	s.best = s.current.copy()
	return true
}

// slack is how much dearer than the best plan the present one may become, in
// thousandths, so that the search can leave a valley (record-to-record travel:
// Dueck 1993).
const slack = 6

// take puts an answer into the plan unless that would leave more missing or make
// the plan much dearer than the best.
func (s *search) take(t *task, a *answer) {
	if a == nil {
		return
	}
	for k, b := range t.boards {
		t.before[k] = s.current.cuts[b] // a task before this one may have changed it
	}
	was, left := t.leftBefore(), layout.NewScore(s.p, a.left, 0)
	switch c := left.Compare(layout.NewScore(s.p, was, 0)); {
	case c > 0:
		return
	case c == 0:
		dearer := t.cost(s.p, a.cuts) - t.cost(s.p, t.before)
		if dearer > 0 && s.current.cost()+dearer > s.best.cost()+s.best.cost()/1000*slack {
			return
		}
	}
	for _, b := range t.boards {
		s.current.set(b, nil)
	}
	for k, b := range t.boards {
		s.current.set(b, a.cuts[k])
	}
}

// correctValues adapts the values to the present plan.
func (s *search) correctValues() {
	var net, value float64
	used := s.current.used()
	for _, b := range used {
		net += s.netOf(b)
		value += s.valueOf(b)
	}
	if value == 0 {
		return
	}
	for _, b := range used {
		if v := s.valueOf(b); v > 0 {
			correct(s.values, s.start, s.current.cuts[b].Counts, s.netOf(b)/v, net/value)
		}
	}
}

// netCost is what the present plan costs.
func (s *search) netCost() float64 {
	var net float64
	for _, b := range s.current.used() {
		net += s.netOf(b)
	}
	return net
}

func (s *search) netOf(b int) float64 {
	return float64(column.FromMoney(s.current.net(b, s.current.cuts[b])))
}

func (s *search) valueOf(b int) float64 {
	var v float64
	for i, n := range s.current.cuts[b].Counts {
		v += float64(n) * s.values[i]
	}
	return v
}
