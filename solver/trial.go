package solver

import (
	"slices"

	"sawbill/layout"
)

// trial is one composition and the search for it.
type trial struct {
	e      *strips
	s      *search
	rounds int
	plan   *layout.Plan
	made   composition // whole copies in the plan
}

// trialRounds is with how many rounds a trial begins.
const trialRounds = 2

// try makes plans for a composition and keeps it if it is one of the best.
func (q *glueUps) try(c composition, n int) error {
	q.tried[c.key()] = true
	t := &trial{e: newStrips(q.asked)}
	for set, list := range c {
		for i, k := range list {
			if i == 0 || list[i-1] != k {
				t.e.add(q.sets, set, k, count(list, k))
			}
		}
	}
	t.s = newSearch(homes(t.e.p, q.inner(), q.stop), q.inner(), q.stop)
	t.begin(q)
	t.finish(q)
	q.alive = append(q.alive, t)
	return q.rank(n)
}

func count(list []int, k int) int {
	n := 0
	for _, v := range list {
		if v == k {
			n++
		}
	}
	return n
}

// begin makes the first plans of a trial.
func (t *trial) begin(q *glueUps) {
	s := t.s
	s.settleIslands(s.first())
	if q.guide == nil {
		s.settle(s.best)
	} else {
		s.settleAt(q.guide.values(t.e))
	}
	s.improve(s.second())
	for ; t.rounds < trialRounds && !q.stop(); t.rounds++ {
		s.round(t.rounds + 1)
	}
	if wants(s.best.missing) {
		s.exactly(0, false)
	}
}

// advance makes one round of the search of a trial; it reports whether a better plan
// was found.
func (t *trial) advance() bool {
	s := t.s
	if len(s.usable) == 0 || s.workers[0].stop() {
		return false
	}
	t.rounds++
	better := s.round(t.rounds)
	if t.rounds%s.diveEvery() == 0 {
		better = s.plunge(t.rounds) || better
	}
	if t.rounds == trialRounds+1 {
		better = s.exactly(0, better)
	}
	return s.exactly(t.rounds, better)
}

// finish makes the plan of a trial out of what was found, of whole copies alone.
func (t *trial) finish(q *glueUps) {
	st := t.e.whole(t.s, t.s.best)
	t.plan = t.e.plan(st)
	pieces := made(t.s.p, st)
	t.made = make(composition, len(q.sets))
	for i := range t.e.groups {
		g := &t.e.groups[i]
		t.made[g.set] = append(t.made[g.set], slices.Repeat([]int{g.slices}, g.copies(pieces))...)
	}
	for k, u := range q.kinds {
		t.made[k] = u.settled(t.made[k])
	}
}
