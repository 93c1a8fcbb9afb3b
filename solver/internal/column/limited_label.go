package column

import (
	"cmp"
	"slices"
)

// label is one way to cut a piece of the board, or the first part of a piece.
type label struct {
	value Value // at the prices asked
	rest  Value // at the relaxed prices, which leave out what the limits are worth
	made  tally
	parts bool // holds a part
	arc   *arc // the last step; nil of a label that has taken none
	prev  *label
	kid   *label // what the last step is filled with
}

// beats reports whether m is of no use beside l, whatever follows.
func (s *limited) beats(l, m *label) bool {
	return l.value >= m.value && l.rest >= m.rest && (l.parts || !m.parts) && s.ledger.under(&l.made, &m.made)
}

// add puts a copy of l into a front, which is sorted by value, the greatest
// first, unless some label there beats it, and takes out what l beats. It returns
// the copy, or nil.
func (s *limited) add(front *[]*label, l *label) *label {
	f := *front
	tie, _ := slices.BinarySearchFunc(f, l.value, func(m *label, v Value) int { return cmp.Compare(v, m.value) })
	end := tie
	for end < len(f) && f[end].value == l.value {
		end++
	}
	for i, m := range f[:end] {
		if s.beats(m, l) {
			s.work += i + 1
			return nil
		}
	}
	s.work += len(f)
	kept := f[:tie]
	for _, m := range f[tie:] {
		if !s.beats(l, m) {
			kept = append(kept, m)
		}
	}
	own := *l
	*front = slices.Insert(kept, tie, &own)
	return &own
}

// merge adds all of some labels to a front and lists those that stay.
func (s *limited) merge(front *[]*label, labels []*label) (fresh []*label) {
	for _, l := range labels {
		if own := s.add(front, l); own != nil {
			fresh = append(fresh, own)
		}
	}
	return fresh
}

// byRest sorts a front, the greatest rest first, so that a reader may stop at
// the first label that is too small.
func byRest(front []*label) []*label {
	slices.SortStableFunc(front, func(l, m *label) int { return cmp.Compare(m.rest, l.rest) })
	return front
}
