package solver

import (
	"math/rand"
	"slices"

	"sawbill/layout"
	"sawbill/solver/internal/column"
)

// task is a part of a plan that is planned again by itself: some boards, and
// what they are to make together.
type task struct {
	island *island
	boards []int // those that may be cut
	wanted []int // by row of the bill
	// before is what the boards were cut to; nil where not cut.
	before []*column.Cut
	known  [][]*column.Cut // cuts that are remembered of the boards
	// short is what is missing in the plan that the task is taken from.
	short    []int
	penalty  []float64 // by row, what a missing piece is taken to cost, as a value
	pricing  int       // rounds of pricing at most; 0: out of the known cuts alone
	nodes    int       // of the choice in whole numbers at most
	pricer   *pricer
	sketches [][]*layout.Node // by board
	rng      *rand.Rand
}

// answer is what came of a task.
type answer struct {
	cuts  []*column.Cut // by board of the task
	left  []int         // of what was wanted
	found []found       // cuts to remember
}

// newTask is a task of a plan without boards so far; seed is of its chances.
func (s *search) newTask(i *island, seed int64) *task {
	return &task{
		island: i, rng: rand.New(rand.NewSource(seed)), wanted: make([]int, len(s.p.Bill)),
		short: slices.Clone(i.now.missing), penalty: s.penalties(i.now), pricing: taskPricing, nodes: taskNodes, pricer: s.quick,
	}
}

// What a task of few boards takes at most.
const (
	taskPricing = 2  // rounds of pricing, after one at the values of the whole job
	taskNodes   = 60 // of the choice in whole numbers
)

// penalties are what missing pieces are taken to cost in the tasks of a plan: no
// cut makes up for one, and where parts go missing those of a better rank count for
// more.
func (s *search) penalties(now *state) []float64 {
	weights := rankWeights(s.p, wants(now.missing))
	penalty := make([]float64, len(s.p.Bill))
	for i := range penalty {
		penalty[i] = shortagePrice * s.start[i] * weights[i]
	}
	return penalty
}

// add takes a board out of the plan into the task.
func (t *task) add(s *search, board int) {
	now := t.island.now
	t.boards = append(t.boards, board)
	t.before = append(t.before, now.cuts[board])
	t.known = append(t.known, s.pool.known(board))
	t.sketches = append(t.sketches, s.pool.sketches[s.quick.twin[board]])
	if c := now.cuts[board]; c != nil {
		for i, n := range c.Counts {
			t.wanted[i] += n
		}
	}
}

// wantMissing also wants what the plan leaves missing.
func (t *task) wantMissing() {
	for i, n := range t.short {
		t.wanted[i] += n
	}
}

// cost is what cutting the boards of the task in some way costs.
func (t *task) cost(p *layout.Problem, cuts []*column.Cut) layout.Money {
	var cost layout.Money
	for k, c := range cuts {
		if c != nil {
			cost += p.Stock[t.boards[k]].Cost - c.Worth
		}
	}
	return cost
}

// leftBefore is what of the wanted pieces the boards did not make before.
func (t *task) leftBefore() []int {
	left := slices.Clone(t.wanted)
	for _, c := range t.before {
		if c != nil {
			for i, n := range c.Counts {
				left[i] -= n
			}
		}
	}
	return left
}
