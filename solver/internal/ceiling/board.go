package ceiling

import (
	"slices"

	"sawbill/layout"
)

// Value is money in millionths of the unit.
type Value int64

// none stands for what cannot be.
const none Value = -1 << 60

// Board is one board made ready: all that does not depend on prices. It is
// never changed after New and may be used by several goroutines.
type Board struct {
	shop *layout.Shop
	wood *layout.Board
	bill []layout.Part
	x, y grid
	// How much sooner an offcut may start, and how much later it may end, than one on an
	// exact grid.
	soon, late layout.Length

	from, to    layout.Length // a trued blank lies within
	least, most layout.Length // length of a trued blank; most 0: any
	briefest    layout.Length // length of a blank from which something is cut
	near, far   layout.Length // lost to joint the edges
	end         layout.Length // lost at each end of a blank
	inset       layout.Length // no part is nearer to the ends of its blank
	stripKerf   layout.Length // the least between a strip and what lies beyond it
	restKerf    layout.Length // the least between an offcut and what lies beyond it
	marks       []mark
	spots       []layout.Rect // defects as marked, of those that overlap only the first
	rate        float64       // worth of a square millimetre of offcut, as a value
	lanes       []lane
	widest      int  // the most heights of a strip that are taken together
	whole       area // the whole outline
	bar         *bar // nil where things may lie side by side
}

// mark is a defect, grown by its clearance.
type mark struct {
	layout.Rect
	kind layout.Kind
	face layout.Face
}

// set is a set of marks. Marks beyond what it holds are left out, which can only
// raise the bound.
type set uint64

const mostMarks = 64

// lane is what a board can give of one thickness in strips of one lean.
type lane struct {
	thickness layout.Length
	lean      lean
	kerf      layout.Length // the least between a strip and what lies beyond it
	topKerf   layout.Length // the most that parts and their kerfs reach beyond the far edge
	longest   layout.Length // the longest blank that is thick enough
	bare      bool          // strips without parts
	classes   []class
	heights   []height
	same      []bool // by position along: every class is in the same zone as one position before
}

// class is the parts of one thickness and one length: a cell holds parts of one
// class.
type class struct {
	length  layout.Length
	advance int
	again   bool // long enough to be ripped again
	pieces  []piece
	hits    []set             // distinct sets of marks that a cell meets along
	zones   []zone            // stretches along the board that are alike to the class
	zoneAt  []int16           // by position along; -1 where the cell would leave the board
	cover   [][]layout.Length // by hit, by spot: how much of it lies in any cell there, along
}

// piece is a part as the board sees it.
type piece struct {
	row, layers    int
	onEdge         bool
	width          layout.Length
	native         bool  // it leans as its strip, and may be as wide as that
	entry, exit    int   // of pieces that lean otherwise: positions before the first in a cell, and lost behind the last
	advance        int   // positions from its start to that of the next piece of its cell
	alone          int   // positions that a strip of its width takes at least
	aloneMost      int   // and at most
	blockA, blockB set   // marks that it may not carry when face A, or B, shows
	across         []set // by position across: the marks that it meets there
}

// zone is what a class meets along some stretch.
type zone struct {
	hit   int           // which of the class's hits
	top   int           // the highest position that a strip may end at there
	reach layout.Length // how far offcuts may reach there under a slanting edge; 0: no further than parts
}

// New makes a board of a problem ready.
func New(p *layout.Problem, b *layout.Board) *Board { return newBoard(p, b, widest) }

// Rough makes a board of a problem ready for bounds that may be a little higher than those
// that New makes it ready for, in three quarters of the time.
func Rough(p *layout.Problem, b *layout.Board) *Board { return newBoard(p, b, widestRough) }

// Fine makes a board of a problem ready for bounds that count what is made, which take every
// height of a strip by itself.
func Fine(p *layout.Problem, b *layout.Board) *Board { return newBoard(p, b, 1) }

// mostPlaces is the most places of a board on which it is counted what it makes.
const mostPlaces = 120_000

