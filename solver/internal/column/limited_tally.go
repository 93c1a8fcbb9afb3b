package column

import "math/bits"

// tally counts the critical parts of a label, one field of bits for each: a
// field holds at least twice the limit, and above it lies a guard bit that is
// never set.
type tally [4]uint64

// ledger is how tallies are read.
type ledger struct {
	one   []tally // by row of the bill: a single piece; zero where not critical
	guard tally
	limit tally // the limits, guard bits set
	words int   // in use
}

// newLedger gives every critical row a field. It reports false when there are
// too many.
func newLedger(critical []bool, limits []int) (*ledger, bool) {
	l := &ledger{one: make([]tally, len(limits)), words: 1}
	word, shift := 0, 0
	for row, yes := range critical {
		if !yes {
			continue
		}
		width := bits.Len(2*uint(limits[row])) + 1
		if shift+width > 64 {
			word, shift = word+1, 0
		}
		if word == len(l.guard) || width > 64 {
			return nil, false
		}
		l.one[row][word] = 1 << shift
		l.guard[word] |= 1 << (shift + width - 1)
		l.limit[word] |= uint64(limits[row]) << shift
		shift += width
		l.words = word + 1
	}
	for i, g := range l.guard {
		l.limit[i] |= g
	}
	return l, true
}

// fits reports whether t is within the limits.
func (l *ledger) fits(t *tally) bool {
	for i := range l.words {
		if (l.limit[i]-t[i])&l.guard[i] != l.guard[i] {
			return false
		}
	}
	return true
}

// under reports whether t has no more of anything than u.
func (l *ledger) under(t, u *tally) bool {
	for i := range l.words {
		if ((u[i]|l.guard[i])-t[i])&l.guard[i] != l.guard[i] {
			return false
		}
	}
	return true
}

func (t *tally) plus(u *tally) tally {
	return tally{t[0] + u[0], t[1] + u[1], t[2] + u[2], t[3] + u[3]}
}

// times is so many of what t counts.
func (t tally) times(n int) tally {
	for i := range t {
		t[i] *= uint64(n)
	}
	return t
}
