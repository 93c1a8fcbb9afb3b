package bound

import (
	"slices"

	"sawbill/layout"
)

// mostDefects is how many defects of a board are reckoned with as obstacles.
// Boards with more are taken to be without the rest, which makes the bound
// higher and never wrong.
const mostDefects = 64

// class is the parts of one thickness and one length: what one length of a
// strip may be ripped into.
type class struct {
	thick, length layout.Length
	advance       int  // positions from the start of a length to that of the next
	again         bool // may be ripped again
	pieces        []piece
	zoneAt        []int32 // by position: where the length begins; -1 where it would leave the board
	zones         []zone
	// Of a board that tapers, by position: how far across parts may reach in a
	// length that begins there, and how far an offcut may.
	topAt, clipAt []int32
}

// piece is a part as one board sees it.
type piece struct {
	width   layout.Length
	advance int // positions from the start of a piece to that of the next beside it
	price   value
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

// gives reports whether a part has a price and the board can give it by species,
// marks and thickness.
func gives(p *layout.Problem, part *layout.Part, b *layout.Board, prices map[string]layout.Money) bool {
	return prices[part.Name] > 0 && p.Allows(part, b) && part.CutThickness(p.Shop) <= p.Shop.Available(b)
}

// setClasses gathers the parts that the board can give.
func (w *wood) setClasses(p *layout.Problem, prices map[string]layout.Money) {
	for i := range p.Bill {
		part := &p.Bill[i]
		if gives(p, part, w.board, prices) {
			c := w.classOf(part.CutThickness(w.shop), part.CutLength(w.shop))
			c.pieces = append(c.pieces, w.newPiece(part, value(prices[part.Name])*cash))
		}
	}
	for i := range w.classes {
		w.setZones(&w.classes[i])
		w.setReach(&w.classes[i])
	}
}

func (w *wood) classOf(thick, length layout.Length) *class {
	for i := range w.classes {
		if c := &w.classes[i]; c.thick == thick && c.length == length {
			return c
		}
	}
	w.classes = append(w.classes, class{
		thick: thick, length: length,
		advance: w.x.down(length + w.crosscut),
		again:   w.shop.RipAgain && length >= w.shop.MinRipLength,
	})
	return &w.classes[len(w.classes)-1]
}

func (w *wood) newPiece(part *layout.Part, price value) piece {
	width := part.CutWidth(w.shop)
	p := piece{width: width, advance: w.y.down(width + w.rip), price: price}
	grade := w.shop.Grades[part.Grade]
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
		p.hitAt[j] = w.hits(func(r layout.Rect) layout.Span { return r.Across() }, w.y, j, width)
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
