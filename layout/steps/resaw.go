package steps

import "sawbill/layout"

// resawn saws the wood of a leaf with layers into its pieces. The planed face lies
// against the fence; each cut takes its kerf and leaves two sawn faces, which
// lose the face skim. The one that is to lie against the fence next is jointed
// first; the slices are planed when all are off.
func (w *worker) resawn(h held) {
	part := w.problem.Part(h.node.Part)
	r := &resawer{worker: w, node: h.node, left: h.piece, one: w.shop.LayerOf(h.node, part)}
	for n := h.node.Pieces(); n > 1; n-- {
		r.slice(n)
	}
	for _, p := range append(r.slices, r.left) {
		r.finish(p)
	}
}

type resawer struct {
	*worker
	node   *layout.Node
	left   piece
	one    layout.Length // thickness of a finished piece
	slices []piece       // off, but not yet planed
	named  int           // pieces that have a name of their own
}

// say writes down a step on a piece of the leaf.
func (r *resawer) say(s Step, p piece) {
	s.Resawn = r.sheet.Name(r.node)
	r.emit(s, p)
}

// slice saws the next piece off what still holds n of them.
func (r *resawer) slice(n int) {
	whole, skim, chalk := r.left, r.shop.FaceSkim, r.sheet.Name(r.node)
	off, rest := whole, whole
	off.thickness = r.one + skim
	rest.thickness = whole.thickness - off.thickness - r.shop.ResawKerf
	s := Step{Operation: Resaw, From: Face, Setting: off.thickness}
	off.id = r.layer()
	if skim == 0 {
		r.done(&s, &off)
	} else {
		off.id = r.sheet.names.rough(off.id)
		s.Off, s.OffSize = off.id, off.sizeOn(layout.Through)
		r.slices = append(r.slices, off)
	}
	if n == 2 {
		rest.id = r.sheet.names.rough(r.layer())
	} else {
		rest.id = r.sheet.names.next(chalk)
	}
	s.Rest, s.RestSize = rest.id, rest.sizeOn(layout.Through)
	r.say(s, whole)
	r.left = rest
	if skim > 0 && n > 2 {
		r.joint()
	}
}

// joint makes the sawn face of what is left flat.
func (r *resawer) joint() {
	rough := r.left
	r.left.thickness -= r.shop.FaceSkim
	r.left.id = r.sheet.names.next(r.sheet.Name(r.node))
	r.say(Step{
		Operation: Plane, From: Face, Setting: r.left.thickness, Jointed: true,
		Off: r.left.id, OffSize: r.left.sizeOn(layout.Through),
	}, rough)
}

// finish planes a slice, or names what needs no planing.
func (r *resawer) finish(p piece) {
	s := Step{Operation: Plane, From: Face, Setting: r.one}
	if p.thickness == r.one {
		s.Operation, s.NoCut = Resaw, true
	}
	whole := p
	p.thickness, p.id = r.one, Chalk(p.id)
	r.done(&s, &p)
	r.say(s, whole)
}

// layer is the name of the next piece.
func (r *resawer) layer() string {
	r.named++
	return r.sheet.names.layer(r.node, r.named)
}

// done fills in that a step finishes a piece, which has its own name by now.
func (r *resawer) done(s *Step, p *piece) {
	if r.shop.ThicknessAllowance > 0 {
		p.id = Chalk(p.id) + "~2" // the slice as sawn is ~1
		s.Off, s.OffSize = p.id, p.sizeOn(layout.Through)
		r.resting = append(r.resting, held{r.node, *p})
		return
	}
	s.Off, s.OffSize, s.Show = p.id, p.sizeOn(layout.Through), r.node.Show
	s.Part, s.Slices, s.OnEdge = r.node.Part, r.node.Slices, r.node.OnEdge
	s.Oversize = r.oversize(r.problem.Part(r.node.Part))
}
