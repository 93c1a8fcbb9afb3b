package steps

import "sawbill/layout"

// held is a piece in hand and what it is to become.
type held struct {
	node  *layout.Node
	piece piece
}

// worker writes down the steps on one board.
type worker struct {
	problem *layout.Problem
	shop    *layout.Shop
	board   *layout.Board
	sheet   *Sheet
	blank   string // chalk name of the trued blank in hand
	wood    wood
	// shift is how far a crooked edge has moved the wood, and what is marked on it,
	// in the blank in hand; 0 while the board is crosscut.
	shift layout.Length
	// resting are the pieces of the blank in hand that are yet to be planed to
	// their finished thickness.
	resting []held
}

// breakDown takes a rough piece apart: rough cuts first, then each blank.
func (w *worker) breakDown(h held) {
	switch {
	case h.node.Offcut != "" || len(h.node.Children) == 0 && h.node.Part == "": // kept rough
	case h.node.Trued:
		w.trueBlank(h)
	default:
		if h.node.Cut == layout.Rip {
			w.shift = w.board.Shift(h.node.Length())
		}
		kids := w.roughCut(h)
		w.shift = 0
		for _, kid := range kids {
			w.breakDown(kid)
		}
	}
}

// emit adds a step on piece p.
func (w *worker) emit(s Step, p piece) {
	s.Board, s.Piece, s.Blank = w.board.Mark, p.id, w.blank
	s.Wood = p.rect
	w.measure(&s, p)
	w.locate(&s)
	s.Cautions = w.cautions(&s, p)
	w.sheet.Steps = append(w.sheet.Steps, s)
}

// need is the thickness that the wood of the parts below n is planed to, 0 when
// there are none.
func (w *worker) need(n *layout.Node) layout.Length {
	var most layout.Length
	for _, leaf := range n.Leaves() {
		if part := w.problem.Part(leaf.Part); part != nil {
			most = max(most, w.shop.NeedOf(leaf, part))
		}
	}
	return most
}

// comesOff fills in what a step takes off: piece p, which becomes node.
func (w *worker) comesOff(s *Step, node *layout.Node, p *piece) {
	names := w.sheet.names
	s.OffSize = p.sizeOn(s.Down)
	s.Show = node.Show
	switch {
	case node.Offcut != "":
		p.id = names.finished(node)
		s.Offcut = node.Offcut
	case node.Part != "" && (p.thickness != w.need(node) || node.Pieces() > 1):
		p.id = names.unfinished(node)
	case node.Part != "" && w.shop.ThicknessAllowance > 0:
		p.id = names.unfinished(node)
		w.rests(node, *p)
	case node.Part != "":
		p.id = names.finished(node)
		s.Part, s.Slices, s.OnEdge = node.Part, node.Slices, node.OnEdge
		s.Oversize = w.oversize(w.problem.Part(node.Part))
	default:
		p.id = names.finished(node)
	}
	s.Off = p.id
}

// name writes down, in place of a cut that s says, that the piece in hand already is
// what node says.
func (w *worker) name(s Step, node *layout.Node, p piece) piece {
	s.NoCut = true
	done := p
	w.comesOff(&s, node, &done)
	w.emit(s, p)
	return done
}
