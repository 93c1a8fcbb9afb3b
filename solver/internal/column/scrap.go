package column

import (
	"cmp"
	"slices"

	"sawbill/layout"
)

// Scrap is the wood that a cut tree wastes. Spare pieces are laid into it so that
// nothing that is there moves and no offcut becomes smaller.
type Scrap struct {
	w    *Board
	root *layout.Node
	need func(leaf *layout.Node) layout.Length
}

// NewScrap makes the scrap of a board ready. The rows of the bill of p are the parts
// that may be laid; need tells the thickness that a part leaf of the tree needs,
// whatever part it is of. The tree becomes the scrap's own.
func NewScrap(p *layout.Problem, b *layout.Board, root *layout.Node, need func(leaf *layout.Node) layout.Length) *Scrap {
	return &Scrap{New(p, b, Config{MostX: 400, MostY: 200, MostStarts: 1, MostHeights: 1}), root, need}
}

// Root is the cut tree with all that was laid.
func (s *Scrap) Root() *layout.Node { return s.root }

// Place says where in the waste a piece is sought.
type Place uint8

// The places, those first that take the least work at the saw.
const (
	InStrip  Place = iota // at the end of a strip as wide, or between its pieces
	InCell                // beside pieces as long, in the last rip
	InLength              // in a strip that is wider, by a last rip of its own
	NewStrip              // in a new strip of a trued blank
	NewBlank              // in a new blank
	Places                // how many there are
)

// Lay lays one leaf of a row in a place, of at most so many layers, and tells how many
// pieces it gives; 0 where there is no room.
func (s *Scrap) Lay(row, most int, at Place) int {
	for _, p := range s.w.pieces {
		if p.row == row && p.layers <= most && s.lay(p, at) {
			return p.layers
		}
	}
	return 0
}

func (s *Scrap) lay(p *piece, at Place) bool {
	if at == NewBlank {
		return s.newBlank(p)
	}
	laid := false
	s.root.Walk(func(n *layout.Node) {
		if !n.Trued || laid {
			return
		}
		if at == NewStrip {
			laid = s.newStrip(n, p)
			return
		}
		for _, strip := range n.Children {
			if !laid && s.thicknessOf(strip) == p.thickness {
				laid = s.layIn(n, strip, p, at)
			}
		}
	})
	return laid
}

// thicknessOf is what the parts of a strip are planed to; 0 without any.
func (s *Scrap) thicknessOf(strip *layout.Node) layout.Length {
	for _, leaf := range strip.Leaves() {
		if leaf.Part != "" {
			return s.need(leaf)
		}
	}
	return 0
}

func (s *Scrap) layIn(trued, strip *layout.Node, p *piece, at Place) bool {
	switch by := s.w.leans[p.lean].by; {
	case strip.Cut != layout.Crosscut || strip.Lean != by:
		return false
	case at == InStrip:
		return strip.Width() == p.width && s.along(trued, strip, p, func(cell *layout.Node) bool { return s.set(cell, trued, p) })
	case by > 0: // in a leaning strip no last rip is made
		return false
	case at == InCell:
		return s.inCells(trued, strip, p)
	}
	return s.w.shop.RipAgain && p.length >= s.w.shop.MinRipLength && p.width < strip.Width() &&
		s.along(trued, strip, p, func(cell *layout.Node) bool {
			cell.Cut = layout.Rip
			return s.across(trued, cell, cell.Across(), p)
		})
}

// along seeks a length of the waste of a strip for a piece: try has the cell made of
// it, or refuses it.
func (s *Scrap) along(trued, strip *layout.Node, p *piece, try func(cell *layout.Node) bool) bool {
	w := s.w
	for _, gap := range w.gaps(strip.Rect, strip, w.shop.CrosscutKerf) {
		lo, hi := max(gap.X1, trued.X1+w.shop.Snipe), min(gap.X2, trued.X2-w.shop.Snipe)
		for _, x := range s.starts(lo, hi-p.length, func(r layout.Rect) layout.Length { return r.X2 }) {
			cell := &layout.Node{Rect: strip.Rect, Lean: strip.Lean}
			cell.X1, cell.X2 = x, x+p.length
			if try(cell) {
				insert(strip, cell)
				return true
			}
		}
	}
	return false
}

// inCells lays a piece beside others of its length that are ripped from one cell.
func (s *Scrap) inCells(trued, strip *layout.Node, p *piece) bool {
	for _, cell := range strip.Children {
		if cell.Cut != layout.Rip || cell.Length() != p.length || leaning(cell) {
			continue
		}
		for _, gap := range s.w.gaps(cell.Rect, cell, s.w.shop.RipKerf) {
			if s.across(trued, cell, gap.Across(), p) {
				return true
			}
		}
	}
	return false
}

