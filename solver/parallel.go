package solver

import (
	"cmp"
	"slices"
	"sync"

	"sawbill/layout"
	"sawbill/solver/internal/ceiling"
	"sawbill/solver/internal/column"
)

// worker is one goroutine's means of planning.
type worker struct {
	p     *layout.Problem
	quick *pricer
	bench column.Bench
	high  ceiling.Bench
	looks int // steps with which boards were looked at, in all
	stop  func() bool
}

// solve answers the tasks, several side by side, and joins the answers by index. Those that
// take the longest come first: then the workers end at about the same time.
func (s *search) solve(tasks []*task) []*answer {
	answers, order := make([]*answer, len(tasks)), make([]int, len(tasks))
	for k := range order {
		order[k] = k
	}
	slices.SortStableFunc(order, func(i, j int) int { return cmp.Compare(s.effort(tasks[j]), s.effort(tasks[i])) })
	s.each(len(tasks), func(w *worker, n int) {
		k := order[n]
		answers[k] = w.plan(tasks[k], s.values)
	})
	return answers
}

// effort is about how long a task takes, in pricings of the quick routine.
func (s *search) effort(t *task) int {
	switch n := len(t.boards); {
	case t.pricing == 0:
		return 10 * n
	case t.pricer != s.quick:
		return 5 * n
	default:
		return n
	}
}

// priceAll finds a good column for every board, with any number of copies, and a
// cut within limits; nil when stopped.
func (s *search) priceAll(by *pricer, boards []int, price []column.Value, limits []int) []column.Priced {
	found := make([]column.Priced, len(boards))
	s.each(len(boards), func(w *worker, k int) {
		if !w.stop() {
			found[k] = w.bench.Priced(s.placed(by, boards[k]), price, limits)
		}
	})
	if s.workers[0].stop() {
		return nil
	}
	return found
}

// placed is a board whose blanks start where they usually do, or where there is a sketch
// as in the last one.
func (s *search) placed(by *pricer, b int) *column.Board {
	board := by.board(b)
	if sketches := s.pool.sketches[s.quick.twin[b]]; len(sketches) > 0 {
		return board.Along(sketches[len(sketches)-1])
	}
	return board
}

// pricing is how boards are priced for the master: quickly, or swiftly where
// there are very many.
func (s *search) pricing() *pricer {
	if len(s.usable) > manyBoards {
		return s.swift
	}
	return s.quick
}

// each does n things, several side by side. Goroutines live here only.
func (s *search) each(n int, do func(w *worker, k int)) {
	next := make(chan int)
	var wg sync.WaitGroup
	for _, w := range s.workers {
		wg.Go(func() {
			for k := range next {
				do(w, k)
			}
		})
	}
	for k := range n {
		next <- k
	}
	close(next)
	wg.Wait()
}
