package steps

import "sawbill/layout"

// Bevels are ripped at a saw whose blade tilts away from the fence, so that what
// lies beyond the blade falls free, and never turned end for end, which would
// make trapezoids of them:
//
//   - with face B down and the far edge against the fence, the wedge before the
//     first strip comes off, and whatever else lies between two strips;
//   - with face A down and the edge that this has left against the fence, the strip
//     comes off, and its cut leaves the edge for the next.
//
// Both ways the edge against the fence is square or has its sharp corner at the
// table, so that settings are read there.

// kerfOf is how much of a face the rip beside a piece takes.
func (d *divider) kerfOf(kid child) layout.Length {
	if kid.angle == 0 {
		return d.kerf
	}
	return d.shop.BevelKerf(kid.angle)
}

// tilt sets the blade for a piece. From the reference edge face A lies on the
// table, from the far edge face B.
func (d *divider) tilt(s *Step, kid child) {
	s.Angle, s.Lean = kid.angle, kid.lean
	if kid.angle > 0 {
		s.Operation = BevelRip
	}
	switch {
	case s.From == d.beyond:
		s.Down = layout.FaceB
	case kid.angle > 0 || d.cut == layout.Rip && d.left.near > 0:
		s.Down = layout.FaceA
	}
}

// takeFromFar rips what lies before the next piece off, with the far edge against
// the fence: its near edge leans otherwise than the edge that is there.
func (d *divider) takeFromFar(kid child) {
	if d.left.open(d.cut) {
		d.straighten()
		return
	}
	whole, lo, kerf := d.left, kid.span.Lo, d.kerfOf(kid)
	keep := d.part(lo, whole.rect.Y2)
	keep.near = kid.lean
	keep = d.wood.clip(keep)
	s := d.step(d.beyond, keep.section().B.Len(), layout.Span{Lo: lo - kerf, Hi: lo})
	d.tilt(&s, kid)
	waste := d.part(whole.rect.Y1, lo-kerf)
	waste.far = kid.lean
	s.RestSize = waste.sizeOn(s.Down)
	if d.exact(keep) {
		node := d.settle(kid.node, keep)
		d.comesOff(&s, node, &keep)
		d.out = append(d.out, held{node, keep})
		d.kids = nil
	} else {
		keep.id = d.sheet.names.next(d.sheet.Name(d.parent))
		s.Off, s.OffSize = keep.id, keep.sizeOn(s.Down)
	}
	d.emit(s, whole)
	d.left = keep
}

// straighten rips the far edge parallel to the near one, so that it can lie
// against the fence. Pieces beyond that cut wait until the rest is ripped.
func (d *divider) straighten() {
	at, n := d.parallel()
	whole, near, far := d.left, d.kids[:n], d.kids[n:]
	s := d.step(d.near, at-whole.rect.Y1, layout.Span{Lo: at, Hi: at + d.kerf})
	d.tilt(&s, child{})
	off := d.part(whole.rect.Y1, at).sawn(d.cut)
	off.far, off.parallel, off.id = 0, true, d.sheet.names.next(d.sheet.Name(d.parent))
	s.Off, s.OffSize = off.id, off.sizeOn(s.Down)
	d.kids = far
	beyond := d.rest(&s, at+d.kerf)
	if len(d.kids) > 1 {
		beyond.id = d.sheet.names.aside(d.parent)
		s.Rest = beyond.id
	}
	d.emit(s, whole)
	far = d.kids // none where the rest already is the last piece
	d.left, d.kids = off, near
	d.all()
	d.left, d.kids = beyond, far
}

// parallel is where the far edge is ripped, and how many of the pieces to come lie
// before that. It is the far edge of the last piece if there is wood all along it;
// where the board tapers away it is as near to the bevels as what comes after
// them, or their own room, allows.
func (d *divider) parallel() (at layout.Length, before int) {
	last := d.kids[len(d.kids)-1]
	least := d.board.FarMin(d.left.rect.Along()) - d.wood.loss
	if last.lean == 0 && (last.span.Hi <= least || len(d.kids) == 1) {
		return last.span.Hi, len(d.kids)
	}
	for i, kid := range d.kids {
		if i > 0 && kid.lean == 0 {
			return kid.span.Lo - d.kerf, i
		}
	}
	return min(d.left.rect.Y2, last.span.Hi+last.lean+d.kerfOf(last)), len(d.kids)
}
