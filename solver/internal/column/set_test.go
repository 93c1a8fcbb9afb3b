package column

import (
	"testing"

	"pgregory.net/rapid"
)

// TestSetNext holds next against going through every number.
func TestSetNext(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(1, 200).Draw(t, "n")
		s := newSet(n)
		for _, i := range rapid.SliceOfN(rapid.IntRange(0, n-1), 0, 9).Draw(t, "members") {
			s.add(i)
		}
		for i := range n + 70 {
			want := i
			for want < n && !s.has(want) {
				want++
			}
			if want >= n {
				want = -1
			}
			if got := s.next(i); got != want {
				t.Fatalf("next(%d) of %v is %d, want %d", i, s, got, want)
			}
		}
	})
}
