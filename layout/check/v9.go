package check

import (
	"math"

	"sawbill/layout"
)

// v9: bevelled strips and their parts say how far they lean, and their slanting
// kerfs stay clear of the parent's edges and of one another on both faces.
func v9(s *sawn, wrong report) {
	for _, at := range s.spots {
		if at.Lean > 0 && at.trued == nil {
			wrong(at, "it leans, but wood that is not trued is not ripped at a bevel")
		}
		if at.part != nil {
			v9Part(at, wrong)
		}
		if at.parent == nil {
			continue
		}
		if at.parent.Cut == layout.Crosscut && at.Lean > 0 && apart(at.Lean, at.parent.lean()) {
			wrong(at, "it leans by %v; the strip that it is crosscut from leans by %v", at.Lean, at.parent.lean())
		}
		if at.parent.Cut == layout.Rip {
			v9Inside(s, at, wrong)
		}
	}
	for _, at := range s.spots {
		for i := 1; i < len(at.kids) && at.Cut == layout.Rip; i++ {
			v9Apart(s, at.kids[i-1], at.kids[i], wrong)
		}
	}
}

// lean is how far a node leans: what it says or, where it is crosscut, what its
// strip says.
func (at *spot) lean() layout.Length {
	if at.Lean == 0 && at.parent != nil && at.parent.Cut == layout.Crosscut {
		return at.parent.lean()
	}
	return at.Lean
}

// leaning reports whether a strip is ripped at a bevel.
func leaning(strip *spot) bool {
	for _, leaf := range strip.parts() {
		if leaf.part.Bevel > 0 {
			return true
		}
	}
	return strip.lean() > 0
}

// apart reports whether two leans are more than a micrometre apart.
func apart(a, b layout.Length) bool { return a-b > micrometre || b-a > micrometre }

// v9Part holds the lean of a part and of its strip against
// d = finished thickness * tan(bevel).
func v9Part(at *spot, wrong report) {
	angle := float64(at.part.Bevel) / float64(layout.Degree) * math.Pi / 180
	d := layout.Length(math.Round(float64(at.part.Thickness) * math.Tan(angle)))
	if apart(at.Lean, d) {
		wrong(at, "lean says %v; the bevel of the part makes it %v", at.Lean, d)
	}
	if up := at.parent; up != nil && up.Cut == layout.Crosscut && apart(up.lean(), d) {
		wrong(at, "its strip leans by %v; the bevel of the part makes it %v", up.lean(), d)
	}
}

// slantKerf is how much of a face the rip at the edge of a node takes:
// rip_kerf / cos(bevel), with tan(bevel) = lean / thickness.
func (s *sawn) slantKerf(at *spot) layout.Length {
	kerf, lean := s.job.shop.RipKerf, at.lean()
	if lean == 0 || at.trued == nil {
		return kerf
	}
	thick := at.trued.Thickness
	if leaves := at.parts(); len(leaves) > 0 {
		thick = leaves[0].part.Thickness
	}
	if thick == 0 {
		thick = s.wood.Thickness
	}
	return layout.Length(math.Ceil(float64(kerf) * math.Hypot(1, float64(lean)/float64(thick))))
}

// v9Inside: between an edge of the parent and an edge that leans otherwise
// there is room for the slanting kerf, on face A and on face B.
func v9Inside(s *sawn, at *spot, wrong report) {
	in, d, up := s.usable(at.parent), at.lean(), at.parent.lean()
	if d == 0 && up == 0 || d > 0 && !apart(d, up) {
		return
	}
	room := layout.Length(0)
	if d > 0 {
		room = s.slantKerf(at)
	}
	near := min(at.Y1-in.Y1, at.Y1+d-in.Y1-up)
	far := min(in.Y2-at.Y2, in.Y2+up-at.Y2-d)
	if least := min(near, far); least < room-micrometre-at.parent.slack {
		wrong(at, "it comes to %v from an edge of its parent that leans otherwise; it must keep %v", least, room)
	}
}

// v9Apart: neighbours keep the larger of their kerfs apart on both faces.
func v9Apart(s *sawn, a, b *spot, wrong report) {
	if a.lean() == 0 && b.lean() == 0 {
		return
	}
	gap := b.Y1 - a.Y2
	gap = min(gap, gap+b.lean()-a.lean())
	if room := max(s.slantKerf(a), s.slantKerf(b)); gap < room-micrometre {
		wrong(b, "it comes to %v from its neighbour; the slanting kerf takes %v", gap, room)
	}
}
