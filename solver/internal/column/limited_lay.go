package column

import (
	"slices"

	"sawbill/layout"
)

// steps lists the steps that led to a label, first to last.
func (l *label) steps() []*label {
	var all []*label
	for ; l.arc != nil; l = l.prev {
		all = append(all, l)
	}
	slices.Reverse(all)
	return all
}

// layBoard makes the cut tree of a label of the board.
func (s *limited) layBoard(l *label) *layout.Node {
	root := &layout.Node{Rect: s.w.wood.Frame(), Cut: layout.Crosscut}
	for _, step := range l.steps() {
		node := root.Rect
		node.X1, node.X2 = step.arc.lo, step.arc.hi
		child := s.layStep(node, 0, step)
		if step.arc.piece != nil {
			s.w.setWhole(child, step.arc.piece)
		}
		root.Children = append(root.Children, child)
	}
	s.w.setShows(root)
	return root
}

// leanOf is how much the node leans that a step of rips cuts off.
func (s *limited) leanOf(step *label) layout.Length {
	if step.arc.level != levelNode || step.arc.offcut {
		return 0
	}
	return s.w.leans[s.w.strips[step.arc.strip].lean].by
}

// layStep makes the node that one step cuts off.
func (s *limited) layStep(r layout.Rect, lean layout.Length, step *label) *layout.Node {
	n := &layout.Node{Rect: r, Lean: lean}
	switch {
	case step.arc.offcut:
		n.Offcut = kept
	case step.arc.piece != nil:
		s.w.setPart(n, step.arc.piece)
	default:
		s.lay(n, step.kid)
	}
	return n
}

// lay fills a node as a label says.
func (s *limited) lay(n *layout.Node, l *label) {
	steps := l.steps()
	switch l.arc.level {
	case levelDirect:
		s.w.setPart(n, l.arc.piece)
	case levelStack:
		s.layAcross(n, n.Rect, steps)
	case levelStrip:
		s.layStrip(n, steps)
	case levelNode:
		s.layNode(n, steps)
	case levelRough:
		s.layRough(n, steps)
	}
}

// layAcross rips a node; inner is what the steps are measured in.
func (s *limited) layAcross(n *layout.Node, inner layout.Rect, steps []*label) {
	n.Cut = layout.Rip
	for _, step := range steps {
		r := inner
		r.Y1, r.Y2 = inner.Y1+step.arc.lo, inner.Y1+step.arc.hi
		n.Children = append(n.Children, s.layStep(r, s.leanOf(step), step))
	}
}

// layStrip crosscuts a strip, unless one part is all of it.
func (s *limited) layStrip(n *layout.Node, steps []*label) {
	for _, step := range steps {
		r := n.Rect
		r.X1, r.X2 = n.X1+step.arc.lo, n.X1+step.arc.hi
		n.Children = append(n.Children, s.layStep(r, n.Lean, step))
	}
	if only := n.Children[0]; len(n.Children) == 1 && only.Rect == n.Rect && len(only.Children) == 0 {
		*n = *only
		return
	}
	n.Cut = layout.Crosscut
}

// layNode rips a trued node into strips, with the end losses off.
func (s *limited) layNode(n *layout.Node, steps []*label) {
	n.Trued = true
	inner := n.Rect
	inner.X1, inner.X2 = n.X1+s.w.end, n.X2-s.w.end
	s.layAcross(n, inner, steps)
	for _, step := range steps {
		if step.kid.parts {
			n.Thickness = max(n.Thickness, s.w.thicks[s.w.strips[step.arc.strip].thick].thickness)
		}
	}
}

// layRough rips a crosscut piece, unless one trued node is all of it.
func (s *limited) layRough(n *layout.Node, steps []*label) {
	if a := steps[0].arc; len(steps) == 1 && !a.offcut && a.lo == 0 && a.hi == n.Width() {
		s.lay(n, steps[0].kid)
		return
	}
	s.layAcross(n, n.Rect, steps)
}
