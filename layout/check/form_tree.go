package check

import "sawbill/layout"

// The deepest way through a valid tree is root, blank, rough rip, strip, piece,
// part. A tree beyond these limits is not replayed.
const (
	maxDepth = 64
	maxNodes = 100_000
)

// treeForm walks a tree that may be anything, even not a tree.
type treeForm struct {
	note note
	mark string
	seen map[*layout.Node]bool
	ok   bool
}

// formOfTree reports whether the cut tree of a board can be replayed, and notes
// why not.
func (j *job) formOfTree(bp *layout.BoardPlan) bool {
	f := &treeForm{note: j.reporter("form"), mark: bp.Board, seen: map[*layout.Node]bool{}, ok: true}
	f.visit(bp.Root, 0)
	return f.ok
}

func (f *treeForm) fault(where string, format string, args ...any) {
	f.note(f.mark, where, format, args...)
	f.ok = false
}

func (f *treeForm) visit(n *layout.Node, depth int) {
	switch {
	case n == nil:
		f.fault("", "a node is missing from the tree")
		return
	case f.seen[n]:
		f.fault("", "one node stands in the tree twice")
		return
	case depth > maxDepth, len(f.seen) >= maxNodes:
		if f.ok {
			f.fault("", "the tree has more than %d levels or %d nodes", maxDepth, maxNodes)
		}
		return
	}
	f.seen[n] = true
	if !sane(n.Rect) {
		f.fault("", "a node lies at x1 %d, x2 %d, y1 %d, y2 %d nm, far off any board",
			int64(n.X1), int64(n.X2), int64(n.Y1), int64(n.Y2))
		return
	}
	f.node(n)
	for _, c := range n.Children {
		f.visit(c, depth+1)
	}
}

func (f *treeForm) node(n *layout.Node) {
	if n.X1 >= n.X2 || n.Y1 >= n.Y2 {
		f.fault(n.ID, "a node at %v has no extent", n.Rect)
	}
	if n.Cut > layout.Rip || n.Show > layout.FaceB {
		f.fault(n.ID, "the node at %v has no known cut or show face", n.Rect)
	}
	if len(n.Children) > 0 {
		if n.Cut == layout.NoCut {
			f.fault(n.ID, "the node at %v has children, but no cut that separates them", n.Rect)
		}
		if n.Part != "" || n.Offcut != "" {
			f.fault(n.ID, "the node at %v is cut up, so it cannot be a part or an offcut", n.Rect)
		}
	}
	if n.Part != "" && n.Offcut != "" {
		f.fault(n.ID, "the node at %v is both a part and an offcut", n.Rect)
	}
	if min(n.Layers, n.Slices) < 0 || max(n.Layers, n.Slices) > maxCount {
		f.fault(n.ID, "the node at %v has %d layers and %d slices; want 0 to %d", n.Rect, n.Layers, n.Slices, maxCount)
	}
	if min(n.Lean, n.Thickness) < 0 || max(n.Lean, n.Thickness) > layout.MaxLength {
		f.fault(n.ID, "the node at %v has a lean of %d nm and a thickness of %d nm",
			n.Rect, int64(n.Lean), int64(n.Thickness))
	}
}
