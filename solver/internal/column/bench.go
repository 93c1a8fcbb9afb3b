package column

import "slices"

// Bench is where one goroutine prices boards: scratch that is used again from
// one board to the next. The zero Bench is ready to use.
type Bench struct {
	// Runs counts how often the whole programme has run.
	Runs int
	// Steps counts positions gone through along strips and across blanks, which each
	// take a few nanoseconds.
	Steps int
	// Work counts what of that was looked at, in steps of some nanoseconds.
	Work int

	w     *Board
	worth []Value // of a leaf, by piece
	caps  []int   // by row, the most layers of a leaf; nil: any number

	cells  []cellValues // by profile
	own    profile      // of the strip that is being laid
	likes  []int        // by profile: the one that is worth the same from the blank's start on
	cell   cellWork
	strip  stripWork
	rows   [][]Value // by profile: the worth of the strip for each end of a blank
	rip    ripWork
	rough  roughWork
	useful []bool  // by strip: worth more than every lower one, where nothing blocks
	tried  []int32 // strips that a mode allows and that can be of use
	byLen  []Value
	best   []Value
	from   []child
	fill   *filling // nil: build without limits
}

// profile is the profile of that index; one past the board's own is the strip
// that is being laid.
func (b *Bench) profile(id int) *profile {
	if id == len(b.w.profiles) {
		return &b.own
	}
	return &b.w.profiles[id]
}

// size gives a slice of n values, all v, in the memory of s.
func size[T any](s []T, n int, v T) []T {
	s = slices.Grow(s[:0], n)[:n]
	for i := range s {
		s[i] = v
	}
	return s
}

// room gives a slice of n values of any content, in the memory of s.
func room[T any](s []T, n int) []T { return slices.Grow(s[:0], n)[:n] }
