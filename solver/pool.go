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
}

const poolSize = 200 // cuts a board

func newPool(boards int) *pool {
	return &pool{make([][]*column.Cut, boards), make([]map[string]int, boards), make([]int, boards)}
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
	if len(q.cuts[board]) < poolSize {
		q.seen[board][key] = len(q.cuts[board])
		q.cuts[board] = append(q.cuts[board], c)
		return
	}
	at := q.next[board]
	delete(q.seen[board], fmt.Sprint(q.cuts[board][at].Counts))
	q.cuts[board][at], q.seen[board][key] = c, at
	q.next[board] = (at + 1) % poolSize
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
