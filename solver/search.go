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
// different boards, so that all their gains count. A job of few boards has no
// room for that: it is planned on several islands at once, a task each.
type search struct {
	p       *layout.Problem
	o       Options
	swift   *pricer // for the first plan
	quick   *pricer
	beside  *pricer // for some of the tasks
	keen    *pricer // for some of the later tasks
	wide    *pricer // for some of the later tasks, and for the later dives
	workers []*worker
	values  []float64 // of the parts, adapted as the search goes on
	start   []float64
	anchor  []float64 // about which the values move
	rng     *rand.Rand
	// lookSteps is by board the steps of the last look at it.
	lookSteps []int
	appeal    []float64 // of boards; what they are worth at settled values over their cost
	usable    []int     // boards that may give something
	pool      *pool
	master    *dual
	proof     *proof
	small     *small
	sets      *sets
	islands   []*island
	gives     [][]bool // by board and row of the bill
	best      *state
	filled    *state // the best plan into which it was last tried to lay what is missing
	// unmatched is the same job with no board chosen for any match word, of which alone
	// something can be proven; nil where there are no words.
	unmatched *search
	heeds     heeds   // of a proof
	fresh     bool    // cuts were found that no dive has seen
	dived     bool    // dives were made
	copies    *copies // nil where there are no glue-ups
}

// island is one plan that the search works on.
type island struct {
	now  *state
	best *state // the best that it has been
}

const (
	mostIslands = 4
	fewBoards   = 12 // with no more boards than this cut, there are several islands
	ferryEvery  = 40 // rounds after which the worst island starts again from the best plan
)

// settleIslands starts the search from a first plan.
func (s *search) settleIslands(first *state) {
	n := 1
	if len(first.used()) <= fewBoards {
		n = mostIslands
	}
	for range n {
		s.islands = append(s.islands, &island{first.copy(), first.copy()})
	}
	s.best = first.copy()
}

// improve starts every island again from a plan if it is better than the best,
// and reports whether it is.
func (s *search) improve(st *state) bool {
	if st.score().Compare(s.best.score()) >= 0 {
		return false
	}
	s.islands = nil
	s.settleIslands(st)
	return true
}

// ferry lets the worst island start again from the best plan.
func (s *search) ferry() {
	if len(s.islands) == 1 {
		return
	}
	worst := slices.MaxFunc(s.islands, func(a, b *island) int { return a.best.score().Compare(b.best.score()) })
	worst.now, worst.best = s.best.copy(), s.best.copy()
}

// tasksARound is how many tasks a round has beside those that plan the whole job; it does not
// depend on the number of workers, so that they never change the answer.
const tasksARound = 4

func newSearch(p *layout.Problem, o Options, stop func() bool) *search {
	quick := newPricer(p, column.Quick())
	s := &search{
		p: p, o: o,
		quick: quick, swift: quick.with(swift(len(p.Stock))), beside: quick.with(beside()), wide: quick.with(wide()),
		usable: usableBoards(p), start: startValues(p), gives: gives(p), rng: rand.New(rand.NewSource(o.Seed)),
	}
	if s.keen = s.beside; slices.ContainsFunc(p.Bill, func(part layout.Part) bool { return part.Bevel != 0 }) {
		s.keen = quick.with(keen())
	}
	s.pool = newPool(s.quick.twin)
	s.lookSteps = make([]int, len(p.Stock))
	s.values, s.anchor, s.appeal = slices.Clone(s.start), s.start, make([]float64, len(p.Stock))
	for i := range s.appeal {
		s.appeal[i] = 1
	}
	for range o.workers() {
		s.workers = append(s.workers, &worker{p: p, quick: s.quick, stop: stop})
	}
	return s
}

// swift is a configuration for the first plan of a job of so many boards: mostly
// one long blank a board, in about a thousandth of a second, or where there are
// very many boards in a third of that.
func swift(boards int) column.Config {
	if boards > manyBoards {
		return column.Config{MostX: 400, MostY: 200, MostStarts: 1, MostHeights: 8}
	}
	return column.Config{MostX: 800, MostY: 300, MostStarts: 3, MostHeights: 12}
}

const manyBoards = 300

// beside is a configuration that finds parts beside defects as well; it takes some
// five times as long as the quick one.
func beside() column.Config {
	c := column.Quick()
	c.Beside = true
	return c
}

// keen is a configuration that also looks more closely at where strips lie that lean.
func keen() column.Config {
	c := beside()
	c.FineLeans = true
	return c
}

// wide is a configuration that tries four times as many places where blanks may start.
func wide() column.Config {
	c := column.Quick()
	c.MostStarts *= 4
	return c
}

// round makes one round and reports whether a better plan than the best was
// found.
func (s *search) round(n int) bool {
	tasks := s.tasks(n)
	answers := s.solve(tasks)
	for k, a := range answers {
		s.take(tasks[k], a)
	}
	s.remember(answers)
	better := false
	for _, i := range s.islands {
		if i.now.score().Compare(i.best.score()) < 0 {
			i.best = i.now.copy()
		}
		if i.best.score().Compare(s.best.score()) < 0 {
			s.best, better = i.best.copy(), true
		}
	}
	s.correctValues(s.best)
	if n%ferryEvery == 0 {
		s.ferry()
	}
	return better
}

// slack is how much dearer than its best plan one of several islands may become, in
// thousandths, so that the search can leave a valley (record-to-record travel:
// Dueck 1993).
const slack = 6

// take puts an answer into the plan unless that would leave more missing or make
// the plan much dearer than the best.
func (s *search) take(t *task, a *answer) {
	if a == nil {
		return
	}
	now, best := t.island.now, t.island.best.cost()
	for k, b := range t.boards {
		t.before[k] = now.cuts[b] // a task before this one may have changed it
	}
	was, left := t.leftBefore(), layout.NewScore(s.p, a.left, 0)
	switch c := left.Compare(layout.NewScore(s.p, was, 0)); {
	case c > 0:
		return
	case c == 0:
		dearer := t.cost(s.p, a.cuts) - t.cost(s.p, t.before)
		if dearer > 0 && (len(s.islands) == 1 || now.cost()+dearer > best+best/1000*slack) {
			return
		}
	}
	now.recut(t.boards, a.cuts)
}

// correctValues adapts the values to a plan.
func (s *search) correctValues(st *state) {
	var net, value float64
	used := st.used()
	for _, b := range used {
		net += netValue(s.p, b, st.cuts[b])
		value += valueOf(st.cuts[b].Counts, s.values)
	}
	if value == 0 {
		return
	}
	for _, b := range used {
		c := st.cuts[b]
		if v := valueOf(c.Counts, s.values); v > 0 {
			correct(s.values, s.anchor, c.Counts, netValue(s.p, b, c)/v, net/value)
		}
	}
}
