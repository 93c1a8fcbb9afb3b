package steps

import "sawbill/layout"

// trueBlank trues a blank and takes it apart, one kind of work after the other:
// rips, planing, crosscuts, last rips, resaws.
func (w *worker) trueBlank(h held) {
	w.blank = w.sheet.Name(h.node)
	pieces := w.planed([]held{w.trued(h)})
	var layered []held
	for len(pieces) > 0 {
		var next []held
		for _, p := range pieces {
			switch {
			case len(p.node.Children) > 0:
				next = append(next, w.divide(p)...)
			case p.node.Part != "" && p.node.Pieces() > 1:
				layered = append(layered, p)
			}
		}
		pieces = w.planed(next)
	}
	for _, p := range layered {
		w.resawn(p)
	}
	w.finalPlaning()
	w.blank, w.shift = "", 0
}

// trued is the blank as its usable rectangle, planed.
func (w *worker) trued(h held) held {
	usable := w.shop.Usable(w.board, h.node.Rect)
	w.wood = wood{w.board, h.node.Y2 - usable.Y2, h.node.X2 - usable.X2}
	w.shift = w.board.Shift(h.node.Length())
	p := w.wood.clip(piece{
		rect:      usable,
		thickness: w.planedTo(h.node),
		rawFar:    usable.Y2 < h.node.Y2,
		openTip:   usable.X2 < h.node.X2,
	})
	w.sheet.Blanks = append(w.sheet.Blanks, Blank{
		Name: w.blank, Node: h.node, Usable: p.rect, Thickness: p.thickness,
		LeastWidth: min(p.rect.Y2, w.board.FarMin(p.rect.Along())-w.wood.loss) - p.rect.Y1,
		OpenFar:    p.openFar, OpenTip: p.openTip,
		Truing: truingOf(w.shop, w.board, h.node.Rect),
	})
	s := Step{Operation: True, From: Face, Setting: p.thickness}
	node := w.settle(h.node, p)
	w.comesOff(&s, node, &p)
	s.OffTape, s.OffSection = w.tape(w.lying(p).Along(), w.sectionLying(p)), p.section()
	w.emit(s, h.piece)
	return held{node, p}
}

// planedTo is the thickness of a trued node.
func (w *worker) planedTo(n *layout.Node) layout.Length {
	if n.Thickness > 0 {
		return n.Thickness
	}
	if need := w.need(n); need > 0 {
		return need
	}
	return w.shop.AvailableIn(w.board, n.Rect)
}

// planed planes the strips that are to be thinner than their blank.
func (w *worker) planed(strips []held) []held {
	for i, h := range strips {
		need := w.need(h.node)
		if need == 0 || need >= h.piece.thickness {
			continue
		}
		s := Step{Operation: Plane, From: Face, Setting: need}
		p := h.piece
		p.thickness = need
		w.comesOff(&s, h.node, &p)
		w.emit(s, h.piece)
		strips[i].piece = p
	}
	return strips
}
