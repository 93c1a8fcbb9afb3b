package solver

import (
	"testing"

	"sawbill/layout"
	"sawbill/solver/internal/exhaust"
)

// TestHeededBoundsAgainstAllPlans holds what is proven of tiny jobs with pieces that are to
// come from one board against the least that any plan of them costs.
func TestHeededBoundsAgainstAllPlans(t *testing.T) {
	made, more := 0, 0
	for seed := range int64(200) {
		p := exhaust.Tiny(seed)
		all := allPairs(p)
		for i := range p.Bill[:min(len(p.Bill), 1+int(seed%2))] {
			p.Bill[i].Match = []string{"top", "top", "rail"}[(int(seed)+i)%3]
		}
		s := newSearch(p, Options{Seed: seed, Workers: 1}, func() bool { return false })
		s.heeds.words = matched(p)
		q := s.withHomes()
		q.settleIslands(q.first())
		s.best = q.best
		s.proveRoughly(2e6)
		for range 4 {
			s.proof.step()
		}
		goal := s.goal()
		best, ok := s.proof.bound(goal)
		least, possible := leastMatched(p, s.heeds.words, all, goal)
		if !ok || !possible || !wants(goal) {
			continue
		}
		made++
		if best.bound > best.priced {
			more++
		}
		if best.bound < best.priced || best.bound > least || least > q.best.cost() {
			t.Errorf("seed %d: the prices prove %v, it is said that none costs less than %v; the least is %v, the plan costs %v",
				seed, best.priced, best.bound, least, q.best.cost())
		}
	}
	t.Logf("of %d jobs more is proven than prices prove of %d", made, more)
	if made < 100 || more < 20 {
		t.Errorf("%d jobs were planned, and of %d more was proven than prices prove", made, more)
	}
}

// allPairs is what each board that may be cut gives, in every way worth knowing.
func allPairs(p *layout.Problem) [][]exhaust.Pair {
	list := make([][]exhaust.Pair, len(p.Stock))
	for b := range p.Stock {
		if p.Takes(&p.Stock[b]) {
			list[b] = exhaust.Pairs(p, &p.Stock[b], exhaust.TinyUnit)
		}
	}
	return list
}

// leastMatched is the least that is paid for so many pieces when each word has a board of
// its own; ok is false where they cannot be made.
func leastMatched(p *layout.Problem, words [][]int, all [][]exhaust.Pair, goal []int) (least layout.Money, ok bool) {
	homes := make([]int, len(words))
	var cut func(b int, left []int, cost layout.Money)
	cut = func(b int, left []int, cost layout.Money) {
		if ok && cost >= least {
			return
		}
		if !wants(left) {
			least, ok = cost, true
			return
		}
		if b == len(all) {
			return
		}
		cut(b+1, left, cost)
		for _, pair := range all[b] {
			rest := append([]int(nil), left...)
			for i, n := range pair.Made {
				rest[i] = max(0, rest[i]-n)
			}
			for w, rows := range words {
				for _, i := range rows {
					if homes[w] != b { // such pieces go to waste
						rest[i] = left[i]
					}
				}
			}
			cut(b+1, rest, cost+p.Stock[b].Cost-pair.Worth)
		}
	}
	var choose func(w int)
	choose = func(w int) {
		if w == len(words) {
			cut(0, goal, 0)
			return
		}
		for homes[w] = range all {
			choose(w + 1)
		}
	}
	choose(0)
	return least, ok
}
