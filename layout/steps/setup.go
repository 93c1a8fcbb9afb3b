package steps

import "sawbill/layout"

// Setup is how a machine is set: what a fence, a stop or a planer stays at while
// piece after piece passes.
type Setup struct {
	Operation Operation
	// Setting is 0 for the rough cuts, which follow a tape or a snapped line.
	Setting layout.Length
	Angle   layout.Angle
}

// SetupOf is the set-up that a step needs.
func SetupOf(s *Step) Setup {
	if s.Operation == RoughRip || s.Operation == Crosscut && s.Blank == "" {
		return Setup{Operation: s.Operation}
	}
	return Setup{s.Operation, s.Setting, s.Angle}
}

// station is the place of an operation in the order of work of one blank, see
// model section 6: what must come later has a higher one.
func station(s *Step) int {
	switch s.Operation {
	case Crosscut:
		if s.Blank == "" {
			return 0
		}
		return 5
	case RoughRip:
		return 1
	case True:
		return 2
	case Rip, BevelRip:
		return 3
	case Plane:
		return 4
	}
	return 6 // resaw
}

// bySetup orders steps so that set-ups change seldom. A step waits for the one
// that its piece comes from, and all work of one kind is done before the next
// kind begins: so every blank is trued before the first is ripped.
//
// Fewest changes of set-up would be a shortest common supersequence of the chains
// of cuts, which is hard (Maier 1978); this takes at every change the set-up that
// leaves the fewest of its own cuts for later, of these the one that serves the
// most pieces now, of these the widest.
func bySetup(list []*Step) []*Step {
	q := newSetupQueue(list)
	ordered := make([]*Step, 0, len(list))
	for len(q.ready) > 0 {
		i := q.next()
		ordered = append(ordered, q.steps[i])
		q.finish(i)
	}
	return ordered
}

// setupQueue holds the steps of a job that are not done yet.
type setupQueue struct {
	steps []*Step
	// stage orders kinds of work: a last rip, say, comes after the crosscuts.
	stage []int
	after [][]int // the steps that take what a step leaves
	ready []int   // in the order of the boards
	// waiting counts the steps of a stage and set-up that are not ready.
	waiting map[stagedSetup]int
	current stagedSetup
}

type stagedSetup struct {
	stage int
	setup Setup
}

func newSetupQueue(list []*Step) *setupQueue {
	q := &setupQueue{
		steps: list, stage: make([]int, len(list)), after: make([][]int, len(list)),
		waiting: map[stagedSetup]int{}, current: stagedSetup{stage: -1},
	}
	maker := map[string]int{}
	for i, s := range list {
		before, made := maker[s.Piece]
		q.stage[i] = station(s)
		if made {
			q.after[before] = append(q.after[before], i)
			q.stage[i] = following(q.stage[before], station(s))
			q.waiting[q.setup(i)]++
		} else {
			q.ready = append(q.ready, i)
		}
		for _, id := range []string{s.Off, s.Rest} {
			if id != "" {
				maker[id] = i
			}
		}
	}
	return q
}

// stations is how many there are; work that goes back to an earlier one begins
// another round.
const stations = 7

func following(before, station int) int {
	stage := before/stations*stations + station
	if stage < before {
		stage += stations
	}
	return stage
}

func (q *setupQueue) setup(i int) stagedSetup { return stagedSetup{q.stage[i], SetupOf(q.steps[i])} }

// next is the ready step to do: what only has to be named first, then what the
// machine is set for, then what the best change of set-up begins with.
func (q *setupQueue) next() int {
	least := q.stage[q.ready[0]]
	for _, i := range q.ready {
		if q.steps[i].NoCut {
			return i
		}
		least = min(least, q.stage[i])
	}
	if i, found := q.first(q.current); found && q.current.stage == least {
		return i
	}
	q.current = q.change(least)
	i, _ := q.first(q.current)
	return i
}

// first is the first ready step of a set-up.
func (q *setupQueue) first(s stagedSetup) (step int, found bool) {
	for _, i := range q.ready {
		if q.setup(i) == s {
			return i, true
		}
	}
	return 0, false
}

// change chooses the next set-up of a stage.
func (q *setupQueue) change(stage int) stagedSetup {
	serves := map[stagedSetup]int{}
	for _, i := range q.ready {
		if q.stage[i] == stage {
			serves[q.setup(i)]++
		}
	}
	var best stagedSetup
	found := false
	for _, i := range q.ready { // not over the map, whose order is another every time
		s := q.setup(i)
		if s.stage == stage && (!found || q.better(s, best, serves)) {
			best, found = s, true
		}
	}
	return best
}

func (q *setupQueue) better(a, b stagedSetup, serves map[stagedSetup]int) bool {
	switch {
	case q.waiting[a] != q.waiting[b]:
		return q.waiting[a] < q.waiting[b]
	case serves[a] != serves[b]:
		return serves[a] > serves[b]
	}
	return a.setup.Setting > b.setup.Setting
}

// finish takes a step off the queue and puts those on that it makes ready, where
// it stood: what comes from one board stays together.
func (q *setupQueue) finish(i int) {
	at := 0
	for q.ready[at] != i {
		at++
	}
	for _, next := range q.after[i] {
		q.waiting[q.setup(next)]--
	}
	rest := append(q.after[i][:len(q.after[i]):len(q.after[i])], q.ready[at+1:]...)
	q.ready = append(q.ready[:at], rest...)
}
