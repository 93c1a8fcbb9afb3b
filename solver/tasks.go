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
	replan  style = iota // from nothing, board by board
	recut                // one board again, for the same pieces and larger offcuts
	remix                // out of remembered cuts
	squeeze              // without the first of the boards
	pack                 // each board as well as it goes, the most appealing first
)

// picker is one neighbourhood: it chooses the boards that are planned again.
type picker interface {
	style() style
	// pick lists boards that a plan cuts, out of those that are free in this round.
	pick(s *search, now *state, free []int, rng *rand.Rand) []int
}

// pickers is the ordered list of neighbourhoods.
func pickers() []picker {
	return []picker{anyFew{}, many{}, drop{}, samePart{}, many{}, wasteful{}, drop{}, many{}, alone{}}
}

// tasks draws the tasks of a round: on one island several, and no board is in
// two of them; on several islands one each.
func (s *search) tasks(round int) []*task {
	if round%wholeEvery == 1 && len(s.usable) <= mostWhole {
		return s.wholeTasks(round)
	}
	var tasks []*task
	free := s.free()
	for k := range tasksARound {
		if len(s.islands) > 1 {
			free = s.free()
		}
		t := s.task(s.islands[k%len(s.islands)], round*tasksARound+k, free)
		// What the plan is missing can be wanted only once.
		if t.style != recut && (k == 0 || len(s.islands) > 1) {
			for i, n := range t.short {
				t.wanted[i] += n
			}
		}
		if len(t.boards) > 0 {
			tasks = append(tasks, t)
		}
	}
	return tasks
}

func (s *search) free() map[int]bool {
	free := map[int]bool{}
	for _, b := range s.usable {
		free[b] = true
	}
	return free
}

// task draws the n-th task, out of the free boards.
func (s *search) task(i *island, n int, free map[int]bool) *task {
	list := pickers()
	p := list[(n+n/tasksARound/len(list))%len(list)]
	t := s.newTask(i)
	t.style = p.style()
	for _, b := range p.pick(s, i.now, freeUsed(i.now, free), t.rng) {
		t.add(s, b)
		delete(free, b)
	}
	// A board is most often dropped for nothing, sometimes for others.
	if t.style == replan || t.style == remix || t.style == squeeze && t.rng.Intn(4) == 0 {
		s.addUnused(t, free)
	}
	return t
}

func (s *search) newTask(i *island) *task {
	return &task{
		island: i, rng: rand.New(rand.NewSource(s.rng.Int63())),
		wanted: make([]int, len(s.p.Bill)), short: slices.Clone(i.now.missing),
	}
}

// wholeEvery is how often the whole job is planned anew.
const wholeEvery = 5

// mostWhole is the most boards of a job that is planned anew as a whole.
const mostWhole = 60

// wholeTasks plan the whole job, each at other chances.
func (s *search) wholeTasks(round int) []*task {
	var tasks []*task
	for k := range tasksARound {
		t := s.newTask(s.islands[k%len(s.islands)])
		copy(t.wanted, t.short)
		if len(s.islands) > 1 && k%2 == round/wholeEvery%2 {
			t.style = pack
		}
		for _, b := range s.usable {
			t.add(s, b)
		}
		tasks = append(tasks, t)
	}
	return tasks
}

// add takes a board out of the plan into the task.
func (t *task) add(s *search, board int) {
	t.boards = append(t.boards, board)
	now := t.island.now
	t.before = append(t.before, now.cuts[board])
	t.appeal = append(t.appeal, s.appeal[board])
	t.known = append(t.known, s.pool.cuts[board])
	if c := now.cuts[board]; c != nil {
		for i, n := range c.Counts {
			t.wanted[i] += n
		}
	}
}

// freeUsed lists the boards that are cut and free, in the order of the stock.
func freeUsed(now *state, free map[int]bool) []int {
	var used []int
	for _, b := range now.used() {
		if free[b] {
			used = append(used, b)
		}
	}
	return used
}

const mostUnused = 4

// addUnused offers the task a few boards that are not cut so far, the more
// appealing ones sooner.
func (s *search) addUnused(t *task, free map[int]bool) {
	var unused []int
	for i, c := range t.island.now.cuts {
		if c == nil && free[i] {
			unused = append(unused, i)
		}
	}
	noise := make(map[int]float64, len(unused))
	for _, b := range unused {
		noise[b] = s.appeal[b] * (0.8 + 0.4*t.rng.Float64())
	}
	slices.SortStableFunc(unused, func(a, b int) int { return cmp.Compare(noise[b], noise[a]) })
	for _, b := range unused[:min(len(unused), mostUnused)] {
		t.add(s, b)
		delete(free, b)
	}
}

// plan answers a task in its style.
func (w *worker) plan(t *task, values []float64) *answer {
	switch t.style {
	case recut:
		return w.recut(t, values)
	case remix:
		return w.recombine(t, values)
	case squeeze:
		return w.squeeze(t, values)
	case pack:
		if t.rng.Intn(2) == 0 {
			values = dear(values)
		}
		return w.packAll(t, t.order(), prices(w.p, shaken(values, t.rng), t.short))
	}
	return w.repair(t, values)
}

// squeezeWork bounds what is spent on packing one board within limits.
const squeezeWork = 200_000

// squeeze plans the task without its first board, at values so high that no
// offcut is worth a piece.
func (w *worker) squeeze(t *task, values []float64) *answer {
	if len(t.boards) < 2 {
		return nil
	}
	order := slices.DeleteFunc(t.order(), func(k int) bool { return k == 0 })
	return w.packAll(t, order, prices(w.p, shaken(dear(values), t.rng), t.short))
}

// packAll packs the boards of a task one after the other, each as well as it
// goes within what is left.
func (w *worker) packAll(t *task, order []int, price []column.Value) *answer {
	a := &answer{cuts: make([]*column.Cut, len(t.boards)), left: slices.Clone(t.wanted)}
	for _, k := range order {
		if !wants(a.left) {
			break
		}
		if w.stop() {
			return nil
		}
		board := w.quick.board(t.boards[k]).WithCuts(t.rng)
		found, _ := w.bench.BestLimited(board, price, a.left, squeezeWork)
		if cut := board.CutOf(found, price); cut.Value > 0 {
			a.keep(t.boards[k], k, &cut)
		}
	}
	return a
}

// keep cuts the k-th board of the task.
func (a *answer) keep(board, k int, c *column.Cut) {
	a.cuts[k] = c
	a.found = append(a.found, found{board, c})
	for i, n := range c.Counts {
		a.left[i] -= n
	}
}

// dear is values so high that no offcut is worth a piece.
func dear(values []float64) []float64 {
	high := make([]float64, len(values))
	for i, v := range values {
		high[i] = 3 * v
	}
	return high
}

// recutTries is how many sets of blank starts are tried for one board.
const recutTries = 3

// recut cuts one board for the same pieces again and keeps the way that leaves
// the most worth in offcuts.
func (w *worker) recut(t *task, values []float64) *answer {
	board := t.boards[0]
	price := prices(w.p, shaken(dear(values), t.rng), t.short)
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
		a.found = append(a.found, found{board, &c})
		if score := layout.NewScore(w.p, left, t.cost(w.p, []*column.Cut{&c})); score.Compare(best) < 0 {
			best, a.cuts[0], a.left = score, &c, left
		}
	}
	return a
}
