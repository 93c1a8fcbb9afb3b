package ceiling_test

import (
	"math/rand"
	"testing"

	"sawbill/layout"
	"sawbill/solver/internal/ceiling"
	"sawbill/solver/internal/jobs"
)

// aBoard is a knotty board with a job to cut from it, and prices.
func aBoard(seed int64) (*layout.Problem, *layout.Board, []ceiling.Value) {
	p := jobs.Varied(jobs.Size{Boards: 2, Kinds: 6, Pieces: 30}, seed)
	price, _ := prices(p, rand.New(rand.NewSource(seed)))
	return p, &p.Stock[0], price
}

// The bounds in the course of the work only fall.
func TestMoreWorkNeverRaises(t *testing.T) {
	var bench ceiling.Bench
	for seed := range int64(12) {
		p, b, price := aBoard(seed)
		w := ceiling.New(p, b)
		former, _ := bench.Most(w, price, 0, 0, nil)
		for work := 10_000; work <= 1_000_000; work *= 10 {
			most, sharp := bench.Most(w, price, 0, work, nil)
			if most > former {
				t.Errorf("seed %d: %d after %d steps, %d after a tenth of them", seed, most, work, former)
			}
			if former = most; sharp {
				break
			}
		}
	}
}

// A bound that is sharp stays what it is, whatever was bounded on the same bench
// before, and one that came to an end early is no less.
func TestStopGivesNoLess(t *testing.T) {
	var used ceiling.Bench
	for seed := range int64(8) {
		p, b, price := aBoard(seed)
		w := ceiling.New(p, b)
		var fresh ceiling.Bench
		most, sharp := fresh.Most(w, price, 0, 20_000_000, nil)
		if !sharp {
			continue
		}
		if again, _ := used.Most(w, price, 0, 20_000_000, nil); again != most {
			t.Errorf("seed %d: %d on a used bench, %d on a fresh one", seed, again, most)
		}
		for _, polls := range []int{0, 1, 30, 300} {
			left := polls
			stop := func() bool { left--; return left < 0 }
			if early, _ := used.Most(w, price, 0, 20_000_000, stop); early < most {
				t.Errorf("seed %d: stopped after being asked %d times, it says %d, below %d", seed, polls, early, most)
			}
		}
	}
}

// Worths of a few millionths leave nothing to win by looking closer bit by bit,
// and yet the bound comes to its end.
func TestTinyWorthsEnd(t *testing.T) {
	p, b, price := aBoard(1)
	b.Cost = 0 // without worth of offcuts
	for i := range price {
		price[i] = ceiling.Value(1 + i%3)
	}
	var bench ceiling.Bench
	left := 200_000
	bench.Most(ceiling.New(p, b), price, 0, 1<<60, func() bool { left--; return left < 0 })
	if left < 0 {
		t.Error("no end after 200000 steps")
	}
}
