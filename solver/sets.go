package solver

import (
	"cmp"
	"slices"

	"sawbill/layout"
	"sawbill/solver/internal/ceiling"
	"sawbill/solver/internal/column"
)

// sets proves more of jobs of few boards: a plan cuts some set of boards, so the
// least that is proven over all sets holds for every plan. That a set is cut, all
// of it, is worth knowing: no board is paid for in part, and one that gives less
// than it costs counts as well. Of a set
//
//	L(p) = sum of d * p - sum over its boards of (most(board, p) - cost)
//
// at prices p of its own. Boards and parts that have nothing to do with the others,
// such as those of another species, are a job by itself: what is proven of each adds up.
type sets struct {
	s         *search
	made      []int
	groups    []*setGroup
	pace      pace      // of counting what boards make
	countable bool      // what they make is counted
	counted   *boardSet // the last of which that was done; nil when it was done to the end
}

// setGroup is boards that have parts in common, and every set of them.
type setGroup struct {
	boards []int
	made   []int // of the parts that they may give, and no others
	all    []*boardSet
	least  layout.Money // where there are too many sets to go through: what prices prove
}

// boardSet is boards that are all cut, and what is proven of plans that do so.
type boardSet struct {
	boards  []int
	least   layout.Money
	attempt *attempt
	best    *attempt // of its attempts the one that proves the most
	proven  layout.Money
	looks   int
	job     *ceiling.Job // counts what its boards make
	order   []int        // the boards in the order of the job
	counted bool         // to the end
}

// mostSets is the most sets of one group for which they are gone through.
const mostSets = 128

// newSets is nil for a job of which every group has many boards.
func (s *search) newSets() *sets {
	q := &sets{s: s, made: s.goal(), groups: s.apart()}
	few := len(q.groups) == 0
	for _, g := range q.groups {
		g.all = s.setsOf(g.boards)
		few = few || g.all != nil
	}
	if !few {
		return nil
	}
	q.countable = q.mayCount()
	return q
}

// setsOf lists every set of some boards but none at all; nil where there are too many.
// Of boards that are alike the first so many stand for any so many.
func (s *search) setsOf(from []int) []*boardSet {
	groups := s.alikeAmong(from)
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
	var all []*boardSet
	for _, b := range boards {
		all = append(all, &boardSet{boards: b, least: s.leastNet(b)})
	}
	return all
}

// apart divides the usable boards into groups that have no part in common, as far as
// the goal asks for it. With glue-ups all are one group.
func (s *search) apart() []*setGroup {
	goal := s.goal()
	if s.copies != nil {
		return []*setGroup{{boards: s.usable, made: goal}}
	}
	var groups []*setGroup
	for _, b := range s.usable {
		own := &setGroup{boards: []int{b}, made: make([]int, len(goal))}
		for i, gives := range s.gives[b] {
			if gives {
				own.made[i] = goal[i]
			}
		}
		groups = slices.DeleteFunc(groups, func(g *setGroup) bool { return own.takeIn(g) })
		if wants(own.made) {
			groups = append(groups, own)
		}
	}
	return groups
}

// takeIn adds a group that has a part in common, and reports whether it has.
func (g *setGroup) takeIn(other *setGroup) bool {
	common := false
	for i, n := range g.made {
		common = common || n > 0 && other.made[i] > 0
	}
	if !common {
		return false
	}
	g.boards = append(slices.Clone(other.boards), g.boards...)
	for i, n := range other.made {
		g.made[i] = max(g.made[i], n)
	}
	return true
}

// alike lists the usable boards, those that are alike together.
func (s *search) alike() [][]int { return s.alikeAmong(s.usable) }

