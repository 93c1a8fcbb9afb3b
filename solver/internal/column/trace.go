package column

import (
	"slices"

	"sawbill/layout"
)

// lane is one rip of a trued node: a strip at position j, or an offcut strip.
type lane struct {
	strip  int // -1: an offcut
	j, lie int
	y1, y2 layout.Length
}

// roughPiece is one piece of a crosscut piece of the board: an offcut, or a
// trued node with its lanes.
type roughPiece struct {
	y1, y2 layout.Length
	offcut bool
	lanes  []lane
}

// pieces tells how the blank from a to the k-th end is cut to give the most.
func (b *Bench) pieces(be blankEnds, k int, how blankHow) []roughPiece {
	if how.rough {
		b.roughRun(be, k)
		return b.roughTrace(be, k)
	}
	whole := roughPiece{y2: b.w.wood.FullWidth()}
	if b.simple(how.m) {
		_, last := b.ripFull(be, k, how.m)
		whole.lanes = b.ripTrace(be, k, last)
	} else {
		whole.lanes = b.nodeLanes(b.newAcross(be, k, how.m), 0, whole.y2)
	}
	return []roughPiece{whole}
}

func (b *Bench) ripTrace(be blankEnds, k, last int) []lane {
	w, near := b.w, b.w.nearOf(be.a, be.ends[k], 0)
	var lanes []lane
	for j0 := w.y.up(near); last > j0; {
		f := b.rip.from[last]
		switch {
		case f.strip == offcutStrip:
			l := lane{strip: -1, y1: w.y.at(int(f.prev)), y2: w.top}
			if last < len(b.rip.v)-1 {
				l.y1, l.y2 = near, w.y.at(last)-w.shop.RipKerf
			}
			lanes = append(lanes, l)
		case f.strip >= 0:
			lanes = append(lanes, w.newLane(int(f.strip), int(f.prev), w.lieIndex(be.a, be.ends[k])))
		}
		last = int(f.prev)
	}
	slices.Reverse(lanes)
	return lanes
}

func (w *Board) newLane(strip, j, lie int) lane {
	return lane{strip: strip, j: j, lie: lie, y1: w.y.at(j), y2: w.y.at(j) + w.strips[strip].height}
}

// nodeLanes runs a node from y1 to y2 again and tells its lanes.
func (b *Bench) nodeLanes(t across, y1, y2 layout.Length) []lane {
	w := b.w
	b.nodeRun(t, y1)
	_, last, layer := b.nodeEnd(t, y2)
	node := &b.rough.node
	var lanes []lane
	if last < 0 {
		top := y2 - w.shop.EdgeJoint
		if y2 == w.wood.FullWidth() {
			top = w.top
		}
		last = -1 - last
		lanes = append(lanes, lane{strip: -1, y1: w.y.at(last), y2: min(top, t.clip)})
	}
	for last > node.j0 {
		f := node.from[layer][last]
		switch {
		case f.strip == offcutStrip:
			lanes = append(lanes, lane{strip: -1, y1: w.y.at(int(f.prev)), y2: w.y.at(last) - b.nodeKerf(layer)})
		case f.strip >= 0:
			lanes = append(lanes, w.newLane(int(f.strip), int(f.prev), w.lieIn(t.be.a, t.be.ends[t.k], t.m)))
		}
		last, layer = int(f.prev), int(f.layer)
	}
	slices.Reverse(lanes)
	return lanes
}

func (b *Bench) roughTrace(be blankEnds, k int) []roughPiece {
	var steps []roughStep
	for at := len(b.rough.v) - 1; at > 0; {
		s := b.rough.from[at]
		if s.kind != roughCarried {
			steps = append(steps, s)
		}
		at = s.prev
	}
	slices.Reverse(steps)
	var pieces []roughPiece
	for _, s := range steps {
		p := roughPiece{y1: s.y1, y2: s.y2, offcut: s.kind == roughOffcut}
		if !p.offcut {
			p.lanes = b.nodeLanes(b.newAcross(be, k, s.m), s.y1, s.y2)
		}
		pieces = append(pieces, p)
	}
	return pieces
}

// celled is one cell of a strip, or an offcut crosscut from it.
type celled struct {
	class  int // index among the classes of the strip's thickness; -1: an offcut
	i      int
	x1, x2 layout.Length
}

// stripCells runs the strip of a lane again and tells its cells.
func (b *Bench) stripCells(be blankEnds, id int) []celled {
	w, p := b.w, b.profile(id)
	t := &w.thicks[w.strips[p.strip].thick]
	e := be.ends[0]
	n := w.x.down(w.x.at(e) - max(w.end, w.shop.Snipe) + w.shop.CrosscutKerf)
	first := w.x.up(w.x.at(be.a) + w.end)
	b.stripRun(id, be.a, first, n)
	keep := b.newStripKeep(id, be.a)
	_, last := b.stripEnd(keep, first, e)
	var cells []celled
	if last < 0 {
		last = -1 - last
		cells = append(cells, celled{class: -1, x1: w.x.at(last), x2: min(w.x.at(e)-w.end, keep.hi)})
	}
	for last > first {
		f := b.strip.from[last]
		prev, mark := int(f>>16), int(f&classMask)
		switch mark {
		case carriedClass:
		case offcutClass:
			cells = append(cells, celled{class: -1, x1: w.x.at(prev), x2: w.x.at(last) - w.shop.CrosscutKerf})
		default:
			x1 := w.x.at(prev)
			cells = append(cells, celled{class: mark, i: prev, x1: x1, x2: x1 + w.classes[t.classes[mark]].length})
		}
		last = prev
	}
	slices.Reverse(cells)
	return cells
}
