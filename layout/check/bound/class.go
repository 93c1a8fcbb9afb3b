package bound

import (
	"slices"

	"sawbill/layout"
)

// mostDefects is how many defects of a board are reckoned with as obstacles.
// Boards with more are taken to be without the rest, which makes the bound
// higher and never wrong.
const mostDefects = 64

// class is the parts of one lane and one length: what one length of a strip may be
// ripped into.
type class struct {
	lane    int // of the wood's
	length  layout.Length
	advance int  // positions from the start of a length to that of the next
	again   bool // may be ripped again
	pieces  []piece
	zoneAt  []int32 // by position: where the length begins; -1 where it would leave the board
	zones   []zone
	// Of a board that tapers, by position: how far across parts may reach in a
	// length that begins there, and how far an offcut may.
	topAt, clipAt []int32
}

// piece is a part as one board sees it.
type piece struct {
	width   layout.Length
	advance int   // positions from the start of a piece to that of the next beside it
	price   value // of all its layers
	// A foreign piece leans otherwise than the strip: it is none by itself, begins no
	// earlier than at entry, and so many positions are lost behind the last of its kind.
	foreign     bool
	entry, exit int
	// blockA and blockB are the defects that it may not carry when face A, or
	// face B, is its show face.
	blockA, blockB uint64
	hitAt          []uint64 // by position: the defects that it cannot avoid across there
}

// zone is a stretch of positions along the board from which a length meets the
// same defects.
type zone struct {
	hit   uint64
	waste []int64 // by position across: what of the defects every length of the zone holds below it
}

// blocked reports whether a piece that meets the defects in hit fails its grade
// whichever face shows.
func (p *piece) blocked(hit uint64) bool { return p.blockA&hit != 0 && p.blockB&hit != 0 }

// setClasses gathers the parts that the board can give. A strip that is ripped again
// may hold parts that lean otherwise than itself.
func (w *wood) setClasses(p *layout.Problem, prices map[string]layout.Money) {
	ways := w.ways(p, prices)
	w.setBrief(ways)
	w.setDefects()
	for i := range ways {
		w.addWay(w.laneOf(&ways[i]), &ways[i], value(prices[ways[i].part.Name])*cash)
	}
	for lane := range w.lanes {
		for i := range ways {
			v := &ways[i]
			if l := &w.lanes[lane]; v.thickness == l.thick && v.lean != l.lean && w.ripsAgain(v.length) {
				l.longest, l.topKerf = max(l.longest, v.longest), max(l.topKerf, v.lean.kerf)
				w.addWay(lane, v, value(prices[v.part.Name])*cash)
			}
		}
	}
	for i := range w.classes {
		w.setZones(&w.classes[i])
		w.setReach(&w.classes[i])
	}
}

func (w *wood) addWay(lane int, v *way, price value) {
	c := w.classOf(lane, v.length)
	c.pieces = append(c.pieces, w.newPiece(w.lanes[lane].lean, v, price))
}

func (w *wood) classOf(lane int, length layout.Length) *class {
	for i := range w.classes {
		if c := &w.classes[i]; c.lane == lane && c.length == length {
			return c
		}
	}
	w.classes = append(w.classes, class{
		lane: lane, length: length,
		advance: w.x.down(length + w.crosscut),
		again:   w.ripsAgain(length),
	})
	return &w.classes[len(w.classes)-1]
}

func (w *wood) ripsAgain(length layout.Length) bool {
	return w.shop.RipAgain && length >= w.shop.MinRipLength
}

// newPiece makes a part ready for strips of a lean. In a square strip those that lean
// lose a kerf beside the wedge and the wedge; in others nothing is reckoned but what
// the strip loses.
func (w *wood) newPiece(in lean, v *way, price value) piece {
	p := piece{
		width: v.width, advance: w.y.down(v.width + v.lean.kerf),
		price: price * value(v.layers), foreign: v.lean != in,
	}
	if p.foreign && in.by == 0 {
		p.entry, p.exit = w.y.down(v.lean.kerf), w.y.down(v.lean.by)
	}
	grade := w.shop.Grades[v.part.Grade]
	for i, d := range w.defects {
		show := d.Kind != layout.Metal && slices.Contains(grade.Show, d.Kind)
		back := d.Kind != layout.Metal && slices.Contains(grade.Back, d.Kind)
		if d.On(layout.FaceA) && !show || d.On(layout.FaceB) && !back {
			p.blockA |= 1 << i
		}
		if d.On(layout.FaceB) && !show || d.On(layout.FaceA) && !back {
			p.blockB |= 1 << i
		}
	}
	p.hitAt = make([]uint64, w.ny+1)
	for j := range p.hitAt {
		p.hitAt[j] = w.hits(func(r layout.Rect) layout.Span { return r.Across() }, w.y, j, v.width+v.lean.by)
	}
	return p
}

// hits is the defects, grown, that something of a size meets wherever it begins
// in position i: the last place of the position does not clear them, nor the
// first.
func (w *wood) hits(along func(layout.Rect) layout.Span, g axis, i int, size layout.Length) uint64 {
	var hit uint64
	for k, r := range w.grown {
		if d := along(r); g.at(i)+size > d.Lo && g.last(i) < d.Hi {
			hit |= 1 << k
		}
	}
	return hit
}
