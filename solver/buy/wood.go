package buy

import (
	"cmp"
	"slices"
	"strings"

	"sawbill/layout"
)

// wood is a species in one rough thickness.
type wood struct {
	species   string
	thickness layout.Length
}

// Orderable are boards for which a bill gives a reason to ask: of every species and
// usual thickness that it needs, one as large as any and without a defect. They bear
// no marks of the stock and cost nothing, and stand at the yard.
func Orderable(s *layout.Shop, stock []layout.Board, bill []layout.Part) []layout.Board {
	u := UsualBoards(s.Units).with(s, stock)
	var boards []layout.Board
	for i := range bill {
		part := &bill[i]
		for _, species := range part.Species {
			w := wood{strings.TrimSpace(species), u.thickness(s, part)}
			if w.thickness == 0 {
				w.thickness = u.Thicknesses[len(u.Thicknesses)-1] // so that it can be told what fails
			}
			b := u.largest(w.species, w.thickness)
			known := func(o layout.Board) bool {
				return layout.SameSpecies(o.Species, b.Species) && o.Thickness == b.Thickness
			}
			if w.species != "" && !slices.ContainsFunc(boards, known) {
				b.Mark = "a large board of " + w.species + " " + w.thickness.Format(s.Units, s.Fraction)
				b.Base = b.Mark
				boards = append(boards, b)
			}
		}
	}
	return boards
}

// with adds the thicknesses of the rough boards of a stock in millimetres, for they
// tell which of several usual series the yards there keep.
func (u Usual) with(s *layout.Shop, stock []layout.Board) Usual {
	if s.Units != layout.Millimetres {
		return u
	}
	u.Thicknesses = slices.Clone(u.Thicknesses)
	for _, b := range stock {
		if b.Faces == layout.FacesRough && b.Thickness > 0 {
			u.Thicknesses = append(u.Thicknesses, b.Thickness)
		}
	}
	slices.Sort(u.Thicknesses)
	u.Thicknesses = slices.Compact(u.Thicknesses)
	return u
}

// woodFor is the wood to buy for a part of a bill: of alternatives the cheapest
// species, or the first where any has no price. Parts that match come from one board,
// so of the species that all may be made of, and of the greatest thickness that any
// needs. thickness is 0 where no usual one will do.
func (u *Usual) woodFor(s *layout.Shop, part *layout.Part, bill []layout.Part) wood {
	species := slices.Clone(part.Species)
	thickness := u.thickness(s, part)
	for i := range bill {
		mate := &bill[i]
		if part.Match == "" || mate.Match != part.Match {
			continue
		}
		species = slices.DeleteFunc(species, func(one string) bool {
			return !slices.ContainsFunc(mate.Species, func(other string) bool { return layout.SameSpecies(one, other) })
		})
		if t := u.thickness(s, mate); t == 0 || thickness == 0 {
			thickness = 0
		} else {
			thickness = max(thickness, t)
		}
	}
	if len(species) == 0 {
		return wood{}
	}
	return wood{strings.TrimSpace(cheapest(s, species)), thickness}
}

func cheapest(s *layout.Shop, species []string) string {
	for _, one := range species {
		if _, priced := s.PriceOf(one); !priced {
			return species[0]
		}
	}
	return slices.MinFunc(species, func(a, b string) int {
		x, _ := s.PriceOf(a)
		y, _ := s.PriceOf(b)
		return cmp.Compare(x, y)
	})
}
