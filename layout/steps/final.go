package steps

import "sawbill/layout"

// Parts that are cut thicker than they are finished are milled in two goes: the
// wood is sawn, rests while what was freed in it moves, and is planed to its
// thickness at the end of the job, when all boards have been sawn. Half of what is
// left to plane comes off each face.

// rests reports whether a piece is a part of the bill but for its final planing, and
// keeps it for that.
func (w *worker) rests(node *layout.Node, p piece) bool {
	if w.shop.ThicknessAllowance == 0 || node.Part == "" || node.Pieces() > 1 || p.thickness != w.need(node) {
		return false
	}
	w.resting = append(w.resting, held{node, p})
	return true
}

// finalPlaning planes what rests to its finished thickness.
func (w *worker) finalPlaning() {
	for _, h := range w.resting {
		part := w.problem.Part(h.node.Part)
		done := h.piece
		done.id = Chalk(h.piece.id)
		if h.node.Pieces() == 1 {
			done.id = w.sheet.names.finished(h.node)
		}
		done.thickness = w.shop.LayerOf(h.node, part) - w.shop.ThicknessAllowance
		s := Step{
			Operation: Plane, From: Face, Setting: done.thickness, Final: true,
			Off: done.id, OffSize: done.sizeOn(layout.Through), Show: h.node.Show,
			Part: h.node.Part, Slices: h.node.Slices, OnEdge: h.node.OnEdge, Oversize: w.oversize(part),
		}
		w.emit(s, h.piece)
	}
	w.resting = nil
}
