package bound

import (
	"fmt"
	"math"

	"sawbill/layout"
)

// cash is the value of one ten-thousandth of the currency.
const cash value = 100

// wood is one board made ready: what does not depend on where it is cut.
type wood struct {
	shop  *layout.Shop
	board *layout.Board

	grids
	nx, ny int // the last position at which something could end, its kerf included

	crosscut layout.Length // the kerf along
	rip      layout.Length // the kerf of a rip
	// stripKerf is the least between a strip with parts and what lies beyond it:
	// a rip, or a rough rip and the joint of one edge. restKerf is the least
	// between an offcut and what lies beyond it.
	stripKerf, restKerf layout.Length

	near  layout.Length // lost to joint the reference edge
	far   layout.Length // lost to joint the far edge
	end   layout.Length // lost to square each end of a blank
	inset layout.Length // no part within this of a blank's ends

	defects []layout.Defect // those that are reckoned with
	grown   []layout.Rect   // the same, with their clearance
	lanes   []lane
	classes []class
	brief   layout.Length // the shortest blank that holds a part
	alones  []alone
	bevels  []lean // of strips, the square first
	worth   worth
	unsound [][]int64 // by position across, along: area of defects below; nil where none counts
}

// grids are the axes along and across; uneven where something is rounded down to that
// across, so that a finer one is sharper.
type grids struct {
	x, y   axis
	uneven bool
}

// gridsFor are the fine grids of a board, and the coarsest on which its parts
// still take as much as they do on these.
func gridsFor(p *layout.Problem, b *layout.Board, prices map[string]layout.Money) (coarse, fine grids) {
	s := p.Shop
	return onGrids(p, b, grids{x: newAxis(s, b.Length, mostAlong), y: newAxis(s, b.FullWidth(), mostAcross)}, prices)
}

// finestFor are grids in tenths of a millimetre, or in quarters of the fine ones where
// sizes do not lie on those either, or are too large for so many.
func finestFor(p *layout.Problem, b *layout.Board, fine grids, prices map[string]layout.Money) grids {
	const tenth, more = layout.Millimetre / 10, 8
	on, _ := onGrids(p, b, grids{x: axis{unit: tenth}, y: axis{unit: tenth}}, prices)
	if on.x.sole && on.y.sole && b.Length/on.x.unit <= more*mostAlong && b.FullWidth()/on.y.unit <= more*mostAcross {
		return on
	}
	return grids{x: axis{unit: fine.x.unit / 4}, y: axis{unit: fine.y.unit / 4}}
}

// onGrids are grids made as coarse as the parts allow, and the same as they are.
func onGrids(p *layout.Problem, b *layout.Board, fine grids, prices map[string]layout.Money) (coarse, same grids) {
	s := p.Shop
	var along, across []layout.Length
	narrow, uneven := s.MinOffcutWidth+min(s.RipKerf, s.RoughRipKerf), b.Crook > 0
	for _, v := range bareWood(s, b, fine).ways(p, prices) {
		along = append(along, v.length+s.CrosscutKerf)
		across = append(across, v.width+s.RipKerf) // a bevel takes more, rounded down to the grid
		narrow = min(narrow, v.width+min(s.RipKerf, s.RoughRipKerf+s.EdgeJoint))
		uneven = uneven || v.lean.by > 0
	}
	anchors := anchorsOf(s, b)
	coarse.x, fine.x = fine.x.through(anchors[0], along, s.MinOffcutLength+s.CrosscutKerf)
	finest := fine.y
	coarse.y, fine.y = finest.through(anchors[1], across, narrow)
	if uneven { // the finer the grid, the less is rounded
		_, fine.y = finest.through(anchors[1], across, finest.unit)
	}
	coarse.uneven, fine.uneven = uneven, uneven
	return coarse, fine
}

// anchorsOf lists what places along and across are measured from, and by, beside
// the parts; nothing where the far edge slants. What bevels and warp take is no multiple
// of anything, and is rounded down to the grid.
func anchorsOf(s *layout.Shop, b *layout.Board) [2][]layout.Length {
	if b.Width != b.TipWidth {
		return [2][]layout.Length{}
	}
	along := []layout.Length{b.Length, s.EndTrim, s.EndSquare, s.Snipe, s.CrosscutKerf, s.MinBlank, s.MaxBlank, s.MinRipLength, s.MinOffcutLength}
	across := []layout.Length{b.Width, s.RipKerf, s.RoughRipKerf, s.EdgeJoint, s.MachineWidth(), s.MinOffcutWidth}
	for _, d := range b.Defects {
		c := s.Clearance[d.Kind]
		along = append(along, d.Rect.X1, d.Rect.X2, c.Along)
		across = append(across, d.Rect.Y1, d.Rect.Y2, c.Across)
	}
	return [2][]layout.Length{along, across}
}

