package column

import "sawbill/layout"

// setPart makes a leaf a part. Which face it shows is set once the tree is whole.
func (w *Board) setPart(leaf *layout.Node, p *piece) {
	leaf.Part, leaf.OnEdge, leaf.Lean = w.problem.Bill[p.row].Name, p.onEdge, w.leans[p.lean].by
	if p.layers > 1 {
		leaf.Layers = p.layers
	}
}

// setShows chooses for every part of a cut tree the face that it shows, where only
// one will do.
func (w *Board) setShows(root *layout.Node) {
	if len(w.grown) == 0 {
		return
	}
	root.LeavesByBlank(func(blank, leaf *layout.Node) {
		if leaf.Part != "" {
			leaf.Show = w.pieceOf(leaf).show(w.under(leaf, blank.Length()))
		}
	})
}

// show is the face that a piece shows that meets some defects.
func (p *piece) show(hit set) layout.Face {
	switch {
	case p.blockA.meets(hit):
		return layout.FaceB
	case p.blockB.meets(hit):
		return layout.FaceA
	}
	return layout.Through
}

// under is the set of defects, grown, that meet a leaf in a rough crosscut blank of a
// length, on either face.
func (w *Board) under(leaf *layout.Node, blank layout.Length) set {
	r := leaf.Rect
	r.Y2 += leaf.Lean
	hit, shift := newSet(len(w.grown)), w.wood.Shift(blank)
	for i, g := range w.grown {
		g.Y2 += shift
		if g.Overlaps(r) {
			hit.add(i)
		}
	}
	return hit
}
