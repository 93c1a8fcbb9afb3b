package layout

import "strings"

// Rate is a mean number of hidden defects in ten board feet of rough wood, in
// millionths.
type Rate int64

// RateUnity is a rate of one hidden defect in ten board feet.
const RateUnity Rate = 1_000_000

// MaxRate is the largest rate that a file may hold, far more than any wood has.
const MaxRate = 1000 * RateUnity

// String writes the rate with as many decimals as it needs; it round-trips exactly.
func (r Rate) String() string { return decimals(int64(r), 6) }

// Float is the mean number of defects in ten board feet, for simulations only.
func (r Rate) Float() float64 { return float64(r) / float64(RateUnity) }

// Hidden says what comes to light in the wood of a species once it is cut, though
// nobody sees it before: how often, and how large one is. In a shop a Length or a
// Width of 0 stands for one that it does not say.
type Hidden struct {
	Per10BF       Rate
	Length, Width Length // of one, along the grain and across
}

// HiddenOf is what hidden defects are reckoned with in a species: what the shop says
// of it, and for the rest GuessHidden. rate and size report which of them the shop
// says.
func (s *Shop) HiddenOf(species string) (h Hidden, rate, size bool) {
	h = GuessHidden(s.Units, species)
	for name, said := range s.Hidden {
		if !SameSpecies(name, species) {
			continue
		}
		h.Per10BF, rate = said.Per10BF, true
		if said.Length > 0 {
			h.Length = said.Length
		}
		if said.Width > 0 {
			h.Width = said.Width
		}
		size = said.Length > 0 && said.Width > 0
	}
	return h, rate, size
}

// GuessHidden is what hidden defects are reckoned with in a species of which the shop
// says nothing. All its figures are guesses: no count of the hidden defects in boards
// that were looked over before is known to us.
//
//   - Any wood: one defect in 20 board feet, 3 in long and 1 in wide (75 by 25 mm),
//     such as a knot or a pocket of bark under the face.
//   - Oak: one in 10 board feet, 6 in long (150 mm): inner checks that are seen only
//     when the wood is cut open are common in thick oak (Wengert, Preventing end
//     checks).
//   - Walnut: one in 20 board feet, 6 in long: inner end checks in oak and walnut can
//     run 12 in and more (the same).
func GuessHidden(u Unit, species string) Hidden {
	h := Hidden{Per10BF: RateUnity / 2, Length: 3 * Inch, Width: Inch}
	if u == Millimetres {
		h.Length, h.Width = 75*Millimetre, 25*Millimetre
	}
	for _, word := range strings.Fields(strings.ToLower(species)) {
		switch word {
		case "oak":
			h.Per10BF, h.Length = RateUnity, 2*h.Length
		case "walnut":
			h.Length *= 2
		}
	}
	return h
}
