package column

import (
	"slices"

	"sawbill/layout"
)

// FromSketch makes a cut of a sketch of one: blanks, their strips, the cells of these and
// the parts in the cells, with the least places where each may lie. What does not fit
// there is moved on or left out, and what is left over is kept where it is large enough.
// Parts that lean otherwise than a strip that leans, and blanks that must be ripped before
// they are trued, are left out.
func (w *Board) FromSketch(sketch *layout.Node, price []Value) Cut {
	root := &layout.Node{Rect: w.wood.Frame(), Cut: layout.Crosscut}
	at := w.shop.EndTrim
	for i, s := range sketch.Children {
		end := min(s.X2, w.wood.Length-w.shop.EndTrim)
		if i+1 < len(sketch.Children) {
			end = min(end, w.marked(sketch.Children[i+1].X1)-w.shop.CrosscutKerf)
		}
		r := layout.Rect{X1: max(at, w.marked(s.X1)), X2: end - end%w.shop.Units.Mark(), Y2: w.wood.FullWidth()}
		if blank := w.sketched(s, r, price); blank != nil {
			root.Children = append(root.Children, blank)
			at = blank.X2 + w.shop.CrosscutKerf
		}
	}
	w.setShows(root)
	w.dropWaste(root)
	return w.finish(root, price)
}

// marked is the first mark of the shop's rule at or after x.
func (w *Board) marked(x layout.Length) layout.Length {
	mark := w.shop.Units.Mark()
	return (max(0, x) + mark - 1) / mark * mark
}

// sketched is a blank that holds what a sketch of it says, in the mode in which that is
// worth most; nil where nothing of it may be.
func (w *Board) sketched(sketch *layout.Node, r layout.Rect, price []Value) *layout.Node {
	if r.Length() < w.shop.MinRipLength || !w.trueable(r) || w.metalIn(layout.Span{Lo: r.X1 - w.shop.CrosscutKerf, Hi: r.X1}) || w.metalAfter(r.X2) {
		return nil
	}
	var best *layout.Node
	var most Value
	for _, m := range w.modes(r, w.jointed()) {
		s := &sketching{w: w, m: m, blank: &layout.Node{Rect: r, Cut: layout.Rip, Trued: true}}
		s.lay(sketch)
		var worth Value
		for i, n := range w.CountParts(s.blank) {
			worth += Value(n) * price[i]
		}
		if worth > most {
			best, most = s.blank, worth
		}
	}
	return best
}

// sketching lays strips into a blank of a mode.
type sketching struct {
	w      *Board
	m      mode
	blank  *layout.Node
	usable layout.Rect
	holds  bool // a strip of the thickness that the mode asks for
}

func (s *sketching) lay(sketch *layout.Node) {
	w := s.w
	s.usable = w.shop.Usable(w.wood, s.blank.Rect)
	var last *layout.Node
	for _, c := range sketch.Children {
		l := w.leanNamed(c.Lean)
		y := s.usable.Y1 + l.inset()
		if last != nil {
			y = last.Y2 + w.leanNamed(last.Lean).apart(l)
		}
		if strip := s.strip(c, max(c.Y1, y)); strip != nil {
			s.blank.Children = append(s.blank.Children, strip)
			last = strip
		}
	}
	if s.m.must > 0 && !s.holds {
		s.blank.Children = nil
	}
}

