package layout

import (
	"fmt"
	"strconv"
	"strings"
)

// leastSlice is the thinnest slice that is asked for.
const leastSlice = Millimetre

// checkStrip checks the cells by which a row of a bill is one of a glue-up.
func checkStrip(a about, p *Part) {
	if p.Set == "" {
		if p.Slices != 0 {
			a.fault("slices", strconv.Itoa(p.Slices), "is for the rows of a set: name the set, or leave it empty")
		}
		if p.SliceThickness != 0 {
			a.fault("slice_thickness", p.SliceThickness.String(), "is for the rows of a set: name the set, or leave it empty")
		}
		return
	}
	if p.Length != 0 {
		a.fault("length", p.Length.String(), "leave it empty in a set: the plan chooses how long its strips are")
	}
	if p.Slices < 1 || p.Slices > MaxQuantity {
		a.fault("slices", strconv.Itoa(p.Slices), "want a whole number from 1 to "+strconv.Itoa(MaxQuantity))
	}
	if p.Spare != 0 {
		a.fault("spare", strconv.Itoa(p.Spare), "is not for the rows of a set: ask for more slices, or for spare_slices and spare_strips in its design")
	}
	checkSize(a, "slice_thickness", p.SliceThickness)
	if 0 < p.SliceThickness && p.SliceThickness < leastSlice {
		a.fault("slice_thickness", p.SliceThickness.String(), "want at least "+leastSlice.String())
	}
}

// checkSets checks what the rows of a glue-up must have in common, and that no part
// of no set is called as a set is: what is missing of a set is told by its name.
func checkSets(cs *Complaints, bill []Part) {
	first := map[string]*Part{}
	for i := range bill {
		p := &bill[i]
		if p.Set == "" {
			continue
		}
		f := first[p.Set]
		if f == nil {
			first[p.Set] = p
			continue
		}
		checkSameStrip(about{cs, BillTable, i}, f, p)
	}
	for i := range bill {
		for set := range first {
			if bill[i].Set == "" && strings.EqualFold(strings.TrimSpace(bill[i].Name), strings.TrimSpace(set)) {
				about{cs, BillTable, i}.fault("part", bill[i].Name, "want a name that no set has")
			}
		}
	}
}

func checkSameStrip(a about, first, p *Part) {
	same := fmt.Sprintf("want what %s has, of the same set: ", first.Name)
	if p.Slices != first.Slices {
		a.fault("slices", strconv.Itoa(p.Slices), same+strconv.Itoa(first.Slices))
	}
	if p.SliceThickness != first.SliceThickness {
		a.fault("slice_thickness", p.SliceThickness.String(), same+first.SliceThickness.String())
	}
	if !SamePiece(p.Piece, first.Piece) {
		a.fault("piece", p.Piece, same+first.Piece)
	}
	if p.Priority != first.Priority {
		a.fault("priority", strconv.Itoa(p.Priority), same+strconv.Itoa(first.Priority))
	}
}

// shortest is a part as it is cut at the least: of a row of a set, the strip of
// the shortest copy.
func (p *Part) shortest(s *Shop) *Part {
	if p.Set == "" {
		return p
	}
	strip := s.Strip(p, s.LeastSlices(p))
	strip.Name = p.Name
	return &strip
}
