package solver

import (
	"cmp"
	"slices"

	"sawbill/layout"
	"sawbill/solver/internal/column"
)

// Pieces with the same match word come from one board. The search plans a job in
// which such pieces may come from no other: homes chooses a board for every word, by
// trying those on which most of its pieces find room. What is proven is proven of
// the job as it was asked for, without regard to the words, which can only cost
// more.

// How many boards are tried for a word, and how many rounds each.
const (
	mostHomes  = 3
	homeRounds = 2
)

// withHomes is a search of the same job with a board for the pieces of every word, beside
// s, of which things are proven.
func (s *search) withHomes() *search {
	s.settleIslands(s.first())
	s.settle(s.best)
	p := s.p
	for w, word := range words(p) {
		if b, ok := s.master.m.host(s.heeds.words[w]); ok {
			p = withHome(p, word, b)
		} else {
			p = bestHome(p, word, s.o, s.workers[0].stop)
		}
	}
	q := newSearch(p, s.o, s.workers[0].stop)
	q.unmatched = s
	s.workers = q.workers // so that search and proof know of each other's work
	return q
}

// host is the board on which the programme has most of the pieces of a word made; ok is
// false where none are.
func (m *master) host(rows []int) (board int, ok bool) {
	if _, solved := m.solve(); !solved {
		return 0, false
	}
	held := map[int]float64{}
	most := 0.0
	for i := range m.raw {
		c := &m.raw[i]
		for _, row := range rows {
			held[c.board] += m.prog.X(c.at) * float64(c.counts[row])
		}
		if held[c.board] > most+minShare {
			board, most, ok = c.board, held[c.board], true
		}
	}
	return board, ok
}

// minShare is more than rounding makes of nothing.
const minShare = 1e-6

// homes is p with a board for the pieces of every word; p itself where there are
// no words.
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
