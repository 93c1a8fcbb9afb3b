package column

import "sawbill/layout"

// setPart makes a leaf a part. Which face it shows is set once the tree is whole.
func (w *Board) setPart(leaf *layout.Node, p *piece) {
	leaf.Part, leaf.OnEdge = w.problem.Bill[p.row].Name, p.onEdge
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
			leaf.Show = w.pieceOf(leaf).show(w.under(leaf.Rect, blank.Length()))
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

// under is the set of defects, grown, that meet a rectangle in a rough crosscut
// blank of a length.
func (w *Board) under(r layout.Rect, blank layout.Length) set {
	hit, shift := newSet(len(w.grown)), w.wood.Shift(blank)
	for i, g := range w.grown {
		g.Y2 += shift
		if g.Overlaps(r) {
			hit.add(i)
		}
	}
	return hit
}
