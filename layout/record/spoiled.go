package record

import (
	"fmt"
	"slices"
	"strings"

	"sawbill/layout"
)

// Spoiled notes that finished pieces are of no use. They are wanted again, and their
// wood is stock of its present size where that is large enough to keep. A piece that
// was not yet noted to be cut is, by being spoiled. The error says that a piece is
// not known.
func (d *Draft) Spoiled(ids ...string) error {
	for _, id := range ids {
		if err := d.spoiled(id); err != nil {
			return err
		}
	}
	return nil
}

func (d *Draft) spoiled(id string) error {
	i := d.cutPiece(id)
	if i < 0 {
		mark, leaf, err := d.toBeCut(id)
		if err != nil {
			return err
		}
		d.cut(mark, leaf)
		if i = d.cutPiece(id); i < 0 {
			i = d.cutPiece(leaf.ID)
		}
	}
	piece := d.record.Cut[i]
	d.record.Cut = slices.Delete(d.record.Cut, i, i+1)
	d.tell("spoiled %s (%s)", piece.Wood.Mark, piece.Part)
	d.stockPiece(piece)
	if root := d.trees[piece.Board]; root != nil {
		d.scrapPiece(piece.Board, root, piece.Wood.Mark)
	}
	return nil
}

// toBeCut finds the leaf of one piece of the bill, by its own name or by that of the
// layer that it is.
func (d *Draft) toBeCut(id string) (mark string, leaf *layout.Node, err error) {
	for _, board := range d.stock {
		root := d.trees[board.Mark]
		if root == nil {
			continue
		}
		for _, n := range root.Leaves() {
			if n.Part != "" && slices.ContainsFunc(n.PieceIDs(), func(own string) bool { return strings.EqualFold(own, strings.TrimSpace(id)) }) {
				return board.Mark, n, nil
			}
		}
	}
	at, err := d.find(id)
	if err != nil {
		return "", nil, err
	}
	return at.board.Mark, at.node, onePiece(id, at.node)
}

// onePiece says why a node, nil for a whole board, is not one piece of the bill.
func onePiece(id string, n *layout.Node) error {
	switch {
	case n == nil:
		return fmt.Errorf("%q: it is a board of the stock, no piece of the bill", id)
	case n.Part == "":
		return fmt.Errorf("%q: it is no piece of the bill", id)
	case n.Pieces() > 1:
		return fmt.Errorf("%q: %d pieces are resawn out of it; name those that are spoiled: %s", id, n.Pieces(), strings.Join(n.PieceIDs(), " "))
	}
	return nil
}

func (d *Draft) cutPiece(id string) int {
	return slices.IndexFunc(d.record.Cut, func(c layout.CutPiece) bool {
		return strings.EqualFold(c.Wood.Mark, strings.TrimSpace(id))
	})
}

// scrapPiece makes scrap of the leaf of a spoiled piece; of the other pieces that
// were resawn from it each becomes a part of the bill that no tree holds.
func (d *Draft) scrapPiece(mark string, root *layout.Node, id string) {
	root.Walk(func(n *layout.Node) {
		if n.Part != "" && slices.Contains(n.PieceIDs(), id) {
			*n = layout.Node{Rect: n.Rect}
			d.hurt[mark] = true
		}
	})
	d.tidy(root)
	d.settle(mark, id)
	d.mend(mark)
}

func holdsAny(n *layout.Node) bool {
	for _, leaf := range n.Leaves() {
		if leaf.Part != "" || leaf.Offcut != "" {
			return true
		}
	}
	return false
}

// stockPiece puts the wood of a spoiled piece into the stock.
func (d *Draft) stockPiece(piece layout.CutPiece) {
	row := piece.Wood
	d.record.Origins = append(d.record.Origins, layout.Origin{Board: row.Mark, Of: piece.Board, Wood: piece.Lay})
	if d.Shop().Keeps(layout.Rect{X2: row.Length, Y2: min(row.Width, row.TipWidth)}) {
		d.stock = append(d.stock, row)
		d.inherit(piece.Board, row.Mark)
	}
}
