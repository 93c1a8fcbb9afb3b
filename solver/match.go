package solver

import (
	"cmp"
	"slices"

	"sawbill/layout"
	"sawbill/solver/internal/column"
)

// Pieces with the same match word come from one board. The search plans a job in which
// such pieces may come from no other. For every word the linear programme over cuts chooses
// the board; where it has none that holds them all, or there are glue-ups, those are tried
// on which most of the pieces find room. What is proven is proven of the job as it was
// asked for, and heeds the words (heeds.go).

// How many boards are tried for a word, and how many rounds each.
const (
	mostHomes  = 3
	homeRounds = 2
)

// swiftHomes is p with the likeliest board for every word.
func swiftHomes(p *layout.Problem, o Options, stop func() bool) *layout.Problem {
	for _, word := range words(p) {
		home := 0
		if likely := likelyHomes(p, word, o, stop); len(likely) > 0 {
			home = likely[0]
		}
		p = withHome(p, word, home)
	}
	return p
}

// withHomes is a search of the same job with a board for the pieces of every word, beside
// s, of which things are proven.
func (s *search) withHomes() *search {
	s.settleIslands(s.first())
	s.settle(s.best)
	p, stop := s.p, s.workers[0].stop
	for w, word := range words(p) {
		found := false
		for _, b := range s.master.m.hosts(s.heeds.words[w]) {
			if q := withHome(p, word, b); s.holdsWords(q, b) {
				found, p = true, q
				break
			}
		}
		if !found {
			p = bestHome(p, word, s.o, stop)
		}
	}
	q := newSearch(p, s.o, stop)
	q.unmatched = s
	s.workers = q.workers // so that search and proof know of each other's work
	return q
}

// holdsWords reports whether a board holds all the pieces of the words whose home it is.
func (s *search) holdsWords(p *layout.Problem, board int) bool {
	price := make([]column.Value, len(p.Bill))
	for i := range p.Bill {
		if part := &p.Bill[i]; part.Match != "" && slices.Equal(part.From, []string{p.Stock[board].Mark}) {
			price[i] = column.Value(s.start[i]) + 1
		}
	}
	cut := s.workers[0].bench.Within(column.New(p, &p.Stock[board], column.Quick()), price, wanted(p), 1)
	for i := range p.Bill {
		if price[i] > 0 && (cut.Root == nil || cut.Counts[i] < p.Bill[i].Quantity) {
			return false
		}
	}
	return true
}

// hosts are the boards on which the programme has pieces of a word made, those first on
// which it has the most, and of boards that are alike one after the other; none where there
// are too many boards to tell them apart.
func (m *master) hosts(rows []int) []int {
	if _, solved := m.solve(); !solved || !m.keepsAll() {
		return nil
	}
	held := map[int]float64{}
	var list []int
	for i := range m.raw {
		c := &m.raw[i]
		for _, row := range rows {
			n := m.prog.X(c.at) * float64(min(c.counts[row], m.demand[row]))
			if n < minShare {
				continue
			}
			m.eachTwin(c.board, func(b int) {
				if held[b] == 0 {
					list = append(list, b)
				}
				held[b] += n
			})
		}
	}
	slices.SortStableFunc(list, func(a, b int) int { return cmp.Compare(held[b], held[a]) })
	return list
}

// minShare is more than rounding makes of nothing.
const minShare = 1e-6

// homes is p with a board for the pieces of every word, found by trying; p itself where
// there are no words.
func homes(p *layout.Problem, o Options, stop func() bool) *layout.Problem {
	for _, word := range words(p) {
		p = bestHome(p, word, o, stop)
	}
	return p
}

// words lists the match words, in the order in which the bill serves them.
func words(p *layout.Problem) []string {
	rank := map[string]int{}
	var list []string
	for i := range p.Bill {
		word, r := p.Bill[i].Match, p.Bill[i].Rank()
		if word == "" {
			continue
		}
		if _, known := rank[word]; !known {
			list, rank[word] = append(list, word), r
		}
		rank[word] = min(rank[word], r)
	}
	slices.SortStableFunc(list, func(a, b string) int { return cmp.Compare(rank[a], rank[b]) })
	return list
}

// bestHome chooses a board for one word.
func bestHome(p *layout.Problem, word string, o Options, stop func() bool) *layout.Problem {
	var best *layout.Problem
	var least layout.Score
	for _, b := range likelyHomes(p, word, o, stop) {
		q := withHome(p, word, b)
		if score := tryHome(q, o, stop); best == nil || score.Compare(least) < 0 {
			best, least = q, score
		}
		if stop() {
			break
		}
	}
	if best == nil { // no board gives any of them
		return withHome(p, word, 0)
	}
	return best
}

// withHome is p with the pieces of a word allowed on one board alone.
func withHome(p *layout.Problem, word string, board int) *layout.Problem {
	q := *p
	q.Bill = slices.Clone(p.Bill)
	for i := range q.Bill {
		part := &q.Bill[i]
		switch mark := p.Stock[board].Mark; {
		case part.Match != word:
		case len(part.From) == 0 || slices.Contains(part.From, mark):
			part.From = []string{mark}
		default:
			part.NotFrom = append(slices.Clone(part.NotFrom), mark)
			part.From = []string{mark}
		}
	}
	return &q
}

// likelyHomes lists boards that could hold pieces of a word: those first that hold
// the most of them, and among these the cheaper ones.
func likelyHomes(p *layout.Problem, word string, o Options, stop func() bool) []int {
	s := newSearch(p, o, stop)
	price := make([]column.Value, len(p.Bill))
	for i := range p.Bill {
		if p.Bill[i].Match == word {
			price[i] = column.Value(s.start[i]) + 1
		}
	}
	held := map[int]column.Value{}
	var list []int
	for _, b := range s.usable {
		if s.quick.twin[b] != b || stop() && len(list) > 0 {
			continue
		}
		if c := s.workers[0].bench.Within(s.swift.board(b), price, wanted(p), 1); c.Value > 0 {
			held[b] = c.Value
			list = append(list, b)
		}
	}
	slices.SortStableFunc(list, func(a, b int) int {
		return cmp.Or(cmp.Compare(held[b], held[a]), cmp.Compare(p.Stock[a].Cost, p.Stock[b].Cost))
	})
	return list[:min(len(list), mostHomes)]
}

// tryHome is the score of a plan that a few rounds find.
func tryHome(p *layout.Problem, o Options, stop func() bool) layout.Score {
	s := newSearch(p, o, stop)
	s.settleIslands(s.first())
	for n := 1; n <= homeRounds && !stop(); n++ {
		s.round(n)
	}
	return s.best.score()
}
