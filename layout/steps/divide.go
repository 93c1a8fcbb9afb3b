package steps

import "sawbill/layout"

// divide rips a trued blank into strips, crosscuts a strip to lengths, or rips a
// length once more: from the jointed edge or squared end of what is left, and
// where edges lean by turns from the far edge and from the edge that this leaves.
func (w *worker) divide(h held) []held {
	d := &divider{
		worker: w, parent: h.node, cut: h.node.Cut, left: h.piece,
		kids: w.wanted(h.node, h.piece), kerf: w.shop.Kerf(h.node.Cut, true),
		op: Crosscut, near: Butt, beyond: Tip, thin: 1,
	}
	if d.cut == layout.Rip {
		d.op, d.near, d.beyond, d.thin = Rip, Reference, Far, max(1, w.shop.MinRip)
	}
	d.all()
	return d.out
}

type divider struct {
	*worker
	parent       *layout.Node
	cut          layout.Cut
	left         piece   // what is still to be divided
	kids         []child // what it is still to become
	kerf         layout.Length
	op           Operation
	near, beyond From
	// thin is the least waste that may lie between fence and blade.
	thin layout.Length
	out  []held
}

func (d *divider) all() {
	for len(d.kids) > 0 {
		d.next()
	}
}

// next makes the next cut or two.
func (d *divider) next() {
	kid, lo := d.kids[0], span(d.left.rect, d.cut).Lo
	switch gap := kid.span.Lo - lo; {
	case d.begins(kid):
		d.take(kid)
	case d.cut == layout.Rip && (kid.lean > 0 || d.left.near > 0):
		d.takeFromFar(kid)
	case d.endsSquare(kid):
		d.takeWide(kid)
	case gap-d.kerf >= d.thin || gap > d.kerf && kid.short:
		d.trim(kid.span.Lo)
	default:
		d.takeWide(kid)
	}
}

// begins reports whether the near side of what is left is that of a piece.
func (d *divider) begins(kid child) bool {
	if d.cut == layout.Rip && !same(kid.lean, d.left.near) {
		return false
	}
	return same(kid.span.Lo, span(d.left.rect, d.cut).Lo)
}

// endsSquare reports whether what is left ends at its tip as its last piece does, with a
// square end. The waste before that is cut off with the piece at the stop: its length is
// then set at the saw, and not left over by the cut that made the blank.
func (d *divider) endsSquare(kid child) bool {
	return d.cut == layout.Crosscut && len(d.kids) == 1 && !d.left.open(d.cut) && kid.span.Hi == span(d.left.rect, d.cut).Hi
}

func (d *divider) part(lo, hi layout.Length) piece {
	p := d.left
	p.rect = withSpan(p.rect, d.cut, layout.Span{Lo: lo, Hi: hi})
	return p
}

// trim takes the waste before the next piece off.
func (d *divider) trim(to layout.Length) {
	lo := span(d.left.rect, d.cut).Lo
	waste := d.part(lo, to-d.kerf)
	s := d.step(d.near, to-d.kerf-lo, layout.Span{Lo: to - d.kerf, Hi: to})
	s.OffSize = waste.sizeOn(s.Down)
	d.goOn(&s, to)
}

// take cuts the next piece off what is left.
func (d *divider) take(kid child) {
	if d.exact(d.left) {
		d.nameLeft(kid)
		return
	}
	lo, hi, kerf := kid.span.Lo, kid.span.Hi, d.kerfOf(kid)
	off := d.part(lo, hi).sawn(d.cut)
	if d.cut == layout.Rip {
		off.far = kid.lean
	}
	off = d.wood.clip(off)
	s := d.step(d.near, hi-lo, layout.Span{Lo: hi, Hi: hi + kerf})
	d.tilt(&s, kid)
	node := d.settle(kid.node, off)
	d.comesOff(&s, node, &off)
	d.out = append(d.out, held{node, off})
	d.kids = d.kids[1:]
	d.goOn(&s, hi+kerf)
}

// nameLeft is for when what is left already is the last piece. A strip that is
// yet to be planed gets its name then, and one that is yet to be resawn when it
// is.
func (d *divider) nameLeft(kid child) {
	p := d.left
	node := d.settle(kid.node, p)
	if d.rests(node, p) {
		d.kids = nil
		return
	}
	if node.Part == "" || d.need(node) == p.thickness && node.Pieces() == 1 {
		s := Step{Operation: d.op, From: d.near, Setting: kid.span.Len()}
		d.tilt(&s, kid)
		p = d.name(s, node, p)
	}
	d.out = append(d.out, held{node, p})
	d.kids = nil
}

// takeWide cuts the next piece together with the little waste before it, then
// trims that waste off, measured from the fresh cut.
func (d *divider) takeWide(kid child) {
	lo, hi := span(d.left.rect, d.cut).Lo, kid.span.Hi
	wide := d.part(lo, hi)
	if hi < span(d.left.rect, d.cut).Hi || d.left.open(d.cut) && !kid.short || d.left.far > 0 && d.cut == layout.Rip {
		wide = wide.sawn(d.cut)
		if d.cut == layout.Rip {
			wide.far = 0
		}
		s := d.step(d.near, hi-lo, layout.Span{Lo: hi, Hi: hi + d.kerf})
		s.OffSize = wide.sizeOn(s.Down)
		wide.id = d.sheet.names.unfinished(kid.node)
		s.Off = wide.id
		d.kids = d.kids[1:]
		d.goOn(&s, hi+d.kerf)
	} else {
		d.kids = nil
	}
	d.trimWide(kid, wide)
}

func (d *divider) trimWide(kid child, wide piece) {
	lo := kid.span.Lo
	off := wide
	off.rect = withSpan(off.rect, d.cut, kid.span)
	off = d.wood.clip(off)
	s := d.step(d.beyond, kid.span.Len(), layout.Span{Lo: lo - d.kerf, Hi: lo})
	s.Kerf = withSpan(wide.rect, d.cut, layout.Span{Lo: lo - d.kerf, Hi: lo})
	node := d.settle(kid.node, off)
	d.comesOff(&s, node, &off)
	if gap := lo - span(wide.rect, d.cut).Lo; gap > d.kerf {
		waste := wide
		waste.rect = withSpan(waste.rect, d.cut, layout.Span{Lo: lo - gap, Hi: lo - d.kerf})
		s.RestSize = waste.sizeOn(s.Down)
	}
	d.emit(s, wide)
	d.out = append(d.out, held{node, off})
}

func (d *divider) step(from From, setting layout.Length, kerf layout.Span) Step {
	return Step{
		Operation: d.op, From: from, Setting: setting,
		Kerf: withSpan(d.left.rect, d.cut, kerf),
	}
}

// goOn writes a step down and goes on with what lies beyond its kerf, which ends
// at lo.
func (d *divider) goOn(s *Step, lo layout.Length) {
	whole := d.left
	d.left = d.rest(s, lo)
	d.emit(*s, whole)
}
