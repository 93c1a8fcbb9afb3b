package column

import "sawbill/layout"

// way is how a part may lie in the wood: flat or on edge, by itself or as several
// layers that are resawn. One leaf cut in a way is worth as many pieces as it has
// layers.
type way struct {
	row    int // in the bill
	layers int
	onEdge bool
	lean   int // index into the leans of the board
	// The leaf's, allowances included.
	thickness, width, length layout.Length
}

// ways lists how the rows of the bill may be cut that some blank of the board could
// hold by size alone.
func (w *Board) ways() []way {
	var ways []way
	for row := range w.problem.Bill {
		if part := &w.problem.Bill[row]; w.problem.Allows(part, w.wood) {
			ways = append(ways, w.waysOf(row, part)...)
		}
	}
	return ways
}

// waysOf lists the ways of one row. On edge a part of a square section is no other
// than flat; more layers than pieces that are wanted are of no use.
func (w *Board) waysOf(row int, part *layout.Part) []way {
	s := w.shop
	most := 1
	if part.Resaw && part.Bevel == 0 && part.CutLength(s) >= s.MinBlank {
		most = max(1, part.Quantity)
	}
	var ways []way
	add := func(onEdge bool, width layout.Length, need func(*layout.Shop, int) layout.Length) {
		for n := 1; n <= most; n++ {
			v := way{row: row, layers: n, onEdge: onEdge, lean: w.leanOf(part), thickness: need(s, n), width: width, length: part.CutLength(s)}
			if !w.couldHold(&v) {
				return
			}
			ways = append(ways, v)
		}
	}
	add(false, part.CutWidth(s), part.FlatThickness)
	if part.OnEdge && part.Bevel == 0 && part.Thickness != part.Width {
		add(true, part.EdgeWidth(s), part.EdgeThickness)
	}
	return ways
}

// couldHold reports whether some blank of the board could hold a part lying in a way.
func (w *Board) couldHold(v *way) bool {
	longest := w.wood.Length - 2*w.shop.EndTrim - 2*max(w.end, w.shop.Snipe)
	wide := v.width + w.leans[v.lean].by + 2*w.leans[v.lean].inset()
	return v.thickness <= w.thickest(v.length, v.width) && v.length <= longest && wide <= w.top-w.near
}

// setPieces numbers the pieces of all classes.
func (w *Board) setPieces() {
	w.pieces = w.pieces[:0]
	for i := range w.classes {
		for k := range w.classes[i].pieces {
			p := &w.classes[i].pieces[k]
			p.id = len(w.pieces)
			w.pieces = append(w.pieces, p)
		}
	}
}

// pieceOf is the way of a part in which a leaf is cut.
func (w *Board) pieceOf(leaf *layout.Node) *piece {
	p := w.wayOf(leaf)
	if p == nil {
		panic("column: a leaf is no part of this board: " + leaf.Part)
	}
	return p
}

// wayOf is the way of a part in which a leaf might be cut; nil where the board has none.
func (w *Board) wayOf(leaf *layout.Node) *piece {
	row := w.rows[leaf.Part]
	for _, p := range w.pieces {
		if p.row == row && p.onEdge == leaf.OnEdge && p.layers == leaf.Pieces() {
			return p
		}
	}
	return nil
}

// needOf is the thickness that a part leaf needs.
func (w *Board) needOf(leaf *layout.Node) layout.Length {
	return w.shop.NeedOf(leaf, &w.problem.Bill[w.rows[leaf.Part]])
}
