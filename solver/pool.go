package solver

import (
	"fmt"

	"sawbill/layout"
	"sawbill/solver/internal/column"
)

// pool remembers the cuts that the search has seen, by board: of those that make
// the same pieces the one that costs least, and only the last so many.
type pool struct {
	cuts [][]*column.Cut
	seen []map[string]int // by board: where the cut with those pieces is
	next []int            // by board: which is forgotten next
	most []int            // by board: how many are kept
	// sketches are the last few that boards were bounded with, by the first board alike.
	sketches map[int][]*layout.Node
}

const (
	poolSize  = 200    // cuts a board
	leastPool = 20     // even where there are very many boards
	poolCuts  = 60_000 // cuts in all, about
	alikeSize = 1000   // at most, of the first of boards that are alike, which stands for the others
)

// newPool makes room for the cuts of boards; twin is by board the first that is like
// it.
func newPool(twin []int) *pool {
	n := len(twin)
	q := &pool{make([][]*column.Cut, n), make([]map[string]int, n), make([]int, n), make([]int, n), map[int][]*layout.Node{}}
	for b, first := range twin {
		q.most[b] = min(poolSize, max(leastPool, poolCuts/n))
		if b != first {
			q.most[first] = min(q.most[first]+poolSize/10, alikeSize)
		}
	}
	return q
}

// known lists cuts of a board, no more than poolSize.
func (q *pool) known(board int) []*column.Cut {
	cuts := q.cuts[board]
	return cuts[max(0, len(cuts)-poolSize):]
}

// add remembers a cut.
func (q *pool) add(board int, c *column.Cut) {
	if q.seen[board] == nil {
		q.seen[board] = map[string]int{}
	}
	key := fmt.Sprint(c.Counts)
	if at, known := q.seen[board][key]; known {
		if c.Worth > q.cuts[board][at].Worth {
			q.cuts[board][at] = c
		}
		return
	}
	if len(q.cuts[board]) < q.most[board] {
		q.seen[board][key] = len(q.cuts[board])
		q.cuts[board] = append(q.cuts[board], c)
		return
	}
	at := q.next[board]
	delete(q.seen[board], fmt.Sprint(q.cuts[board][at].Counts))
	q.cuts[board][at], q.seen[board][key] = c, at
	q.next[board] = (at + 1) % q.most[board]
}

// mostSketches is how many sketches of a board are kept.
const mostSketches = 6

// sketch remembers a sketch.
func (q *pool) sketch(board int, s *layout.Node) {
	list := append(q.sketches[board], s)
	q.sketches[board] = list[max(0, len(list)-mostSketches):]
}

// found is a cut that a task came across, for the pool.
type found struct {
	board int
	cut   *column.Cut
}

// remember adds what the tasks found, in their order.
func (s *search) remember(answers []*answer) {
	for _, a := range answers {
		if a == nil {
			continue
		}
		for _, f := range a.found {
			s.pool.add(f.board, f.cut)
		}
	}
}

// netValue is the net cost of a cut as a value.
func netValue(p *layout.Problem, board int, c *column.Cut) float64 {
	return float64(column.FromMoney(p.Stock[board].Cost - c.Worth))
}