// Countable reports whether it can be counted what a board makes: on an exact grid of not too
// many places.
func (w *Board) Countable() bool { return w.x.exact && w.y.exact && (w.x.n+1)*(w.y.n+1) <= mostPlaces }

// fineScale is by how much more values of a board made ready by Fine are: so that the
// rounding of offcuts hardly ever comes to a ten-thousandth of the unit.
const fineScale = 1000

func (w *Board) scale() float64 {
	if w.fine() {
		return fineScale
	}
	return 1
}

// fine reports whether nothing is taken together that can be told apart.
func (w *Board) fine() bool { return w.widest == 1 }

func newBoard(p *layout.Problem, b *layout.Board, widest int) *Board {
	s := p.Shop
	w := &Board{shop: s, wood: b, bill: p.Bill, widest: widest, from: s.EndTrim, to: b.Length - s.EndTrim}
	w.setLosses()
	ways := w.fitting(p)
	w.setGrids(ways)
	if area := float64(b.Length) * float64(b.Width+b.TipWidth) / 2; area > 0 {
		w.rate = w.scale() * float64(s.OffcutCredit) / float64(layout.CreditUnity) * float64(b.Cost) * 100 / (area / mm2)
	}
	w.setBriefest(ways)
	w.setMarks()
	if !w.fine() { // pieces are counted by rows of strips
		w.bar = w.newBar(ways)
	}
	if w.bar != nil && w.bar.exact {
		return w
	}
	w.whole = w.newArea(0, b.FullWidth(), func(r layout.Rect) layout.Length {
		return min(r.Y2, b.FarMin(r.Along())) - r.Y1 // what is certainly wood
	})
	w.setLanes(p, ways)
	for i := range w.lanes {
		w.setZones(&w.lanes[i])
		w.setHeights(&w.lanes[i])
	}
	return w
}

// setLosses works out what truing takes. A blank that no machine touches has no
// least length but that of a rip, and where nothing is lost not even that.
func (w *Board) setLosses() {
	s, b := w.shop, w.wood
	lost := s.LossesOf(b, b.Frame())
	w.near, w.far, w.end = lost.Near, lost.Far, lost.End
	if b.Faces == layout.FacesRough || b.Edges != layout.EdgesBoth || !b.Straight() {
		w.least, w.most = s.MinBlank, s.MaxBlank
	}
	if w.near+w.far+w.end > 0 {
		w.least = max(w.least, s.MinRipLength)
	}
	w.inset = max(w.end, s.Snipe)
	w.stripKerf = min(s.RipKerf, s.RoughRipKerf+s.EdgeJoint)
	w.restKerf = min(s.RipKerf, s.RoughRipKerf)
}

// setBriefest finds how short a blank may be: as one for the shortest part, or where
// offcuts may lie in steps under a slanting edge, as one for two of these.
func (w *Board) setBriefest(ways []way) {
	for i := range ways {
		if l := w.briefestOf(ways[i].length); w.briefest == 0 || l < w.briefest {
			w.briefest = l
		}
	}
	l := max(w.least, 2*w.shop.MinOffcutLength+w.shop.CrosscutKerf+2*w.end)
	if w.steps() && (w.briefest == 0 || l < w.briefest) {
		w.briefest = l
	}
}

