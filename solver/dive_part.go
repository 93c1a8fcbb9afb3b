package solver

import (
	"cmp"
	"math/rand"
	"slices"
)

// The programme of a dive has a row for every kind of board, so of many boards a dive takes
// long, and of very many no programme can be solved. There a dive cuts some of them anew, for
// what they make in the best plan.

// divedBoards is about how many boards are cut anew then, at most; no more than half of all.
const divedBoards = 200

// divesInParts reports whether dives cut some of the boards.
func (s *search) divesInParts() bool { return len(s.alike()) > fewEnough }

// setBoards gives every dive its boards: all, or of many some that share parts, no board in
// two dives.
func (s *search) setBoards(dives []*dive) {
	if !s.divesInParts() {
		for _, d := range dives {
			d.boards = s.usable
		}
		return
	}
	free := s.free()
	for _, d := range dives {
		d.boards = s.someSharing(min(divedBoards, len(s.usable)/2), free, d.rng)
		for _, b := range d.boards {
			delete(free, b)
		}
	}
}

// someSharing takes one of the boards by chance that the best plan cuts, and of those that
// share parts with it so many that there are about n: of those that the plan cuts and of the
// others as large a share, of the latter the more appealing ones sooner.
func (s *search) someSharing(n int, free map[int]bool, rng *rand.Rand) []int {
	cut := freeUsed(s.best, free)
	if len(cut) == 0 {
		return nil
	}
	first := cut[rng.Intn(len(cut))]
	var used, unused []int
	for _, b := range s.usable {
		switch {
		case b == first || !free[b] || !s.shares(first, b):
		case s.best.cuts[b] != nil:
			used = append(used, b)
		default:
			unused = append(unused, b)
		}
	}
	all := max(n, len(used)+len(unused))
	boards := append([]int{first}, some(used, n*len(used)/all, rng)...)
	return append(boards, s.byAppeal(unused, rng)[:n*len(unused)/all]...)
}

// byAppeal puts boards in the order of their appeal, with some chance in it.
func (s *search) byAppeal(boards []int, rng *rand.Rand) []int {
	noise := make(map[int]float64, len(boards))
	for _, b := range boards {
		noise[b] = s.appeal[b] * (0.8 + 0.4*rng.Float64())
	}
	slices.SortStableFunc(boards, func(a, b int) int { return cmp.Compare(noise[b], noise[a]) })
	return boards
}
