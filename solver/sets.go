package solver

import (
	"slices"

	"sawbill/layout"
)

// sets proves more of jobs of few boards: a plan cuts some set of boards, so the
// least that is proven over all sets holds for every plan. That a set is cut, all
// of it, is worth knowing: no board is paid for in part, and one that gives less
// than it costs counts as well. Of a set
//
//	L(p) = sum of d * p - sum over its boards of (most(board, p) - cost)
//
// at prices p of its own.
type sets struct {
	s    *search
	made []int
	all  []*boardSet
	// borrowed is how many attempts of the whole job were made use of.
	borrowed int
}

// boardSet is boards that are all cut, and what is proven of plans that do so.
type boardSet struct {
	boards  []int
	least   layout.Money
	attempt *attempt
	looks   int
}

// mostSets is the most sets of a job for which they are gone through.
const mostSets = 64

// newSets is nil for a job of many boards.
func (s *search) newSets() *sets {
	q := &sets{s: s, made: s.goal()}
	groups := s.alike()
	n := 1
	for _, g := range groups {
		if n *= len(g) + 1; n > mostSets {
			return nil
		}
	}
	var boards [][]int
	for _, g := range groups {
		for _, former := range append(slices.Clone(boards), nil) {
			for k := range g {
				boards = append(boards, append(slices.Clone(former), g[:k+1]...))
			}
		}
	}
	for _, b := range boards {
		q.all = append(q.all, &boardSet{boards: b, least: s.leastNet(b)})
	}
	return q
}

// alike lists the usable boards, those that are alike together.
func (s *search) alike() [][]int {
	at := map[int]int{}
	var groups [][]int
	for _, b := range s.usable {
		twin := s.quick.twin[b]
		if _, known := at[twin]; !known {
			at[twin] = len(groups)
			groups = append(groups, nil)
		}
		groups[at[twin]] = append(groups[at[twin]], b)
	}
	return groups
}

// leastNet is what boards cost at least when all their wood is kept as offcuts.
func (s *search) leastNet(boards []int) layout.Money {
	var sum layout.Money
	credit, whole := int64(s.p.Shop.OffcutCredit), int64(layout.CreditUnity)
	for _, b := range boards {
		cost := int64(s.p.Stock[b].Cost)
		sum += layout.Money(cost - cost/whole*credit - cost%whole*credit/whole)
	}
	return sum
}

// setLooks are the steps with which the boards of a set are looked at, time by
// time, after the first at prices that fit what was seen.
var setLooks = [...]int{16e6, 64e6, 256e6}

// setSteps is how many sets are looked at after a round.
const setSteps = 1

// step looks more sharply at the set of which the least is proven; it reports
// whether there was one.
func (q *sets) step() bool {
	if q == nil {
		return false
	}
	if m := q.s.goal(); !slices.Equal(m, q.made) {
		*q = *q.s.newSets()
	}
	q.borrow()
	weakest := slices.MinFunc(q.all, func(a, b *boardSet) int { return int(min(max(a.least-b.least, -1), 1)) })
	if weakest.looks == len(setLooks) || weakest.least >= q.s.atHand() {
		return false
	}
	q.look(weakest)
	return true
}

// borrow takes what the prices of the whole job prove of every set.
func (q *sets) borrow() {
	for _, a := range q.s.proof.attempts[q.borrowed:] {
		if !a.done {
			return
		}
		q.borrowed++
		for _, set := range q.all {
			set.least = max(set.least, a.boundOf(set.boards, q.made))
		}
	}
}

func (q *sets) look(set *boardSet) {
	s := q.s
	work := setLooks[set.looks]
	set.looks++
	switch {
	case set.attempt == nil:
		d := s.newDual(s.newMaster(set.boards, q.made, true))
		d.run(d.most(), fullEffort)
		set.attempt = s.newAttempt(d)
	case set.attempt.dual.worth != nil:
		set.attempt = s.newAttempt(set.attempt.dual.again(q.made, set.attempt.factors()))
	}
	a := set.attempt
	all := make([]int, len(a.boards))
	for k := range all {
		all[k] = k
	}
	a.look(all, work)
	if s.workers[0].stop() {
		return
	}
	a.done = true
	if bound, _ := a.bound(q.made); bound > set.least {
		set.least = bound
	}
}

// bound is the least cost that is proven of plans that make what the best one
// makes; ok is false when nothing is.
func (q *sets) bound() (least layout.Money, ok bool) {
	if q == nil || !slices.Equal(q.made, q.s.goal()) {
		return 0, false
	}
	if !wants(q.made) { // no board need be cut
		return 0, true
	}
	for k, set := range q.all {
		if k == 0 || set.least < least {
			least = set.least
		}
	}
	return least, true
}
