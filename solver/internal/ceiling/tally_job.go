package ceiling

import (
	"cmp"
	"slices"

	"sawbill/layout"
)

// Job bounds the cost of making certain pieces from a few boards, all of which are cut: it lists
// what each board may hold and seeks the cheapest choice of one way a board that makes them all.
// It looks more closely at the boards of that choice, and again, until it is known to the end.
// Ways that are worth so much less than the best that no plan with one costs less than some
// limit are left out (Baldacci, Christofides & Mingozzi 2008). The limit is close above what
// prices prove at first, and is raised as long as nothing is found that costs less.
type Job struct {
	offers []Offer
	price  []Value
	boards []*Counted
	most   []Value // by board, what it is worth without limits
	n      *counter
	priced Value // what prices prove
	known  Value // the cost of a plan
	limit  Value // plans that cost less are sought
	bound  Value
	choice []*Way
	each   func(n int, do func(k int)) // does things side by side
	ended  bool
	exact  bool
}

// Offer is a board, made ready, with its cost and the most that it is worth at the prices.
type Offer struct {
	Board      *Board
	Cost, Most Value
}

// NewJob makes a job ready: boards, how many pieces of each row of the bill are made, prices of
// these, and the cost of a plan that is known. It is nil where there are more kinds of pieces
// than it can count. It does most steps of work a board and stops where stop says so.
func NewJob(offers []Offer, price []Value, made []int, known Value, most int, stop func() bool, each func(n int, do func(k int))) *Job {
	n := newCounter(made)
	if n == nil {
		return nil
	}
	j := &Job{each: each, n: n, known: fineScale * known}
	for _, v := range price {
		j.price = append(j.price, fineScale*v)
	}
	j.priced = n.worth(n.all(), j.price)
	for _, o := range offers {
		c := newCounted(o.Board, n, j.price, mostKept/len(offers), most, stop, each)
		o.Cost, o.Most = fineScale*o.Cost, fineScale*o.Most
		j.priced -= o.Most - o.Cost
		j.offers, j.boards, j.most = append(j.offers, o), append(j.boards, c), append(j.most, o.Most)
	}
	j.limit = j.priced
	return j
}

// least is what a board must be worth if all of them are to cost less than the limit.
func (j *Job) least(k int) Value { return j.most[k] - (j.limit - j.priced) }

// mostKept is how many values the boards of a job keep, of four bytes each.
const mostKept = 100_000_000

// firstShare is what share of the cost the limit is above what prices prove at first.
const firstShare = 200

// raise raises the limit; it reports false when no plan costs less than the one that is known.
func (j *Job) raise() bool {
	j.bound = max(j.bound, min(j.limit, j.known))
	if j.limit >= j.known {
		j.ended, j.exact = true, true
		return false
	}
	j.limit = min(j.known, j.priced+max(2*(j.limit-j.priced), j.known/firstShare))
	for k, c := range j.boards {
		c.begin(j.least(k))
	}
	return true
}

// Known tells that a plan is known that costs so much.
func (j *Job) Known(cost Value) { j.known = min(j.known, fineScale*cost) }

// Rest gives up the memory that the job can do without until it is taken up again.
func (j *Job) Rest() {
	for _, c := range j.boards {
		c.forget()
		clear(c.free)
	}
}

// Work is how many steps were made.
func (j *Job) Work() int {
	sum := 0
	for _, c := range j.boards {
		sum += c.b.Work()
	}
	return sum
}

// choosing is a choice of ways for the first boards.
type choosing struct {
	tally  tally
	cost   Value // of the boards less their offcuts
	lost   Value
	before int // the choice for the boards before
	way    int // of this board
}

// Step works out the cheapest choice and looks more closely at it; each does a number of things
// side by side. It reports false when there is nothing more to do.
func (j *Job) Step() bool {
	if j.ended || j.limit <= j.priced && !j.raise() {
		return false
	}
	j.each(len(j.boards), func(k int) { j.boards[k].find() })
	if slices.ContainsFunc(j.boards, func(c *Counted) bool { return c.found == nil }) {
		j.ended = slices.ContainsFunc(j.boards, func(c *Counted) bool { return c.b.ends() })
		return !j.ended
	}
	for k, c := range j.boards {
		if len(c.found) > 0 && c.found[0].All < j.most[k] { // limits make it worth less
			j.priced += j.most[k] - c.found[0].All
			j.most[k] = c.found[0].All
		}
	}
	for k, c := range j.boards {
		c.raise(j.least(k))
	}
	cost, choice := j.choose()
	if j.choice = choice; choice == nil || cost >= min(j.limit, j.known) {
		return j.raise()
	}
	j.bound = max(j.bound, cost)
	sharper := make([]bool, len(choice))
	j.each(len(choice), func(k int) { sharper[k] = j.boards[k].Sharpen(*choice[k]) })
	if !slices.Contains(sharper, true) {
		j.ended, j.exact = true, true
		return false
	}
	return true
}

// Found reports whether the cheapest choice is known to the end, so that it may be sketched.
func (j *Job) Found() bool { return j.exact && j.choice != nil && j.bound < j.known }

// choose is the cheapest choice of ways that makes everything; nil where there is none.
func (j *Job) choose() (Value, []*Way) {
	levels := [][]choosing{{{}}}
	for k, c := range j.boards {
		var next []choosing
		known := map[tally]int{}
		for i, s := range levels[k] {
			for m, v := range c.found {
				lost := s.lost + j.most[k] - v.All
				if lost > j.limit-j.priced {
					break
				}
				sum, ok := j.n.sum(s.tally, v.tally)
				if !ok {
					continue
				}
				now := choosing{sum, s.cost + j.offers[k].Cost - v.Worth, lost, i, m}
				if at, ok := known[sum]; !ok {
					known[sum] = len(next)
					next = append(next, now)
				} else if now.cost < next[at].cost {
					next[at] = now
				}
			}
		}
		slices.SortStableFunc(next, func(a, b choosing) int { return cmp.Compare(a.lost, b.lost) })
		levels = append(levels, next)
	}
	last := levels[len(levels)-1]
	at := slices.IndexFunc(last, func(s choosing) bool { return s.tally == j.n.all() })
	if at < 0 {
		return 0, nil
	}
	cost := last[at].cost
	choice := make([]*Way, len(j.boards))
	for k := len(j.boards) - 1; k >= 0; k-- {
		s := levels[k+1][at]
		choice[k] = &j.boards[k].found[s.way]
		at = s.before
	}
	return cost, choice
}

// Bound is what no plan that makes the pieces costs less than.
func (j *Job) Bound() Value { return max(0, j.bound) / fineScale }

// Cuttings are cuttings of the boards that hold what the cheapest choice does.
func (j *Job) Cuttings() []*layout.Node {
	list := make([]*layout.Node, len(j.boards))
	for k, v := range j.choice {
		list[k] = j.boards[k].Cutting(*v)
	}
	return list
}
