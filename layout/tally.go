package layout

import (
	"cmp"
	"slices"
	"strings"
)

// TallyGroup is the boards of one species and thickness, rough or planed, as
// they lie on the rack.
type TallyGroup struct {
	Species   string // as its first board spells it
	Thickness Length
	Faces     Faces
	Boards    []*Board

	Finishes Length // the thickness that a flat board of it finishes to
	// Volume is exact; Trade is the board feet that a seller would charge for.
	Volume *Volume
	Trade  int64
	Worth  Money
	// Clear is the area, in square millimetres, that lies between the end trims
	// and is free on both faces of every defect, grown by its clearance.
	Clear float64
	Area  float64 // of the wood, in square millimetres
}

// Tally sorts boards into groups by species, thickness and faces and measures
// each group. Boards keep their order within a group.
func Tally(s *Shop, boards []Board) []TallyGroup {
	var groups []TallyGroup
	for i := range boards {
		b := &boards[i]
		at := slices.IndexFunc(groups, func(g TallyGroup) bool { return g.holds(b) })
		if at < 0 {
			at = len(groups)
			groups = append(groups, TallyGroup{
				Species: strings.TrimSpace(b.Species), Thickness: b.Thickness, Faces: b.Faces,
				Finishes: s.Available(b), Volume: new(Volume),
			})
		}
		groups[at].add(s, b)
	}
	for i := range groups {
		groups[i].Trade = TradeFeet(groups[i].Boards)
	}
	slices.SortStableFunc(groups, func(a, b TallyGroup) int {
		return cmp.Or(cmp.Compare(strings.ToLower(a.Species), strings.ToLower(b.Species)),
			cmp.Compare(a.Thickness, b.Thickness), cmp.Compare(a.Faces, b.Faces))
	})
	return groups
}

func (g *TallyGroup) holds(b *Board) bool {
	return SameSpecies(g.Species, b.Species) && g.Thickness == b.Thickness && g.Faces == b.Faces
}

func (g *TallyGroup) add(s *Shop, b *Board) {
	g.Boards = append(g.Boards, b)
	g.Volume.Add(b.Volume(), 1)
	g.Worth += b.Cost
	g.Clear += ClearArea(s, b)
	g.Area += woodArea(b, b.Frame())
}

// ClearArea is the area of a board, in square millimetres, that lies between
// the end trims and is free on both faces of every defect grown by its
// clearance.
func ClearArea(s *Shop, b *Board) float64 {
	list := []patch{
		{Rect{0, s.EndTrim, 0, b.FullWidth()}, useEdge},
		{Rect{b.Length - s.EndTrim, b.Length, 0, b.FullWidth()}, useEdge},
	}
	for _, d := range b.Defects {
		c := s.Clearance[d.Kind]
		list = append(list, patch{d.Rect.Grow(c.Along, c.Across), useDefect})
	}
	return patchAreas(b, list)[useScrap]
}

// TradeFeet is what boards of one thickness measure as hardwood sellers tally
// them: surface measures are summed and multiplied by the thickness in inches;
// wood under 1 in is charged as 1 in, and the product is rounded to the nearest
// board foot.
//
// The surface measure of one board is its width in inches times its length in
// whole feet (a fraction of a foot is dropped) over 12, rounded to the nearest
// whole number; of exact halves the first goes up, the next down, and so on. A
// tapered board is as wide as it is a third of its length from the narrow end.
// (Rules of hardwood measurement as published by the lumber trade; the taper
// rule is trade custom.)
func TradeFeet(boards []*Board) int64 {
	if len(boards) == 0 {
		return 0
	}
	var sum int64
	up := true
	for _, b := range boards {
		m, half := surfaceMeasure(b)
		if half && up {
			m++
		}
		if half {
			up = !up
		}
		sum += m
	}
	thickness := max(boards[0].Thickness, Inch)
	return (2*sum*int64(thickness)/int64(Inch) + 1) / 2
}

// surfaceMeasure is a board's surface measure rounded to the nearest whole
// number, exact halves down; half says that it was one.
func surfaceMeasure(b *Board) (measure int64, half bool) {
	feet := int64(b.Length / Foot)
	// The width is (narrow + (wide-narrow)/3); in thirds it stays whole.
	narrow, wide := min(b.Width, b.TipWidth), b.FullWidth()
	thirds := int64(2*narrow+wide) * feet
	const whole = int64(3 * Foot)
	measure, rest := thirds/whole, thirds%whole
	switch {
	case 2*rest == whole:
		return measure, true
	case 2*rest > whole:
		measure++
	}
	return measure, false
}
