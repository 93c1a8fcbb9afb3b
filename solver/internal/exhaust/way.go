package exhaust

import (
	"sawbill/layout"
)

// maxRows is the most kinds of part that a job may have.
const maxRows = 4

// counts is how many pieces are made, by row of the bill.
type counts [maxRows]int8

// way is one way to cut up a stretch of wood: what it makes, what its offcuts are
// worth, its first piece and the way of what lies beyond that.
type way struct {
	made  counts
	worth layout.Money
	first *piece // nil: waste, or a board that is not cut
	rest  *way   // nil: nothing lies beyond
}

// empty reports whether nothing of use comes of a way.
func (w *way) empty() bool { return w.made == counts{} && w.worth == 0 }

// piece is a node of a cut tree and the way in which it is cut up.
type piece struct {
	node   layout.Node
	inside *way
}

// tree builds the cut tree of a piece.
func (p *piece) tree() *layout.Node {
	n := p.node
	for w := p.inside; w != nil && w.first != nil; w = w.rest {
		n.Children = append(n.Children, w.first.tree())
	}
	return &n
}

// front holds at most one way for each vector of counts.
type front []way

// waste is the front of wood that is left alone.
func waste() front { return front{{}} }

// leaf is the front of a piece that is not cut any further.
func leaf(n layout.Node, made counts, worth layout.Money) front {
	return front{{made: made, worth: worth, first: &piece{node: n}}}
}

// within makes each way of f the inside of one piece, but for those that give
// nothing.
func within(n layout.Node, f front) front {
	var pieces front
	for i := range f {
		if !f[i].empty() {
			pieces = append(pieces, way{made: f[i].made, worth: f[i].worth, first: &piece{n, &f[i]}})
		}
	}
	return pieces
}
