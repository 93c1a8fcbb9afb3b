package layout

import "slices"

// Problem is one job as it was asked for: the shop, the boards and the bill.
// NewProblem makes one and checks everything once; after that nobody validates
// again, and nobody changes it.
type Problem struct {
	Shop  *Shop
	Stock []Board
	Bill  []Part
	// Yard says whether boards of the yard take part.
	Yard bool
}

// Takes reports whether a board may be cut at all: it is not on hold, and it is
// on the rack or the yard takes part.
func (p *Problem) Takes(b *Board) bool {
	return b.Source == Rack || b.Source == Yard && p.Yard
}

// Allows reports whether part may come from board by species, marks and source.
// It says nothing about sizes.
func (p *Problem) Allows(part *Part, b *Board) bool {
	return p.Takes(b) &&
		slices.ContainsFunc(part.Species, func(s string) bool { return SameSpecies(s, b.Species) }) &&
		(len(part.From) == 0 || slices.Contains(part.From, b.Mark)) &&
		!slices.Contains(part.NotFrom, b.Mark)
}

// Available is the thickness that a flat board finishes to.
func (s *Shop) Available(b *Board) Length {
	if b.Faces == FacesPlaned {
		return b.Thickness
	}
	return b.Thickness - 2*s.FaceSkim
}

// Board finds a board of the stock by its mark, or nil.
func (p *Problem) Board(mark string) *Board {
	for i := range p.Stock {
		if p.Stock[i].Mark == mark {
			return &p.Stock[i]
		}
	}
	return nil
}

// Part finds a row of the bill by its name, or nil.
func (p *Problem) Part(name string) *Part {
	for i := range p.Bill {
		if p.Bill[i].Name == name {
			return &p.Bill[i]
		}
	}
	return nil
}
