package main

import "fmt"

// summary is what the rows of one time come to. short counts those that had no
// plan yet, or one with parts missing.
type summary struct {
	gaps, above tally
	short       int
}

func (s *summary) add(gap float64, proven bool, above float64, compares bool) {
	if proven {
		s.gaps.add(gap)
	}
	if compares {
		s.above.add(above)
	}
}

// String writes means and worst values.
func (s *summary) String() string {
	return fmt.Sprintf("gap %v; above the best known %v; %d not complete", s.gaps, s.above, s.short)
}

// tally is a mean and the worst.
type tally struct {
	n          int
	sum, worst float64
}

func (t *tally) add(v float64) {
	if t.n == 0 || v > t.worst {
		t.worst = v
	}
	t.n, t.sum = t.n+1, t.sum+v
}

// String writes both and of how many.
func (t tally) String() string {
	if t.n == 0 {
		return "unknown"
	}
	return fmt.Sprintf("%s on average, %s at worst, of %d", percent(t.sum/float64(t.n)), percent(t.worst), t.n)
}
