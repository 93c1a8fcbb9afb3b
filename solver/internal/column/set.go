package column

import "math/bits"

// set is a set of small whole numbers: the defects of one board, or positions.
type set []uint64

func newSet(n int) set { return make(set, (n+63)/64) }

func (s set) add(i int)      { s[i/64] |= 1 << (i % 64) }
func (s set) has(i int) bool { return s[i/64]&(1<<(i%64)) != 0 }

// next is the least member that is not below i; -1 where there is none.
func (s set) next(i int) int {
	k := i / 64
	if k >= len(s) {
		return -1
	}
	word := s[k] >> (i % 64) << (i % 64)
	for word == 0 {
		if k++; k == len(s) {
			return -1
		}
		word = s[k]
	}
	return k*64 + bits.TrailingZeros64(word)
}

// meets reports whether s and t share a member.
func (s set) meets(t set) bool {
	for i := range s {
		if s[i]&t[i] != 0 {
			return true
		}
	}
	return false
}

// meets3 reports whether all three sets share a member.
func meets3(s, t, u set) bool {
	for i := range s {
		if s[i]&t[i]&u[i] != 0 {
			return true
		}
	}
	return false
}

func (s set) empty() bool {
	for _, w := range s {
		if w != 0 {
			return false
		}
	}
	return true
}
