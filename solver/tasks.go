package solver

import (
	"cmp"
	"math/rand"
	"slices"

	"sawbill/layout"
	"sawbill/solver/internal/column"
)

// style says how a task is planned.
type style uint8

const (
	replan style = iota // from nothing, board by board
	recut               // one board again, for the same pieces and larger offcuts
)

// picker is one neighbourhood: it chooses the boards that are planned again.
type picker interface {
	name() string
	style() style
	// pick lists used boards, out of those that are free in this round.
	pick(s *search, free []int, rng *rand.Rand) []int
}

// pickers is the ordered list of neighbourhoods.
func pickers() []picker {
	return []picker{anyFew{}, samePart{}, wasteful{}, alone{}}
}

// tasks draws the tasks of a round. No board is in two of them; what the plan
// is missing is wanted in the first.
func (s *search) tasks(round int) []*task {
	free := map[int]bool{}
	for _, b := range s.boards() {
		free[b] = true
	}
	if round%wholeEvery == 1 {
		return s.wholeTasks()
	}
	list := pickers()
	var tasks []*task
	for k := range tasksARound {
		rng := rand.New(rand.NewSource(s.rng.Int63()))
		p := list[(round*tasksARound+k+round/len(list))%len(list)]
		t := &task{style: p.style(), rng: rng, wanted: make([]int, len(s.p.Bill)), short: s.current.missing}
		for _, b := range p.pick(s, s.freeUsed(free), rng) {
			t.add(s, b)
			delete(free, b)
		}
		if t.style == replan {
			s.addUnused(t, free, rng)
		}
		if k == 0 && t.style == replan {
			for i, n := range s.current.missing {
				t.wanted[i] += n
			}
		}
		if len(t.boards) > 0 {
			tasks = append(tasks, t)
		}
	}
	return tasks
}

// wholeEvery is how often the whole job is planned anew.
const wholeEvery = 8

// wholeTasks plan the whole job, each at other chances. The last that is not
// worse than the plan before counts.
func (s *search) wholeTasks() []*task {
	var tasks []*task
	for range tasksARound {
		t := &task{rng: rand.New(rand.NewSource(s.rng.Int63())), wanted: slices.Clone(s.current.missing), short: s.current.missing}
		for _, b := range s.boards() {
			t.add(s, b)
		}
		tasks = append(tasks, t)
	}
	return tasks
}

// add takes a board out of the plan into the task.
func (t *task) add(s *search, board int) {
	t.boards = append(t.boards, board)
	t.before = append(t.before, s.current.cuts[board])
	t.appeal = append(t.appeal, s.appeal[board])
	if c := s.current.cuts[board]; c != nil {
		for i, n := range c.Counts {
			t.wanted[i] += n
		}
	}
}

// freeUsed lists the boards that are cut and free, in the order of the stock.
func (s *search) freeUsed(free map[int]bool) []int {
	var used []int
	for _, b := range s.current.used() {
		if free[b] {
			used = append(used, b)
		}
	}
	return used
}

const mostUnused = 4

// addUnused offers the task a few boards that are not cut so far, the more
// appealing ones sooner.
func (s *search) addUnused(t *task, free map[int]bool, rng *rand.Rand) {
	var unused []int
	for i, c := range s.current.cuts {
		if c == nil && free[i] {
			unused = append(unused, i)
		}
	}
	noise := make(map[int]float64, len(unused))
	for _, b := range unused {
		noise[b] = s.appeal[b] * (0.8 + 0.4*rng.Float64())
	}
	slices.SortStableFunc(unused, func(a, b int) int { return cmp.Compare(noise[b], noise[a]) })
	for _, b := range unused[:min(len(unused), mostUnused)] {
		t.add(s, b)
		delete(free, b)
	}
}

// plan answers a task in its style.
func (w *worker) plan(t *task, values []float64) *answer {
	if t.style == recut {
		return w.recut(t, values)
	}
	return w.repair(t, values)
}

// recutTries is how many sets of blank starts are tried for one board.
const recutTries = 3

// recut cuts one board for the same pieces again and keeps the way that leaves
// the most worth in offcuts.
func (w *worker) recut(t *task, values []float64) *answer {
	board := t.boards[0]
	high := make([]float64, len(values))
	for i, v := range values {
		high[i] = 3 * v // so that no offcut is worth a piece
	}
	price := prices(w.p, shaken(high, t.rng), t.short)
	a := &answer{cuts: []*column.Cut{t.before[0]}, left: make([]int, len(t.wanted))}
	best := layout.NewScore(w.p, t.leftBefore(), t.cost(w.p, t.before))
	for range recutTries {
		if w.stop() {
			return nil
		}
		c := w.bench.Within(w.fine.board(board).WithCuts(t.rng), price, t.wanted, 2)
		left := append([]int(nil), t.wanted...)
		for i, n := range c.Counts {
			left[i] -= n
		}
		if c.Root == nil {
			continue
		}
		if score := layout.NewScore(w.p, left, t.cost(w.p, []*column.Cut{&c})); score.Compare(best) < 0 {
			best, a.cuts[0], a.left = score, &c, left
		}
	}
	return a
}
