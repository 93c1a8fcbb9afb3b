package bound

import (
	"slices"

	"sawbill/layout"
)

// The most positions that the grid of a board has along it and across it.
const (
	mostAlong  = 2048
	mostAcross = 512
)

// axis is a grid along one direction: position i stands for all places x with
// i*unit <= x < (i+1)*unit, or where whatever a place may be measured from lies on
// the grid, for i*unit alone.
type axis struct {
	unit layout.Length
	sole bool
}

// newAxis doubles the smallest unit of the shop until at most most positions
// lie on size.
func newAxis(s *layout.Shop, size layout.Length, most int) axis {
	g := axis{unit: layout.SixtyFourth}
	if s.Units == layout.Millimetres {
		g.unit = layout.Millimetre / 2
	}
	return g.within(size, most)
}

// within doubles the unit until at most most positions lie on size.
func (g axis) within(size layout.Length, most int) axis {
	for size/g.unit > layout.Length(most) {
		g = axis{unit: 2 * g.unit}
	}
	return g
}

// coarser doubles the unit for as long as all steps are whole numbers of it, so
// that rounding them gains nothing, and it is no more than least.
func (g axis) coarser(steps []layout.Length, least layout.Length) axis {
	for 2*g.unit <= least && !slices.ContainsFunc(steps, func(l layout.Length) bool { return l%(2*g.unit) != 0 }) {
		g.unit *= 2
	}
	return g
}

// through is as coarse as steps and anchors allow, with positions that stand for one
// place each: that of a best cutting, of which neither a part nor the boundary of an
// offcut can be moved, lies on the grid (Herz 1972). For with the tree given, and on
// which side of every defect each cut lies, places are bounded by differences that are
// whole numbers of units, and what the offcuts are worth is linear in those along and
// in those across. No length changes by a whole unit when places move to the grid. Anchors
// that do not lie on the grid leave it as coarser does.
func (g axis) through(anchors, steps []layout.Length, least layout.Length) (coarse, fine axis) {
	if anchors == nil || slices.ContainsFunc(append(slices.Clone(steps), anchors...), func(l layout.Length) bool { return !g.exact(l) }) {
		return g.coarser(steps, least), g
	}
	coarse = g.coarser(append(slices.Clone(steps), anchors...), least)
	coarse.sole = true
	return coarse, coarse
}

// at is the first place that position i stands for.
func (g axis) at(i int) layout.Length { return layout.Length(i) * g.unit }

// last is the last place that position i stands for.
func (g axis) last(i int) layout.Length {
	if g.sole {
		return g.at(i)
	}
	return g.at(i+1) - 1
}

// down is the position of x, also of a negative one.
func (g axis) down(x layout.Length) int {
	if x < 0 {
		return -int((-x + g.unit - 1) / g.unit)
	}
	return int(x / g.unit)
}

// exact reports whether a size is a whole number of units, so that nothing is
// gained by rounding it.
func (g axis) exact(size layout.Length) bool { return size%g.unit == 0 }
