package solver

import (
	"math/rand"
)

// picker is one neighbourhood: it chooses the boards that are planned again.
type picker interface {
	// pick lists boards that a plan cuts, out of those that are free in this round.
	pick(s *search, now *state, free []int, rng *rand.Rand) []int
}

// pickers is the ordered list of neighbourhoods.
func pickers() []picker { return []picker{related{}, related{}, anyFew{}} }

// tasks draws the tasks of a round: on one island several, and no board is in
// two of them but in the one that plans all boards; on several islands one each.
func (s *search) tasks(round int) []*task {
	var tasks, whole []*task
	if round%wholeEvery == 1 && len(s.usable) <= mostWhole {
		whole = s.wholeTasks()
		if len(s.islands) > 1 {
			return whole
		}
	}
	free := s.free()
	for k := range tasksARound {
		if len(s.islands) > 1 {
			free = s.free()
		}
		t := s.task(s.islands[k%len(s.islands)], round*tasksARound+k, free)
		// What the plan is missing can be wanted only once.
		if k == 0 || len(s.islands) > 1 {
			t.wantMissing()
		}
		if len(t.boards) > 0 {
			tasks = append(tasks, t)
		}
	}
	return append(tasks, whole...)
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
	t := s.newTask(i, s.rng.Int63())
	for _, b := range p.pick(s, i.now, freeUsed(i.now, free), t.rng) {
		t.add(s, b)
		delete(free, b)
	}
	s.addUnused(t, free)
	if pricer := s.taskPricer(n); pricer != nil {
		t.pricer = pricer
	}
	return t
}

// taskPricer is what the n-th task is planned with; nil for the quick routine. Of those that
// try more, the wide one gains the most for its work: where there are few boards it comes first.
func (s *search) taskPricer(n int) *pricer {
	round := n / tasksARound
	switch turn := (n + round) % keenEvery; {
	case len(s.usable) > manyBoards:
		return nil
	case turn == 0 && round < keenFrom && len(s.usable) <= fewEnough:
		return s.wide
	case turn == 0 && round < keenFrom:
		return s.beside
	case turn == 0:
		return s.keen
	case turn == 2 && s.widens(round):
		return s.wide
	}
	return nil
}

// widens reports whether the search is so far that many places are worth trying where
// blanks may start.
func (s *search) widens(round int) bool { return round >= wideFrom && len(s.usable) <= fewEnough }

const (
	keenEvery  = 4  // how often a task is planned with the keen routine, or before it with another that tries more
	keenFrom   = 20 // the round from which on it is the keen one
	wideFrom   = 90 // the round from which on the wide routine plans some more of the tasks and all dives
	wholeEvery = 5  // how often the whole job is planned out of the cuts that are known
	mostWhole  = 60 // the most boards of a job for which that is done
)

// wholeTasks plan all boards, once for every island.
func (s *search) wholeTasks() []*task {
	var tasks []*task
	for _, i := range s.islands {
		t := s.newTask(i, s.rng.Int63())
		t.pricing = 0
		for _, b := range s.usable {
			t.add(s, b)
		}
		t.wantMissing()
		tasks = append(tasks, t)
	}
	return tasks
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

// addUnused offers the task a few boards that are not cut so far and could give
// the same parts, the more appealing ones sooner.
func (s *search) addUnused(t *task, free map[int]bool) {
	var unused []int
	for _, b := range s.usable {
		if t.island.now.cuts[b] == nil && free[b] && s.sharesAny(t.boards, b) {
			unused = append(unused, b)
		}
	}
	for _, b := range s.byAppeal(unused, t.rng)[:min(len(unused), mostUnused)] {
		t.add(s, b)
		delete(free, b)
	}
}
