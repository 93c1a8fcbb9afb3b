package choose

import (
	"math/rand"
	"testing"
)

// With nothing enumerated, all rests on splitting and on bounds.
func TestBranchingAlone(t *testing.T) {
	split := 0
	for seed := range int64(1000) {
		q := tiny(rand.New(rand.NewSource(seed)))
		if seed%2 == 0 {
			q = shop(seed, 4, 7, 3+int(seed%3))
		}
		want := q.brute(t)
		s := newSearch(newInstance(q.groups, q.demand, q.penalty, q.columns), 1<<20)
		s.ways = 0
		s.begin(nil)
		proven := s.run()
		if s.cost != want || !proven {
			t.Errorf("seed %d: cost %d, proven %v, best is %d", seed, s.cost, proven, want)
		}
		if 1<<20-s.left > q.groups+2 {
			split++
		}
	}
	if split < 50 {
		t.Errorf("only %d jobs split", split)
	}
}

// At any prices the bound of any node is below all that the node allows.
func TestBoundHoldsAtAnyPrices(t *testing.T) {
	for seed := range int64(2000) {
		rng := rand.New(rand.NewSource(seed))
		q := tiny(rng)
		s := newSearch(newInstance(q.groups, q.demand, q.penalty, q.columns), 0)
		for i := range s.price {
			s.price[i] = rng.Int63n(s.penalty[i]*s.scale + 1)
		}
		allowed := make([]bool, len(s.items))
		for k := range allowed {
			allowed[k] = rng.Intn(3) > 0
		}
		r, ok := s.look(allowed)
		if !ok {
			continue
		}
		bound := s.bound(allowed, r)
		if least := s.leastAllowed(allowed, make([]int, s.groups()), 0); bound > least*s.scale {
			t.Errorf("seed %d: bound %d, but one costs %d", seed, bound/s.scale, least)
		}
	}
}

// leastAllowed is the least cost over the choices of allowed items, from group g
// on.
func (s *search) leastAllowed(allowed []bool, chosen []int, g int) int64 {
	if g == s.groups() {
		return s.costOf(chosen)
	}
	least := int64(1 << 62)
	lo, hi := s.group(g)
	for k := lo; k < hi; k++ {
		if allowed[k] {
			chosen[g] = k
			least = min(least, s.leastAllowed(allowed, chosen, g+1))
		}
	}
	return least
}

func TestRoundingUp(t *testing.T) {
	for _, test := range []struct{ a, b, want int64 }{{7, 2, 4}, {6, 2, 3}, {0, 5, 0}, {-7, 2, -3}, {-6, 2, -3}, {-1, 5, 0}} {
		if got := ceil(test.a, test.b); got != test.want {
			t.Errorf("ceil(%d, %d) = %d, want %d", test.a, test.b, got, test.want)
		}
	}
}

// Jobs of the size that planning a few boards again gives are proven within a few
// hundred nodes; and from the best choice the same cost is proven again.
func TestShopSize(t *testing.T) {
	for seed := range int64(6) {
		q := shop(seed, 5, 60, 12)
		choice, cost, proven := q.best(nil, 2000)
		if !proven {
			t.Errorf("seed %d: not proven", seed)
		}
		if got := q.costOf(t, choice); got != cost {
			t.Errorf("seed %d: says %d, costs %d", seed, cost, got)
		}
		if _, again, proven := q.best(choice, 2000); again != cost || !proven {
			t.Errorf("seed %d: %d, then from there %d, proven %v", seed, cost, again, proven)
		}
	}
}

// Ten boards alike: two pieces fit each, nineteen are wanted. Nine full boards
// make eighteen, so all ten are needed, the last one with its cheaper column:
// 9*10 + 6 = 96. Without order among boards that are alike there would be ten
// factorial ways to say so.
func TestBoardsAlike(t *testing.T) {
	q := &job{groups: 10, demand: []int{19}, penalty: []int64{100}}
	for g := range q.groups {
		q.columns = append(q.columns, Column{g, 10, []int{2}}, Column{g, 6, []int{1}})
	}
	if choice, cost, proven := q.best(nil, 100); cost != 96 || !proven {
		t.Errorf("cost %d, proven %v by %v", cost, proven, choice)
	}
}

// On paper: both boards could make the four wanted, the second one cheaper; to
// fall short by one and use the first one's small column costs 3 + 2.
func TestOnPaper(t *testing.T) {
	q := &job{2, []int{4}, []int64{2}, []Column{{0, 8, []int{5}}, {1, 6, []int{4}}, {0, 3, []int{3}}}}
	choice, cost, proven := q.best([]int{0, -1}, 10)
	if cost != 5 || !proven || choice[0] != 2 || choice[1] != -1 {
		t.Errorf("cost %d, proven %v by %v", cost, proven, choice)
	}
}

func TestRefuses(t *testing.T) {
	good := job{1, []int{2}, []int64{5}, []Column{{0, 1, []int{1}}}}
	tests := map[string]func(q *job) []int{
		"no such group":          func(q *job) []int { q.columns[0].Group = 1; return nil },
		"too few counts":         func(q *job) []int { q.columns[0].Counts = nil; return nil },
		"a count below 0":        func(q *job) []int { q.columns[0].Counts = []int{-1}; return nil },
		"a demand below 0":       func(q *job) []int { q.demand = []int{-1}; return nil },
		"a penalty below 0":      func(q *job) []int { q.penalty = []int64{-1}; return nil },
		"one penalty missing":    func(q *job) []int { q.penalty = nil; return nil },
		"penalties beyond reach": func(q *job) []int { q.penalty = []int64{1 << 60}; return nil },
		"costs beyond reach":     func(q *job) []int { q.columns[0].Cost = -1 << 63; return nil },
		"a start of other size":  func(q *job) []int { return []int{} },
		"a start that is no one": func(q *job) []int { return []int{1} },
	}
	for name, spoil := range tests {
		t.Run(name, func(t *testing.T) {
			q := good
			q.columns = []Column{good.columns[0]}
			start := spoil(&q)
			defer func() {
				if recover() == nil {
					t.Error("accepted")
				}
			}()
			q.best(start, 1)
		})
	}
}
