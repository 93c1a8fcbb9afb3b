package solver

import (
	"fmt"
	"slices"
	"sync"

	"sawbill/layout"
	"sawbill/solver/internal/column"
)

// pricer makes boards ready for pricing when they are first asked for. Boards
// that are alike share one. It is safe for use by several goroutines.
type pricer struct {
	p      *layout.Problem
	cfg    column.Config
	twin   []int // by board: the first board that is like it
	mu     sync.Mutex
	boards map[int]*column.Board
}

func newPricer(p *layout.Problem, cfg column.Config) *pricer {
	q := &pricer{p: p, cfg: cfg, boards: map[int]*column.Board{}, twin: make([]int, len(p.Stock))}
	first := map[string]int{}
	for i := range p.Stock {
		key := likeness(p, &p.Stock[i])
		if _, known := first[key]; !known {
			first[key] = i
		}
		q.twin[i] = first[key]
	}
	return q
}

// with is a pricer of the same boards in another configuration.
func (q *pricer) with(cfg column.Config) *pricer {
	return &pricer{p: q.p, cfg: cfg, twin: q.twin, boards: map[int]*column.Board{}}
}

// likeness is the same for boards that can be cut in the same ways for the same
// money.
func likeness(p *layout.Problem, b *layout.Board) string {
	like := *b
	like.Mark, like.Base, like.Place, like.Note, like.Grade = "", "", "", "", ""
	key := fmt.Sprintf("%v", like)
	for i := range p.Bill {
		part := &p.Bill[i]
		if slices.Contains(part.From, b.Mark) || slices.Contains(part.NotFrom, b.Mark) {
			key += fmt.Sprint("/", i, p.Allows(part, b))
		}
	}
	return key
}

// board is the i-th board, ready.
func (q *pricer) board(i int) *column.Board {
	q.mu.Lock()
	defer q.mu.Unlock()
	i = q.twin[i]
	b, ok := q.boards[i]
	if !ok {
		b = column.New(q.p, &q.p.Stock[i], q.cfg)
		q.boards[i] = b
	}
	return b
}
