package solver

import (
	"fmt"
	"math/rand"

	"sawbill/layout"
	"sawbill/solver/internal/column"
)

// small plans jobs of few boards and pieces as a whole, by one search over all
// boards together (column.Together): first for less missing, then for less cost
// with the same pieces made. What it goes through to the end it proves. It is
// tried again with more work as the rounds go on.
type small struct {
	s      *search
	boards map[int]*column.Board // ready, by twin
	next   int                   // the round in which it is tried next
	work   int                   // that it may do then
	proven map[string]layout.Money
	least  map[string]bool // by what is made: no plan leaves less missing
}

// What counts as small, and how much work is done on it: the first time, and at
// most. A unit takes some twenty nanoseconds; a million of them take at most about
// a hundred megabytes of memory, which are then given back.
const (
	smallBoards = 8
	smallPieces = 60
	smallSteps  = 4_000_000 // of one pricing of a board on which every position is tried
	firstWork   = 300_000
	mostWork    = 6_000_000
)

// newSmall is nil for a job that is not small.
func (s *search) newSmall() *small {
	if n := len(s.usable); n == 0 || n > smallBoards || total(wanted(s.p)) > smallPieces {
		return nil
	}
	return &small{
		s: s, boards: map[int]*column.Board{}, work: firstWork,
		proven: map[string]layout.Money{}, least: map[string]bool{},
	}
}

func total(counts []int) int {
	sum := 0
	for _, n := range counts {
		sum += n
	}
	return sum
}

// exactly looks for a better plan than the best after round n: in any job for one
// that makes what is missing, and in a small one as a whole, in rounds 0, 1, 2, 4,
// 8 and so on with twice the work each time. better says that
// the round found one; it reports whether there is one now.
func (s *search) exactly(n int, better bool) bool {
	if n == 0 {
		s.small = s.newSmall()
	}
	better = s.makeMissing() || better
	q := s.small
	if q == nil || n < q.next || s.workers[0].stop() {
		return better
	}
	q.next = max(1, 2*n)
	for q.improve() {
		better = true
	}
	q.work = min(2*q.work, mostWork)
	q.redraw()
	return better
}

// redraw lets the blanks of boards on which not every position is tried start
// elsewhere the next time.
func (q *small) redraw() {
	rng := rand.New(rand.NewSource(q.s.rng.Int63()))
	for _, b := range q.s.usable {
		if twin := q.s.quick.twin[b]; twin == b && q.boards[b] != nil {
			q.boards[b] = q.boards[b].WithCuts(rng)
		}
	}
}

// improve reports whether it found a better plan.
func (q *small) improve() bool {
	if wants(q.s.best.missing) && !q.least[key(made(q.s.p, q.s.best))] && q.makeMore() {
		return true
	}
	bound, ok := q.proven[key(made(q.s.p, q.s.best))]
	return !(ok && bound == q.s.best.cost()) && q.costLess()
}

func key(counts []int) string { return fmt.Sprint(counts) }

// makeMore looks for a plan with less missing, or as much at less cost.
func (q *small) makeMore() bool {
	p := q.s.p
	price, exact := rankPrices(p, q.s.costOf(q.s.usable))
	if price == nil {
		return false
	}
	know := made(p, q.s.best)
	known := worthOf(know, price) - column.FromMoney(q.s.best.cost())
	t := q.together(price, wanted(p))
	found := t.Solve(known)
	if exact && t.Exact() && found.Bound <= worthOf(know, price) {
		q.least[key(know)] = true
	}
	return q.take(found.Columns)
}

// costLess looks for a plan that makes the same for less.
func (q *small) costLess() bool {
	p := q.s.p
	price := make([]column.Value, len(p.Bill))
	for i := range price {
		price[i] = column.FromMoney(q.s.costOf(q.s.usable)) + column.Cash
	}
	limits := made(p, q.s.best)
	all := worthOf(limits, price)
	t := q.together(price, limits)
	found := t.Solve(all - column.FromMoney(q.s.best.cost()))
	if t.Exact() {
		q.prove(limits, all-found.Bound)
	}
	return q.take(found.Columns)
}

// prove remembers that no plan that makes so many pieces costs less than a value;
// costs are whole ten-thousandths.
func (q *small) prove(made []int, least column.Value) {
	bound := layout.Money((max(0, least) + column.Cash - 1) / column.Cash)
	q.proven[key(made)] = max(q.proven[key(made)], bound)
}

// exactBound is a lower bound on the cost of every plan that makes at least the
// pieces of the best one, proven by going through all of them; ok is false where
// there is none. It may be below what prices prove.
func (s *search) exactBound() (bound layout.Money, ok bool) {
	if s.small == nil {
		return 0, false
	}
	bound, ok = s.small.proven[key(made(s.p, s.best))]
	return bound, ok
}

// leastMissing reports whether it is proven that no plan leaves less missing than
// the best one, by rank and volume.
func (s *search) leastMissing() bool {
	return !wants(s.best.missing) || s.unmatched == nil && s.small != nil && s.small.least[key(made(s.p, s.best))]
}

// together makes the boards ready to be searched for no more than limits.
func (q *small) together(price []column.Value, limits []int) *column.Together {
	s := q.s
	var boards []*column.Board
	var costs []column.Value
	for _, b := range s.usable {
		boards, costs = append(boards, q.board(b)), append(costs, column.FromMoney(s.p.Stock[b].Cost))
	}
	t := column.NewTogether(boards, costs, price, s.prices(), limits, q.work, s.workers[0].stop)
	known := worthOf(made(s.p, s.best), price) - column.FromMoney(s.best.cost())
	t.Relax(smallRelax, known)
	return t
}

// smallRelax is how often the prices at which columns are compared are moved.
const smallRelax = 12

// board is a board on which every position is tried, where that is not too much.
func (q *small) board(i int) *column.Board {
	twin := q.s.quick.twin[i]
	if q.boards[twin] == nil {
		q.boards[twin] = column.NewExact(q.s.p, &q.s.p.Stock[i], smallSteps)
	}
	if q.boards[twin] == nil {
		q.boards[twin] = q.s.quick.board(i)
	}
	return q.boards[twin]
}

// take makes a plan of columns and reports whether it is better than the best.
func (q *small) take(columns []column.Column) bool {
	var boards []*column.Board
	for _, b := range q.s.usable {
		boards = append(boards, q.board(b))
	}
	return q.s.recut(q.s.usable, boards, columns)
}

func worthOf(counts []int, price []column.Value) column.Value {
	var sum column.Value
	for i, n := range counts {
		sum += column.Value(n) * price[i]
	}
	return sum
}