// across lays a piece as long as its cell into a span of the width of it.
func (s *Scrap) across(trued, cell *layout.Node, room layout.Span, p *piece) bool {
	for _, y := range s.startsAcross(trued, room, p) {
		leaf := &layout.Node{Rect: cell.Rect}
		leaf.Y1, leaf.Y2 = y, y+p.width
		if s.set(leaf, trued, p) {
			insert(cell, leaf)
			return true
		}
	}
	return false
}

// newStrip lays a piece into a strip of its own of a trued node, which is planed
// thinner where the node is thicker than the piece.
func (s *Scrap) newStrip(trued *layout.Node, p *piece) bool {
	w := s.w
	inner := w.shop.Usable(w.wood, trued.Rect)
	thinner := p.thickness < trued.Thickness
	if trued.Part != "" || p.lean > 0 || leaning(trued) || p.thickness > trued.Thickness || thinner && inner.Length() < w.shop.MinBlank {
		return false
	}
	for _, gap := range w.gaps(inner, trued, w.shop.RipKerf) {
		for _, y := range s.startsAcross(trued, gap.Across(), p) {
			strip := &layout.Node{Rect: inner, Cut: layout.Crosscut}
			strip.Y1, strip.Y2 = y, y+p.width
			if s.along(trued, strip, p, func(cell *layout.Node) bool { return s.set(cell, trued, p) }) {
				insert(trued, uncrossed(strip))
				return true
			}
		}
	}
	return false
}

// uncrossed is a strip, or the part that it is from end to end, for which nothing is
// crosscut.
func uncrossed(strip *layout.Node) *layout.Node {
	if only := strip.Children[0]; only.Rect == strip.Rect {
		return only
	}
	return strip
}

// newBlank lays a piece into a blank that is no longer than it must be.
func (s *Scrap) newBlank(p *piece) bool {
	w := s.w
	long := max(w.shop.MinBlank, w.shop.MinRipLength, p.length+2*max(w.end, w.shop.Snipe))
	if !w.machinesTake(long) {
		return false
	}
	for _, gap := range w.gaps(s.root.Rect, s.root, w.shop.CrosscutKerf) {
		lo, hi := max(gap.X1, w.shop.EndTrim), min(gap.X2, w.wood.Length-w.shop.EndTrim)
		for _, x := range s.starts(lo, hi-long, func(r layout.Rect) layout.Length { return r.X2 - w.end }) {
			blank := &layout.Node{Rect: w.wood.Frame(), Cut: layout.Rip, Trued: true, Thickness: p.thickness}
			blank.X1, blank.X2 = x, x+long
			if s.mayTrue(blank) && s.newStrip(blank, p) {
				insert(s.root, blank)
				return true
			}
		}
	}
	return false
}

// mayTrue reports whether a new blank keeps clear of metal, goes through the machines
// and finishes to its thickness.
func (s *Scrap) mayTrue(blank *layout.Node) bool {
	w := s.w
	before := layout.Span{Lo: blank.X1 - w.shop.CrosscutKerf, Hi: blank.X1}
	return !w.tooWide(blank.Rect) && w.availableIn(blank.Rect) >= blank.Thickness &&
		!w.hasMetal(blank.Rect) && !w.metalIn(before) && !w.metalAfter(blank.X2)
}

// set makes a leaf a piece if the wood under it is sound enough for it.
func (s *Scrap) set(leaf, trued *layout.Node, p *piece) bool {
	s.w.setPart(leaf, p)
	if !s.w.holds(leaf, trued.Rect) {
		return false
	}
	leaf.Show, leaf.Spare = p.show(s.w.under(leaf, trued.Length())), true
	return true
}

// starts lists where a piece may start between lo and hi: at lo, and behind every
// defect.
func (s *Scrap) starts(lo, hi layout.Length, behind func(layout.Rect) layout.Length) []layout.Length {
	if lo > hi {
		return nil
	}
	list := []layout.Length{lo}
	for _, g := range s.w.grown {
		if at := behind(g); lo < at && at <= hi {
			list = append(list, at)
		}
	}
	return sorted(list)
}

// startsAcross does so across a trued node, in which a crooked board's defects reach
// further from the reference edge.
func (s *Scrap) startsAcross(trued *layout.Node, room layout.Span, p *piece) []layout.Length {
	shift := s.w.wood.Shift(trued.Length())
	return s.starts(room.Lo, room.Hi-p.width, func(r layout.Rect) layout.Length { return r.Y2 + shift })
}

// leaning reports whether a child of a node leans: what it takes of its neighbours is
// then no plain kerf.
func leaning(n *layout.Node) bool {
	return slices.ContainsFunc(n.Children, func(c *layout.Node) bool { return c.Lean > 0 })
}

// insert puts a child among those of a node in their order.
func insert(n, child *layout.Node) {
	n.Children = append(n.Children, child)
	slices.SortFunc(n.Children, inOrder)
}

func inOrder(a, b *layout.Node) int { return cmp.Or(cmp.Compare(a.X1, b.X1), cmp.Compare(a.Y1, b.Y1)) }