func (w *Board) setGrids(ways []way) {
	var along, across []layout.Length
	anchorsAlong, anchorsAcross := w.anchors()
	for i := range ways {
		along = append(along, ways[i].length+w.shop.CrosscutKerf)
		// A strip beside a rough rip may take less, but must take some position.
		across = append(across, ways[i].width+w.shop.RipKerf, ways[i].width+w.stripKerf)
	}
	leastAlong, leastAcross := w.wood.Length, w.wood.FullWidth()
	if w.shop.OffcutCredit > 0 { // an offcut takes some position, too
		leastAlong, leastAcross = w.shop.MinOffcutLength+w.shop.CrosscutKerf, w.shop.MinOffcutWidth+w.restKerf
	}
	if w.uneven(ways) {
		leastAcross = min(leastAcross, marksUneven*w.shop.Units.Mark())
	}
	w.x = newGrid(w.wood.Length, w.shop.Units, mostAlong, w.mostExact(), leastAlong, along, anchorsAlong)
	w.y = newGrid(w.wood.FullWidth(), w.shop.Units, w.mostAcross(ways), mostAcross, leastAcross, across, anchorsAcross)
	if w.y.exact {
		for i := range ways {
			ways[i].lean = lean{w.y.at(w.y.down(ways[i].lean.by)), w.y.at(w.y.down(ways[i].lean.kerf))}
		}
	}
	if !w.slants() {
		return
	}
	w.y.slack = w.y.unit
	switch {
	case !w.x.exact:
	case w.wood.TipWidth < w.wood.Width: // places are rounded towards where the board is wide
		w.late, w.x.slack = w.x.unit, w.x.unit
	default:
		w.soon = w.x.unit
	}
}

// marksUneven is the most marks of the rule in a unit across where something is rounded.
const marksUneven = 4

// anchors lists what places are measured from, and by, beside the parts. What warp and
// leaning strips take is none, for it is rounded down to the grid, nor is a slanting far
// edge: nothing is pushed against it.
func (w *Board) anchors() (along, across []layout.Length) {
	s, b := w.shop, w.wood
	along = []layout.Length{b.Length, s.EndTrim, s.EndSquare, s.Snipe, s.CrosscutKerf, s.MinBlank, s.MaxBlank, s.MinRipLength, s.MinOffcutLength}
	across = []layout.Length{s.RipKerf, s.RoughRipKerf, s.EdgeJoint, s.MachineWidth(), s.MinOffcutWidth}
	if !w.slants() {
		across = append(across, b.Width)
	}
	for _, d := range b.Defects {
		c := s.Clearance[d.Kind]
		along = append(along, d.Rect.X1, d.Rect.X2, c.Along)
		across = append(across, d.Rect.Y1, d.Rect.Y2, c.Across)
	}
	return along, across
}

// over is how much longer an offcut may be than one on an exact grid.
func (w *Board) over() layout.Length { return w.soon + w.late }

// slants reports whether the board tapers.
func (w *Board) slants() bool { return w.wood.Width != w.wood.TipWidth }

// uneven reports whether a crook or leaning strips take of the width what is no multiple of
// anything: the finer the grid, the less of that is rounded.
func (w *Board) uneven(ways []way) bool {
	leans := func(v way) bool { return v.lean.by > 0 }
	return w.wood.Crook > 0 || slices.ContainsFunc(ways, leans)
}

// shift is no more than how far from the reference edge the wood of a blank begins that is
// no shorter than short. On a grid a blank may be up to a unit longer than it is in truth.
func (w *Board) shift(short layout.Length) layout.Length {
	if w.x.exact {
		short -= w.x.unit
	}
	shift := w.wood.Shift(max(0, short))
	if w.y.exact {
		shift = w.y.at(w.y.down(shift))
	}
	return shift
}

// setMarks takes the defects for as far across as they reach in the shortest blank.
func (w *Board) setMarks() {
	shift := w.shift(w.briefest)
	for _, d := range w.wood.Defects {
		c := w.shop.Clearance[d.Kind]
		if len(w.marks) < mostMarks {
			grown := d.Rect.Grow(c.Along, c.Across)
			grown.Y2 += shift
			w.marks = append(w.marks, mark{grown, d.Kind, d.Face})
		}
		if !slices.ContainsFunc(w.spots, d.Rect.Overlaps) {
			w.spots = append(w.spots, d.Rect)
		}
	}
}

// blocks reports whether a piece of a size meets a span wherever it lies among
// the places that position i stands for.
func blocks(g grid, i int, size layout.Length, s layout.Span) bool {
	return g.at(i)+size > s.Lo && g.at(i+1) <= g.at(g.down(s.Hi))
}

// fails reports whether a piece that meets the marks of both sets fails its
// grade with either face showing.
func (q *piece) fails(along, across set) bool {
	met := along & across
	return met&q.blockA != 0 && met&q.blockB != 0
}
