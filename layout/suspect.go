package layout

import (
	"fmt"
	"math"
	"slices"
)

// Suspicion is something about a board of the stock that may be true but is
// more often a slip of the pen.
type Suspicion struct {
	Board string // its mark
	Why   string
}

// Suspicions lists what looks odd about boards, in their order. Nothing in it
// is an error.
func Suspicions(s *Shop, boards []Board) []Suspicion {
	checks := []func(*Shop, *Board) string{
		oddThickness, notMeasured, tooLong, tooShort, tooWide, steepTaper, mostlyDefects, oddCost, markedTwice,
	}
	var list []Suspicion
	for i := range boards {
		for _, check := range checks {
			if why := check(s, &boards[i]); why != "" {
				list = append(list, Suspicion{boards[i].Mark, why})
			}
		}
	}
	return list
}

func (s *Shop) format(l Length) string { return l.Format(s.Units, s.Fraction) }

// oddThickness holds rough boards against the thicknesses that are sawn: whole
// quarters of an inch from 4/4, or the common ones in millimetres of Britain
// and the Continent.
func oddThickness(s *Shop, b *Board) string {
	sawn := b.Thickness >= Inch && b.Thickness%(Inch/4) == 0
	if s.Units == Millimetres {
		common := []Length{16, 18, 19, 20, 25, 26, 27, 32, 34, 38, 40, 41, 45, 50, 52, 54, 60, 63, 65, 75, 80, 100}
		sawn = slices.Contains(common, b.Thickness/Millimetre) && b.Thickness%Millimetre == 0
	}
	if sawn || b.Faces == FacesPlaned {
		return ""
	}
	return fmt.Sprintf("%s is an odd thickness for a rough board", s.format(b.Thickness))
}

// notMeasured is a planed board that is still as thick as a rough one.
func notMeasured(s *Shop, b *Board) string {
	if b.Faces == FacesRough || b.Thickness < Inch || b.Thickness%(Inch/4) != 0 {
		return ""
	}
	return fmt.Sprintf("planed, and %s thick all the same: was it measured after planing?", s.format(b.Thickness))
}

// tooLong is more than 16 ft, the longest that hardwood commonly comes in, and
// overlength.
func tooLong(s *Shop, b *Board) string {
	if b.Length <= 16*Foot+6*Inch {
		return ""
	}
	return fmt.Sprintf("%s is long for a hardwood board", s.format(b.Length))
}

// tooShort is a board from which no blank can go over the machines. A planed
// board with a straight edge may never need to.
func tooShort(s *Shop, b *Board) string {
	blank := b.Length - 2*s.EndTrim
	if blank >= s.MinBlank || b.Faces == FacesPlaned && b.Edges != EdgesRough {
		return ""
	}
	return fmt.Sprintf("%s less the end trims is shorter than the shortest blank (%s): nothing can be cut from it",
		s.format(b.Length), s.format(s.MinBlank))
}

func tooWide(s *Shop, b *Board) string {
	if b.FullWidth() <= 2*Foot && b.FullWidth() < b.Length {
		return ""
	}
	return fmt.Sprintf("%s wide and %s long: are width and length the right way round?", s.format(b.FullWidth()), s.format(b.Length))
}

// steepTaper is one end more than half as wide again as the other.
func steepTaper(s *Shop, b *Board) string {
	if 2*b.FullWidth() <= 3*min(b.Width, b.TipWidth) {
		return ""
	}
	return fmt.Sprintf("%s wide at the butt and %s at the tip is a steep taper", s.format(b.Width), s.format(b.TipWidth))
}

func mostlyDefects(_ *Shop, b *Board) string {
	var list []patch
	for _, d := range b.Defects {
		list = append(list, patch{d.Rect, useDefect})
	}
	share := patchAreas(b, list)[useDefect] / woodArea(b, b.Frame())
	if share <= 0.5 {
		return ""
	}
	return fmt.Sprintf("defects cover %.0f%% of it", math.Floor(100*share))
}

// oddCost is a cost of less than half or more than twice what the shop's prices
// make the board worth.
func oddCost(s *Shop, b *Board) string {
	usual, known := s.DefaultCost(b)
	if !known || len(s.Price) == 0 || 2*b.Cost >= usual && b.Cost <= 2*usual {
		return ""
	}
	return fmt.Sprintf("costs %s, by the shop's prices it would be %s", b.Cost.Cents(), usual.Cents())
}

// markedTwice is the same defect in the list a second time.
func markedTwice(_ *Shop, b *Board) string {
	for i, d := range b.Defects {
		if slices.Contains(b.Defects[:i], d) {
			return fmt.Sprintf("a defect (%s) is listed twice", d.Kind)
		}
	}
	return ""
}
