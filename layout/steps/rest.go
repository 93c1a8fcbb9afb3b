package steps

import "sawbill/layout"

// rest fills in what lies beyond a kerf that ends at lo, and gives it.
func (d *divider) rest(s *Step, lo layout.Length) piece {
	p := d.part(lo, span(d.left.rect, d.cut).Hi)
	if d.cut == layout.Rip {
		p.near = s.Lean
	}
	if nothing(p) {
		return piece{}
	}
	p = d.wood.clip(p)
	s.RestSize = p.sizeOn(s.Down)
	names := d.sheet.names
	switch {
	case len(d.kids) == 0:
		p.id = "" // waste
	case !d.exact(p):
		p.id = names.next(d.sheet.Name(d.parent))
	case d.needsName(s, p):
		p.id = names.unfinished(d.settle(d.kids[0].node, p))
	default:
		node := d.settle(d.kids[0].node, p)
		p.id = names.finished(node)
		s.keepRest(node.Offcut)
		d.kids = nil
		d.out = append(d.out, held{node, p})
	}
	s.Rest = p.id
	return p
}

// nothing reports whether a kerf has taken all of a piece.
func nothing(p piece) bool {
	return p.rect.X1 >= p.rect.X2 || p.section().width() == 0
}

// needsName reports whether the rest of a step, which is exactly a piece, still
// needs a step that names it: a finished part does, for only what is off is
// counted, and so does a second offcut. A strip that is yet to be planed is
// named then.
func (d *divider) needsName(s *Step, p piece) bool {
	node := d.settle(d.kids[0].node, p)
	return node.Part != "" || node.Offcut != "" && s.Offcut != ""
}

// exact reports whether a piece already is the one thing that is still to come
// from it, with no rough side left to cut clean. An offcut may keep one.
func (d *divider) exact(p piece) bool {
	kid := d.kids[0]
	if d.cut == layout.Rip && !(same(p.near, kid.lean) && same(p.far, kid.lean)) {
		return false
	}
	return len(d.kids) == 1 && span(p.rect, d.cut) == kid.span &&
		(!p.open(d.cut) || kid.short || kid.node.Offcut != "")
}
