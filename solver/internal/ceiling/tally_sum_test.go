package ceiling

import (
	"math/rand"
	"slices"
	"testing"
)

// TestCounter adds and takes off tallies by chance and holds them against lists of counts.
func TestCounter(t *testing.T) {
	rng := rand.New(rand.NewSource(1))
	for range 2000 {
		limits := make([]int, 1+rng.Intn(8))
		for i := range limits {
			limits[i] = rng.Intn(20)
		}
		n := newCounter(limits)
		a, b := make([]int, len(limits)), make([]int, len(limits))
		for i, most := range limits {
			a[i], b[i] = rng.Intn(most+1), rng.Intn(most+1)
		}
		ta, tb := tallyOf(n, a), tallyOf(n, b)
		if got := n.counts(ta); !slices.Equal(got, a) {
			t.Fatalf("%v of %v is counted as %v", a, limits, got)
		}
		want := make([]int, len(limits))
		fits, covers := true, true
		for i := range limits {
			want[i] = a[i] + b[i]
			fits, covers = fits && want[i] <= limits[i], covers && b[i] <= a[i]
		}
		sum, ok := n.sum(ta, tb)
		if ok != fits || ok && !slices.Equal(n.counts(sum), want) {
			t.Fatalf("%v and %v of %v: %v, %v", a, b, limits, n.counts(sum), ok)
		}
		rest, ok := n.less(ta, tb)
		if ok != covers || ok && rest+tb != ta {
			t.Fatalf("%v less %v of %v: %v, %v", a, b, limits, n.counts(rest), ok)
		}
	}
	if newCounter(slices.Repeat([]int{1}, 33)) != nil {
		t.Error("33 kinds of part are more than a tally counts")
	}
}

func tallyOf(n *counter, counts []int) tally {
	var t tally
	for i, c := range counts {
		t += tally(c) * n.one[i]
	}
	return t
}
