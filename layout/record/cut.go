package record

import (
	"fmt"
	"slices"

	"sawbill/layout"
	"sawbill/layout/steps"
)

// Cut notes that boards, blanks, strips or single pieces are cut as planned. A
// board that is named, or of which no piece is left to be cut, is done with: its
// offcuts are then boards of the stock. The error says which name is not known, or
// not planned.
func (d *Draft) Cut(names ...string) error {
	for _, name := range names {
		at, err := d.find(name)
		if err != nil {
			return err
		}
		mark := at.board.Mark
		root := d.trees[mark]
		switch {
		case root == nil:
			return fmt.Errorf("%q: the plan does not cut it", mark)
		case at.node == nil:
			d.cut(mark, root)
			d.finish(mark)
			d.tell("cut %s", mark)
		default:
			if !holdsPart(at.node) {
				return fmt.Errorf("%q: nothing of the bill is in it; name the board when all of it is cut", name)
			}
			d.cut(mark, at.node)
			d.tell("cut %s", name)
			d.settle(mark)
		}
	}
	return nil
}

func holdsPart(n *layout.Node) bool {
	for _, leaf := range n.Leaves() {
		if leaf.Part != "" {
			return true
		}
	}
	return false
}

// cut notes the pieces below a node of a board's tree.
func (d *Draft) cut(mark string, n *layout.Node) {
	d.start(mark)
	b := d.board(mark)
	for _, leaf := range n.Leaves() {
		part := d.wanted(leaf.Part)
		if part == nil || d.isCut(leaf) {
			continue
		}
		thickness := d.Shop().LayerOf(leaf, part)
		for _, id := range leaf.PieceIDs() {
			piece := Wood(d.Shop(), b, steps.Lying{Name: id, Wood: leaf.Rect, Thickness: thickness, Blank: &steps.Blank{}})
			d.record.Cut = append(d.record.Cut, layout.CutPiece{
				Part: part.Name, Board: mark, Revision: d.former.Revision, Spare: leaf.Spare, Slices: leaf.Slices,
				Wood: piece, Lay: leaf.Rect,
			})
		}
	}
}

func (d *Draft) isCut(leaf *layout.Node) bool { return d.record.IsCut(leaf.PieceIDs()[0]) }

// done reports whether no piece of a board is left to be cut.
func (d *Draft) done(mark string) bool {
	for _, leaf := range d.trees[mark].Leaves() {
		if leaf.Part != "" && !d.isCut(leaf) {
			return false
		}
	}
	return true
}

// settle finishes a board that is being cut and of which no piece is left to be cut.
// Of one whose tree holds nothing any more it keeps what lies on the bench once the
// wood with these names does.
func (d *Draft) settle(mark string, names ...string) {
	switch root := d.trees[mark]; {
	case root == nil || !d.started(mark):
	case !holdsAny(root):
		d.dissolve(mark, names...)
	case d.done(mark):
		d.finish(mark)
	}
}

// finish takes a board that is all cut out of the stock, and puts its offcuts in.
func (d *Draft) finish(mark string) {
	sheet := d.sheet(mark)
	all := make([]bool, len(sheet.Steps))
	for i := range all {
		all[i] = true
	}
	d.replace(mark, sheet.Bench(all))
}

// replace puts the pieces that a board has become in its place, but those of the
// bill and what is too small to keep.
func (d *Draft) replace(mark string, bench []steps.Lying) {
	b := *d.board(mark)
	d.record.Spent += b.Cost
	d.record.Used = append(d.record.Used, b)
	for i := range d.stock {
		if d.stock[i].Mark == mark {
			d.stock = append(d.stock[:i:i], d.stock[i+1:]...)
			break
		}
	}
	delete(d.trees, mark)
	d.record.Started = slices.DeleteFunc(d.record.Started, func(s layout.Start) bool { return s.Board == mark })
	for _, lying := range bench {
		if lying.Part == "" && !d.record.IsCut(lying.Name) && !d.taken(mark, lying.Wood) {
			d.keep(&b, lying)
		}
	}
}

// taken reports whether wood of a board has become a board of the stock before.
func (d *Draft) taken(mark string, wood layout.Rect) bool {
	for _, o := range d.record.Origins {
		if o.Of == mark && o.Wood.Overlaps(wood) {
			return true
		}
	}
	return false
}

// keep makes a board of the stock of wood that is large enough to keep, and gives
// it, or nil.
func (d *Draft) keep(b *layout.Board, lying steps.Lying) *layout.Board {
	lying.Name = d.fresh(lying.Name, b.Mark)
	row := Wood(d.Shop(), b, lying)
	d.record.Origins = append(d.record.Origins, layout.Origin{Board: row.Mark, Of: b.Mark, Wood: lying.Wood})
	if !d.Shop().Keeps(layout.Rect{X2: row.Length, Y2: min(row.Width, row.TipWidth)}) {
		return nil
	}
	d.stock = append(d.stock, row)
	d.inherit(b.Mark, row.Mark)
	return &d.stock[len(d.stock)-1]
}

// fresh is the name of a piece as the mark of a board, or one near it where a board
// has or had that: two pieces of a job never share an id.
func (d *Draft) fresh(name, of string) string {
	used := func(mark string) bool {
		return mark == of || d.board(mark) != nil || slices.ContainsFunc(d.record.Origins, func(o layout.Origin) bool {
			return o.Board == mark || o.Of == mark
		})
	}
	mark := name
	for n := 1; used(mark); n++ {
		mark = fmt.Sprintf("%s-R%d", name, n)
	}
	return mark
}

// inherit lets a board that was cut out of another one stand wherever the bill
// names that.
func (d *Draft) inherit(of, mark string) {
	for i := range d.record.Wanted {
		p := &d.record.Wanted[i]
		p.From, p.NotFrom = joined(p.From, of, mark), joined(p.NotFrom, of, mark)
	}
}

func joined(marks []string, of, mark string) []string {
	for _, m := range marks {
		if m == of {
			return append(marks[:len(marks):len(marks)], mark)
		}
	}
	return marks
}
