package layout

import (
	"cmp"
	"slices"
)

// Score is the only definition of a good plan. The better plan
//
//  1. leaves less missing of priority 1, by finished volume, then of 2, and so
//     on, blank last; of a glue-up set, what counts is its missing slices;
//  2. costs less: the sum of the costs of the boards that it cuts less the
//     worth of the offcuts that it keeps.
type Score struct {
	missing []rankVolume // by rank; ranks with nothing missing are left out
	Cost    Money
}

type rankVolume struct {
	rank   int
	volume *Volume
}

// NewScore is the score of a plan for p that leaves missing[i] pieces of the
// i-th row of the bill unmade and costs cost.
func NewScore(p *Problem, missing []int, cost Money) Score {
	s := Score{Cost: cost}
	for i, n := range missing {
		if n > 0 {
			s.add(p.Bill[i].Rank(), p.Bill[i].Volume(), n)
		}
	}
	return s
}

func (s *Score) add(rank int, volume *Volume, n int) {
	at, found := slices.BinarySearchFunc(s.missing, rank, func(r rankVolume, rank int) int {
		return cmp.Compare(r.rank, rank)
	})
	if !found {
		s.missing = slices.Insert(s.missing, at, rankVolume{rank, new(Volume)})
	}
	s.missing[at].volume.Add(volume, n)
}

// Complete reports whether nothing is missing.
func (s Score) Complete() bool { return len(s.missing) == 0 }

// Compare is negative when s is better than t, positive when it is worse.
func (s Score) Compare(t Score) int {
	for i := 0; i < len(s.missing) || i < len(t.missing); i++ {
		switch {
		case i == len(t.missing):
			return 1
		case i == len(s.missing):
			return -1
		}
		a, b := s.missing[i], t.missing[i]
		if c := cmp.Compare(b.rank, a.rank); c != 0 { // a missing piece of a lower rank is worse
			return c
		}
		if c := a.volume.Cmp(b.volume); c != 0 {
			return c
		}
	}
	return cmp.Compare(s.Cost, t.Cost)
}

// Score is the score of a whole plan.
func (p *Plan) Score() Score {
	short := map[string]int{}
	for _, m := range p.Missing {
		short[m.Part] += m.Quantity
	}
	missing := make([]int, len(p.Problem.Bill))
	for i, part := range p.Problem.Bill {
		if part.Set == "" {
			missing[i] = short[part.Name]
		}
	}
	s := NewScore(&p.Problem, missing, p.Totals.Cost)
	for _, set := range p.Problem.Sets() {
		if n := short[set.Name]; n > 0 {
			s.add(p.Problem.Bill[set.Rows[0]].Rank(), p.Problem.SliceVolume(set), n)
		}
	}
	return s
}