// The most positions of the grid for a first look at a board.
const (
	roughAlong  = 400
	roughAcross = 100
)

// rough is grids for a first look at a board.
func (g grids) rough(b *layout.Board) grids {
	return grids{x: g.x.within(b.Length, roughAlong), y: g.y.within(b.FullWidth(), roughAcross)}
}

// newWood makes a board ready for prices. It fails where the grid is too coarse
// or the amounts are too large to reckon with.
func newWood(p *layout.Problem, b *layout.Board, g grids, prices map[string]layout.Money) (*wood, error) {
	w := bareWood(p.Shop, b, g)
	var err error
	if w.worth, err = newWorth(p.Shop, b); err != nil {
		return nil, fmt.Errorf("board %q: %w", b.Mark, err)
	}
	w.setClasses(p, prices)
	w.bevels, w.alones = w.leans(), w.listAlones()
	return w, w.checkSizes()
}

// bareWood is a board without defects, parts and worth.
func bareWood(s *layout.Shop, b *layout.Board, g grids) *wood {
	w := &wood{
		shop: s, board: b, crosscut: s.CrosscutKerf, rip: s.RipKerf, grids: g}
	w.stripKerf, w.restKerf = min(s.RipKerf, s.RoughRipKerf+s.EdgeJoint), min(s.RipKerf, s.RoughRipKerf)
	if b.Edges == layout.EdgesRough || b.Crook > 0 {
		w.near, w.end = s.EdgeJoint, s.EndSquare
	}
	if b.Edges != layout.EdgesBoth {
		w.far = s.EdgeJoint
	}
	w.inset = max(w.end, s.Snipe)
	w.nx, w.ny = w.x.down(b.Length+w.crosscut), w.y.down(b.FullWidth()+max(w.rip, w.jointed()))
	return w
}

// jointed is the least between a strip and an offcut that a rough rip parts: its kerf,
// and the joint of the strip's edge.
func (w *wood) jointed() layout.Length { return w.shop.RoughRipKerf + w.shop.EdgeJoint }

// cleared is the same board without a defect and as wide everywhere as at its
// wider end: nothing is worth less on it.
func (w *wood) cleared() *wood {
	board := *w.board
	board.Defects, board.Width, board.TipWidth = nil, board.FullWidth(), board.FullWidth()
	c := *w
	c.board, c.defects, c.grown, c.unsound = &board, nil, nil, nil
	c.classes = make([]class, len(w.classes))
	for i, from := range w.classes {
		c.classes[i] = class{lane: from.lane, length: from.length, advance: from.advance, again: from.again}
		for _, q := range from.pieces {
			q.blockA, q.blockB, q.hitAt = 0, 0, make([]uint64, w.ny+1)
			c.classes[i].pieces = append(c.classes[i].pieces, q)
		}
		c.setZones(&c.classes[i])
	}
	return &c
}

// setDefects takes the defects for as far across as they reach in the shortest blank.
func (w *wood) setDefects() {
	w.defects = w.board.Defects[:min(len(w.board.Defects), mostDefects)]
	shift := w.shift(w.brief)
	for _, d := range w.defects {
		c := w.shop.Clearance[d.Kind]
		grown := d.Rect.Grow(c.Along, c.Across)
		grown.Y2 += shift
		w.grown = append(w.grown, grown)
	}
	if w.worth.rate > 0 && len(w.board.Defects) > 0 {
		w.setUnsound()
	}
}

// checkSizes sees to it that every piece takes at least one position each way
// and that no sum of values overflows.
func (w *wood) checkSizes() error {
	if along, across := w.leastAlong(), w.leastAcross(); along < 1 || across < 1 {
		return fmt.Errorf("board %q: parts or offcuts are too small for its size to reckon with", w.board.Mark)
	}
	positions := int64(w.nx+1) * int64(w.ny+1)
	for _, c := range w.classes {
		for _, q := range c.pieces {
			if int64(q.price) > math.MaxInt64/8/positions {
				return fmt.Errorf("board %q: prices are too large to reckon with", w.board.Mark)
			}
		}
	}
	return nil
}

// leastAlong is the fewest positions that a piece of the board takes along it,
// whatever is made of it.
func (w *wood) leastAlong() int {
	least := w.nx + 1
	for _, c := range w.classes {
		least = min(least, c.advance)
	}
	if w.worth.rate > 0 {
		least = min(least, w.x.down(w.shop.MinOffcutLength+w.crosscut))
	}
	return least
}

// leastAcross is the fewest positions that a piece takes across the board.
func (w *wood) leastAcross() int {
	least := w.ny + 1
	for _, c := range w.classes {
		for _, q := range c.pieces {
			least = min(least, w.y.down(q.width+w.stripKerf))
		}
	}
	if w.worth.rate > 0 {
		least = min(least, w.y.down(w.shop.MinOffcutWidth+w.restKerf))
	}
	return least
}
