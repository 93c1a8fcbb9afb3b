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
	x, y grid

	from, to    layout.Length // a trued blank lies within
	least, most layout.Length // length of a trued blank; most 0: any
	near, far   layout.Length // lost to joint the edges
	end         layout.Length // lost at each end of a blank
	inset       layout.Length // no part is nearer to the ends of its blank
	stripKerf   layout.Length // the least between a strip and what lies beyond it
	restKerf    layout.Length // the least between an offcut and what lies beyond it
	marks       []mark
	spots       []layout.Rect // defects as marked, of those that overlap only the first
	rate        float64       // worth of a square millimetre of offcut, as a value
	lanes       []lane
	whole       area          // the whole outline
	shortest    layout.Length // of the parts
	bar         *bar          // nil where things may lie side by side
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

// lane is what a board can give of one thickness.
type lane struct {
	thickness layout.Length
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
	row            int
	advance        int   // positions from its start to that of the next piece of its cell
	alone          int   // positions that a strip of its width takes at least
	aloneMost      int   // and at most
	blockA, blockB set   // marks that it may not carry when face A, or B, shows
	across         []set // by position across: the marks that it meets there
}

// zone is what a class meets along some stretch.
type zone struct {
	hit int // which of the class's hits
	top int // the highest position that a strip may end at there
}

// New makes a board of a problem ready.
func New(p *layout.Problem, b *layout.Board) *Board {
	s := p.Shop
	w := &Board{shop: s, wood: b, from: s.EndTrim, to: b.Length - s.EndTrim}
	w.setLosses()
	rows := w.fitting(p)
	w.setGrids(p, rows)
	w.setMarks()
	if area := float64(b.Length) * float64(b.Width+b.TipWidth) / 2; area > 0 {
		w.rate = float64(s.OffcutCredit) / float64(layout.CreditUnity) * float64(b.Cost) * 100 / (area / mm2)
	}
	if w.bar = w.newBar(p, rows); w.bar != nil && len(b.Defects) == 0 {
		return w
	}
	w.whole = w.newArea(0, b.FullWidth(), func(r layout.Rect) layout.Length { return r.Width() })
	for _, row := range rows {
		w.addPart(p, row)
	}
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
	if b.Edges == layout.EdgesRough {
		w.near, w.end = s.EdgeJoint, s.EndSquare
	}
	if b.Edges != layout.EdgesBoth {
		w.far = s.EdgeJoint
	}
	if b.Faces == layout.FacesRough || b.Edges != layout.EdgesBoth {
		w.least, w.most = s.MinBlank, s.MaxBlank
	}
	if w.near+w.far+w.end > 0 {
		w.least = max(w.least, s.MinRipLength)
	}
	w.inset = max(w.end, s.Snipe)
	w.stripKerf = min(s.RipKerf, s.RoughRipKerf+s.EdgeJoint)
	w.restKerf = min(s.RipKerf, s.RoughRipKerf)
}

// fitting lists the rows of the bill that the board may hold by size.
func (w *Board) fitting(p *layout.Problem) []int {
	var rows []int
	for i := range p.Bill {
		part := &p.Bill[i]
		l, wide := part.CutLength(w.shop), part.CutWidth(w.shop)
		if p.Allows(part, w.wood) && part.CutThickness(w.shop) <= w.shop.Available(w.wood) &&
			l <= w.to-w.from-2*w.inset && wide <= w.wood.FullWidth()-w.near-w.far {
			rows = append(rows, i)
		}
	}
	return rows
}

func (w *Board) setGrids(p *layout.Problem, rows []int) {
	var along, across []layout.Length
	for _, i := range rows {
		along = append(along, p.Bill[i].CutLength(w.shop)+w.shop.CrosscutKerf)
		across = append(across, p.Bill[i].CutWidth(w.shop)+w.shop.RipKerf)
	}
	w.x = newGrid(w.wood.Length, w.shop.Units, mostAlong, along)
	w.y = newGrid(w.wood.FullWidth(), w.shop.Units, mostAcross, across)
}

func (w *Board) setMarks() {
	for _, d := range w.wood.Defects {
		c := w.shop.Clearance[d.Kind]
		if len(w.marks) < mostMarks {
			w.marks = append(w.marks, mark{d.Rect.Grow(c.Along, c.Across), d.Kind, d.Face})
		}
		if !slices.ContainsFunc(w.spots, d.Rect.Overlaps) {
			w.spots = append(w.spots, d.Rect)
		}
	}
}

func (w *Board) addPart(p *layout.Problem, row int) {
	part := &p.Bill[row]
	l := w.laneOf(part.CutThickness(w.shop))
	c := w.classOf(l, part.CutLength(w.shop))
	c.pieces = append(c.pieces, w.newPiece(p, row))
	if w.shortest == 0 || c.length < w.shortest {
		w.shortest = c.length
	}
}

func (w *Board) laneOf(thickness layout.Length) *lane {
	i := slices.IndexFunc(w.lanes, func(l lane) bool { return l.thickness == thickness })
	if i < 0 {
		i = len(w.lanes)
		w.lanes = append(w.lanes, lane{thickness: thickness})
	}
	return &w.lanes[i]
}

func (w *Board) classOf(l *lane, length layout.Length) *class {
	i := slices.IndexFunc(l.classes, func(c class) bool { return c.length == length })
	if i < 0 {
		i = len(l.classes)
		l.classes = append(l.classes, class{
			length:  length,
			advance: w.x.down(length + w.shop.CrosscutKerf),
			again:   w.shop.RipAgain && length >= w.shop.MinRipLength,
		})
	}
	return &l.classes[i]
}

func (w *Board) newPiece(p *layout.Problem, row int) piece {
	part := &p.Bill[row]
	width := part.CutWidth(w.shop)
	q := piece{row: row, advance: max(1, w.y.down(width+w.shop.RipKerf)), across: make([]set, w.y.n+1)}
	q.alone = max(1, w.y.down(width+w.stripKerf))
	q.aloneMost = q.alone
	if (width+w.stripKerf)%w.y.unit != 0 {
		q.aloneMost++
	}
	grade := w.shop.Grades[part.Grade]
	for i, m := range w.marks {
		d := layout.Defect{Kind: m.kind, Face: m.face}
		show, back := slices.Contains(grade.Show, m.kind), slices.Contains(grade.Back, m.kind)
		if d.On(layout.FaceA) && !show || d.On(layout.FaceB) && !back {
			q.blockA |= 1 << i
		}
		if d.On(layout.FaceB) && !show || d.On(layout.FaceA) && !back {
			q.blockB |= 1 << i
		}
	}
	for j := range q.across {
		for i, m := range w.marks {
			if blocks(w.y, j, width, m.Across()) {
				q.across[j] |= 1 << i
			}
		}
	}
	return q
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