// strip is a strip that begins at y; nil where nothing of it may be.
func (s *sketching) strip(sketch *layout.Node, y layout.Length) *layout.Node {
	w := s.w
	l := w.leanNamed(sketch.Lean)
	top := w.top - l.by - l.inset()
	strip := &layout.Node{Rect: s.usable, Cut: layout.Crosscut, Lean: l.by}
	strip.Y1, strip.Y2 = y, y
	x := max(s.usable.X1, s.blank.X1+w.shop.Snipe)
	last := min(s.usable.X2, s.blank.X2-w.shop.Snipe)
	for _, c := range sketch.Children {
		x1 := max(c.X1, x)
		cell := &layout.Node{Rect: layout.Rect{X1: x1, X2: x1 + c.Length(), Y1: y}, Cut: layout.Rip, Lean: l.by}
		if cell.X2 > last {
			continue
		}
		if cell.Children = s.parts(c, cell.Rect, l); len(cell.Children) == 0 {
			continue
		}
		last := cell.Children[len(cell.Children)-1]
		strip.Y2 = max(strip.Y2, last.Y2+w.wedge(last, l))
		strip.Children = append(strip.Children, cell)
		x = cell.X2 + w.shop.CrosscutKerf
	}
	if tall := min(sketch.Y2, top); tall > strip.Y2 && w.leaves(strip, tall) {
		strip.Y2 = tall
	}
	strip.Children = slices.DeleteFunc(strip.Children, func(cell *layout.Node) bool {
		cell.Y2 = strip.Y2
		return !w.divides(cell)
	})
	if strip.Y2 > top || len(strip.Children) == 0 {
		return nil
	}
	s.holds = s.holds || slices.ContainsFunc(strip.Leaves(), func(l *layout.Node) bool { return w.needOf(l) == s.m.must })
	if only := strip.Children[0]; len(strip.Children) == 1 && only.Part != "" && only.X1 == strip.X1 && only.X2 == strip.X2 {
		return only
	}
	return strip
}

// leaves reports whether a strip would leave something to keep in a cell or behind its
// cells if it reached up to y.
func (w *Board) leaves(strip *layout.Node, y layout.Length) bool {
	if strip.Y1+w.shop.MinOffcutWidth > y {
		return false
	}
	x, l := strip.X1, w.leanNamed(strip.Lean)
	for _, cell := range strip.Children {
		gap := cell.X1 - w.shop.CrosscutKerf - x
		last := cell.Children[len(cell.Children)-1]
		above := y - last.Y2 - max(w.shop.RipKerf, w.wedge(last, l))
		if gap >= w.shop.MinOffcutLength || cell.Length() >= w.shop.MinOffcutLength && above >= w.shop.MinOffcutWidth {
			return true
		}
		x = cell.X2 + w.shop.CrosscutKerf
	}
	return strip.X2-x >= w.shop.MinOffcutLength
}

// divides makes a part of a cell that is one, and reports whether the cell may be ripped
// otherwise.
func (w *Board) divides(cell *layout.Node) bool {
	if only := cell.Children[0]; len(cell.Children) == 1 && only.Rect == cell.Rect {
		*cell = *only
		return true
	}
	return w.shop.RipAgain && cell.Length() >= w.shop.MinRipLength
}

// wedge is what a part of a cell loses to the wood beyond it in a strip that leans otherwise.
func (w *Board) wedge(part *layout.Node, strip lean) layout.Length {
	if part.Lean == strip.by {
		return 0
	}
	own := w.leanNamed(part.Lean)
	return own.by + own.kerf
}

// parts lays the parts of a cell: those that lean as its strip does, and in a square strip
// all.
func (s *sketching) parts(sketch *layout.Node, cell layout.Rect, l lean) []*layout.Node {
	w := s.w
	var list []*layout.Node
	for _, p := range sketch.Children {
		piece := w.wayOf(p)
		if piece == nil || w.leans[piece.lean].by != l.by && l.by > 0 || !s.allows(piece.thickness, w.leans[piece.lean]) {
			continue
		}
		own, y := w.leans[piece.lean], cell.Y1
		switch {
		case len(list) > 0:
			last := list[len(list)-1]
			y = last.Y2 + w.leanNamed(last.Lean).apart(own)
		case own.by != l.by:
			y += own.inset()
		}
		leaf := &layout.Node{Rect: cell}
		leaf.Y1 = max(y, p.Y1+cell.Y1-sketch.Y1)
		leaf.Y2 = leaf.Y1 + piece.width
		w.setPart(leaf, piece)
		if w.holds(leaf, s.blank.Rect) {
			list = append(list, leaf)
		}
	}
	return list
}

// allows reports whether strips of a thickness and a lean may lie in the blank: those that
// lean are not planed thinner than it.
func (s *sketching) allows(thickness layout.Length, l lean) bool {
	return (s.m.only == 0 || thickness == s.m.only) && (thickness == s.m.most || thickness < s.m.most && l.by == 0)
}
