package solver

import (
	"cmp"
	"math/rand"
	"slices"

	"sawbill/layout"
	"sawbill/solver/internal/column"
)

// shortBoards is how many boards are cut anew to make what is missing, and
// shortWork what that may take.
const (
	shortBoards = 3
	shortWork   = 150_000
)

// makeMissing tries to make something that the best plan leaves missing: a few
// boards that could hold it are cut anew together, for their own pieces and all
// that is missing, at prices at which a piece of a better rank displaces any number
// of others. It reports whether the plan became better.
func (s *search) makeMissing() bool {
	w := s.workers[0]
	if !s.short() || s.leastMissing() || w.stop() {
		return false
	}
	if s.fillIn() {
		return true
	}
	rng := rand.New(rand.NewSource(s.rng.Int63()))
	boards := s.holders(s.drawMissing(rng), rng)
	limits := slices.Clone(s.best.missing)
	var ready []*column.Board
	var costs []column.Value
	var known column.Value
	for _, b := range boards {
		ready = append(ready, s.quick.board(b).WithCuts(rng))
		costs = append(costs, column.FromMoney(s.p.Stock[b].Cost))
		if c := s.best.cuts[b]; c != nil {
			known -= column.FromMoney(s.best.net(b, c))
			for i, n := range c.Counts {
				limits[i] += n
			}
		}
	}
	price, _ := rankPrices(s.p, s.costOf(boards))
	if price == nil {
		return false
	}
	for i, n := range limits {
		known += column.Value(n-s.best.missing[i]) * price[i]
	}
	t := column.NewTogether(ready, costs, price, s.prices(), limits, shortWork, w.stop)
	t.Relax(smallRelax, known)
	return s.recut(boards, ready, t.Solve(known).Columns)
}

// drawMissing draws a part that is missing and that some board could hold, one of
// the best rank mostly.
func (s *search) drawMissing(rng *rand.Rand) (row int) {
	var rows []int
	for i, n := range s.best.missing {
		if n > 0 && s.givable(i) {
			rows = append(rows, i)
		}
	}
	slices.SortStableFunc(rows, func(a, b int) int { return cmp.Compare(s.p.Bill[a].Rank(), s.p.Bill[b].Rank()) })
	return rows[min(rng.Intn(len(rows)), rng.Intn(len(rows)))]
}

// holders draws some of the boards that could hold a part.
func (s *search) holders(row int, rng *rand.Rand) []int {
	part := &s.p.Bill[row]
	could := slices.DeleteFunc(slices.Clone(s.usable), func(b int) bool {
		board := &s.p.Stock[b]
		return !mayGive(s.p, part, board)
	})
	boards := some(could, shortBoards, rng)
	slices.Sort(boards)
	return boards
}

// recut cuts some boards of the best plan in other ways, none where columns is
// nil, and reports whether that is better.
func (s *search) recut(boards []int, ready []*column.Board, columns []column.Column) bool {
	if columns == nil {
		return false
	}
	st := s.best.copy()
	for _, b := range boards {
		st.set(b, nil)
	}
	price := prices(s.p, s.values, st.missing)
	for k, b := range boards {
		if cut := ready[k].CutOf(columns[k], price); cut.Root != nil {
			st.set(b, &cut)
		}
	}
	return s.improve(st)
}

// costOf is what some boards cost together.
func (s *search) costOf(boards []int) layout.Money {
	var sum layout.Money
	for _, b := range boards {
		sum += s.p.Stock[b].Cost
	}
	return sum
}

// prices are those that the master settled on.
func (s *search) prices() []column.Value {
	settled := make([]column.Value, len(s.p.Bill))
	for i, v := range s.master.prices() {
		settled[i] = column.Value(v)
	}
	return settled
}