func (s *search) alikeAmong(boards []int) [][]int {
	at := map[int]int{}
	var groups [][]int
	for _, b := range boards {
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

// A set is looked at so many times at most, after the first at prices that fit what was
// seen. The last looks are the sharpest, and come at once when the prices are settled.
const (
	mostSetLooks = 24
	lastSetLooks = 4
)

// setWork is the steps with which the boards of a set are looked at, time by time.
func setWork(look int) int {
	switch {
	case look == 0:
		return firstLook / 4
	case look < mostSetLooks-lastSetLooks:
		return firstLook
	}
	return 4 * firstLook
}

// setSteps is how many sets are looked at after a round.
const setSteps = 1

// step looks more sharply at the set of which the least is proven, in the group that
// lacks the most; it reports whether there was one.
func (q *sets) step() bool {
	if q == nil {
		return false
	}
	if m := q.s.goal(); !slices.Equal(m, q.made) {
		if next := q.s.newSets(); next != nil {
			*q = *next
		}
	}
	q.borrow()
	var most layout.Money
	var at *setGroup
	for _, g := range q.groups {
		if g.all == nil || q.ended(g.weakest()) {
			continue
		}
		if lacks := q.s.spentOn(g.boards) - g.weakest().least; lacks > most {
			most, at = lacks, g
		}
	}
	if at == nil {
		return false
	}
	switch set := at.weakest(); {
	case set.looks < countedLooks || set.best == nil || !q.counting():
		q.look(at, set)
		// The cuttings with which it was bounded are cuts that no dive has seen.
		q.s.fresh = q.s.fresh || set.looks == countedLooks && q.counting()
	case q.pace.turn(q.s, countedShare):
		q.count(at, set)
		q.pace.end(q.s)
	}
	return true
}

// ended reports whether no more can be proven of a set.
func (q *sets) ended(set *boardSet) bool {
	if q.counting() {
		return set.counted
	}
	return set.looks == mostSetLooks
}

// weakest is the set of which the least is proven.
func (g *setGroup) weakest() *boardSet {
	return slices.MinFunc(g.all, func(a, b *boardSet) int { return cmp.Compare(a.least, b.least) })
}

// proven is what is proven of what a group costs.
func (g *setGroup) proven() layout.Money {
	switch {
	case !wants(g.made): // no board need be cut
		return 0
	case g.all == nil:
		return g.least
	}
	return g.weakest().least
}

// spentOn is what the plan at hand pays for some boards.
func (s *search) spentOn(boards []int) layout.Money {
	if s.copies != nil {
		return s.atHand()
	}
	var sum layout.Money
	for _, b := range boards {
		if c := s.best.cuts[b]; c != nil {
			sum += s.best.net(b, c)
		}
	}
	return sum
}

// borrow takes what the prices of the whole job prove of every set.
func (q *sets) borrow() {
	for _, a := range q.s.proof.attempts {
		if !a.done || a.lent {
			continue
		}
		a.lent = true
		for _, g := range q.groups {
			g.least = max(g.least, a.boundWithin(g.boards, g.made))
			for _, set := range g.all {
				set.least = max(set.least, a.boundOf(set.boards, g.made))
			}
		}
	}
}

func (q *sets) look(g *setGroup, set *boardSet) {
	s := q.s
	switch {
	case set.attempt == nil:
		d := s.newDual(s.newMaster(set.boards, g.made, true))
		d.run(d.most(), fullEffort)
		set.attempt = s.newAttempt(d)
	default:
		set.attempt = set.attempt.reprice(set.attempt.dual, set.best)
		value := set.attempt.dual.value
		if value-float64(column.FromMoney(set.proven)) < closeDual*value {
			set.looks = max(set.looks, mostSetLooks-lastSetLooks)
		}
	}
	work := setWork(set.looks)
	set.looks++
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
	bound := a.bound(g.made).bound
	set.least = max(set.least, bound)
	if set.best == nil || bound > set.proven {
		set.best, set.proven = a, bound
	}
}

// bound is the least cost that is proven of plans that make what the best one
// makes; ok is false when nothing is.
func (q *sets) bound() (least layout.Money, ok bool) {
	if q == nil || !slices.Equal(q.made, q.s.goal()) {
		return 0, false
	}
	for _, g := range q.groups {
		least += g.proven()
	}
	return least, true
}
