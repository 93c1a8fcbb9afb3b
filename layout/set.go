package layout

import "fmt"

// Set is one glue-up: the rows of a bill whose strips are glued side by side and
// then sliced. How many copies of it are made, and how many slices each gives, is
// for the plan to choose.
type Set struct {
	Name   string
	Rows   []int // of the bill
	Slices int   // wanted in all
}

// Sets lists the glue-ups of a bill in the order of their first rows.
func (p *Problem) Sets() []Set {
	var sets []Set
	at := map[string]int{}
	for i := range p.Bill {
		part := &p.Bill[i]
		if part.Set == "" {
			continue
		}
		k, known := at[part.Set]
		if !known {
			k = len(sets)
			at[part.Set] = k
			sets = append(sets, Set{Name: part.Set, Slices: part.Slices})
		}
		sets[k].Rows = append(sets[k].Rows, i)
	}
	return sets
}

// StripLength is the length of a strip of a glue-up that gives so many slices:
//
//	slices * slice_thickness + (slices - 1) * crosscut_kerf + 2 * panel_square
func (s *Shop) StripLength(part *Part, slices int) Length {
	n := Length(slices)
	return n*part.SliceThickness + (n-1)*s.CrosscutKerf + 2*s.PanelSquare
}

// LeastSlices is the least number of slices of a copy, at least 1: its strips are
// as long as the shortest blank at least.
func (s *Shop) LeastSlices(part *Part) int {
	more, step := s.MinBlank-s.StripLength(part, 1), s.StripLength(part, 2)-s.StripLength(part, 1)
	if more <= 0 || step <= 0 {
		return 1
	}
	return 1 + int((more+step-1)/step)
}

// Strip is a row of a set as a part by itself, with strips that give so many
// slices each: it is cut to their length, and its finished volume is that of the
// slices. It is of no set, and its name is no name that a bill may hold.
func (s *Shop) Strip(row *Part, slices int) Part {
	strip := *row
	strip.Name = fmt.Sprintf("%s\x00%d", row.Name, slices)
	strip.Length = s.StripLength(row, slices) - s.LengthAllowance
	strip.Set, strip.Slices = "", slices
	return strip
}

// SliceCounts lists, ascending, how many slices a copy of a set may have so that
// each of its strips fits some board that takes part.
func (p *Problem) SliceCounts(set Set) []int {
	var counts []int
	first := &p.Bill[set.Rows[0]]
	for k := p.Shop.LeastSlices(first); p.Shop.StripLength(first, k) <= MaxLength; k++ {
		for _, row := range set.Rows {
			if !p.stripFits(&p.Bill[row], k) {
				return counts
			}
		}
		counts = append(counts, k)
	}
	return counts
}

func (p *Problem) stripFits(row *Part, slices int) bool {
	strip := p.Shop.Strip(row, slices)
	for i := range p.Stock {
		if b := &p.Stock[i]; p.Takes(b) && p.CouldHold(&strip, b) {
			return true
		}
	}
	return false
}

// SliceVolume is the finished volume of one slice of a set.
func (p *Problem) SliceVolume(set Set) *Volume {
	sum := new(Volume)
	for _, i := range set.Rows {
		sum.Add(p.Bill[i].StripVolume(1), p.Bill[i].Quantity)
	}
	return sum
}
