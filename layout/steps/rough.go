package steps

import "sawbill/layout"

// roughCut takes a rough piece apart, from its tip (or far edge) toward the end
// that is measured from, so that every reading holds until it is used: the
// piece between tape and blade is always what is left.
func (w *worker) roughCut(h held) []held {
	r := &rougher{
		worker: w, parent: h.node, left: h.piece,
		kids: w.wanted(h.node, h.piece), kerf: w.shop.Kerf(h.node.Cut, false),
		op: Crosscut, near: Butt, beyond: Tip,
	}
	if h.node.Cut == layout.Rip {
		r.op, r.near, r.beyond = RoughRip, Reference, Far
	}
	out := make([]held, len(r.kids))
	for i := len(r.kids) - 1; i >= 0; i-- {
		out[i] = held{r.kids[i].node, r.free(i)}
	}
	return out
}

type rougher struct {
	*worker
	parent       *layout.Node
	left         piece // what still has the end that is measured from
	kids         []child
	kerf         layout.Length
	op           Operation
	near, beyond From
}

func (r *rougher) span() layout.Span { return span(r.left.rect, r.parent.Cut) }

// part is the piece of what is left with another extent.
func (r *rougher) part(s layout.Span) piece {
	p := r.left
	p.rect = withSpan(p.rect, r.parent.Cut, s)
	return wood{board: r.board}.clip(p)
}

// free cuts the last piece, kids[i], off what is left.
func (r *rougher) free(i int) piece {
	kid, hi := r.kids[i], r.span().Hi
	if hi > kid.span.Hi {
		r.cut(i, kid.span.Hi, nil)
	}
	lo := r.span().Lo
	if i > 0 {
		lo = r.kids[i-1].span.Hi
	}
	switch gap := kid.span.Lo - lo; {
	case i == 0 && gap == 0:
		if len(kid.node.Children) == 0 && r.left.id != r.sheet.Name(kid.node) {
			return r.name(Step{Operation: r.op, From: r.near, Setting: r.span().Len()}, kid.node, r.left)
		}
		return r.left
	case i > 0 || gap > r.kerf:
		return r.cut(i, kid.span.Lo-r.kerf, kid.node)
	}
	return r.cutFromBeyond(kid)
}

// cut saws at a distance from the near end. What lies beyond becomes rest, or is
// waste when rest is nil. It gives the rest.
func (r *rougher) cut(i int, at layout.Length, rest *layout.Node) piece {
	whole, lo, hi := r.left, r.span().Lo, r.span().Hi
	s := Step{Operation: r.op, From: r.near, Setting: at - lo}
	s.Kerf = withSpan(whole.rect, r.parent.Cut, layout.Span{Lo: at, Hi: at + r.kerf})
	near := r.part(layout.Span{Lo: lo, Hi: at})
	s.OffSize = near.sizeOn(layout.Through)
	r.keepNear(&s, &near, i, rest)
	var beyond piece
	if at+r.kerf < hi {
		beyond = r.part(layout.Span{Lo: at + r.kerf, Hi: hi})
		s.RestSize = beyond.sizeOn(layout.Through)
	}
	if rest != nil {
		beyond.id = r.sheet.names.finished(rest)
		s.Rest = beyond.id
		s.keepRest(rest.Offcut)
	}
	r.emit(s, whole)
	r.left = near
	return beyond
}

// keepNear names the piece between tape and blade: waste when it holds nothing
// more, the first piece itself when it is just that, otherwise what is left.
func (r *rougher) keepNear(s *Step, near *piece, i int, rest *layout.Node) {
	first := r.kids[0]
	switch {
	case rest != nil && i == 0:
	case span(near.rect, r.parent.Cut) == first.span && first.node.Offcut != "" && rest != nil:
		near.id = r.sheet.names.unfinished(first.node) // named by a step of its own
		s.Off = near.id
	case span(near.rect, r.parent.Cut) == first.span:
		r.comesOff(s, first.node, near)
	default:
		near.id = r.sheet.names.next(r.sheet.Name(r.parent))
		s.Off = near.id
	}
}

// cutFromBeyond takes the first piece when there is too little wood before it to
// measure: from its other end.
func (r *rougher) cutFromBeyond(kid child) piece {
	whole, lo := r.left, kid.span.Lo
	p := r.part(kid.span)
	s := Step{Operation: r.op, From: r.beyond, Setting: kid.span.Len()}
	s.Kerf = withSpan(whole.rect, r.parent.Cut, layout.Span{Lo: lo - r.kerf, Hi: lo})
	r.comesOff(&s, kid.node, &p)
	r.emit(s, whole)
	return p
}
