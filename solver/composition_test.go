package solver

import (
	"slices"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"
)

// Copies of 3 to 9 slices, of which 12 are wanted.
func TestSettledByHand(t *testing.T) {
	u := glueUp{lo: 3, hi: 9, wanted: 12}
	for _, c := range []struct{ copies, want []int }{
		{[]int{3, 9}, []int{9, 3}},
		{[]int{9, 9}, []int{9, 3}},       // six too many come off the first, and then it is the shorter
		{[]int{5, 5, 4}, []int{5, 4, 3}}, // two too many come off as far as a copy may be shortened
		{[]int{9, 9, 5}, []int{9, 3}},    // the last is left out
		{[]int{4, 3}, []int{4, 3}},       // five are missing
		{nil, nil},
	} {
		got := u.settled(c.copies)
		if len(got) == 0 && len(c.want) == 0 {
			continue
		}
		if diff := cmp.Diff(c.want, got); diff != "" {
			t.Errorf("%v (-want +got):\n%s", c.copies, diff)
		}
	}
}

// TestNeighboursReachEveryComposition walks from one composition over neighbours: all
// ways to make the slices wanted out of copies are met.
func TestNeighboursReachEveryComposition(t *testing.T) {
	u := glueUp{lo: 3, hi: 12, wanted: 12}
	seen := map[string]bool{}
	open := []composition{{{12}}}
	for len(open) > 0 {
		c := open[0]
		open = open[1:]
		if seen[c.key()] {
			continue
		}
		seen[c.key()] = true
		open = append(open, c.neighbours([]glueUp{u})...)
	}
	// 12; 9+3 8+4 7+5 6+6; 6+3+3 5+4+3 4+4+4; 3+3+3+3
	if len(seen) != 9 {
		t.Errorf("%d compositions: %v", len(seen), seen)
	}
}

// Whatever is exchanged, copies stay within their limits, and where slices are missing
// some neighbour makes more.
func TestNeighboursKeepTheLimits(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		u := glueUp{lo: rapid.IntRange(1, 5).Draw(t, "lo")}
		u.hi = u.lo + rapid.IntRange(0, 9).Draw(t, "more")
		u.wanted = rapid.IntRange(1, 30).Draw(t, "wanted")
		copies := u.settled(rapid.SliceOfN(rapid.IntRange(u.lo, u.hi), 0, 4).Draw(t, "copies"))
		most := total(copies)
		for _, c := range (composition{copies}).neighbours([]glueUp{u}) {
			most = max(most, total(c[0]))
			for _, k := range c[0] {
				if k < u.lo || k > u.hi {
					t.Errorf("%v has a neighbour %v with copies beyond %d to %d", copies, c[0], u.lo, u.hi)
				}
			}
		}
		if total(copies) < u.wanted && most <= total(copies) {
			t.Errorf("no neighbour of %v makes more", copies)
		}
	})
}

// cheapest is held against all compositions of up to two kinds of copies and against
// trying every number of each.
func TestCheapestEqualsTryingAll(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		lo := rapid.IntRange(1, 4).Draw(t, "lo")
		cost := rapid.SliceOfN(rapid.Int64Range(0, 50), 1, 4).Draw(t, "cost")
		wanted := rapid.IntRange(0, 14).Draw(t, "wanted")
		got, copies := cheapest(lo, wanted, cost)
		var sum int64
		for _, k := range copies {
			sum += cost[k-lo]
		}
		if sum != got || total(copies) < wanted {
			t.Errorf("copies %v cost %d and give %d of %d; said %d", copies, sum, total(copies), wanted, got)
		}
		if want := tryAll(lo, wanted, cost); got != want {
			t.Errorf("got %d, want %d", got, want)
		}
	})
}

func tryAll(lo, wanted int, cost []int64) int64 {
	if wanted <= 0 {
		return 0
	}
	var sums []int64
	for k, c := range cost {
		sums = append(sums, c+tryAll(lo, wanted-lo-k, cost))
	}
	return slices.Min(sums)
}
