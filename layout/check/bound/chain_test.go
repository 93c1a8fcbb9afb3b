package bound

import (
	"testing"

	"pgregory.net/rapid"
)

// table is a worth for every step between two positions.
type table [][]value

func (w table) between(from, to span) value {
	var best value
	for i := from.lo; i <= from.hi; i++ {
		for j := max(to.lo, i+1); j <= to.hi; j++ {
			best = max(best, w[i][j])
		}
	}
	return best
}

// longest is the longest way over single positions.
func (w table) longest() value {
	best := make([]value, len(w))
	for i := len(w) - 2; i >= 0; i-- {
		best[i] = best[i+1]
		for j := i + 1; j < len(w); j++ {
			best[i] = max(best[i], w[i][j]+best[j])
		}
	}
	return best[0]
}

// drawTable draws worths of steps of at least so many positions.
func drawTable(t *rapid.T, shortest int) table {
	n := rapid.IntRange(2, 24).Draw(t, "positions")
	w := make(table, n)
	for i := range w {
		w[i] = make([]value, n)
		for j := i + shortest; j < n; j++ {
			w[i][j] = value(rapid.IntRange(0, 30*(j-i)).Draw(t, "worth"))
		}
	}
	return w
}

func never() bool { return false }

// A chain over cells is never shorter than the longest way, and as long once
// its cells are single positions, whatever it was told of a step at first.
func TestChainFindsTheLongestWay(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		shortest := rapid.IntRange(1, 4).Draw(t, "shortest step")
		w := drawTable(t, shortest)
		want := w.longest()
		more := value(rapid.IntRange(0, 40).Draw(t, "too much"))
		c := newChain(len(w)-1, shortest, func(from, to span) value { return w.between(from, to) + more })
		for _, wide := range []int{4, 2, 1} {
			got := c.settle(wide, 0, w.between, never)
			if got < want || wide == 1 && got != want {
				t.Fatalf("with cells of %d the longest way is %d, want %d", wide, got, want)
			}
			c.forget()
		}
	})
}

func TestChainStopsEarly(t *testing.T) {
	w := table{{0, 5, 12}, {0, 0, 5}, {0, 0, 0}}
	hundred := func(span, span) value { return 100 }
	for _, tc := range []struct {
		name   string
		enough value
		stop   func() bool
		want   value
	}{
		{"to the end", 0, never, 12},
		{"at what is enough", 200, never, 200}, // two steps of a hundred, not yet looked at
		{"when told", 0, func() bool { return true }, 200},
	} {
		if got := newChain(2, 1, hundred).settle(1, tc.enough, w.between, tc.stop); got != tc.want {
			t.Errorf("%s: %d, want %d", tc.name, got, tc.want)
		}
	}
}
